package main

import (
	"os"
	"slices"
	"strings"
	"testing"

	"finwright/core/design"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// partsOf returns the text of the page's own parts of each section. A part reaches to the next one.
func partsOf(page string) map[string]string {
	parts := map[string]string{}
	for _, rest := range strings.Split(page, ` data-of="`)[1:] {
		id, text, _ := strings.Cut(rest, `"`)
		parts[id] += text
	}
	return parts
}

// sectionFaults says what a section asks of a design and has no part of the page for.
func sectionFaults(page string, s report.Section, plots []string) (faults []string) {
	part, there := partsOf(page)[s.ID]
	if !there {
		faults = append(faults, "no part of the page")
	}
	lacks := func(asks bool, what, mark string) {
		if asks && !strings.Contains(part, mark) {
			faults = append(faults, "no place for "+what)
		}
	}
	for _, id := range plots {
		lacks(true, "the plot "+id, `data-plot="`+id+`"`)
	}
	lacks(s.Map, "the map", `data-plot="map"`)
	lacks(s.Cases, "the cases", `id="cases"`)
	lacks(s.Methods, "the correlations", `id="methods"`)
	lacks(s.Compared, "designs side by side", `id="options-table"`)
	lacks(s.Enquiry, "what a customer sent", `id="enquiry-text"`)
	lacks(s.Making, "what the shop can do", `id="making-answer"`)
	lacks(s.Papers, "a paper", `id="papers-sheet"`)
	return faults
}

// Each section has parts of the page of its own, and a place there for all that it asks for; each part is of a section.
func TestSectionsHaveTheirParts(t *testing.T) {
	file, err := os.ReadFile("../index.html")
	if err != nil {
		t.Fatal(err)
	}
	page := string(file)
	in, h, err := design.ReadAndRate(cases.First(), nil)
	if err != nil {
		t.Fatal(err)
	}
	w := report.Writer{Texts: message.English(), System: units.SI}
	for _, s := range report.Sections {
		var plots []string
		if s.Curves != nil {
			for _, c := range s.Curves(w, in, h) {
				plots = append(plots, c.ID)
			}
		}
		if faults := sectionFaults(page, s, plots); faults != nil {
			t.Errorf("section %s: %s", s.ID, strings.Join(faults, ", "))
		}
	}
	for id := range partsOf(page) {
		named := slices.ContainsFunc(report.Sections, func(s report.Section) bool { return s.ID == id })
		if !named && !strings.HasPrefix(id, "{{") {
			t.Errorf("a part of the page is of a section %s, which is not there", id)
		}
	}
	invented := report.Section{ID: "invented", Map: true, Cases: true, Methods: true, Making: true, Papers: true}
	want := "no part of the page, no place for the plot film, no place for the map, no place for the cases, no place for the correlations, no place for what the shop can do, no place for a paper"
	if got := strings.Join(sectionFaults(page, invented, []string{"film"}), ", "); got != want {
		t.Errorf("of a section without parts it is said: %s", got)
	}
}
