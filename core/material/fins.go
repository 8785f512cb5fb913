package material

// FinMetals lists the shipped fin metals in the order a page offers them.
//
// Source: density, conductivity, expansion and elongation: handbook values, from
// memory. Yield: typical of soft strip, from memory; the winding stress of a wound
// fin cannot exceed it. Tip limits: fired-heater practice for welded fins (API 560
// table), from memory. Verify before use in a contract.
var FinMetals = []Metal{
	fin("al1060", Aluminium, 2705, conductivity(234, 234, 230, 225), expansion(23.6), 43, 43, 28),
	fin("al1050a", Aluminium, 2705, conductivity(229, 229, 226, 221), expansion(23.5), 35, 40, 28),
	fin("al1100", Aluminium, 2710, conductivity(222, 221, 218, 214), expansion(23.6), 35, 35, 34),
	fin("al3003", Aluminium, 2730, conductivity(193, 190, 187), expansion(23.2), 30, 30, 41),
	fin("c11000", Copper, 8910, conductivity(391, 385, 378, 370), expansion(17.7), 45, 50, 69),
	fin("c12200", Copper, 8940, conductivity(339, 334, 330, 326), expansion(17.6), 45, 45, 69),
	// The source gives 59 to 65 W/(m K) at 20 degrees C; the middle is used.
	tipLimit(454, fin("cs1010", CarbonSteel, 7870, conductivity(62, 57, 53, 49), expansion(12), 28, 45, 180)),
	tipLimit(649, fin("ss409", Stainless, 7760, conductivity(25, 25.5, 26, 26.5), expansion(11), 25, 30, 205)),
	tipLimit(815, fin("ss304", Stainless, 8030, conductivity(14.8, 16.2, 17.9, 19.4), expansion(16.2), 50, 60, 205)),
}

// fin takes density [kg/m3], elongation from low to high [%] and yield [MPa].
func fin(id string, kind Kind, density float64, k, alpha Curve, low, high, yield float64) Metal {
	return Metal{
		ID: id, Kind: kind, Density: Value{density, handbook},
		Conductivity: k, Expansion: alpha,
		Elongation: Span{low / 100, high / 100, soft},
		Yield:      Value{yield * 1e6, soft},
	}
}

func tipLimit(celsius float64, m Metal) Metal {
	m.Limit = Value{celsius, tipLimits}
	return m
}
