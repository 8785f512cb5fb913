package lesson

import (
	"math"
	"strconv"

	"finwright/core/message"
	"finwright/core/units"
)

// heldFilm starts a tube whose outside film stays what it is, whatever the fin: so only the metal speaks.
var heldFilm = []Entry{{"film_source", "given"}, {"film_coefficient", "50 W/m²K"}}[:2:2]

// heldTest asks that it stays held.
var heldTest = Test{ID: "held", Holds: func(c *Case) bool { return c.Now.In.Air.FilmGiven }}

func amount(k units.Kind, si float64) message.Amount { return message.Amount{Kind: k, SI: si} }
func ratio(x float64) message.Amount                 { return amount(units.Factor, x) }
func percent(x float64) message.Amount               { return amount(units.Percent, x) }
func height(si float64) message.Amount               { return amount(units.Height, si) }

// found says what the trainee's tube shows instead.
func found(k units.Kind, si float64) message.Message {
	return message.New("lesson.found", "found", amount(k, si))
}

// metres types a length [m].
func metres(si float64) string { return strconv.FormatFloat(si*1000, 'f', 4, 64) + " mm" }

// Heights [m] between which the best one is looked for, and by how much [-] a figure may be below its best there.
const (
	lowestFin  = 0.003
	highestFin = 0.025
	nearBest   = 0.001
)

// tallest returns the height [m] at which a figure is largest, between the lowest and the highest fin.
//
// Valid: figures with one largest value along the height.
// Source: golden section, to a hundredth of a millimetre.
func tallest(r *Reading, id string) float64 {
	of := func(h float64) float64 { return r.With(Entry{"fin_height", metres(h)}).number(id) }
	golden := (math.Sqrt(5) - 1) / 2
	a, b := lowestFin, highestFin
	x, y := b-golden*(b-a), a+golden*(b-a)
	fx, fy := of(x), of(y)
	for b-a > 1e-5 {
		if fx > fy {
			b, y, fy = y, x, fx
			x = b - golden*(b-a)
			fx = of(x)
		} else {
			a, x, fx = x, y, fy
			y = a + golden*(b-a)
			fy = of(y)
		}
	}
	return (a + b) / 2
}

// atBest reports whether a figure of a tube is as good as any height makes it.
func atBest(r *Reading, id string) bool {
	best := r.With(Entry{"fin_height", metres(tallest(r, id))}).number(id)
	return r.number(id) >= best*(1-nearBest)
}
