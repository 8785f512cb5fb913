package bridge

import (
	"testing"

	"finwright/core/compare"
	"finwright/core/document"
	"finwright/core/proof"
	"finwright/core/report"
)

// Any two designs can be compared, whatever is held: all that is said has its texts, and nothing is no number.
func TestAnyDesignsCompare(t *testing.T) {
	proof.Proof{Share: 15, Full: 2000, Seed: 13}.Run(t, func(c *proof.Case) {
		a, b := drawDocument(c.Rand), drawDocument(c.Rand)
		for _, held := range compare.Helds {
			var got report.Comparison
			if e := ask(c, "compare", map[string]any{"designs": []document.Document{a, b, a}, "names": []string{"", "B", ""}, "base": c.Index % 2, "held": held}, &got); e != "" {
				c.Fatal(e)
			}
			for i, column := range got.Columns {
				if (column.Refused == "") != (len(got.Figures[0].Cells[i].Value) > 0) || !column.Base && column.Said == "" {
					c.Errorf("%s: %+v", held, column)
				}
			}
		}
	})
}

// A ladder is made of the one design that is given.
func TestLadderIsMadeOfOneDesign(t *testing.T) {
	for _, id := range compare.Ladders {
		var got report.Comparison
		if e := ask(t, "compare", map[string]any{"designs": []document.Document{document.New()}, "names": []string{""}, "base": 0, "held": "box", "ladder": id, "money": true}, &got); e != "" || len(got.Columns) < 2 || len(got.Columns) > mostCompared {
			t.Errorf("%s: %s, %d columns", id, e, len(got.Columns))
		}
		for _, c := range got.Columns[1:] {
			if c.Name == "" || c.Said == "" {
				t.Errorf("%s: %+v", id, c)
			}
		}
	}
}

func TestCompareRefusesWhatItDoesNotKnow(t *testing.T) {
	d := []document.Document{document.New()}
	for name, args := range map[string]map[string]any{
		"nothing":     {"designs": []document.Document{}, "names": []string{}, "base": 0, "held": "box"},
		"no name":     {"designs": d, "names": []string{}, "base": 0, "held": "box"},
		"no base":     {"designs": d, "names": []string{""}, "base": 1, "held": "box"},
		"what is not": {"designs": d, "names": []string{""}, "base": 0, "held": "moon"},
		"two ladders": {"designs": []document.Document{d[0], d[0]}, "names": []string{"", ""}, "base": 0, "held": "box", "ladder": "rows"},
		"no ladder":   {"designs": d, "names": []string{""}, "base": 0, "held": "box", "ladder": "face_velocity"},
		"no design":   {"designs": []document.Document{{}}, "names": []string{""}, "base": 0, "held": "box"},
	} {
		if e := ask(t, "compare", args, nil); e == "" {
			t.Errorf("%s is compared", name)
		}
	}
}
