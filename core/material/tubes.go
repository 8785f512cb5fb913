package material

// TubeMetals lists the shipped tube metals in the order a page offers them.
//
// Source: density, conductivity and expansion: handbook values (ASME II-D, TEMA,
// metals handbooks), from memory. Yield: least value of the tube specification in
// its soft state, from memory. Verify before use in a contract.
var TubeMetals = []Metal{
	tube("cs", CarbonSteel, 7850, conductivity(60.4, 58.0, 53.6, 49.2, 44.9), expansion(12.1, 13.3), 180),
	tube("t11", LowAlloy, 7850, conductivity(41, 40.5, 39, 37, 35), expansion(12.2, 13.0), 205),
	tube("t22", LowAlloy, 7850, conductivity(36, 37, 36.5, 36, 35), expansion(12.2, 13.0), 205),
	tube("t5", LowAlloy, 7750, conductivity(28, 28, 28.5, 28.5, 28), expansion(11.0, 11.9), 205),
	tube("t9", LowAlloy, 7750, conductivity(28, 28, 28.5, 28.5, 28), expansion(11.0, 11.9), 205),
	tube("tp304", Stainless, 8030, conductivity(14.8, 16.2, 17.9, 19.4, 20.8), expansion(16.2, 17.5), 205),
	tube("tp316", Stainless, 8030, conductivity(14.1, 15.4, 16.8, 18.3, 19.7), expansion(16.2, 17.5), 205),
	tube("2205", Stainless, 7800, conductivity(14, 16, 17.5, 19), expansion(13.0, 14.0), 450),
	tube("c70600", CopperNickel, 8940, conductivity(40, 45, 52), expansion(17.1), 105),
	tube("c71500", CopperNickel, 8940, conductivity(29, 33, 38), expansion(16.2), 125),
	tube("c44300", Brass, 8530, conductivity(110, 120, 130), expansion(20.2), 105),
	tube("c12200", Copper, 8940, conductivity(339, 334, 330), expansion(17.6), 62),
	tube("ti2", Titanium, 4510, conductivity(21.9, 20.9, 20, 19.5), expansion(8.6, 9.2), 275),
	tube("825", NickelAlloy, 8140, conductivity(11.1, 12.3, 14, 15.6, 17), expansion(14.0, 15), 240),
}

// tube takes density [kg/m3] and yield [MPa].
func tube(id string, kind Kind, density float64, k, alpha Curve, yield float64) Metal {
	return Metal{
		ID: id, Kind: kind, Density: Value{density, handbook},
		Conductivity: k, Expansion: alpha, Yield: Value{yield * 1e6, minimum},
	}
}
