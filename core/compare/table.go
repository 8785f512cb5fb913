package compare

import (
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

// better says of a figure which of two values is: the larger where it is 1, the smaller where -1. Of others neither is: an outlet or an
// area can be too high and too low.
var better = map[string]int{
	"duty": 1, "duty_per_tube": 1, "ua": 1, "u_bare": 1, "film": 1, "inside_film": 1, "fin_efficiency": 1, "used_area": 1,
	"air_drop": -1, "inside_loss": -1, "fan_power": -1, "metre_mass": -1, "tube_weight": -1, "mass_dry": -1, "face_area": -1, "bank_tubes": -1,
	"strip_per_metre": -1, "strip_bought": -1, "tube_time": -1, "line_hours": -1, "price_tube": -1, "price": -1,
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
		t.Best = append(t.Best, t.best(i, better[f.ID]))
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

// best finds the columns with the best value of a line. A design that is refused is none, and where all that are left are alike there is none.
func (t *Table) best(line, better int) (at []int) {
	if better == 0 {
		return nil
	}
	counted := 0
	for i, c := range t.Columns {
		if !c.Refused.None() || c.Row.State == figure.No || !c.Row.Cells[line].Absent.None() {
			continue
		}
		counted++
		switch {
		case len(at) == 0 || float64(better)*(c.Row.Cells[line].SI-t.Columns[at[0]].Row.Cells[line].SI) > 0 && !t.same(line, i, at[0]):
			at = []int{i}
		case t.same(line, i, at[0]):
			at = append(at, i)
		}
	}
	if len(at) == counted {
		return nil
	}
	return at
}

func (t *Table) same(line, a, b int) bool {
	x, y := t.Columns[a].Row.Cells[line].SI, t.Columns[b].Row.Cells[line].SI
	return !units.Above(x, y) && !units.Above(y, x)
}
