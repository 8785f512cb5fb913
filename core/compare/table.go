package compare

import (
	"math"
	"slices"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/shop"
	"finwright/core/units"
)

// Table is designs side by side.
type Table struct {
	Held    Held // what is held in truth: nothing where the base cannot be read
	Base    int  // which column the others stand against
	Columns []Column
	Entries []string // the IDs of those that differ, in the order of the form
	Spans   bool     // the bare spans differ
	Best    [][]int  // of each of Figures the columns that have the best value; none where that has no meaning
}

// Figures are the lines of a table.
func Figures() []design.RowFigure { return slices.Concat(design.RowFigures, design.MoreFigures) }

// Of which figures the larger value is the better, and of which the smaller. Of others neither is: an outlet or an area can be too high
// and too low.
var (
	larger  = []string{"duty", "duty_per_tube", "ua", "u_bare", "film", "inside_film", "fin_efficiency", "used_area"}
	smaller = []string{
		"air_drop", "inside_loss", "fan_power", "metre_mass", "tube_weight", "mass_dry", "face_area", "bank_tubes",
		"strip_per_metre", "strip_bought", "tube_time", "line_hours", "price_tube", "price",
	}
)

// better is 1 where the larger of two values of a figure is, -1 where the smaller, and 0 where neither.
func better(id string) int {
	switch {
	case slices.Contains(larger, id):
		return 1
	case slices.Contains(smaller, id):
		return -1
	}
	return 0
}

// Of compares designs, each with the base among them, as c can make them; nil: nobody is to. varied is the entry that is stepped from one
// to the next, which is left alone; empty: none.
func Of(designs []document.Document, at int, held Held, varied string, c *shop.Capability) Table {
	b, ok := newBase(designs[at], held, c)
	b.varied = varied
	if !ok {
		held = Nothing
	}
	t := Table{Held: held, Base: at, Columns: make([]Column, len(designs))}
	for i, d := range designs {
		if i == at || !ok {
			t.Columns[i] = Column{Document: d}
			t.Columns[i].rate(c)
			continue
		}
		t.Columns[i] = b.against(d)
	}
	t.differ()
	for i, f := range Figures() {
		t.Best = append(t.Best, t.best(i, better(f.ID)))
	}
	return t
}

// differ finds the entries that are not the same in all columns.
func (t *Table) differ() {
	base := t.Columns[t.Base].Document
	for i := range field.Fields {
		f := &field.Fields[i]
		for _, c := range t.Columns {
			if f.Used(c.Document.Text) != f.Used(base.Text) || f.Used(base.Text) && !alike(f, c.Document, base) {
				t.Entries = append(t.Entries, f.ID)
				break
			}
		}
	}
	t.Spans = slices.ContainsFunc(t.Columns, func(c Column) bool { return !slices.Equal(c.Document.Spans, base.Spans) })
}

// alike reports whether two designs say the same in a field: 5/8 in and 15.875 mm are one.
func alike(f *field.Field, a, b document.Document) bool {
	x, y := a.Text(f.ID), b.Text(f.ID)
	if x == y || !f.IsNumber() {
		return x == y
	}
	p, err := units.Parse(f.KindOf(x), x, a.Units)
	q, other := units.Parse(f.KindOf(y), y, b.Units)
	return err == nil && other == nil && f.KindOf(x) == f.KindOf(y) && !units.Above(p.SI, q.SI) && !units.Above(q.SI, p.SI)
}

// best finds the columns with the best value of a line, and those that have about the same. A design that is refused is none of them, and
// where all that are left are about the same there is none.
func (t *Table) best(line, better int) (at []int) {
	if better == 0 {
		return nil
	}
	most, counted := math.Inf(-1), 0
	value := func(c *Column) (x float64, ok bool) {
		if !c.Refused.None() || c.Row.State == figure.No || !c.Row.Cells[line].Absent.None() {
			return 0, false
		}
		return float64(better) * c.Row.Cells[line].SI, true
	}
	for i := range t.Columns {
		if x, ok := value(&t.Columns[i]); ok {
			most, counted = max(most, x), counted+1
		}
	}
	for i := range t.Columns {
		if x, ok := value(&t.Columns[i]); ok && most-x <= level*math.Abs(most) {
			at = append(at, i)
		}
	}
	if len(at) == counted {
		return nil
	}
	return at
}
