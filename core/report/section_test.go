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

func TestSectionsHaveWords(t *testing.T) {
	for _, s := range Sections {
		for _, key := range []string{"page." + s.ID, "page." + s.ID + "_question"} {
			if !message.English().Has(key) {
				t.Errorf("section %q has no text %s", s.ID, key)
			}
		}
	}
}
