package report

import (
	"testing"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
)

// A group that names no section of the table would never be shown.
func TestGroupsBelongToSections(t *testing.T) {
	of := map[string]string{}
	for _, g := range field.Groups {
		of["entries "+g.ID] = g.Section
	}
	_, res, _ := made(t, document.New())
	for _, g := range res.Groups {
		of["figures "+g.ID] = g.Section
	}
	for group, section := range of {
		if _, err := SectionOf(section); err != nil {
			t.Errorf("%s: %v", group, err)
		}
	}
}

// A group is open in sections of the table, its own if it has one, and each section has some that are open.
func TestGroupsAreOpenInSections(t *testing.T) {
	open := map[string]int{}
	for _, g := range field.Groups {
		for _, id := range g.Open {
			if s, err := SectionOf(id); err != nil || s.ID == "" || g.Section != "" && g.Section != id {
				t.Errorf("%s, of section %q, is open in %q", g.ID, g.Section, id)
			}
			open[id]++
		}
	}
	for _, s := range Sections {
		if open[s.ID] == 0 {
			t.Errorf("no group of entries is open in %s", s.ID)
		}
	}
}

func TestSectionsHaveWords(t *testing.T) {
	for _, s := range Sections {
		for _, key := range []string{"page." + s.ID, "page." + s.ID + "_question"} {
			if !message.English().Has(key) {
				t.Errorf("section %q has no text %s", s.ID, key)
			}
		}
	}
}
