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

// steepest [1/K] is how fast a liquid's viscosity may fall between two points: thick oils and cold glycols reach about half of it. With a
// steeper one, or one that rises, a bank may have two settled states, and a small change take it from one to the other.
//
// Source: engineering judgement.
const steepest = 0.2

// told is one point of an own fluid, as entered.
type told struct {
	entry     string // what its fields end with
	at        float64
	viscosity float64
}

// checkPoints refuses points of an own fluid that stand too close, and of a liquid those between which its viscosity does what no liquid's does.
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
	if p.Gas {
		return
	}
	points = numeric.Sorted(points, func(a, b *told) int { return int(math.Copysign(1, a.at-b.at)) })
	for i := range points[1:] {
		colder, warmer := points[i], points[i+1]
		least := math.Exp(-steepest * (warmer.at - colder.at)) // of the warmer's over the colder's
		if !units.Above(warmer.viscosity, colder.viscosity) && !units.Above(colder.viscosity*least, warmer.viscosity) {
			continue
		}
		wrong, other, low, high := warmer, colder, colder.viscosity*least, colder.viscosity
		if colder.entry > warmer.entry { // which was entered after it
			wrong, other, low, high = colder, warmer, warmer.viscosity, warmer.viscosity/least
		}
		errs.add("own_fluid_viscosity"+wrong.entry, "error.viscosity_falls", "other", viscous(other.viscosity), "there", degrees(other.at),
			"at", degrees(wrong.at), "low", message.Least(viscous(low)), "high", message.Most(viscous(high)))
		return
	}
}

func viscous(si float64) message.Amount { return message.Amount{Kind: units.Viscous, SI: si} }
