package tolerance

import (
	"math"
	"slices"

	"finwright/core/design"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// Measure is a figure whose width is told. Its name is the text "figure.<id>".
type Measure struct {
	ID   string
	Kind units.Kind
}

// Places of the measures in an Outcome.
const (
	area = iota // of one tube
	u
	duty
	Drop
	mass // of one tube
	price
	measures
)

// Measures lists them. Area and mass are of one tube, which is off by itself; the others of the bank, where it is averaged.
var Measures = [measures]Measure{
	{"total_area", units.SurfacePerMetre},
	{"u_bare", units.Film},
	{"duty", units.Duty},
	{"air_drop", units.Drop},
	{"tube_weight", units.Weight},
	{"price_tube", units.Cost},
}

// Place returns where a measure of this ID stands; the duty where none does.
func Place(id string) int {
	if i := slices.IndexFunc(Measures[:], func(m Measure) bool { return m.ID == id }); i >= 0 {
		return i
	}
	return duty
}

// Outcome is what the measures come to [SI]; NaN where there is none.
type Outcome [measures]float64

// Bench is a design that is made and run many times, each time a little otherwise. Its space is held as it was designed (pitches,
// face, tubes), and what flows: mass flows and inlets.
type Bench struct {
	in           field.Input
	shop         *shop.Capability
	ground       *making.Groundwork // of the order; nil without a shop
	near         rating.Thermal     // as designed: where each draw begins
	limits       Limits
	tubes, coils int

	As     Outcome // it was designed
	Wanted float64 // duty [W]; 0: none
	Allows float64 // drop [Pa]; 0: none
}

// New prepares a checked design that its shop makes; c may be nil. The message says what keeps it from being rated.
func New(in field.Input, c *shop.Capability, limits Limits) (*Bench, message.Message, error) {
	in.MadeBy(c)
	h, err := design.Rate(in)
	if err != nil || !h.Absent.None() {
		return nil, h.Absent, err
	}
	b := &Bench{in: in, shop: c, near: h.Thermal, limits: limits, tubes: h.Thermal.Bank.Tubes(), coils: 1, Wanted: in.Bank.DutyWanted, Allows: in.Bank.DropAllowed}
	if c != nil {
		m := design.Brief(in, h)
		if m.Line != nil {
			b.ground = making.Laid(c, m.Line, m.Order)
		}
		if m.Plan.Ledger != nil {
			b.coils = max(1, m.Plan.Ledger.Coils)
		}
	}
	pitches := in.Pitches()
	b.in.Bank.TubePitch, b.in.Bank.RowPitch = units.Length(pitches.TransversePitch), units.Length(pitches.RowPitch)
	b.As = b.run(&Limits{})
	return b, message.Message{}, nil
}

// Averages returns over how many pieces of the bank that come out each its own way a band is averaged; 1 where the whole bank comes out one way.
func (b *Bench) Averages(band int) int {
	if of := Bands[band].of; of != nil {
		return of(b)
	}
	return 1
}

// Alone returns what the measures come to where one band is at an end of its limit (side -1 or 1), in all of the bank alike.
func (b *Bench) Alone(band int, side float64) Outcome {
	var off Limits
	off[band] = side * b.limits[band]
	return b.run(&off)
}

// Draw returns what they come to in a draw of all bands.
//
// Valid: any seed; draws from 0 on.
// Source: one evaluation of the bank with what is averaged over it, one of a tube as it comes.
func (b *Bench) Draw(seed uint64, draw int) Outcome {
	var one, all Limits
	for i := range Bands {
		one[i] = chance(b.limits[i], seed, draw, i)
		all[i] = one[i]
		if n := b.Averages(i); n > 1 {
			all[i] = mean(b.limits[i], n, seed, draw, i)
		}
	}
	out, tube := b.run(&all), b.off(&one).Tube
	out[area], out[mass] = float64(tube.Areas().Total()), float64(tube.Weight())
	return out
}

// off returns the design with each band off by a share [-].
func (b *Bench) off(by *Limits) trial {
	t := trial{b.in, 1, 1, 1}
	for i := range Bands {
		if by[i] != 0 {
			Bands[i].move(&t, 1+by[i])
		}
	}
	return t
}

// run rates and plans it.
func (b *Bench) run(by *Limits) Outcome {
	none := math.NaN()
	at := b.off(by)
	out := Outcome{float64(at.Tube.Areas().Total()), none, none, none, float64(at.Tube.Weight()), none}
	if t, hindered := rating.RateNear(&at.Input.Input, &b.near); hindered == nil {
		out[u], out[duty] = t.Overall.OnBare, math.Abs(t.Duty.Heat)
		if t.HasDrop() {
			out[Drop] = t.UsedDrop.Answer.Total * at.drop
		}
	}
	if b.ground != nil {
		c := making.AtPrices(b.shop, at.tubes, at.strip)
		ground := b.ground.At(&c)
		if p := ground.Plan(); p.Cost != nil {
			out[price] = float64(p.Cost.PerTube)
		}
	}
	return out
}
