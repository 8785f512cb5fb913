package design

import (
	"fmt"
	"math"

	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/numeric"
	"finwright/core/rating"
	"finwright/core/units"
)

// pointsApart [K] is how far apart an own fluid is told at least: from closer points its viscosity would be followed to
// other temperatures by nothing but the rounding of what was entered.
const pointsApart = 5

// How fast a viscosity may change between two points [1/K]: a liquid's falls, of thick oils and cold glycols half as fast, a gas's rises, of any a
// third as fast. With a steeper one, or one that goes the other way, a bank may have two settled states, and a small change take it from one to
// the other.
//
// Source: engineering judgement.
const (
	steepestFall = 0.2
	steepestRise = 0.01
)

// told is one point of an own fluid, as entered.
type told struct {
	entry     string // what its fields end with
	at        float64
	viscosity float64
}

// checkPoints refuses points of an own fluid that stand too close, and those between which its viscosity does what none does.
func checkPoints(in *field.Input, errs *FieldErrors) {
	p := &in.Process
	if p.Fluid != rating.OwnFluid {
		return
	}
	points := []told{{"", float64(p.OwnAt), p.Own.Viscosity}}
	for i, more := range p.More[:max(0, p.Points-1)] {
		point := told{fmt.Sprintf("_%d", i+2), float64(more.At), more.Viscosity}
		for _, other := range points {
			if units.Above(pointsApart, math.Abs(point.at-other.at)) {
				errs.add("own_fluid_at"+point.entry, "error.points_close", "other", degrees(other.at),
					"low", message.Most(degrees(other.at-pointsApart)), "high", message.Least(degrees(other.at+pointsApart)))
				return
			}
		}
		points = append(points, point)
	}
	points = numeric.Sorted(points, func(a, b *told) int { return int(math.Copysign(1, a.at-b.at)) })
	for i := range points[1:] {
		wrong, other := points[i+1], points[i]
		if other.entry > wrong.entry { // the one that was entered after its neighbour
			wrong, other = other, wrong
		}
		key, low, high := "error.viscosity_falls", other.viscosity, other.viscosity*math.Exp(steepestFall*(other.at-wrong.at))
		if p.Gas {
			key, high = "error.viscosity_rises", other.viscosity*math.Exp(steepestRise*(wrong.at-other.at))
		}
		low, high = min(low, high), max(low, high)
		if units.Above(low, wrong.viscosity) || units.Above(wrong.viscosity, high) {
			errs.add("own_fluid_viscosity"+wrong.entry, key, "other", viscous(other.viscosity), "there", degrees(other.at),
				"at", degrees(wrong.at), "low", message.Least(viscous(low)), "high", message.Most(viscous(high)))
			return
		}
	}
}

func viscous(si float64) message.Amount { return message.Amount{Kind: units.Viscous, SI: si} }
