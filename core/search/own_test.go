package search

import (
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/shop"
	"finwright/core/units"
)

// Every list that a shop offers is read, in both systems, and all entries that may vary have one.
func TestOwnListsAreRead(t *testing.T) {
	c := shop.House()
	for _, system := range []units.System{units.SI, units.US} {
		d := document.New()
		d.Units = system
		in, err := design.Read(d)
		if err != nil {
			t.Fatal(err)
		}
		axes := Own(&in, &c, system)
		if len(axes) != len(entries) {
			t.Errorf("%d of %d entries have a list", len(axes), len(entries))
		}
		for _, a := range axes {
			s, err := New(d, Problem{Axes: []Axis{a}, Wanted: []Measure{Price}}, &c)
			if err != nil {
				t.Errorf("%s, %+v: %v", system, a, err)
			} else if s.Count() < 2 {
				t.Errorf("%s, %+v: %d", system, a, s.Count())
			}
		}
	}
}

// What cannot be searched is told where it is entered.
func TestWhatCannotBeSearchedIsTold(t *testing.T) {
	c := shop.House()
	axis := func(a Axis) Problem { return Problem{Axes: []Axis{a}, Wanted: []Measure{Price}} }
	must := func(id, text string) Problem {
		return Problem{Must: map[string]string{id: text}, Wanted: []Measure{Price}}
	}
	for at, p := range map[string]Problem{
		"rows":           axis(Axis{Field: "rows", Texts: []string{"2", "2"}}),
		"fin_height":     axis(Axis{Field: "fin_height", Texts: []string{"tall"}}),
		"fin_type":       axis(Axis{Field: "fin_type", Low: "1", High: "2", Step: "1"}),
		"tube_od":        axis(Axis{Field: "tube_od", Texts: []string{"20 m"}}),
		"passes":         axis(Axis{Field: "passes"}),
		"tube_length":    axis(Axis{Field: "tube_length", Low: "2 m", High: "9 m", Step: "1 mm"}),
		"face_velocity":  axis(Axis{Field: "face_velocity", Low: "4 m/s", High: "2 m/s", Step: "1 m/s"}),
		"fin_pitch":      axis(Axis{Field: "fin_pitch", Low: "3 mm", High: "2 mm", Step: "0.5 mm"}),
		"axes":           axis(Axis{Field: "quantity", Texts: []string{"2"}}),
		"must.duty":      must("duty", "much"),
		"must.line":      must("line", "perhaps"),
		"must.ready":     must("ready", "soon"),
		"must.miss":      must("miss", "1"),
		"must.invention": must("invention", "1"),
		"wanted":         {Wanted: []Measure{UA}},
		"give":           {Wanted: []Measure{Price}, Give: "duty"},
	} {
		_, err := New(document.New(), p, &c)
		if wrong, ok := err.(design.FieldErrors); !ok || !wrong.Has(at) {
			t.Errorf("%s: %v", at, err)
		}
	}
}
