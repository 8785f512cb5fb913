package workings

import (
	"errors"
	"math"
	"math/big"

	"finwright/core/field"
	"finwright/core/rating"
	"finwright/core/units"
)

// fewest returns the fewest tubes in a row that carry a duty: whole banks rated anew, from one tube on.
func (d *made) fewest(args []*big.Float) (*big.Float, error) {
	for n := 1; n <= 500; n++ {
		in := d.in.Input
		in.Bank.TubesPerRow = n
		if t, hindrance := rating.Rate(&in); hindrance == nil && math.Abs(t.Duty.Heat) >= plain(args[0]) {
			return big.NewFloat(float64(n)), nil
		}
	}
	return nil, errors.New("500 tubes do not carry it")
}

// trial is, of a pressure drop, the face velocity at which the bank takes it: by bisection, since one correlation's drop only
// grows. Whole banks are rated anew; a bank that cannot be rated counts as over it.
func (d *made) trial(args []*big.Float) (*big.Float, error) {
	over := func(v float64) bool {
		in := d.in.Input
		in.Air.Velocity = v
		t, hindrance := rating.Rate(&in)
		return hindrance != nil || in.DropJudged(&t) >= plain(args[0])
	}
	velocity := field.Must("face_velocity")
	from, to := velocity.Low, velocity.High
	for range 50 {
		if v := (from + to) / 2; over(v) {
			to = v
		} else {
			from = v
		}
	}
	return big.NewFloat(to), nil
}

// table reads the fin metal's conductivity between its points.
func (d *made) table(args []*big.Float) (*big.Float, error) {
	at, points := plain(args[0]), d.in.FinMetal.Conductivity.Points
	k := points[0].SI
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		along := (at - float64(a.At)) / float64(b.At-a.At)
		k += (b.SI - a.SI) * min(1, max(0, along))
	}
	return big.NewFloat(k), nil
}

// extreme returns the lowest or highest answer of the correlations in range that answer in this kind of quantity, and holds
// their number against the one stated.
func (d *made) extreme(kind units.Kind, better func(a, b float64) float64) function {
	return func(args []*big.Float) (*big.Float, error) {
		found, n := math.NaN(), 0
		for _, m := range d.res.Heat.Methods {
			if m.Kind == kind && m.InRange {
				if n++; n == 1 {
					found = m.SI
				}
				found = better(found, m.SI)
			}
		}
		if float64(n) != plain(args[0]) {
			return nil, errors.New("another number of correlations is in range")
		}
		return big.NewFloat(found), nil
	}
}

// stock returns the mill length of which pieces of a length take the least tube, sawn one by one.
func (d *made) stock(args []*big.Float) (*big.Float, error) {
	cut, pieces, c := plain(args[0]), int(plain(args[1])), &d.making.Shop.Cutting
	best, least := 0.0, math.Inf(1)
	for _, mill := range c.Stock {
		per := 0
		for at := cut; at <= float64(mill)*(1+nearlyWhole); at += float64(c.Kerf) + cut {
			per++
		}
		if per == 0 {
			continue
		}
		if bought := math.Ceil(float64(pieces)/float64(per)) * float64(mill); bought < least {
			best, least = float64(mill), bought
		}
	}
	return big.NewFloat(best), nil
}

// layers returns how many layers of a crate so many tubes fill, laid one by one, tip on tip.
func (d *made) layers(args []*big.Float) (*big.Float, error) {
	c, tip, left := &d.making.Shop.Crate, float64(d.in.Tube.FinOD()), int(plain(args[0]))
	n := 0
	for level := tip / 2; left > 0; n++ {
		first, rise := tip/2, tip+float64(c.Separator)
		if c.Separator == 0 {
			rise = tip * math.Sqrt(3) / 2
			if n%2 == 1 {
				first = tip
			}
		}
		if level+tip/2 > float64(c.Height)*(1+nearlyWhole) {
			return nil, errors.New("the crate is full")
		}
		for at := first; at+tip/2 <= float64(c.Width)*(1+nearlyWhole) && left > 0; at += tip {
			left--
		}
		level += rise
	}
	return big.NewFloat(float64(n)), nil
}
