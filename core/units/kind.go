package units

// Kind says what a number means: its dimension, the unit a system shows it in,
// and how many digits are worth showing.
type Kind string

// Kinds of quantity.
const (
	Number          Kind = "number"           // dimensionless
	Factor          Kind = "factor"           // dimensionless, 4 significant digits
	Percent         Kind = "percent"          // share, shown in hundredths
	Count           Kind = "count"            // whole number
	Diameter        Kind = "diameter"         // tube and fin diameters
	Wall            Kind = "wall"             // tube wall
	Height          Kind = "height"           // fin height, groove, lap
	Thickness       Kind = "thickness"        // strip thickness
	Width           Kind = "width"            // strip width
	Gap             Kind = "gap"              // gap between fins, fin pitch
	Crack           Kind = "crack"            // gap in a joint
	Distance        Kind = "distance"         // along the tube
	Run             Kind = "run"              // strip length
	FinCount        Kind = "fin_count"        // fins per length
	SurfacePerTube  Kind = "surface_per_tube" // area
	SurfacePerMetre Kind = "surface_per_metre"
	RunPerMetre     Kind = "run_per_metre" // strip length per tube length
	WeightPerMetre  Kind = "weight_per_metre"
	Weight          Kind = "weight"
	Film            Kind = "film" // film coefficient
	Conduct         Kind = "conduct"
	Dense           Kind = "dense"
	Temp            Kind = "temp"
	Expand          Kind = "expand"
	Lead            Kind = "lead"     // helix angle
	Pressure        Kind = "pressure" // absolute
	Gauge           Kind = "gauge"    // pressure over that of the air about
	Drop            Kind = "drop"     // pressure drop of a gas
	Loss            Kind = "loss"     // pressure drop of a liquid
	Velocity        Kind = "velocity" // of a stream
	MassRate        Kind = "mass_rate"
	VolumeRate      Kind = "volume_rate"
	AirRate         Kind = "air_rate" // volume flow of a gas
	MassFlux        Kind = "mass_flux"
	Duty            Kind = "duty"   // heat per time
	Resist          Kind = "resist" // thermal resistance on an area
	SpecificHeat    Kind = "specific_heat"
	Viscous         Kind = "viscous"  // dynamic viscosity
	Transfer        Kind = "transfer" // heat per time and difference of temperature
	DutyPerWeight   Kind = "duty_per_weight"
	DutyPerArea     Kind = "duty_per_area"
	Running         Kind = "running"   // speed of strip
	Feed            Kind = "feed"      // speed of a tube through a machine
	Spin            Kind = "spin"      // spindle speed
	Time            Kind = "time"      // of one operation
	Hours           Kind = "hours"     // of an order
	Drive           Kind = "drive"     // power of a machine
	Work            Kind = "work"      // stress, or work per volume
	Hardness        Kind = "hardness"  // Vickers
	WeldHeat        Kind = "weld_heat" // taken by a welded edge, by area
	Pull            Kind = "pull"      // force
	Cost            Kind = "cost"      // money; the shop names its currency
	CostPerTime     Kind = "cost_per_time"
	CostPerWeight   Kind = "cost_per_weight"
	CostPerRun      Kind = "cost_per_run"
	CostEach        Kind = "cost_each" // of one piece
)

// Money reports whether k counts in a currency.
func (k Kind) Money() bool {
	return k == Cost || k == CostPerTime || k == CostPerWeight || k == CostPerRun || k == CostEach
}

// dimension groups kinds whose units may stand for one another.
type dimension string

const (
	dimNone       dimension = "none"
	dimLength     dimension = "length"
	dimPerLength  dimension = "per_length"
	dimArea       dimension = "area"
	dimAreaPer    dimension = "area_per_length"
	dimMass       dimension = "mass"
	dimMassPer    dimension = "mass_per_length"
	dimRunPer     dimension = "run_per_length"
	dimFilm       dimension = "film"
	dimConduct    dimension = "conduct"
	dimDense      dimension = "dense"
	dimTemp       dimension = "temp"
	dimExpand     dimension = "expand"
	dimAngle      dimension = "angle"
	dimPressure   dimension = "pressure"
	dimGauge      dimension = "gauge"
	dimMassRate   dimension = "mass_rate"
	dimVolumeRate dimension = "volume_rate"
	dimMassFlux   dimension = "mass_flux"
	dimResist     dimension = "resist"
	dimHeat       dimension = "specific_heat"
	dimViscous    dimension = "viscous"
	dimTransfer   dimension = "transfer"
	dimDutyMass   dimension = "duty_per_mass"
	dimDutyArea   dimension = "duty_per_area"
	dimSpeed      dimension = "speed"
	dimRotation   dimension = "rotation"
	dimTime       dimension = "time"
	dimPower      dimension = "power"
	dimStress     dimension = "stress"
	dimHardness   dimension = "hardness"
	dimWeldHeat   dimension = "heat_per_area"
	dimForce      dimension = "force"
	dimCostTime   dimension = "cost_per_time"
	dimCostMass   dimension = "cost_per_mass"
	dimCostRun    dimension = "cost_per_length"
	dimCostEach   dimension = "cost_each"
)

// digits is a rule for how a number is shown.
type digits struct {
	decimals    int  // fixed decimals, when significant is 0
	significant int  // significant digits
	fractions   bool // inputs in inches show as 1/64 and coarser fractions where exact
	feet        bool // shown as feet and inches
}

type shown struct {
	unit string
	digits
}

type spec struct {
	dim    dimension
	si, us shown
}

func fixed(unit string, n int) shown { return shown{unit, digits{decimals: n}} }
func sig(unit string, n int) shown   { return shown{unit, digits{significant: n}} }
func inches(n int) shown             { return shown{"in", digits{decimals: n, fractions: true}} }

// kinds lists the kinds with their specs: plain data, as the table of units is.
var kinds = []struct {
	kind Kind
	spec spec
}{
	{Number, spec{dimNone, fixed("", 2), fixed("", 2)}},
	{Factor, spec{dimNone, sig("", 4), sig("", 4)}},
	{Percent, spec{dimNone, sig("%", 3), sig("%", 3)}},
	{Count, spec{dimNone, fixed("", 0), fixed("", 0)}},
	{Diameter, spec{dimLength, fixed("mm", 2), inches(3)}},
	{Wall, spec{dimLength, fixed("mm", 2), fixed("in", 3)}},
	{Height, spec{dimLength, fixed("mm", 2), inches(3)}},
	{Thickness, spec{dimLength, fixed("mm", 3), fixed("in", 4)}},
	{Width, spec{dimLength, fixed("mm", 1), fixed("in", 3)}},
	{Gap, spec{dimLength, fixed("mm", 3), fixed("in", 4)}},
	{Crack, spec{dimLength, sig("µm", 3), sig("mil", 3)}},
	{Distance, spec{dimLength, fixed("mm", 0), shown{"in", digits{decimals: 2, fractions: true, feet: true}}}},
	{Run, spec{dimLength, sig("m", 4), sig("ft", 4)}},
	{FinCount, spec{dimPerLength, fixed("fins/m", 1), fixed("fins/in", 2)}},
	{SurfacePerTube, spec{dimArea, sig("m²", 4), sig("ft²", 4)}},
	{SurfacePerMetre, spec{dimAreaPer, sig("m²/m", 4), sig("ft²/ft", 4)}},
	{RunPerMetre, spec{dimRunPer, sig("m/m", 4), sig("ft/ft", 4)}},
	{WeightPerMetre, spec{dimMassPer, sig("kg/m", 4), sig("lb/ft", 4)}},
	{Weight, spec{dimMass, sig("kg", 4), sig("lb", 4)}},
	{Film, spec{dimFilm, sig("W/m²K", 4), sig("Btu/h·ft²·°F", 4)}},
	{Conduct, spec{dimConduct, sig("W/m·K", 4), sig("Btu/h·ft·°F", 4)}},
	{Dense, spec{dimDense, sig("kg/m³", 4), sig("lb/ft³", 4)}},
	{Temp, spec{dimTemp, fixed("°C", 1), fixed("°F", 1)}},
	{Expand, spec{dimExpand, sig("µm/m·K", 4), sig("µin/in·°F", 4)}},
	{Lead, spec{dimAngle, sig("°", 4), sig("°", 4)}},
	{Pressure, spec{dimPressure, sig("kPa", 4), sig("psi", 4)}},
	{Gauge, spec{dimGauge, sig("kPa(g)", 4), sig("psig", 4)}},
	{Drop, spec{dimPressure, sig("Pa", 4), sig("inH₂O", 4)}},
	{Loss, spec{dimPressure, sig("kPa", 4), sig("psi", 4)}},
	{Velocity, spec{dimSpeed, sig("m/s", 4), sig("ft/min", 4)}},
	{MassRate, spec{dimMassRate, sig("kg/s", 4), sig("lb/h", 4)}},
	{VolumeRate, spec{dimVolumeRate, sig("m³/h", 4), sig("gpm", 4)}},
	{AirRate, spec{dimVolumeRate, sig("m³/s", 4), sig("cfm", 4)}},
	{MassFlux, spec{dimMassFlux, sig("kg/m²s", 4), sig("lb/h·ft²", 4)}},
	{Duty, spec{dimPower, sig("kW", 4), sig("MMBtu/h", 4)}},
	{Resist, spec{dimResist, sig("m²K/W", 4), sig("h·ft²·°F/Btu", 4)}},
	{SpecificHeat, spec{dimHeat, sig("J/kg·K", 4), sig("Btu/lb·°F", 4)}},
	{Viscous, spec{dimViscous, sig("mPa·s", 4), sig("cP", 4)}},
	{Transfer, spec{dimTransfer, sig("kW/K", 4), sig("Btu/h·°F", 4)}},
	{DutyPerWeight, spec{dimDutyMass, sig("W/kg", 4), sig("Btu/h·lb", 4)}},
	{DutyPerArea, spec{dimDutyArea, sig("kW/m²", 4), sig("Btu/h·ft²", 4)}},
	{Running, spec{dimSpeed, sig("m/s", 3), sig("ft/s", 3)}},
	{Feed, spec{dimSpeed, sig("m/min", 3), sig("ft/min", 3)}},
	{Spin, spec{dimRotation, fixed("rpm", 0), fixed("rpm", 0)}},
	{Time, spec{dimTime, sig("min", 3), sig("min", 3)}},
	{Hours, spec{dimTime, sig("h", 4), sig("h", 4)}},
	{Drive, spec{dimPower, sig("kW", 3), sig("hp", 3)}},
	{Work, spec{dimStress, sig("MPa", 3), sig("ksi", 3)}},
	{Hardness, spec{dimHardness, fixed("HV", 0), fixed("HV", 0)}},
	{WeldHeat, spec{dimWeldHeat, sig("J/mm²", 3), sig("Btu/in²", 3)}},
	{Pull, spec{dimForce, sig("N", 3), sig("lbf", 3)}},
	{Cost, spec{dimNone, fixed("", 2), fixed("", 2)}},
	{CostPerTime, spec{dimCostTime, fixed("/h", 2), fixed("/h", 2)}},
	{CostPerWeight, spec{dimCostMass, fixed("/kg", 2), fixed("/lb", 2)}},
	{CostPerRun, spec{dimCostRun, fixed("per m", 2), fixed("per ft", 2)}},
	{CostEach, spec{dimCostEach, fixed("each", 2), fixed("each", 2)}},
}

// specs holds them by kind.
var specs = byKind()

func byKind() map[Kind]spec {
	m := make(map[Kind]spec, len(kinds))
	for _, k := range kinds {
		m[k.kind] = k.spec
	}
	return m
}

func (k Kind) shown(s System) shown {
	if s == US {
		return specs[k].us
	}
	return specs[k].si
}

// Unit returns the unit symbol in which system s shows kind k.
func (k Kind) Unit(s System) string { return k.shown(s).unit }
