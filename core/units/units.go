// Package units holds the typed quantities of the trade, reads them as people
// type them and prints them back in SI or US customary units.
//
// Every quantity is stored in SI. Types stop a thickness being passed where an
// area was meant; formulas unwrap to float64 on their first lines.
package units

// Quantities, each in the SI unit named.
type (
	Length          float64 // m
	Area            float64 // m2
	Mass            float64 // kg
	Density         float64 // kg/m3
	AreaPerLength   float64 // m2 of surface per m of tube
	MassPerLength   float64 // kg per m of tube
	PerLength       float64 // 1/m, fins per metre
	Conductivity    float64 // W/(m K)
	FilmCoefficient float64 // W/(m2 K)
	Temperature     float64 // degrees Celsius
	Expansion       float64 // 1/K
	Angle           float64 // rad
	Speed           float64 // m/s
	Rotation        float64 // 1/s, turns per second
	Duration        float64 // s
	Power           float64 // W
	Stress          float64 // Pa
	HeatPerArea     float64 // J/m2
	Force           float64 // N
	Money           float64 // in the shop's currency
	MoneyPerTime    float64 // per s
	MoneyPerMass    float64 // per kg
	MoneyPerLength  float64 // per m
)

// Units to multiply by, as in 25.4*units.Millimetre.
const (
	Metre      Length = 1
	Millimetre Length = 1e-3
	Inch       Length = 0.0254 // exact since 1959
	Foot       Length = 0.3048
)

// Metres returns the length in m.
func (l Length) Metres() float64 { return float64(l) }

// Millimetres returns the length in mm.
func (l Length) Millimetres() float64 { return float64(l) * 1e3 }

// Inches returns the length in inches.
func (l Length) Inches() float64 { return float64(l) / float64(Inch) }

// PerMetre returns the count per metre.
func (n PerLength) PerMetre() float64 { return float64(n) }

// Spacing returns the distance between neighbours, 1/n.
func (n PerLength) Spacing() Length { return Length(1 / float64(n)) }

// System is the set of units a person reads and types.
type System string

// The two systems.
const (
	SI System = "si"
	US System = "us"
)
