package bridge

import (
	"errors"
	"math"
	"reflect"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/proof"
	"finwright/core/report"
)

// rowIsTheAnswer holds the row of a document to the full answer: each cell to the figure of its id, to the last bit and to
// the letter, and its state to the gravest remark.
func rowIsTheAnswer(t testing.TB, d document.Document) {
	t.Helper()
	var list listed
	if e := ask(t, "rows", map[string]any{"documents": []document.Document{d}}, &list); e != "" || len(list.Rows) != 1 {
		t.Fatalf("rows: %s, %d", e, len(list.Rows))
	}
	shown := list.Rows
	w := writer(d)
	in, heat, err := rated(d, report.Section{Making: true}, "")
	if err != nil {
		var wrong design.FieldErrors
		if !errors.As(err, &wrong) || shown[0].Refused != w.Texts.Render(wrong[0].Message, d.Units) || shown[0].State != figure.No || len(shown[0].Cells) > 0 {
			t.Fatalf("the answer is refused (%v), the row says %+v", err, shown[0])
		}
		return
	}
	row, err := design.RowOf(in)
	if err != nil {
		t.Fatal(err)
	}
	full := design.Evaluate(in, heat)
	plan(&w, d, in, &full)
	for i, column := range design.RowFigures {
		cell, show := row.Cells[i], shown[0].Cells[i]
		f, found := full.Find(column.ID)
		absent := f.Absent
		if main, of := mainFigure[column.ID]; !found && of { // of a part that is absent the answer has one figure alone
			f, _ = full.Find(main)
			absent = f.Absent
		} else if !found {
			absent = heat.Absent
		}
		printed := w.Figure(figure.Figure{ID: column.ID, Kind: column.Kind, SI: f.SI, State: figure.Plain, Absent: absent})
		switch {
		case cell.Absent.Key != absent.Key || absent.None() && math.Float64bits(cell.SI) != math.Float64bits(f.SI):
			t.Errorf("%s: the row has %.17g %s, the answer %.17g %s", column.ID, cell.SI, cell.Absent.Key, f.SI, absent.Key)
		case show.ID != column.ID || show.Value != printed.Value || show.Unit != printed.Unit || show.Absent != printed.Absent || absent.None() && show.SI != f.SI:
			t.Errorf("%s: the row shows %+v, the answer %+v", column.ID, show, printed)
		case f.ID == column.ID && f.Kind != column.Kind:
			t.Errorf("%s: a column of %v, a figure of %v", column.ID, column.Kind, f.Kind)
		}
	}
	worst := figure.Good
	why := ""
	for _, n := range full.Notices {
		if n.State.Graver(worst) {
			worst, why = n.State, w.Texts.Render(n.Message, d.Units)
		}
	}
	if row.State != worst || shown[0].State != worst || shown[0].Why != why || row.Line != full.Line || shown[0].Line != full.Line {
		t.Errorf("the row is %s on %s for %q, the answer %s on %s for %q", row.State, row.Line, shown[0].Why, worst, full.Line, why)
	}
}

// mainFigure says why a part of the plan is absent for all of the part.
var mainFigure = map[string]string{"tube_time": "line_hours", "price": "price_tube"}

func TestRowsOfTheExamples(t *testing.T) {
	for _, d := range examples {
		rowIsTheAnswer(t, d)
	}
}

// Whatever the design, its row is what the full answer says.
func TestAnyRowIsTheAnswer(t *testing.T) {
	proof.Proof{Share: 150, Full: 40_000, Seed: 33}.Run(t, func(c *proof.Case) { rowIsTheAnswer(c, drawDocument(c.Rand)) })
}

func TestRowsAnswerForEachDocument(t *testing.T) {
	wrong := document.New()
	wrong.Fields["tube_od"] = document.Entry{Text: "thick", Origin: document.Customer}
	var list listed
	if e := ask(t, "rows", map[string]any{"documents": []document.Document{examples[0], wrong, examples[1]}}, &list); e != "" {
		t.Fatal(e)
	}
	got := list.Rows
	wholeLists(t, "rows", reflect.ValueOf(list))
	if len(got) != 3 || got[0].Refused != "" || got[1].Refused == "" || got[2].Refused != "" || got[1].Mark == "" || len(got[2].Cells) != len(design.RowFigures) {
		t.Errorf("%+v", got)
	}
	if e := ask(t, "rows", map[string]any{"documents": []document.Document{examples[0]}, "shop": "{"}, &list); e == "" {
		t.Error("a shop that cannot be read is passed over")
	}
}
