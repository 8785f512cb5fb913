package report

import (
	"strings"

	"finwright/core/design"
	"finwright/core/figure"
)

// Row is one design of a list as the page shows it. Of one that cannot be rated Refused says why, and nothing else is there.
type Row struct {
	Cells   []Cell       `json:"cells"`
	State   figure.State `json:"state"`
	Mark    string       `json:"mark"` // the state in a word
	Why     string       `json:"why"`  // the remark behind it
	Line    string       `json:"line"`
	Refused string       `json:"refused"`
}

// Cell is one figure of a row. SI orders a column; what is shown is Value.
type Cell struct {
	ID     string  `json:"id"`
	SI     float64 `json:"si"`
	Value  string  `json:"value"`
	Unit   string  `json:"unit"`
	Absent string  `json:"absent"` // why there is no value
}

// Row prints a row.
func (w Writer) Row(r design.Row) Row {
	out := Row{Cells: make([]Cell, len(r.Cells)), State: r.State, Mark: w.mark(r.State), Line: r.Line}
	if !r.Why.None() {
		out.Why = w.say(r.Why)
	}
	for i, c := range r.Cells {
		column := &design.RowFigures[i]
		cell := Cell{ID: column.ID}
		if c.Absent.None() {
			text := w.Texts.Numbers.Figure(column.Kind, c.SI, w.System)
			cell.SI, cell.Value, cell.Unit = c.SI, text.Value, text.Unit
			if column.Kind.Money() {
				cell.Unit = strings.TrimSpace(w.Currency + " " + text.Unit)
			}
		} else {
			cell.Absent = w.say(c.Absent)
		}
		out.Cells[i] = cell
	}
	return out
}

// RefusedRow says why a design has no row: by the first of what is wrong.
func (w Writer) RefusedRow(wrong design.FieldErrors) Row {
	return Row{Cells: []Cell{}, State: figure.No, Mark: w.mark(figure.No), Refused: w.say(wrong[0].Message)}
}
