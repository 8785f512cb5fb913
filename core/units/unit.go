package units

import (
	"math"
	"strings"
)

// unit converts a number x in it to SI by x*factor + offset.
type unit struct {
	dim    dimension
	factor float64
	offset float64
}

const (
	pound    = 0.45359237    // kg, exact (international avoirdupois pound, 1959)
	btu      = 1055.05585262 // J, International Table
	degF     = 5.0 / 9.0     // K
	foot     = 0.3048        // m
	hour     = 3600.0        // s
	squareFt = foot * foot

	poundForce = pound * 9.80665                // N, standard gravity
	kcal       = 4186.8                         // J, International Table
	gallon     = 231 * 0.0254 * 0.0254 * 0.0254 // m3, US liquid
)

// table lists every accepted unit with its spellings; of two with one spelling the later has it. It is plain data: calls
// that add one unit after another would be a long function, which a browser compiles before it shows anything.
var table = []struct {
	unit
	names string // parted by commas
}{
	{unit{dimLength, 1e-6, 0}, "µm, um, micron, microns"},
	{unit{dimLength, 1e-3, 0}, "mm, millimetre, millimetres, millimeter, millimeters"},
	{unit{dimLength, 1e-2, 0}, "cm"},
	{unit{dimLength, 1, 0}, "m, metre, metres, meter, meters"},
	{unit{dimLength, 0.0254, 0}, `in, inch, inches, "`},
	{unit{dimLength, 0.0254e-3, 0}, "mil, mils, thou"},
	{unit{dimLength, foot, 0}, "ft, foot, feet, '"},
	{unit{dimPerLength, 1, 0}, "/m, 1/m, fins/m, fins per metre, fins per meter, per metre, per meter, fin/m, m-1"},
	{unit{dimPerLength, 1 / 0.0254, 0}, `fpi, /in, 1/in, fins/in, fin/in, fins/inch, fins per inch, per inch, /"`},
	{unit{dimPerLength, 100, 0}, "/cm, fins/cm"},
	{unit{dimPerLength, 1000, 0}, "/mm"},
	{unit{dimArea, 1, 0}, "m2"},
	{unit{dimArea, squareFt, 0}, "ft2"},
	{unit{dimAreaPer, 1, 0}, "m2/m"},
	{unit{dimAreaPer, foot, 0}, "ft2/ft"},
	{unit{dimRunPer, 1, 0}, "m/m, ft/ft"},
	{unit{dimAngle, math.Pi / 180, 0}, "deg, °"},

	{unit{dimMass, 1, 0}, "kg"},
	{unit{dimMass, 1e3, 0}, "t"},
	{unit{dimMass, pound, 0}, "lb, lbs"},
	{unit{dimMassPer, 1, 0}, "kg/m"},
	{unit{dimMassPer, pound / foot, 0}, "lb/ft"},
	{unit{dimDense, 1, 0}, "kg/m3"},
	{unit{dimDense, 1e3, 0}, "g/cm3, g/cc, kg/dm3"},
	{unit{dimDense, pound / (foot * foot * foot), 0}, "lb/ft3"},
	{unit{dimDense, pound / (0.0254 * 0.0254 * 0.0254), 0}, "lb/in3"},

	{unit{dimTemp, 1, 0}, "C, degC, deg C"},
	{unit{dimTemp, degF, -32 * degF}, "F, degF, deg F"},
	{unit{dimTemp, 1, -273.15}, "K"},
	{unit{dimExpand, 1e-6, 0}, "µm/mK, um/mK, 1e-6/K, ppm/K"},
	{unit{dimExpand, 1e-6 / degF, 0}, "µin/inF, uin/inF, 1e-6/F"},
	{unit{dimFilm, 1, 0}, "W/m2K, W/m2-K, W/(m2 K), W/m2/K, W/m2C"},
	{unit{dimFilm, btu / (hour * squareFt * degF), 0}, "Btu/h ft2 F, Btu/hr ft2 F, Btu/h/ft2/F"},
	{unit{dimFilm, kcal / hour, 0}, "kcal/h m2 C, kcal/hr m2 C, kcal/h m2 K"},
	{unit{dimConduct, 1, 0}, "W/mK, W/m/K, W/m C"},
	{unit{dimConduct, btu / (hour * foot * degF), 0}, "Btu/h ft F, Btu/hr ft F"},
	{unit{dimConduct, kcal / hour, 0}, "kcal/h m C, kcal/hr m C, kcal/h m K"},
	{unit{dimResist, 1, 0}, "m2K/W"},
	{unit{dimResist, hour * squareFt * degF / btu, 0}, "h ft2 F/Btu, hr ft2 F/Btu"},
	{unit{dimResist, hour / kcal, 0}, "m2 h C/kcal, h m2 C/kcal, m2 hr C/kcal"},
	{unit{dimHeat, 1, 0}, "J/kgK, J/kg/K"},
	{unit{dimHeat, 1e3, 0}, "kJ/kgK, kJ/kg/K"},
	{unit{dimHeat, btu / (pound * degF), 0}, "Btu/lb F"},
	{unit{dimHeat, kcal, 0}, "kcal/kg C, kcal/kg K"},
	{unit{dimViscous, 1, 0}, "Pa s"},
	{unit{dimViscous, 1e-3, 0}, "mPa s, cP"},

	{unit{dimSpeed, 1, 0}, "m/s"},
	{unit{dimSpeed, 1.0 / 60, 0}, "m/min"},
	{unit{dimSpeed, foot, 0}, "ft/s"},
	{unit{dimSpeed, foot / 60, 0}, "ft/min, fpm"},
	{unit{dimRotation, 1.0 / 60, 0}, "rpm, /min, turns/min"},
	{unit{dimTime, 1, 0}, "s, sec"},
	{unit{dimTime, 60, 0}, "min"},
	{unit{dimTime, hour, 0}, "h, hr, hours"},
	{unit{dimMassRate, 1, 0}, "kg/s"},
	{unit{dimMassRate, 1 / hour, 0}, "kg/h, kg/hr"},
	{unit{dimMassRate, 1e3 / hour, 0}, "t/h"},
	{unit{dimMassRate, pound / hour, 0}, "lb/h, lb/hr"},
	{unit{dimMassRate, pound, 0}, "lb/s"},
	{unit{dimVolumeRate, 1, 0}, "m3/s"},
	{unit{dimVolumeRate, 1 / hour, 0}, "m3/h, m3/hr, cmh"},
	{unit{dimVolumeRate, 1e-3, 0}, "l/s, litre/s"},
	{unit{dimVolumeRate, 1e-3 / 60, 0}, "l/min, lpm"},
	{unit{dimVolumeRate, 1e-3 / hour, 0}, "l/h"},
	{unit{dimVolumeRate, gallon / 60, 0}, "gpm, US gpm, gal/min"},
	{unit{dimVolumeRate, foot * foot * foot / 60, 0}, "cfm, ft3/min"},
	{unit{dimMassFlux, 1, 0}, "kg/m2s, kg/(m2 s)"},
	{unit{dimMassFlux, pound / (hour * squareFt), 0}, "lb/h ft2"},

	{unit{dimPressure, 1, 0}, "Pa, N/m2"},
	{unit{dimPressure, 1e3, 0}, "kPa, kPa(a)"},
	{unit{dimPressure, 1e5, 0}, "bar, bara, bar(a)"},
	{unit{dimPressure, 1e6, 0}, "MPa"},
	{unit{dimPressure, poundForce / (0.0254 * 0.0254), 0}, "psi, psia"},
	{unit{dimPressure, 249.08891, 0}, "inH2O, in H2O, inWG, in WG"}, // conventional, water at 4 °C
	{unit{dimPressure, 9.80665, 0}, "mmH2O, mm H2O, mmWG, mm WG"},
	{unit{dimGauge, 1e3, 0}, "kPa(g)"},
	{unit{dimGauge, 1e5, 0}, "bar(g)"},
	{unit{dimGauge, 1e6, 0}, "MPa(g)"},
	{unit{dimGauge, poundForce / (0.0254 * 0.0254), 0}, "psig"},
	{unit{dimStress, 1e6, 0}, "MPa, N/mm2"},
	{unit{dimStress, 1e3 * poundForce / (0.0254 * 0.0254), 0}, "ksi"},
	{unit{dimHardness, 1, 0}, "HV, Vickers"},
	{unit{dimWeldHeat, 1e6, 0}, "J/mm2"},
	{unit{dimWeldHeat, btu / (0.0254 * 0.0254), 0}, "Btu/in2"},
	{unit{dimForce, 1, 0}, "N"},
	{unit{dimForce, poundForce, 0}, "lbf"},

	{unit{dimPower, 1, 0}, "W"},
	{unit{dimPower, 1e3, 0}, "kW"},
	{unit{dimPower, 550 * foot * poundForce, 0}, "hp"},
	{unit{dimPower, 1e6, 0}, "MW"},
	{unit{dimPower, btu / hour, 0}, "Btu/h, Btu/hr"},
	{unit{dimPower, 1e6 * btu / hour, 0}, "MMBtu/h, MMBtu/hr"},
	{unit{dimPower, kcal / hour, 0}, "kcal/h, kcal/hr"},
	{unit{dimPower, 1e6 * kcal / hour, 0}, "Gcal/h, Gcal/hr"},
	{unit{dimTransfer, 1, 0}, "W/K, W/C"},
	{unit{dimTransfer, 1e3, 0}, "kW/K, kW/C"},
	{unit{dimTransfer, btu / (hour * degF), 0}, "Btu/h F, Btu/hr F"},
	{unit{dimTransfer, kcal / hour, 0}, "kcal/h C, kcal/h K"},
	{unit{dimDutyMass, 1, 0}, "W/kg"},
	{unit{dimDutyMass, btu / (hour * pound), 0}, "Btu/h lb"},
	{unit{dimDutyArea, 1e3, 0}, "kW/m2"},
	{unit{dimDutyArea, btu / (hour * squareFt), 0}, "Btu/h ft2"},

	{unit{dimCostTime, 1 / hour, 0}, "/h, per h, per hour"},
	{unit{dimCostMass, 1, 0}, "/kg, per kg"},
	{unit{dimCostMass, 1 / pound, 0}, "/lb, per lb"},
	{unit{dimCostRun, 1, 0}, "per m"},
	{unit{dimCostRun, 1 / foot, 0}, "per ft"},
	{unit{dimCostEach, 1, 0}, "each, per piece, /piece"},

	{unit{dimNone, 1, 0}, "-, x, off, pcs, pieces, tubes"},
	{unit{dimNone, 0.01, 0}, "%"},
}

// byName holds every spelling, folded by fold.
var byName = map[string]unit{}

// inForce are the units in which SI and US show a kind; none has the factor nought.
var inForce = map[Kind][2]unit{}

func init() {
	for _, row := range table {
		for name := range strings.SplitSeq(row.names, ",") {
			byName[fold(name)] = row.unit
		}
	}
	for k, s := range specs {
		inForce[k] = [2]unit{byName[fold(s.si.unit)], byName[fold(s.us.unit)]}
	}
}

// in returns the unit in which system s shows k; ok is false where that is a bare number.
func (k Kind) in(s System) (u unit, ok bool) {
	u = inForce[k][0]
	if s == US {
		u = inForce[k][1]
	}
	return u, u.factor != 0
}

var folds = strings.NewReplacer(
	" ", "", "·", "", "*", "", "^", "", "(", "", ")", "", "-", "", "°", "",
	"²", "2", "³", "3", "₂", "2", "μ", "µ", "″", `"`, "′", "'", "”", `"`, "“", `"`, "’", "'",
)

// fold reduces a unit's spelling to the letters that matter. A lone degree sign or dash survives.
func fold(name string) string {
	name = strings.TrimSpace(name)
	if name == "°" || name == "-" || name == "m-1" {
		return name
	}
	return strings.ToLower(folds.Replace(name))
}

// gauge is the Birmingham wire gauge of tube walls, in inches; index 0 is BWG 1.
//
// Source: the gauge as the open library fluids carries it after Machinery's Handbook.
var gauge = [24]float64{
	0.300, 0.284, 0.259, 0.238, 0.220, 0.203, 0.180, 0.165,
	0.148, 0.134, 0.120, 0.109, 0.095, 0.083, 0.072, 0.065,
	0.058, 0.049, 0.042, 0.035, 0.032, 0.028, 0.025, 0.022,
}

// BWG returns the wall of Birmingham wire gauge n. Valid: 1 to 24, otherwise ok is false.
func BWG(n int) (wall Length, ok bool) {
	if n < 1 || n > len(gauge) {
		return 0, false
	}
	return Length(gauge[n-1]) * Inch, true
}
