package report

import (
	"strings"

	"finwright/core/design"
	"finwright/core/figure"
)

// ShownRow is one design of a list as the page shows it. Of one that cannot be rated Refused says why, and nothing else is there.
type ShownRow struct {
	Cells   []ShownCell  `json:"cells"`
	State   figure.State `json:"state"`
	Mark    string       `json:"mark"` // the state in a word
	Why     string       `json:"why"`  // the remark behind it
	Line    string       `json:"line"`
	Refused string       `json:"refused"`
}

// ShownCell is one figure of a row. SI orders a column; what is shown is Value.
type ShownCell struct {
	ID     string  `json:"id"`
	SI     float64 `json:"si"`
	Value  string  `json:"value"`
	Unit   string  `json:"unit"`
	Absent string  `json:"absent"` // why there is no value
}

// Row prints a row.
func (w Writer) Row(r design.Row) ShownRow {
	out := ShownRow{Cells: make([]ShownCell, len(r.Cells)), State: r.State, Mark: w.mark(r.State), Line: r.Line}
	if !r.Why.None() {
		out.Why = w.say(r.Why)
	}
	for i, c := range r.Cells {
		column := &design.RowFigures[i]
		cell := ShownCell{ID: column.ID}
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
func (w Writer) RefusedRow(wrong design.FieldErrors) ShownRow {
	return ShownRow{Cells: []ShownCell{}, State: figure.No, Mark: w.mark(figure.No), Refused: w.say(wrong[0].Message)}
}
