package sample

import (
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Measured returns a dozen embedded tubes of 40 ft that grew by 0.1 % of 12 m finned, and by up to a spread [m] less or 0.8 of it more.
func Measured(spread float64) (list []shop.Measured) {
	for i := range 12 {
		grown := units.Length(0.012 + spread*[]float64{-1, 0.2, 0.8}[i%3])
		list = append(list, shop.Measured{Type: tube.Embedded, Cut: 12.192 - 0.012, Finned: 12, Finished: 12.192 - 0.012 + grown})
	}
	return list
}
