package bridge

import (
	"testing"

	"finwright/core/document"
	"finwright/core/drawing/finned"
	"finwright/core/drawing/sheet"
)

// The outlines of what is kept go with a question for a drawing; what cannot be read has none, and what makes no sense is not drawn.
func TestOutlines(t *testing.T) {
	wrong, small := document.New(), document.New()
	wrong.Fields["tube_od"] = document.Entry{Text: "thick", Origin: document.Customer}
	small.Fields["fin_height"] = document.Entry{Text: "10 mm", Origin: document.Customer}
	var got outlined
	if e := ask(t, "outlines", map[string]any{"designs": []document.Document{small, wrong}}, &got); e != "" || len(got.Ghosts) != 1 || got.Ghosts[0].OD != 25.4 {
		t.Fatalf("%s, %+v", e, got)
	}
	inked := func(list ...finned.Ghost) int {
		var reply struct{ View struct{ Scene sheet.Scene } }
		on := map[string]any{"width": 700, "height": 360, "ghosts": list}
		if e := ask(t, "edit", map[string]any{"document": document.New(), "commands": nil, "sheet": on}, &reply); e != "" {
			t.Fatal(e)
		}
		return len(reply.View.Scene.Ink)
	}
	bare := inked()
	if with := inked(got.Ghosts...); with <= bare {
		t.Error("the outline is not drawn")
	}
	if odd := inked(finned.Ghost{OD: -1, FinOD: 5}, finned.Ghost{OD: 25, FinOD: 1e300}, finned.Ghost{OD: 25, FinOD: 3}); odd != bare {
		t.Error("what makes no sense is drawn")
	}
	if e := ask(t, "outlines", map[string]any{"designs": make([]document.Document, 99)}, &got); e == "" {
		t.Error("any number is outlined")
	}
}
