package making

import (
	"slices"

	"finwright/core/shop"
	"finwright/core/units"
)

// Swing is how the price of an order moves when one thing moves. Its name is
// the text "shop.driver.<id>".
type Swing struct {
	ID   string
	Low  units.Money // price per tube with the thing a share lower
	High units.Money // and a share higher
}

// drivers scale one thing of a capability that is the caller's own copy.
var drivers = []struct {
	id    string
	scale func(c *shop.Capability, l *shop.Line, m *shop.Practice, by float64)
}{
	{"tube_price", func(c *shop.Capability, _ *shop.Line, _ *shop.Practice, by float64) {
		for i := range c.Rates.TubeMetals {
			c.Rates.TubeMetals[i].Price *= units.MoneyPerMass(by)
		}
		for i := range c.Buying.Quotes {
			c.Buying.Quotes[i].Price *= by
		}
	}},
	{"strip_price", func(c *shop.Capability, _ *shop.Line, _ *shop.Practice, by float64) {
		for i := range c.Rates.FinMetals {
			c.Rates.FinMetals[i].Price *= units.MoneyPerMass(by)
		}
	}},
	{"line_rate", func(c *shop.Capability, _ *shop.Line, _ *shop.Practice, by float64) {
		c.Rates.Line *= units.MoneyPerTime(by)
	}},
	{"person_rate", func(c *shop.Capability, _ *shop.Line, _ *shop.Practice, by float64) {
		c.Rates.Person *= units.MoneyPerTime(by)
	}},
	{"speed", func(_ *shop.Capability, l *shop.Line, m *shop.Practice, by float64) {
		m.Spindle *= units.Rotation(by)
		l.StripSpeed *= units.Speed(by)
		l.Drive = l.Idle + (l.Drive-l.Idle)*units.Power(by)
	}},
	{"efficiency", func(c *shop.Capability, _ *shop.Line, _ *shop.Practice, by float64) {
		c.Crew.Efficiency = min(1, c.Crew.Efficiency*by)
	}},
	{"rejects", func(c *shop.Capability, _ *shop.Line, _ *shop.Practice, by float64) { c.Losses.Rejects *= by }},
	{"set_up", func(_ *shop.Capability, l *shop.Line, _ *shop.Practice, by float64) {
		o, k := &l.ChangeOver, units.Duration(by)
		o.Type, o.OD, o.Tooling, o.Pitch = o.Type*k, o.OD*k, o.Tooling*k, o.Pitch*k
	}},
}

// Sensitivity plans the order again with each driver a share [-] lower and higher; it
// is empty if the order has no price.
//
// Valid: 0 < share < 1.
// Source: evaluation of PlanOf.
func Sensitivity(c *shop.Capability, l *shop.Line, o *Order, now *Setup, share float64) []Swing {
	at := slices.IndexFunc(c.Lines, func(x shop.Line) bool { return x.Name == l.Name })
	if at < 0 {
		return nil
	}
	perTube := func(scale func(*shop.Capability, *shop.Line, *shop.Practice, float64), by float64) (units.Money, bool) {
		own := clone(*c)
		line := &own.Lines[at]
		m, ok := line.Practice(o.Tube.Fin.Type)
		if !ok {
			return 0, false
		}
		scale(&own, line, m, by)
		p := PlanOf(&own, line, o, now)
		if p.Cost == nil {
			return 0, false
		}
		return p.Cost.PerTube, true
	}
	var out []Swing
	for _, d := range drivers {
		low, okLow := perTube(d.scale, 1-share)
		high, okHigh := perTube(d.scale, 1+share)
		if okLow && okHigh {
			out = append(out, Swing{d.id, low, high})
		}
	}
	return out
}

// AtPrices returns a capability with the prices of its tubes and of its strip multiplied [-].
//
// Valid: positive factors.
// Source: multiplication.
func AtPrices(c *shop.Capability, tubes, strip float64) shop.Capability {
	own := priced(*c)
	for _, d := range drivers {
		switch d.id {
		case "tube_price":
			d.scale(&own, nil, nil, tubes)
		case "strip_price":
			d.scale(&own, nil, nil, strip)
		}
	}
	return own
}

// clone copies what drivers change.
func clone(c shop.Capability) shop.Capability {
	c.Lines = slices.Clone(c.Lines)
	for i := range c.Lines {
		c.Lines[i].Types = slices.Clone(c.Lines[i].Types)
	}
	return priced(c)
}

// priced copies what has a price by mass or length.
func priced(c shop.Capability) shop.Capability {
	c.Rates.TubeMetals = slices.Clone(c.Rates.TubeMetals)
	c.Rates.FinMetals = slices.Clone(c.Rates.FinMetals)
	c.Buying.Quotes = slices.Clone(c.Buying.Quotes)
	return c
}
