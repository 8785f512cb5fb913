package bridge

import (
	"slices"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/shop"
	"finwright/testdata/cases"
)

// dearer is the house's shop with another price of something.
func dearer(t *testing.T) string {
	t.Helper()
	text := string(shop.House().Save())
	other := strings.Replace(text, `"line": "`, `"line": "1`, 1)
	if other == text {
		t.Fatal("the house's shop has no rate of a line")
	}
	return other
}

// What an item showed is compared with what it answers now: by the same program and shop it is not even asked, by others
// what is printed otherwise is listed with its cause.
func TestChangedItemsAreListedWithTheirCause(t *testing.T) {
	d := cases.First()
	d.Mark = "E-101"
	const day = "2026-11-27"
	var then listed
	if e := ask(t, "rows", map[string]any{"documents": []document.Document{d}, "build": "one", "day": day}, &then); e != "" {
		t.Fatal(e)
	}
	shown := then.Shown[0]
	if shown.Day != day || len(shown.Cells) != len(then.Basis.Figures) || then.Basis.Build != "one" {
		t.Fatalf("shown is %+v by %+v", shown, then.Basis)
	}
	job := document.JobOf([]document.Document{d, d})
	job.By = []document.Basis{then.Basis}
	duty := 1e3
	other := shown
	other.Cells = slices.Clone(shown.Cells)
	other.Cells[slices.Index(then.Basis.Figures, "duty")] = &duty
	job.Items[0].Shown, job.Items[1].Shown = &shown, &other
	saved, err := document.SaveJob(job)
	if err != nil {
		t.Fatal(err)
	}
	f, err := document.OpenFile(saved) // as it is found later
	if err != nil {
		t.Fatal(err)
	}
	for name, c := range map[string]struct {
		build, shop string
		changed     []string // IDs
		line, why   string
	}{
		"the same":        {"one", "", nil, "", ""},
		"another program": {"two", "", []string{"2"}, "Duty", "The program is another."},
		"another shop":    {"one", dearer(t), []string{"1", "2"}, "Price", "The shop is another."},
		"both":            {"two", dearer(t), []string{"1", "2"}, "Price", "The program and the shop are others."},
	} {
		var now compared
		if e := ask(t, "changed", map[string]any{"base": f.Job.Base, "by": f.Job.By, "items": f.Job.Items, "shop": c.shop, "build": c.build, "day": day}, &now); e != "" {
			t.Errorf("%s: %s", name, e)
			continue
		}
		var ids []string
		for _, item := range now.Changed {
			ids = append(ids, item.ID)
			if item.Why != c.why || !strings.HasPrefix(item.Name, "E-101 ") {
				t.Errorf("%s: %q of %q, want %q", name, item.Why, item.Name, c.why)
			}
		}
		if !slices.Equal(ids, c.changed) {
			t.Errorf("%s: items %v, want %v", name, ids, c.changed)
		} else if len(ids) > 0 && !strings.Contains(strings.Join(now.Changed[0].Lines, " "), c.line) {
			t.Errorf("%s: %q does not say %q", name, now.Changed[0].Lines, c.line)
		}
	}
}
