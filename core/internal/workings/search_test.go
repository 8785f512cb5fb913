package workings

import (
	"errors"
	"math"
	"math/big"

	"finwright/core/field"
	"finwright/core/rating"
	"finwright/core/units"
)

// fewest returns the fewest tubes in a row that carry a duty: whole banks rated anew, which keep what is held.
func (d *made) fewest(args []*big.Float) (*big.Float, error) {
	enough := func(n int) bool {
		in := d.in.Input
		in.Bank.TubesPerRow = n
		if in.Holds.Process == rating.HoldDuty {
			in.Holds.Process = rating.HoldInlet
		}
		t := d.holding(&in, true)
		return t != nil && math.Abs(t.Duty.Heat) >= plain(args[0])
	}
	most := 500
	if air := d.in.Holds.Air; (air == rating.HoldVelocity || air == rating.HoldMass) && d.in.Holds.Process != rating.HoldEnds { // one after the other
		for n := 1; n <= most; n++ {
			if enough(n) {
				return big.NewFloat(float64(n)), nil
			}
		}
	}
	from, to := 0, 1
	for !enough(to) {
		if to == most {
			return nil, errors.New("500 tubes do not carry it")
		}
		from, to = to, min(2*to, most)
	}
	for to-from > 1 {
		if n := (from + to) / 2; enough(n) {
			to = n
		} else {
			from = n
		}
	}
	return big.NewFloat(float64(to)), nil
}

// trial is, of a pressure drop, the face velocity at which the bank takes it: by bisection, since one correlation's drop only
// grows. Whole banks are rated anew; a bank that cannot be rated counts as over it.
func (d *made) trial(args []*big.Float) (*big.Float, error) {
	over := func(v float64) bool {
		in := d.in.Input
		in.Air.Velocity = v
		t := d.holding(&in, false)
		return t == nil || in.DropJudged(t) >= plain(args[0])
	}
	velocity := field.Must("face_velocity")
	return big.NewFloat(halved(velocity.Low, velocity.High, over)), nil
}

// halved returns where over begins to be true.
func halved(from, to float64, over func(float64) bool) float64 {
	for range 50 {
		if x := (from + to) / 2; over(x) {
			to = x
		} else {
			from = x
		}
	}
	return to
}

// holding rates a bank with the gas and the stream inside held as those of the design; nil where that cannot be. Its air is free
// to follow, or is what is varied.
func (d *made) holding(in *rating.Input, free bool) *rating.Thermal {
	was := &d.res.Heat.Thermal
	at := func(v float64) *rating.Thermal {
		in.Air.Velocity = v
		return d.ending(in)
	}
	measure := func(in *rating.Input, t *rating.Thermal) float64 { return in.DropJudged(t) }
	switch in.Holds.Air {
	case rating.HoldPower:
		measure = func(in *rating.Input, t *rating.Thermal) float64 { return t.Draught(in).Power }
		fallthrough
	case rating.HoldDrop:
		if !free || !was.HasDrop() {
			break
		}
		want := measure(&d.in.Input, was)
		return at(halved(rating.LeastVelocity, rating.MostVelocity, func(v float64) bool {
			t := at(v)
			return t == nil || measure(in, t) >= want
		}))
	case rating.HoldMass:
		if free {
			in.Air.Velocity *= float64(d.in.Bank.TubesPerRow) / float64(in.Bank.TubesPerRow)
		}
	}
	if in.Air.Velocity < rating.LeastVelocity || in.Air.Velocity > rating.MostVelocity {
		return nil
	}
	return d.ending(in)
}

// ending rates a bank whose stream keeps outlet or duty by its flow, if it holds one: the flow is looked for in small steps from
// that of the design, then halved; nil where it turns away first.
func (d *made) ending(in *rating.Input) *rating.Thermal {
	was := &d.res.Heat.Thermal
	at := func(flow float64) *rating.Thermal {
		in.Process.Flow = flow
		t, hindrance := rating.Rate(in)
		if hindrance != nil {
			return nil
		}
		return &t
	}
	var over func(t *rating.Thermal) float64 // rises with the flow
	switch {
	case in.Process.Fluid == rating.Steam:
	case in.Holds.Process == rating.HoldEnds:
		over = func(t *rating.Thermal) float64 {
			return math.Abs(float64(in.Process.In)-was.Duty.ProcessOut) - math.Abs(float64(in.Process.In)-t.Duty.ProcessOut)
		}
	case in.Holds.Process == rating.HoldDuty:
		over = func(t *rating.Thermal) float64 { return math.Abs(t.Duty.Heat) - math.Abs(was.Duty.Heat) }
	}
	flow := d.in.Process.Flow
	t := at(flow)
	if t == nil || over == nil {
		return t
	}
	y, step := over(t), 1.05
	if y > 0 {
		step = 1 / step
	}
	for next := flow * step; next > rating.LeastFlow && next < rating.MostFlow; next *= step {
		t := at(next)
		if t == nil {
			return nil
		}
		now := over(t)
		if now*y <= 0 {
			return at(halved(min(flow, next), max(flow, next), func(x float64) bool { t := at(x); return t == nil || over(t) >= 0 }))
		}
		if math.Abs(now) >= math.Abs(y) {
			return nil
		}
		flow, y = next, now
	}
	return nil
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
