package design

import (
	"cmp"
	"math"
	"strconv"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/numeric"
	"finwright/core/shop"
	"finwright/core/units"
)

// How much of an entry is changed to see what that moves.
const (
	nudge  = 0.01 // [-] of a number
	degree = 1.0  // [K] of a temperature
	piece  = 1.0  // of what is counted
	unseen = 1e-6 // [-] of a figure, [K] of a temperature: less is no effect
)

// Move is what an entry does to a figure.
type Move struct {
	Field  string
	Change float64 // of the entry: [K] of a temperature, pieces of a count, else a share
	By     float64 // of the figure: [K] of a temperature, else a share of it
}

// Moves lists what the numbers of d do to a figure, by the size of it, and returns the figure's kind besides. Each is changed alone,
// and the design read, rated and planned anew, so that what hangs on the entry follows. An entry that is blank, or that cannot be
// changed so, is left out; so is every entry where the figure has no value or is nought. c is the shop; nil: none.
func Moves(d document.Document, c *shop.Capability, id string) ([]Move, units.Kind) {
	find := func(d document.Document) (si float64, k units.Kind, ok bool) {
		in, h, err := ReadAndRate(d, c)
		if err != nil {
			return 0, "", false
		}
		res := Evaluate(in, h)
		if c != nil {
			m := Make(in, h)
			res.AddMaking(&m)
		}
		f, there := res.Find(id)
		return f.SI, f.Kind, there && f.Absent.None() && !math.IsNaN(f.SI)
	}
	now, kind, ok := find(d)
	if !ok || kind != units.Temp && now == 0 {
		return nil, kind
	}
	in, err := Read(d)
	if err != nil {
		return nil, kind
	}
	var out []Move
	for i := range field.Fields {
		f := &field.Fields[i]
		if d.Fields[f.ID].Text == "" || !f.IsNumber() || !f.Used(d.Text) {
			continue
		}
		move := Move{Field: f.ID, Change: nudge}
		value := f.Get(&in)
		next := value * (1 + nudge)
		switch {
		case f.Kind == units.Temp:
			move.Change, next = degree, value+degree
		case f.Whole != nil:
			move.Change, next = piece, value+piece
		case value == 0:
			continue
		}
		then, _, ok := find(with(d, f, next))
		if !ok {
			continue
		}
		if move.By = then - now; kind != units.Temp {
			move.By /= math.Abs(now)
		}
		if math.Abs(move.By) > unseen {
			out = append(out, move)
		}
	}
	return numeric.Sorted(out, func(a, b *Move) int { return cmp.Compare(math.Abs(b.By), math.Abs(a.By)) }), kind
}

// with is d with one number entered to the last bit [SI].
func with(d document.Document, f *field.Field, si float64) document.Document {
	text := strconv.FormatFloat(units.In(f.Kind, si, units.SI), 'g', 17, 64) + " " + f.Kind.Unit(units.SI)
	fields := make(map[string]document.Entry, len(d.Fields))
	for id, e := range d.Fields {
		fields[id] = e
	}
	fields[f.ID] = document.Entry{Text: text, Origin: fields[f.ID].Origin}
	d.Fields = fields
	return d
}
