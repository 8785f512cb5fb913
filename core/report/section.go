package report

import (
	"fmt"
	"slices"

	"finwright/core/design"
	"finwright/core/field"
)

// Section is a question that the page helps to answer: what it asks of a design beside the headline and the groups of
// figures that bear its name.
type Section struct {
	ID      string
	Curves  func(Writer, field.Input, design.Heat) []Curves // nil: it has no plots
	Marks   func(Writer, field.Input, design.Heat) []Curves // its plots with the design's place alone
	Map     bool                                            // the field of a quantity that the user chooses
	Cases   bool                                            // the bank in every state of the plant, each rated anew
	Methods bool                                            // the correlations, and what holds the heat back
	Heated  bool                                            // the drawing bears the temperatures of the metal
	Making  bool                                            // what the shop can do and how, with pictures

	Compared bool // the design beside those that its item keeps
	Enquiry  bool // what a customer sent: many items, read, rated and asked back
	Papers   bool // what goes out of the door
}

// Sections are the page's, in its order: it opens with the first.
var Sections = []Section{
	{ID: "surface", Curves: Writer.Curves, Marks: Writer.Marks, Map: true},
	{ID: "heat", Curves: Writer.HeatCurves, Marks: Writer.HeatMarks, Cases: true, Methods: true, Heated: true},
	{ID: "making", Making: true},
	{ID: "options", Compared: true},
	{ID: "enquiry", Enquiry: true},
	{ID: "papers", Papers: true},
}

// noSection is a design shown by itself, with all its figures but those of the plan.
var noSection = Section{Curves: Writer.Curves, Marks: Writer.Marks, Map: true, Methods: true}

// SectionOf finds a section by its ID; without one, all figures are asked for.
func SectionOf(id string) (Section, error) {
	if id == "" {
		return noSection, nil
	}
	i := slices.IndexFunc(Sections, func(s Section) bool { return s.ID == id })
	if i < 0 {
		return Section{}, fmt.Errorf("report: no section %q", id)
	}
	return Sections[i], nil
}

// holds tells whether a group of figures is shown in the section.
func (s Section) holds(g design.FigureGroup) bool {
	return s.ID == g.Section || s.ID == "" && g.Section != "making"
}
