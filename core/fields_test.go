package core

import (
	"errors"
	"math"
	"reflect"
	"slices"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/report"
	"finwright/core/units"
)

// fieldFaults says what a row of the table of fields lacks.
func fieldFaults(texts message.Catalogue, f *field.Field) []string {
	faults := textFaults(texts, f.Label(), f.Help())
	fault := func(is bool, what string) {
		if is {
			faults = append(faults, what)
		}
	}
	fault(!slices.ContainsFunc(field.Groups, func(g field.FormGroup) bool { return g.ID == f.Group }), "no group of the form")
	fault(f.Since < 1, "no version since which there is one")
	fault(f.Before != "" && !usable(f, f.Before) || f.Since > 5 && f.Before == "" && !f.MayBeEmpty(), "no usable word on what designs before it say")
	fault(f.Used == nil, "no word on when it counts")
	places := 0
	for _, has := range []bool{f.Real != nil, f.Whole != nil, f.Optional != nil, f.Choice != nil, f.Day != nil, f.Text != nil} {
		if has {
			places++
		}
	}
	fault(places != 1, "no place in the input, or several")
	fault(f.IsNumber() != (f.Kind != ""), "a number without a kind, or a kind without a number")
	fault((f.Choice != nil) != (f.Choices != nil), "a choice without choices, or choices that go nowhere")
	fault(!f.IsNumber() && (f.Fixed != "" || f.Unbounded != "" || f.StandIn != nil), "what only a number can have")
	fault(f.StandIn != nil && !f.MayBeEmpty(), "something stands in for what cannot be left empty")
	if f.IsNumber() {
		faults = append(faults, numberFaults(f)...)
	}
	if f.Choice != nil && f.Choices != nil {
		faults = append(faults, choiceFaults(texts, f)...)
	}
	return faults
}

func numberFaults(f *field.Field) (faults []string) {
	low, high := f.Low, f.High
	if f.Unbounded != "" {
		low, high = 1, 2
	} else if !(low < high) {
		return []string{"no limits, and no reason for none"}
	}
	var in field.Input
	for _, x := range []float64{low, high} {
		if f.Set(&in, x); f.Get(&in) != x {
			faults = append(faults, "what is set is not what is got")
		}
	}
	if f.MayBeEmpty() {
		return faults
	}
	if !usable(f, f.House) {
		faults = append(faults, "a house value that cannot be used")
	}
	return faults
}

// usable is whether a design can say a text of a field.
func usable(f *field.Field, text string) bool {
	switch {
	case f.Choices != nil:
		return slices.Contains(f.Choices(), text)
	case f.IsNumber():
		p, err := units.Parse(f.Kind, text, units.SI)
		return err == nil && f.Within(p.SI)
	}
	return true
}

func choiceFaults(texts message.Catalogue, f *field.Field) (faults []string) {
	if !usable(f, f.House) {
		faults = append(faults, "a house value that is no choice")
	}
	var seen []field.Input
	for _, c := range f.Choices() {
		faults = append(faults, textFaults(texts, f.ChoiceKey(c))...)
		var in field.Input
		f.Choice(&in, c)
		if slices.ContainsFunc(seen, func(was field.Input) bool { return reflect.DeepEqual(in, was) }) {
			faults = append(faults, "choice "+c+" makes no difference")
		}
		seen = append(seen, in)
	}
	return faults
}

func TestFieldsAreComplete(t *testing.T) {
	ids := map[string]bool{}
	for i := range field.Fields {
		f := &field.Fields[i]
		if ids[f.ID] {
			t.Errorf("%s: twice in the table", f.ID)
		}
		ids[f.ID] = true
		for _, fault := range fieldFaults(message.English(), f) {
			t.Errorf("%s: %s", f.ID, fault)
		}
	}
}

// A row that says nothing but its name is told all that it lacks.
func TestEmptyFieldIsFaulty(t *testing.T) {
	want := []string{
		"no text field.invented", "no text help.invented", "no group of the form", "no version since which there is one",
		"no word on when it counts", "no place in the input, or several",
	}
	if got := fieldFaults(message.English(), &field.Field{ID: "invented"}); !slices.Equal(got, want) {
		t.Errorf("of an empty row it is said %q, want %q", got, want)
	}
	speed := func(in *field.Input) *float64 { return &in.Air.Velocity }
	bare := field.Field{ID: "face_velocity", Group: "air", Since: 1, Used: func(func(string) string) bool { return true }, Real: speed, Kind: units.Velocity}
	if got, want := fieldFaults(message.English(), &bare), []string{"no limits, and no reason for none"}; !slices.Equal(got, want) {
		t.Errorf("of a row without limits it is said %q, want %q", got, want)
	}
	bare.Low, bare.High, bare.House = 1, 9, "3 m/s"
	for before, fine := range map[string]bool{"": false, "20 m/s": false, "a little": false, "2 m/s": true} {
		bare.Since, bare.Before = 6, before
		if got := fieldFaults(message.English(), &bare); (got == nil) != fine {
			t.Errorf("of one before which designs say %q it is said %q", before, got)
		}
	}
}

// An invented field, which goes where the face velocity goes.
func TestInventedField(t *testing.T) {
	listed := field.Fields
	defer func() { field.Fields = listed }()
	invented := field.Field{
		ID: "invented", Group: "air", Since: 1, House: "3 m/s", Used: func(text func(string) string) bool { return text("gas") == "air" },
		Kind: units.Velocity, Low: 1, High: 9,
		Real: func(in *field.Input) *float64 { return &in.Air.Velocity },
	}
	field.Fields = append(slices.Clone(listed), invented)
	texts := with("field.invented", "help.invented")
	if got := fieldFaults(texts, &invented); got != nil {
		t.Errorf("the walk says %q", got)
	}

	d, _, result := evaluated(t, "invented", "4 m/s", "hold_air", "velocity")
	in, err := design.Read(d)
	if err != nil || in.Air.Velocity != 4 {
		t.Errorf("read as %g m/s, %v", in.Air.Velocity, err)
	}
	if err := document.Check(d); err != nil {
		t.Errorf("a document with it: %v", err)
	}
	shown := report.Writer{Texts: texts, System: units.SI}.View(d, nil, &result).Fields
	if last := shown[len(shown)-1]; last.ID != "invented" || last.Text != "4 m/s" || !last.Used {
		t.Errorf("the form shows %+v", last)
	}
	d.Fields["invented"] = document.Entry{Text: "10 m/s", Origin: document.Customer}
	_, err = design.Read(d)
	var wrong design.FieldErrors
	if !errors.As(err, &wrong) || !wrong.Has("invented") || len(wrong) != 1 {
		t.Errorf("beyond its limits: %v", err)
	}
	d.Fields["gas"] = document.Entry{Text: "own", Origin: document.Customer}
	if in, err := design.Read(d); err != nil || in.Air.Velocity == 10 {
		t.Errorf("where it is hidden: %g m/s, %v", in.Air.Velocity, err)
	}
	last := 0.0
	kept := in.Keep(nil)
	design.SweepBank(in, &kept, "invented", []float64{2, 4, 6}, true, func(_ int, a map[rating.Quantity]rating.Answer) {
		drop := a[rating.AirDrop].Value
		if !(drop > last) || math.IsInf(drop, 0) {
			t.Errorf("the drop goes from %g to %g Pa in faster air", last, drop)
		}
		last = drop
	})
}

// Where the units of the two systems are so far apart that a number in the wrong one shows, the field says what is usual: it lies in its limits
// and holds what a new design says.
func TestUsualRanges(t *testing.T) {
	const apart = 5
	fields := append(slices.Clone(field.Fields), field.SpanCentre, field.SpanWidth)
	for i := range fields {
		f := &fields[i]
		if f.Usual == (field.Range{}) {
			if one := units.Out(f.Kind, 1, units.US) - units.Out(f.Kind, 0, units.US); f.IsNumber() {
				si := units.Out(f.Kind, 1, units.SI) - units.Out(f.Kind, 0, units.SI)
				if max(one/si, si/one) > apart {
					t.Errorf("%s: 1 %s and 1 %s are far apart, and nothing is said of what is usual", f.ID, f.Kind.Unit(units.SI), f.Kind.Unit(units.US))
				}
			}
			continue
		}
		if !(f.Usual.Low < f.Usual.High) || !f.Within(f.Usual.Low) || !f.Within(f.Usual.High) {
			t.Errorf("%s: what is usual, %v, is not within its limits", f.ID, f.Usual)
		}
		for _, text := range []string{f.House, f.Before} {
			if p, err := units.Parse(f.KindOf(text), text, units.SI); err == nil && p.SI != 0 && (p.SI < f.Usual.Low || p.SI > f.Usual.High) {
				t.Errorf("%s: the house's %s is not usual", f.ID, text)
			}
		}
	}
}
