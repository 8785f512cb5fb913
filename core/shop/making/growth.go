package making

import (
	"math"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Growth is by how much a finned length is longer than the bare tube it was wound on.
type Growth struct {
	Share   float64 // [-] of the bare length under the fins
	Scatter float64 // [-] half-width in which nineteen of twenty tubes fall
	Samples int     // tubes measured
	Learned bool    // from the samples; else the capability's guess
	Note    message.Message
}

// leastSamples is how many measured tubes are trusted over the guess.
//
// Source: engineering judgement.
const leastSamples = 3

// LearnGrowth returns the growth [-] for a way of making, learned from the shop's
// measured tubes of that type, else its guess.
//
// Valid: L, LL: none expected; knurled: small; embedded: 0 to 0.5 %.
// Source: guess: 0.1 % embedded, engineering judgement, editable; learned: see FitGrowth.
func LearnGrowth(c *shop.Capability, m *shop.Practice) Growth {
	n := 0
	for i := range c.Measured {
		if c.Measured[i].Type == m.Type {
			n++
		}
	}
	if n < leastSamples {
		return Growth{Share: m.Growth, Scatter: m.Scatter, Samples: n, Note: message.New("shop.growth.guess", "least", leastSamples)}
	}
	share, scatter := FitGrowth(c.Measured, m.Type)
	return Growth{share, scatter, n, true, message.New("shop.growth.learned", "samples", n)}
}

// FitGrowth fits, for the tubes of one type, elongation to bare length under fins by least squares through
// the origin, and returns the slope [-] and the half-width [-] of the interval in
// which the next tube falls with 95 %.
//
//	g = sum(x y)/sum(x2),  half-width = t95 s sqrt(1 + x2/sum(x2))/x  at the mean square x
//
// Valid: two tubes or more; elongation in proportion to length.
// Source: ordinary least squares; Student's t.
func FitGrowth(tubes []shop.Measured, of tube.FinType) (share, scatter float64) {
	var xx, xy, n float64
	for i := range tubes {
		if tubes[i].Type == of {
			x, y := lengthening(&tubes[i])
			xx += x * x
			xy += x * y
			n++
		}
	}
	share = xy / xx
	var rest float64
	for i := range tubes {
		if tubes[i].Type == of {
			x, y := lengthening(&tubes[i])
			rest += (y - share*x) * (y - share*x)
		}
	}
	s := math.Sqrt(rest / (n - 1))
	return share, Student95(int(n)-1) * s * math.Sqrt((1+1/n)*n/xx)
}

// lengthening returns the bare length under the fins and by how much it grew.
func lengthening(m *shop.Measured) (bare, grown float64) {
	grown = float64(m.Finished - m.Cut)
	return float64(m.Finned) - grown, grown
}

// Student95 returns the two-sided 95 % point [-] of Student's t, by Fisher's expansion
// about the normal's from 4 degrees of freedom on.
//
// Valid: 1 or more degrees of freedom; within 0.5 %.
// Source: Abramowitz and Stegun 26.7.5, from memory, and the first three entries of the table.
func Student95(freedom int) float64 {
	if freedom < 4 {
		return [...]float64{12.706, 4.303, 3.182}[freedom-1]
	}
	const x = 1.959964
	v := float64(freedom)
	x3, x5, x7 := x*x*x, x*x*x*x*x, x*x*x*x*x*x*x
	return x + (x3+x)/(4*v) + (5*x5+16*x3+3*x)/(96*v*v) + (3*x7+19*x5+17*x3-15*x)/(384*v*v*v)
}

// GrowthBound returns the growth [-] if all metal that the strip displaces went
// into length; nearly all of it is rolled back against the fin instead.
//
//	g t n (d - g) / ((d - w) w)
//
// Valid: embedded fins, an upper bound.
// Source: own derivation, volume conservation.
func GrowthBound(t *tube.Tube) float64 {
	g, d, w := float64(t.Fin.Groove), float64(t.OD), float64(t.MeanWall())
	return g * float64(t.Fin.Strip) * t.Fin.Count.PerMetre() * (d - g) / ((d - w) * w)
}

// EdgeOff returns how far an error of growth [-] puts an edge out [m] that lies at a distance [m] from the datum.
//
// Valid: any growth and distance.
// Source: proportion.
func EdgeOff(growth float64, distance units.Length) units.Length {
	return units.Length(growth) * distance
}

// TolerableGrowthError returns the error of growth [-] that puts a zone's edge,
// at a distance from the datum, out by the tolerance.
//
// Valid: distance > 0.
// Source: proportion.
func TolerableGrowthError(tolerance, distance units.Length) float64 {
	return float64(tolerance / distance)
}
