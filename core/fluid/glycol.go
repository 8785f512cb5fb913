package fluid

import (
	"math"

	"finwright/core/figure"
	"finwright/core/units"
)

// Glycol is a mixture of water and a glycol, as polynomials in both the share of the glycol and the temperature about a
// point in the middle.
type Glycol struct {
	share, celsius float64 // [%] by mass and [C] of that point

	// A coefficient for each pair of powers, see glycolPowers; of viscosity they give the logarithm of the number of mPa s.
	freezing, density, heat, conductivity, viscosity [18]float64
}

// glycolPowers are up to which power of the temperature each power of the share goes.
var glycolPowers = [...]int{3, 3, 3, 2, 1, 0}

// Of a glycol: the most of it by mass [-], and the hottest [K].
const (
	mostGlycol    = 0.60
	glycolHottest = 373.15
)

// EthyleneGlycol and PropyleneGlycol with water.
//
// Source: Melinder, Properties of Secondary Working Fluids (2010), as the open library CoolProp carries it.
var (
	EthyleneGlycol = Glycol{
		share: 30.8462, celsius: 31.728,
		freezing: [18]float64{
			-15.25, -1.566e-6, -2.278e-7, 2.169e-9, -0.808, -1.339e-6,
			2.047e-8, -2.717e-11, -0.01334, 6.322e-8, 2.373e-10, -2.183e-12,
			-7.293e-5, 1.764e-9, -2.442e-11, 1.006e-6, -7.662e-11, 1.14e-9,
		},
		density: [18]float64{
			1034.0, -0.4781, -0.002692, 4.725e-6, 1.311, -0.006876,
			4.805e-5, 1.69e-8, 7.49e-5, 7.855e-5, -3.995e-7, 4.982e-9,
			-0.0001062, 1.229e-6, -1.153e-8, -9.623e-7, -7.211e-8, 4.891e-8,
		},
		heat: [18]float64{
			3737.0, 2.93, -0.004675, -1.389e-5, -17.99, 0.1046,
			-0.0004147, 1.847e-7, -0.09933, 0.0003516, 5.109e-6, -7.138e-8,
			0.00261, -1.189e-6, -1.643e-7, 1.537e-5, -4.272e-7, -1.618e-6,
		},
		conductivity: [18]float64{
			0.472, 0.0008903, -1.058e-6, -2.789e-9, -0.004286, -1.473e-5,
			1.059e-7, -1.142e-10, 1.747e-5, 6.814e-8, -3.612e-9, 2.365e-12,
			3.017e-8, -2.412e-9, 4.004e-11, -1.322e-9, 2.555e-11, 2.678e-11,
		},
		viscosity: [18]float64{
			0.4705, -0.0255, 0.0001782, -7.669e-7, 0.02471, -0.0001171,
			1.052e-6, -1.634e-8, 3.328e-6, 1.086e-6, 1.051e-8, -6.475e-10,
			1.659e-6, 3.157e-9, 4.063e-10, 3.089e-8, 1.831e-10, -1.865e-9,
		},
	}
	PropyleneGlycol = Glycol{
		share: 30.7031, celsius: 32.7083,
		freezing: [18]float64{
			-13.25, -3.82e-5, 7.865e-7, -1.733e-9, -0.6631, 6.774e-6,
			-6.242e-8, -7.819e-10, -0.01094, 5.332e-8, -4.169e-9, 3.288e-11,
			-0.0002283, -1.131e-8, 1.918e-10, -3.409e-6, 8.035e-11, 1.465e-8,
		},
		density: [18]float64{
			1018.0, -0.5406, -0.002666, 1.347e-5, 0.7604, -0.00945,
			5.541e-5, -1.343e-7, -0.002498, 2.7e-5, -4.018e-7, 3.376e-9,
			-0.000155, 2.829e-6, -7.175e-9, -1.131e-6, -2.221e-8, 2.342e-8,
		},
		heat: [18]float64{
			3882.0, 2.699, -0.001659, -1.032e-5, -13.04, 0.0507,
			-4.752e-5, 1.522e-6, -0.1598, 9.534e-5, 1.167e-5, -4.87e-8,
			0.0003539, 3.102e-5, -2.95e-7, 5e-5, -7.135e-7, -4.959e-7,
		},
		conductivity: [18]float64{
			0.4513, 0.0007955, 3.482e-8, -5.966e-9, -0.004795, -1.678e-5,
			8.941e-8, 1.493e-10, 2.076e-5, 1.563e-7, -4.615e-9, 9.897e-12,
			-9.083e-8, -2.518e-9, 6.543e-11, -5.952e-10, -3.605e-11, 2.104e-11,
		},
		viscosity: [18]float64{
			0.6837, -0.03045, 0.0002525, -1.399e-6, 0.03328, -0.0003984,
			4.332e-6, -1.86e-8, 5.453e-5, -8.6e-8, -1.593e-8, -4.465e-11,
			-3.9e-6, 1.054e-7, -1.589e-9, -1.587e-8, 4.475e-10, 3.564e-9,
		},
	}
)

// sum returns a polynomial at x above the middle's share [%] and y above its temperature [K].
func (g *Glycol) sum(terms *[18]float64, x, y float64) float64 {
	total, term, powerX := 0.0, 0, 1.0
	for _, most := range glycolPowers {
		powerY := 1.0
		for range most + 1 {
			total += terms[term] * powerX * powerY
			term++
			powerY *= y
		}
		powerX *= x
	}
	return total
}

// Freezing returns the absolute temperature [K] at which the mixture begins to freeze. share is that of glycol by mass [-].
//
// Valid: 0 <= share <= 0.60.
// Source: Melinder 2010, as the open library CoolProp carries it.
func (g *Glycol) Freezing(share float64) float64 {
	// The powers of the temperature change it by hundredths of a kelvin: it is taken at the middle.
	return zeroCelsius + g.sum(&g.freezing, 100*share-g.share, 0)
}

// At returns the properties at absolute temperature t [K] of a mixture with a share [-] of glycol by mass. Pressure counts
// for nothing.
//
// Valid: 0 <= share <= 0.60, from freezing to 373.15 K. Water alone comes within 0.1 % in density, 0.2 % in heat
// capacity, 0.6 % in conductivity and 2 % in viscosity of IAPWS from 10 to 80 C.
// Source: Melinder, Properties of Secondary Working Fluids (2010), as the open library CoolProp carries it.
func (g *Glycol) At(t, share float64) (Properties, error) {
	limit := figure.Limit{Variable: "glycol_share", Kind: units.Percent, Value: share, Low: 0, High: mostGlycol}
	if err := check(limit, temperature(t, g.Freezing(share), glycolHottest)); err != nil {
		return Properties{}, err
	}
	x, y := 100*share-g.share, t-zeroCelsius-g.celsius
	return Properties{
		Density:      g.sum(&g.density, x, y),
		HeatCapacity: g.sum(&g.heat, x, y),
		Viscosity:    1e-3 * math.Exp(g.sum(&g.viscosity, x, y)),
		Conductivity: g.sum(&g.conductivity, x, y),
	}, nil
}
