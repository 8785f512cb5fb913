package material

// FinMetals lists the shipped fin metals in the order a page offers them.
//
// Source: density, conductivity, expansion and elongation: handbook values, from
// memory. Yield: typical of soft strip, from memory; the winding stress of a wound
// fin cannot exceed it. Tip limits: fired-heater practice for welded fins (API 560
// table), from memory; of 11-13Cr the fin's, not the stud's. Mean expansion of aluminium
// to 200 and 300 C: of the pure metal, from memory, its rise taken for the alloys too.
// Verify before use in a contract.
var FinMetals = finMetals()

// finRows holds their properties as the sources print them.
var finRows = []struct {
	id           string
	family       Family
	density      float64   // [kg/m3]
	conductivity []float64 // as the function conductivity takes it
	expansion    []float64 // as the function expansion takes it
	low, high    float64   // elongation [%]
	yield        float64   // [MPa]
	tip          float64   // limit [degrees C], 0 where no practice gives one
}{
	{"al1060", Aluminium, 2705, []float64{234, 234, 230, 225}, []float64{23.6, 24.4, 25.5}, 43, 43, 28, 0},
	{"al1050a", Aluminium, 2705, []float64{229, 229, 226, 221}, []float64{23.5, 24.3, 25.4}, 35, 40, 28, 0},
	{"al1100", Aluminium, 2710, []float64{222, 221, 218, 214}, []float64{23.6, 24.4, 25.5}, 35, 35, 34, 0},
	{"al3003", Aluminium, 2730, []float64{193, 190, 187}, []float64{23.2, 24.0, 25.1}, 30, 30, 41, 0},
	{"c11000", Copper, 8910, []float64{391, 385, 378, 370}, []float64{17.7}, 45, 50, 69, 0},
	{"c12200", Copper, 8940, []float64{339, 334, 330, 326}, []float64{17.6}, 45, 45, 69, 0},
	// The source gives 59 to 65 W/(m K) at 20 degrees C; the middle is used.
	{"cs1010", CarbonSteel, 7870, []float64{62, 57, 53, 49}, []float64{12}, 28, 45, 180, 454},
	{"ss409", Stainless, 7760, []float64{25, 25.5, 26, 26.5}, []float64{11}, 25, 30, 205, 593},
	{"ss304", Stainless, 8030, []float64{14.8, 16.2, 17.9, 19.4}, []float64{16.2}, 50, 60, 205, 815},
}

func finMetals() []Metal {
	metals := make([]Metal, len(finRows))
	for i, r := range finRows {
		metals[i] = Metal{
			ID: r.id, Family: r.family, Density: Value{r.density, handbook},
			Conductivity: conductivity(r.conductivity), Expansion: expansion(r.expansion),
			Elongation: ValueRange{r.low / 100, r.high / 100, soft},
			Yield:      Value{r.yield * 1e6, soft},
		}
		if r.tip != 0 {
			metals[i].Limit = Value{r.tip, tipLimits}
		}
	}
	return metals
}
