package compare

import (
	"math"

	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/units"
)

// level [-] is how far two values may lie apart and be about the same: less than the films of two correlations ever agree.
//
// Source: engineering judgement.
const level = 0.01

// Points say in parts of a sentence how column i does against the base: duty, drop, mass and price, or what follows where these are held.
// There are none of a column that is refused, or beside a base that is. Without money there is no price.
func (t *Table) Points(i int, money bool) []message.Message {
	var out []message.Message
	if !t.rated(i) {
		return nil
	}
	if of, n, ok := t.pair(i, "bank_tubes"); ok && n != of {
		out = append(out, message.New("compare.tubes_for", "count", int(n), "of", int(of)))
	}
	for _, id := range []string{"duty", "air_drop", "fan_power", "tube_weight"} {
		if id == "fan_power" && t.Held != Tubes { // its drop is held, so that the drop says nothing
			continue
		}
		if was, now, ok := t.pair(i, id); ok && was != 0 {
			out = append(out, changed(id, now/was-1))
		}
	}
	if was, now, ok := t.pair(i, "price_tube"); ok && money && t.Columns[i].Row.State != figure.No {
		out = append(out, dearer(was, now))
	}
	return out
}

// dearer says what a tube costs more or less; money is printed by whoever knows the currency.
func dearer(was, now float64) message.Message {
	by := message.Amount{Kind: units.Cost, SI: math.Abs(now - was)}
	switch {
	case math.Abs(now-was) < level*was:
		return message.New("compare.level.price_tube")
	case now > was:
		return message.New("compare.more.price_tube", "by", by)
	default:
		return message.New("compare.less.price_tube", "by", by)
	}
}

// changed says by how much a figure is more or less [-].
func changed(id string, by float64) message.Message {
	switch {
	case math.Abs(by) < level:
		return message.New("compare.level." + id)
	case by > 0:
		return message.New("compare.more."+id, "by", Share(by))
	}
	return message.New("compare.less."+id, "by", Share(-by))
}

// Share is a share of a comparison to a tenth of a per cent, from a tenth on to one: no more of it is known.
func Share(x float64) message.Amount {
	step := 1e-3
	if math.Abs(x) >= 0.1 {
		step = 1e-2
	}
	return message.Amount{Kind: units.Percent, SI: math.Round(x/step) * step}
}

// Instead says what U x A does where column i is taken for the base; none where it is not known.
func (t *Table) Instead(i int) message.Message {
	was, now, ok := t.pair(i, "ua")
	if !ok {
		return message.Message{}
	}
	return changed("ua", now/was-1)
}

// Sureness says by what both were found.
func (t *Table) Sureness(i int) message.Message {
	if len(t.Columns[i].Outside)+len(t.Columns[t.Base].Outside) > 0 {
		return message.New("compare.less_sure")
	}
	return message.New("compare.surer")
}

// rated reports whether both column i and the base have rows.
func (t *Table) rated(i int) bool {
	return i != t.Base && t.Columns[i].Refused.None() && t.Columns[t.Base].Refused.None()
}

// pair returns a figure of the base and of column i, where both have it.
func (t *Table) pair(i int, id string) (base, here float64, ok bool) {
	if !t.rated(i) {
		return 0, 0, false
	}
	for at, f := range Figures() {
		if f.ID == id {
			a, b := t.Columns[t.Base].Row.Cells[at], t.Columns[i].Row.Cells[at]
			return a.SI, b.SI, a.Absent.None() && b.Absent.None()
		}
	}
	panic("compare: no figure " + id)
}
