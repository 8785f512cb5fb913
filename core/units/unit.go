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

	poundForce = pound * 9.80665 // N, standard gravity
)

// byName holds every accepted spelling, folded by fold.
var byName = map[string]unit{}

func init() {
	add := func(u unit, names ...string) {
		for _, n := range names {
			byName[fold(n)] = u
		}
	}
	length := func(f float64, names ...string) { add(unit{dimLength, f, 0}, names...) }
	length(1e-6, "µm", "um", "micron", "microns")
	length(1e-3, "mm", "millimetre", "millimetres", "millimeter", "millimeters")
	length(1e-2, "cm")
	length(1, "m", "metre", "metres", "meter", "meters")
	length(0.0254, "in", "inch", "inches", `"`)
	length(0.0254e-3, "mil", "mils", "thou")
	length(foot, "ft", "foot", "feet", "'")
	perLength := func(f float64, names ...string) { add(unit{dimPerLength, f, 0}, names...) }
	perLength(1, "/m", "1/m", "fins/m", "fins per metre", "fins per meter", "per metre", "per meter", "fin/m", "m-1")
	perLength(1/0.0254, "fpi", "/in", "1/in", "fins/in", "fin/in", "fins/inch", "fins per inch", "per inch", `/"`)
	perLength(100, "/cm", "fins/cm")
	perLength(1000, "/mm")
	add(unit{dimArea, 1, 0}, "m2")
	add(unit{dimArea, squareFt, 0}, "ft2")
	add(unit{dimAreaPer, 1, 0}, "m2/m")
	add(unit{dimAreaPer, foot, 0}, "ft2/ft")
	add(unit{dimRunPer, 1, 0}, "m/m", "ft/ft")
	add(unit{dimMass, 1, 0}, "kg")
	add(unit{dimMass, 1e3, 0}, "t")
	add(unit{dimMass, pound, 0}, "lb", "lbs")
	add(unit{dimMassPer, 1, 0}, "kg/m")
	add(unit{dimMassPer, pound / foot, 0}, "lb/ft")
	add(unit{dimFilm, 1, 0}, "W/m2K", "W/m2-K", "W/(m2 K)", "W/m2/K", "W/m2C")
	add(unit{dimFilm, btu / (hour * squareFt * degF), 0}, "Btu/h ft2 F", "Btu/hr ft2 F", "Btu/h/ft2/F")
	add(unit{dimConduct, 1, 0}, "W/mK", "W/m/K", "W/m C")
	add(unit{dimConduct, btu / (hour * foot * degF), 0}, "Btu/h ft F", "Btu/hr ft F")
	add(unit{dimDense, 1, 0}, "kg/m3")
	add(unit{dimDense, 1e3, 0}, "g/cm3", "g/cc", "kg/dm3")
	add(unit{dimDense, pound / (foot * foot * foot), 0}, "lb/ft3")
	add(unit{dimDense, pound / (0.0254 * 0.0254 * 0.0254), 0}, "lb/in3")
	add(unit{dimTemp, 1, 0}, "C", "degC", "deg C")
	add(unit{dimTemp, degF, -32 * degF}, "F", "degF", "deg F")
	add(unit{dimTemp, 1, -273.15}, "K")
	add(unit{dimExpand, 1e-6, 0}, "µm/mK", "um/mK", "1e-6/K", "ppm/K")
	add(unit{dimExpand, 1e-6 / degF, 0}, "µin/inF", "uin/inF", "1e-6/F")
	add(unit{dimAngle, math.Pi / 180, 0}, "deg", "°")
	add(unit{dimPressure, 1, 0}, "Pa", "N/m2")
	add(unit{dimPressure, 1e3, 0}, "kPa")
	add(unit{dimPressure, 1e5, 0}, "bar")
	add(unit{dimPressure, 1e6, 0}, "MPa")
	add(unit{dimPressure, poundForce / (0.0254 * 0.0254), 0}, "psi", "psia")
	add(unit{dimSpeed, 1, 0}, "m/s")
	add(unit{dimSpeed, 1.0 / 60, 0}, "m/min")
	add(unit{dimSpeed, foot, 0}, "ft/s")
	add(unit{dimSpeed, foot / 60, 0}, "ft/min", "fpm")
	add(unit{dimRotation, 1.0 / 60, 0}, "rpm", "/min", "turns/min")
	add(unit{dimTime, 1, 0}, "s", "sec")
	add(unit{dimTime, 60, 0}, "min")
	add(unit{dimTime, hour, 0}, "h", "hr", "hours")
	add(unit{dimPower, 1, 0}, "W")
	add(unit{dimPower, 1e3, 0}, "kW")
	add(unit{dimPower, 550 * foot * poundForce, 0}, "hp")
	add(unit{dimStress, 1e6, 0}, "MPa", "N/mm2")
	add(unit{dimStress, 1e3 * poundForce / (0.0254 * 0.0254), 0}, "ksi")
	add(unit{dimForce, 1, 0}, "N")
	add(unit{dimForce, poundForce, 0}, "lbf")
	add(unit{dimCostTime, 1 / hour, 0}, "/h", "per h", "per hour")
	add(unit{dimCostMass, 1, 0}, "/kg", "per kg")
	add(unit{dimCostMass, 1 / pound, 0}, "/lb", "per lb")
	add(unit{dimCostRun, 1, 0}, "per m")
	add(unit{dimCostRun, 1 / foot, 0}, "per ft")
	add(unit{dimPressure, 249.08891, 0}, "inH2O", "in H2O", "inWG", "in WG") // conventional, water at 4 °C
	add(unit{dimPower, 1e6, 0}, "MW")
	add(unit{dimPower, btu / hour, 0}, "Btu/h", "Btu/hr")
	add(unit{dimPower, 1e6 * btu / hour, 0}, "MBtu/h", "MMBtu/h", "MBtu/hr", "MMBtu/hr")
	add(unit{dimMassRate, 1, 0}, "kg/s")
	add(unit{dimMassRate, 1 / hour, 0}, "kg/h", "kg/hr")
	add(unit{dimMassRate, pound / hour, 0}, "lb/h", "lb/hr")
	add(unit{dimMassRate, pound, 0}, "lb/s")
	add(unit{dimMassFlux, 1, 0}, "kg/m2s", "kg/(m2 s)")
	add(unit{dimMassFlux, pound / (hour * squareFt), 0}, "lb/h ft2")
	add(unit{dimResist, 1, 0}, "m2K/W")
	add(unit{dimResist, hour * squareFt * degF / btu, 0}, "h ft2 F/Btu", "hr ft2 F/Btu")
	add(unit{dimHeat, 1, 0}, "J/kgK", "J/kg/K")
	add(unit{dimHeat, 1e3, 0}, "kJ/kgK", "kJ/kg/K")
	add(unit{dimHeat, btu / (pound * degF), 0}, "Btu/lb F")
	add(unit{dimViscous, 1, 0}, "Pa s")
	add(unit{dimViscous, 1e-3, 0}, "mPa s", "cP")
	add(unit{dimDutyMass, 1, 0}, "W/kg")
	add(unit{dimDutyMass, btu / (hour * pound), 0}, "Btu/h lb")
	add(unit{dimDutyArea, 1e3, 0}, "kW/m2")
	add(unit{dimDutyArea, btu / (hour * squareFt), 0}, "Btu/h ft2")
	add(unit{dimNone, 1, 0}, "-", "x", "off", "pcs", "pieces", "tubes")
	add(unit{dimNone, 0.01, 0}, "%")
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
