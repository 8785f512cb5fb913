package material

// TubeMetals lists the shipped tube metals in the order a page offers them.
//
// Source: density, conductivity and expansion: handbook values (ASME II-D, TEMA,
// metals handbooks), from memory. Yield: least value of the tube specification in
// its soft state, from memory. Verify before use in a contract.
var TubeMetals = tubeMetals()

// tubeRows holds their properties as the sources print them.
var tubeRows = []struct {
	id           string
	family       Family
	density      float64   // [kg/m3]
	conductivity []float64 // as the function conductivity takes it
	expansion    []float64 // as the function expansion takes it
	yield        float64   // [MPa]
}{
	{"cs", CarbonSteel, 7850, []float64{60.4, 58.0, 53.6, 49.2, 44.9}, []float64{12.1, 13.3}, 180},
	{"t11", LowAlloy, 7850, []float64{41, 40.5, 39, 37, 35}, []float64{12.2, 13.0}, 205},
	{"t22", LowAlloy, 7850, []float64{36, 37, 36.5, 36, 35}, []float64{12.2, 13.0}, 205},
	{"t5", LowAlloy, 7750, []float64{28, 28, 28.5, 28.5, 28}, []float64{11.0, 11.9}, 205},
	{"t9", LowAlloy, 7750, []float64{22, 24, 26, 27, 27}, []float64{11.0, 11.9}, 205},
	{"tp304", Stainless, 8030, []float64{14.8, 16.2, 17.9, 19.4, 20.8}, []float64{16.2, 17.5}, 205},
	{"tp316", Stainless, 8030, []float64{14.1, 15.4, 16.8, 18.3, 19.7}, []float64{16.2, 17.5}, 205},
	{"2205", Stainless, 7800, []float64{14, 16, 17.5, 19}, []float64{13.0, 14.0}, 450},
	{"c70600", CopperNickel, 8940, []float64{40, 45, 52}, []float64{17.1}, 105},
	{"c71500", CopperNickel, 8940, []float64{29, 33, 38}, []float64{16.2}, 125},
	{"c44300", Brass, 8530, []float64{110, 120, 130}, []float64{20.2}, 105},
	{"c12200", Copper, 8940, []float64{339, 334, 330}, []float64{17.6}, 62},
	{"ti2", Titanium, 4510, []float64{21.9, 20.9, 20, 19.5}, []float64{8.6, 9.2}, 275},
	{"825", NickelAlloy, 8140, []float64{11.1, 12.3, 14, 15.6, 17}, []float64{14.0, 15}, 240},
}

func tubeMetals() []Metal {
	metals := make([]Metal, len(tubeRows))
	for i, r := range tubeRows {
		metals[i] = Metal{
			ID: r.id, Family: r.family, Density: Value{r.density, handbook},
			Conductivity: conductivity(r.conductivity), Expansion: expansion(r.expansion),
			Yield: Value{r.yield * 1e6, minimum},
		}
	}
	return metals
}
