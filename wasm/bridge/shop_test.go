package bridge

import (
	"encoding/json"
	"os"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/report"
	"finwright/testdata/cases"
)

type made struct {
	Document document.Document
	View     struct {
		Making *report.Making
		Groups []struct {
			ID, Section string
			Figures     []report.Figure
		}
	}
}

func making(t *testing.T, d document.Document, shop string, command any) made {
	t.Helper()
	var got made
	args := map[string]any{"document": d, "command": command, "sheet": area, "section": "making", "shop": shop, "room": map[string]any{"wide": 1100, "card": 270}}
	if e := ask(t, "edit", args, &got); e != "" {
		t.Fatal(e)
	}
	return got
}

func TestDumpTemp(t *testing.T) {
	for _, c := range cases.List() {
		got := making(t, c.Document, "", nil)
		for _, p := range got.View.Making.Pictures {
			os.WriteFile("/tmp/pics/"+c.ID+"-"+p.ID+".svg", []byte(strings.Replace(p.SVG, "<svg ", "<svg style='background:white;color:black;font-family:sans-serif' ", 1)), 0o644)
			p.SVG = ""
		}
		m := got.View.Making
		for i := range m.Pictures {
			t.Log(m.Pictures[i].ID, len(m.Pictures[i].SVG))
			m.Pictures[i].SVG = ""
		}
		b, _ := json.MarshalIndent(m, "", " ")
		t.Log(string(b))
		for _, g := range got.View.Groups {
			if g.Section == "making" {
				for _, f := range g.Figures {
					t.Log(g.ID, f.ID, f.Label, f.Value, f.Unit, f.Absent)
				}
			}
		}
	}
}

func BenchmarkMaking(b *testing.B) {
	args, err := json.Marshal(map[string]any{
		"document": cases.First(), "sheet": area, "section": "making", "command": nil, "room": map[string]any{"wide": 1100, "card": 270},
	})
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		Call("edit", args)
	}
}
