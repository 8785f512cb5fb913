package design

import (
	"math"

	"finwright/core/field"
	"finwright/core/rating"
)

// Vary returns in with one number replaced [SI]; ok is false for a field that a sweep cannot vary.
// The spans' slice is shared with in and not written to.
func Vary(in field.Input, id string, x float64) (out field.Input, ok bool) {
	f, ok := field.Find(id)
	if !ok || !f.Sweeps() {
		return in, false
	}
	f.Set(&in, x)
	return in, true
}

// swept returns a field that a caller knows can be swept.
func swept(id string) *field.Field {
	f := field.Must(id)
	if !f.Sweeps() {
		panic("design: cannot sweep " + id)
	}
	return f
}

// Sweep evaluates the surface of in, close to the bank that was rated as near, at each value of one field [SI], lets it follow
// what is kept, and hands every one to visit; where the design is impossible visit gets ok false. It panics on a field that cannot be swept.
func Sweep(in field.Input, kept *rating.Kept, near *rating.Thermal, id string, values []float64, visit func(i int, s rating.Surface, ok bool)) Counts {
	var c Counts
	sweep(&in, &c, kept, near, id, values, visit)
	return c
}

func sweep(in *field.Input, c *Counts, kept *rating.Kept, near *rating.Thermal, id string, values []float64, visit func(i int, s rating.Surface, ok bool)) {
	rating.SweepSurface(len(values), designs(in, c, kept, id, values, possible), kept, near, visit)
}

// SweepBank rates in at each value of one field [SI], and lets it follow what is kept. Where a design is impossible, or cannot
// follow, the answers are nil. spread is as of rating.SweepBank.
func SweepBank(in field.Input, kept *rating.Kept, id string, values []float64, spread bool, visit func(i int, answers map[rating.Quantity]rating.Answer)) Counts {
	fits := func(in *field.Input) bool { return possible(in) && len(pitchFindings(in)) == 0 }
	var c Counts
	rating.SweepBank(len(values), designs(&in, &c, kept, id, values, fits), kept, id, spread, visit)
	return c
}

// Counts are the whole numbers between which the tubes in a row and the rows of a sweep went.
type Counts struct{ Tubes, Rows Between }

// Between are the least and the most; nought and nought of nothing.
type Between struct{ Least, Most int }

func (b *Between) take(n int) {
	if b.Most == 0 {
		b.Least = n
	}
	b.Least, b.Most = min(b.Least, n), max(b.Most, n)
}

// CountsAt returns between which whole numbers a field of in takes what is kept, from the designs at values [SI] that are possible.
func CountsAt(in field.Input, kept *rating.Kept, id string, values []float64) Counts {
	var c Counts
	at := designs(&in, &c, kept, id, values, possible)
	for i := range values {
		at(i)
	}
	return c
}

// EfficiencyAt returns the fin efficiency [-] of in with one number replaced [SI], as its figure says it: rated anew. ok is
// false where that cannot be.
func EfficiencyAt(in field.Input, near *Heat, id string, x float64) (eta float64, ok bool) {
	swept(id).Set(&in, x)
	if !possible(&in) {
		return 0, false
	}
	t := near.Thermal
	if !in.Air.FilmGiven {
		rated, hindered := rating.RateBriefly(&in.Input)
		if hindered != nil {
			return 0, false
		}
		t = rated
	}
	return in.Surface(&t).Fin.Efficiency, true
}

// designs varies one field of in, lets it follow what is held, and gives those that are possible.
func designs(in *field.Input, counts *Counts, kept *rating.Kept, id string, values []float64, possible func(*field.Input) bool) rating.Designs {
	f := swept(id)
	return func(i int) *rating.Input {
		f.Set(in, values[i])
		kept.Follow(&in.Input, id)
		if !possible(in) {
			return nil
		}
		counts.Tubes.take(in.Bank.TubesPerRow)
		counts.Rows.take(in.Bank.Rows)
		return &in.Input
	}
}

func possible(in *field.Input) bool {
	var errs FieldErrors
	checkTogether(in, &errs)
	return len(errs) == 0
}

// Grid evaluates a quantity of the surface over two fields, row by row of ys. An impossible
// design is NaN here and nowhere else: a map draws it as empty.
func Grid(in field.Input, near *rating.Thermal, x string, xs []float64, y string, ys []float64, q rating.Quantity) []float64 {
	out := make([]float64, 0, len(xs)*len(ys))
	keep := func(_ int, s rating.Surface, ok bool) {
		if !ok {
			out = append(out, math.NaN())
			return
		}
		out = append(out, q.Of(&s))
	}
	kept, up := in.Keep(near), swept(y)
	var c Counts
	for _, at := range ys {
		up.Set(&in, at)
		sweep(&in, &c, &kept, near, x, xs, keep)
	}
	return out
}
