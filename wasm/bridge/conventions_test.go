package bridge

import (
	"strings"
	"testing"

	"finwright/core/report"
	"finwright/testdata/cases"
)

// A printed figure is read by its conventions; what cannot be used says so.
func TestConventions(t *testing.T) {
	read := func(quantity, text string, change func(d map[string]any)) (got report.ShownConventions) {
		t.Helper()
		args := map[string]any{"document": cases.First(), "quantity": quantity, "text": text}
		if change != nil {
			change(args)
		}
		if e := ask(t, "conventions", args, &got); e != "" {
			t.Fatal(e)
		}
		return got
	}
	if got := read("", "", nil); len(got.Quantities) != 4 || len(got.Readings) != 0 || got.Wrong != "" {
		t.Errorf("%+v", got)
	}
	own := read("surface", "1.701 m2/m", nil)
	if len(own.Readings) == 0 || !own.Readings[0].Fits || own.Readings[0].By != "as this page counts" || own.Wrong != "" {
		t.Errorf("%+v", own)
	}
	for _, q := range own.Quantities {
		if got := read(q.ID, "1.6 bar", nil); got.Wrong == "" || len(got.Readings) != 0 {
			t.Errorf("%s: %+v", q.ID, got)
		}
	}
	if got := read("mass", "-2 kg/m", nil); got.Wrong == "" {
		t.Errorf("%+v", got)
	}
	if got := read("overall", "290 W/m2K", nil); len(got.Readings) == 0 || got.Said == "" {
		t.Errorf("%+v", got)
	}
	impossible := read("overall", "290 W/m2K", func(args map[string]any) {
		d := cases.First()
		f := d.Fields["inside_flow"]
		f.Text = "many"
		d.Fields["inside_flow"] = f
		args["document"] = d
	})
	if !strings.Contains(impossible.Wrong, "many") {
		t.Errorf("%+v", impossible)
	}
}
