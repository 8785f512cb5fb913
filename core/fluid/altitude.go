package fluid

import (
	"math"

	"finwright/core/figure"
	"finwright/core/units"
)

// StandardPressure is the pressure of the standard atmosphere at sea level [Pa].
const StandardPressure = 101325

// PressureAtAltitude returns the pressure [Pa] of the standard atmosphere at
// altitude z [m] above sea level.
//
//	p = 101325 (1 - 2.25577e-5 z)^5.25588
//
// Valid: -500 <= z <= 11000, the lowest layer of the atmosphere.
// Source: US Standard Atmosphere 1976, from memory.
func PressureAtAltitude(z float64) (float64, error) {
	limit := figure.Limit{Variable: "altitude", Kind: units.Run, Value: z, Low: -500, High: 11000}
	if err := check(limit); err != nil {
		return 0, err
	}
	return StandardPressure * math.Pow(1-2.25577e-5*z, 5.25588), nil
}
