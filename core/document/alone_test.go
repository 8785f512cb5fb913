package document

import (
	"errors"
	"slices"
	"testing"

	"finwright/core/units"
)

// entered is what a field holds, or is asked, once text was typed over held.
func entered(t *testing.T, id, held, text string, s units.System) (string, []string) {
	t.Helper()
	d := New()
	d.Units = s
	d.Fields[id] = Entry{held, Customer}
	out, err := Edit(d, Command{Op: "set", Values: []Value{{Field: id, Text: &text}}})
	var asked *AskError
	if errors.As(err, &asked) {
		return "", asked.Readings
	}
	if err != nil {
		t.Fatal(err)
	}
	if e := out.Fields[id]; e.Text == held && e.Origin != Customer {
		t.Errorf("%s: %s typed over %s changes its origin", id, text, held)
	}
	return out.Fields[id].Text, nil
}

// An entry that is shown in the other system stays what it is until something else is typed.
func TestWhatIsTypedAsItIsShownChangesNothing(t *testing.T) {
	for _, c := range []struct {
		id, held, text string
		s              units.System
		want           string
	}{
		{"fin_height", "40 mm", "1.575 in", units.US, "40 mm"},
		{"fin_height", "40 mm", "1.575", units.US, "40 mm"},
		{"fin_height", "40 mm", " 1.575  in ", units.US, "40 mm"},
		{"fin_height", "40 mm", "1.58 in", units.US, "1.58 in"},
		{"fin_height", "40 mm", "40.005 mm", units.US, "40.005 mm"}, // as much as 1.575 in, and typed in millimetres
		{"tube_od", "25.4 mm", "1.00 in", units.US, "1.00 in"},      // as much as the 1 in that is shown, and another text
		{"tube_wall", "14 BWG", "2.108 mm", units.SI, "14 BWG"},
		{"fin_pitch", "10 fpi", "393.7", units.SI, "10 fpi"},
		{"fin_pitch", "10 fpi", "394 fins/m", units.SI, "394 fins/m"},
		{"tube_length", "5500 mm", "18 ft 0.54 in", units.US, "5500 mm"},
	} {
		if got, asked := entered(t, c.id, c.held, c.text, c.s); got != c.want || asked != nil {
			t.Errorf("%s: %q typed over %s makes %q (asked %q), want %q", c.id, c.text, c.held, got, asked, c.want)
		}
	}
}

// A number alone is in the unit in sight, where that makes sense; else nothing is taken, and what may be meant is asked.
func TestNumberAloneIsInTheUnitInSight(t *testing.T) {
	for _, c := range []struct {
		id, held, text string
		s              units.System
		want           string
		asked          []string
	}{
		{id: "fin_pitch", held: "400 fins/m", text: "433", s: units.SI, want: "433 fins/m"},
		{id: "fin_pitch", held: "10 fpi", text: "11", s: units.US, want: "11 fpi"},
		{id: "fin_pitch", held: "2.54 mm", text: "3", s: units.SI, want: "3 mm"},
		{id: "fin_pitch", held: "10 fpi", text: "10", s: units.SI, asked: []string{"10 fins/m", "10 fpi"}},
		{id: "fin_pitch", held: "10 fpi", text: "400", s: units.US, asked: []string{"400 fpi", "400 fins/m"}},
		{id: "fin_pitch", held: "400 fins/m", text: "10 fins/m", s: units.SI, want: "10 fins/m"}, // it is said
		{id: "tube_length", held: "5.5 m", text: "6", s: units.SI, want: "6 m"},
		{id: "tube_length", held: "5500 mm", text: "6", s: units.SI, asked: []string{"6 mm", "6 m", "6 ft"}},
		{id: "tube_length", held: "", text: "6000", s: units.SI, want: "6000 mm"},
		{id: "tube_wall", held: "14 BWG", text: "12", s: units.US, want: "12 BWG"},
		{id: "tube_wall", held: "14 BWG", text: "12", s: units.SI, asked: []string{"12 mm", "12 BWG"}},
		{id: "tube_wall", held: "14 BWG", text: "0.109", s: units.US, want: "0.109 in"},
		{id: "fin_height", held: "16 mm", text: "5/8", s: units.SI, asked: []string{"5/8 mm", "5/8 in"}},
		{id: "fin_height", held: "5/8 in", text: "16", s: units.US, asked: []string{"16 in", "16 mm"}},
		{id: "fin_height", held: "16 mm", text: "50", s: units.SI, want: "50 mm"}, // nothing is usual
		{id: "face_velocity", held: "3 m/s", text: "600", s: units.SI, asked: []string{"600 m/s", "600 ft/min"}},
		{id: "tip_clearance", held: "6 mm", text: "0", s: units.SI, want: "0 mm"},
		{id: "rows", held: "4", text: "6", s: units.SI, want: "6"},
		{id: "inside_flow", held: "50 m³/h", text: "60", s: units.SI, want: "60 m³/h"},
		{id: "air_in", held: "303 K", text: "310", s: units.SI, want: "310 K"},
		{id: "fin_height", held: "16 mm", text: "high", s: units.SI, want: "high"},
		{id: "fin_pitch", held: "10 fpi", text: "2.54 mm pitch", s: units.SI, want: "2.54 mm"},
	} {
		if got, asked := entered(t, c.id, c.held, c.text, c.s); got != c.want || !slices.Equal(asked, c.asked) {
			t.Errorf("%s: %q typed over %s makes %q and asks %q, want %q and %q", c.id, c.text, c.held, got, asked, c.want, c.asked)
		}
	}
}

// What is asked is taken as it is answered, and bare spans are asked as fields are.
func TestAnsweredReadingIsTaken(t *testing.T) {
	if got, asked := entered(t, "fin_pitch", "400 fins/m", "10 fpi", units.SI); got != "10 fpi" || asked != nil {
		t.Errorf("10 fpi makes %q and asks %q", got, asked)
	}
	d := New()
	d.Spans = []Span{{Centre: Entry{"2500 mm", House}, Width: Entry{"60 mm", House}}}
	_, err := Edit(d, Command{Op: "span", Part: "centre", Text: "3"})
	var asked *AskError
	if !errors.As(err, &asked) || !slices.Equal(asked.Readings, []string{"3 mm", "3 m", "3 ft"}) {
		t.Errorf("a span at 3: %v", err)
	}
	out := edited(t, d, Command{Op: "span", Part: "width", Text: "60"})
	if out.Spans[0].Width != d.Spans[0].Width {
		t.Errorf("the same width makes %+v", out.Spans[0].Width)
	}
}
