package main

import (
	"slices"
	"strings"
	"testing"

	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/tube"
	"finwright/testdata/cases"
)

// The help of the fin type shows each with its own root and says when it is used; no other help has pictures.
func TestFinTypesAreShown(t *testing.T) {
	for _, g := range pageData(language{code: "en", texts: message.English()}).Groups {
		for _, e := range g.Fields {
			if (e.ID == "fin_type") != (len(e.Types) == len(tube.Fixings)) || e.ID != "fin_type" && e.Types != nil {
				t.Errorf("%s shows %d fin types", e.ID, len(e.Types))
			}
			for _, one := range e.Types {
				if !strings.HasPrefix(string(one.Picture), "<svg") || one.When == "" || strings.Contains(string(one.Picture), "style=") {
					t.Errorf("%s: %.60s", one.Name, one.Picture)
				}
			}
		}
	}
}

// The page has every field of the table, group by group and in its order. One more row, which borrows its words, is there too.
func TestFormHasEveryFieldOfTheTable(t *testing.T) {
	listed := field.Fields
	defer func() { field.Fields = listed }()
	invented := *field.Must("rows")
	invented.Group = field.Groups[0].ID
	field.Fields = append(slices.Clone(listed), invented)

	var want, got []string
	for _, g := range field.Groups {
		for _, f := range field.Fields {
			if f.Group == g.ID {
				want = append(want, f.ID)
			}
		}
	}
	for _, g := range pageData(language{code: "en", texts: message.English()}).Groups {
		for _, e := range g.Fields {
			got = append(got, e.ID)
		}
	}
	if len(want) != len(field.Fields) || !slices.Equal(got, want) {
		t.Errorf("the form has %v, want %v", got, want)
	}
}

// An entry says all that may be typed into it: a flow as a mass or as a volume.
func TestHintNamesEveryWayOfWriting(t *testing.T) {
	for id, want := range map[string]string{"inside_flow": "gpm", "inside_pressure": "psig", "fin_height": "mm"} {
		if got := inWords(message.English(), field.Must(id)).Hint; !strings.Contains(got, want) {
			t.Errorf("%s: %q does not name %s", id, got, want)
		}
	}
	for i := range field.Fields {
		if f := &field.Fields[i]; f.IsNumber() && inWords(message.English(), f).Hint == "" {
			t.Errorf("%s says nothing", f.ID)
		}
	}
}

// The page is laid out once at its start: without the entries that the design shown first has no use for.
func TestUnusedEntriesAreHiddenFromTheStart(t *testing.T) {
	first, unused := cases.First(), 0
	for _, g := range pageData(language{code: "en", texts: message.English()}).Groups {
		for _, e := range g.Fields {
			if e.Unused == field.Must(e.ID).Used(first.Text) {
				t.Errorf("%s: unused %v", e.ID, e.Unused)
			}
			if e.Unused {
				unused++
			}
		}
	}
	if unused == 0 {
		t.Error("the first example uses every entry: this shows nothing")
	}
}

// A group is folded from the start where the table does not open it, and left out where the first design uses none of its entries.
func TestGroupsFoldAsTheTableSays(t *testing.T) {
	folded, unused := 0, 0
	for i, g := range pageData(language{code: "en", texts: message.English()}).Groups {
		open := slices.Contains(field.Groups[i].Open, report.Sections[0].ID)
		if g.Folded == open || slices.Contains(strings.Fields(g.Open), report.Sections[0].ID) != open {
			t.Errorf("%s: folded %v, open in %q, want %v", g.ID, g.Folded, g.Open, field.Groups[i].Open)
		}
		if g.Folded {
			folded++
		}
		if g.Unused {
			unused++
		}
		if used := slices.ContainsFunc(g.Fields, func(e entry) bool { return !e.Unused }); used == g.Unused {
			t.Errorf("%s: unused %v", g.ID, g.Unused)
		}
	}
	if folded == 0 || unused == 0 {
		t.Errorf("%d folded, %d unused: this shows nothing", folded, unused)
	}
}
