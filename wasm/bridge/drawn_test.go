package bridge

import (
	"maps"
	"math"
	"math/rand/v2"
	"strings"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// What a user could have on the page, drawn at random.

var systems = []units.System{units.SI, units.US}

// ownMetal are the ranges of a metal of the user's own.
var ownMetal = map[string][2]float64{"conductivity": {1, 500}, "density": {1000, 23000}, "expansion": {1e-6, 40e-6}}

// junk are entries that cannot be read, or only just.
var junk = []string{
	"", " ", "wide", "-1 mm", "0", "1e308", "-1e308 m", "1e-320", "1/0", "2,108", "14 BWG", "99 BWG", "1 1/4 in", "10 fpi", "0 °C", "5 kg", "{accepts}",
	"999999999999999999999", "½", "１２", "\x00", "[[[[", "“", strings.Repeat("9", 190), "300 °F", "-459 °F", "1 mm mm", "3'", "50 %",
}

func between(r *rand.Rand, low, high float64) float64 {
	if low > 0 && high/low > 20 {
		return low * math.Pow(high/low, r.Float64())
	}
	return low + (high-low)*r.Float64()
}

// rangeOf returns the range of a field's number.
func rangeOf(s *field.Field) (low, high float64) {
	if s.Unbounded == "" {
		return s.Low, s.High
	}
	for what, r := range ownMetal {
		if strings.HasSuffix(s.ID, what) {
			return r[0], r[1]
		}
	}
	return 0, 1
}

// entry draws a text for a field, near to what would do anywhere in its range, at its ends, or junk.
func entry(r *rand.Rand, s *field.Field, system units.System) string {
	switch {
	case r.IntN(40) == 0:
		return junk[r.IntN(len(junk))]
	case s.Choices != nil:
		return s.Choices()[r.IntN(len(s.Choices()))]
	case !s.IsNumber():
		return s.House
	case s.MayBeEmpty() && r.IntN(3) == 0:
		return ""
	}
	low, high := rangeOf(s)
	x := between(r, low, high)
	switch r.IntN(8) {
	case 0:
		x = low
	case 1:
		x = high
	case 2, 3, 4:
		return s.House
	}
	if s.Kind == units.Count {
		x = math.Round(x)
	}
	return units.Echo(s.Kind, x, system)
}

// shape draws a tube that could be: any size, wall and fin that go together.
func shape(r *rand.Rand, d document.Document) {
	set := func(id string, x float64) {
		s := field.Must(id)
		low, high := rangeOf(s)
		d.Fields[id] = document.Entry{Text: units.Echo(s.Kind, min(max(x, low), high), d.Units), Origin: document.Assumed}
	}
	od := between(r, 0.006, 0.330)
	set("tube_od", od)
	set("tube_wall", od*between(r, 0.02, 0.48))
	strip := between(r, 0.0001, 0.006)
	set("strip_thickness", strip)
	set("fin_height", between(r, 0.001, 0.060))
	set("fin_pitch", 1/(strip*between(r, 1.01, 60)))
	set("tip_thickness", strip*between(r, 0.1, 1))
	if r.IntN(2) == 0 {
		set("tube_length", between(r, 0.3, 30))
	}
	d.Fields["foot_lap"] = document.Entry{Origin: document.Assumed}
	for _, id := range []string{"tube_pitch", "row_pitch"} {
		if r.IntN(3) > 0 {
			d.Fields[id] = document.Entry{Origin: document.Assumed}
		}
	}
}

// drawDocument draws a design: an example or the house's, with some entries changed or all of them.
func drawDocument(r *rand.Rand) document.Document {
	d := document.New()
	if r.IntN(2) == 0 {
		d.Fields = maps.Clone(examples[r.IntN(len(examples))].Fields)
	}
	d.Units = systems[r.IntN(2)]
	changes := r.IntN(7)
	if r.IntN(3) == 0 {
		changes = len(field.Fields)
	}
	for range changes {
		s := &field.Fields[r.IntN(len(field.Fields))]
		d.Fields[s.ID] = document.Entry{Text: entry(r, s, d.Units), Origin: document.Origins[r.IntN(3)]}
	}
	if r.IntN(2) == 0 {
		shape(r, d)
	}
	return d
}

var examples = func() (list []document.Document) {
	for _, c := range cases.List() {
		list = append(list, c.Document())
	}
	return list
}()

func drawCommand(r *rand.Rand) document.Command {
	s := &field.Fields[r.IntN(len(field.Fields))]
	text := entry(r, s, systems[r.IntN(2)])
	number := between(r, 1e-3, 1e3)
	v := document.Value{Field: s.ID, Text: &text}
	switch r.IntN(4) {
	case 0:
		v = document.Value{Field: s.ID, Steps: []int{1, -1, 10, -10, 1000000, math.MaxInt}[r.IntN(6)]}
	case 1:
		v = document.Value{Field: s.ID, Number: &number, Unit: []string{"mm", "in", "fins/m", "m", "°C"}[r.IntN(5)]}
	}
	return []document.Command{
		{Op: "set", Values: []document.Value{v}},
		{Op: "set", Values: []document.Value{v}},
		{Op: "units", System: systems[r.IntN(2)]},
		{Op: "add_span"},
		{Op: "add_span"},
		{Op: "remove_span", Index: r.IntN(3)},
		{Op: "span", Index: r.IntN(2), Part: []string{"centre", "width"}[r.IntN(2)], Text: units.Echo(units.Distance, between(r, 0.001, 30), units.SI)},
		{Op: "origin", Field: s.ID, Origin: document.Customer},
		{Op: "title", Text: text},
	}[r.IntN(9)]
}

// drawSheet draws a drawing area: those of screens and of hands that pull a window to nothing or far.
func drawSheet(r *rand.Rand) map[string]any {
	size := func() float64 {
		if r.IntN(20) == 0 {
			return []float64{0, -5, 1, 1e4}[r.IntN(4)]
		}
		return math.Round(between(r, 200, 2600))
	}
	area := map[string]any{"width": size(), "height": size()}
	if r.IntN(5) == 0 {
		area["hold"] = map[string]any{"main": between(r, 0.01, 20), "detail": between(r, 0.1, 100)}
	}
	return area
}
