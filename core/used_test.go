package core

import (
	"encoding/json"
	"maps"
	"math"
	"slices"
	"strconv"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/testdata/cases"
	"finwright/wasm/plots"
)

// A field that nothing uses is asked for in vain. The tests of this file change each and look whether any answer changes.

// asked returns d with entries of choice such that it asks for the field; ok is false where there are none.
func asked(f *field.Field, d document.Document, deep int) (document.Document, bool) {
	var looked []string
	if f.Used(func(id string) string { looked = append(looked, id); return d.Text(id) }) {
		return d, true
	}
	for _, id := range looked {
		by := field.Must(id)
		if by.Choice == nil || deep == 0 {
			continue
		}
		for _, choice := range by.Choices() {
			if choice != d.Text(id) {
				if next, ok := asked(f, said(d, id, choice), deep-1); ok {
					return next, true
				}
			}
		}
	}
	return d, false
}

// said returns d with another entry.
func said(d document.Document, id, text string) document.Document {
	d.Fields = maps.Clone(d.Fields)
	d.Fields[id] = document.Entry{Text: text, Origin: document.Customer}
	return d
}

// textsOf lists what may be typed into a field: all its choices, or numbers all over its range.
func textsOf(f *field.Field, house *shop.Capability) (out []string) {
	switch {
	case f.Choice != nil:
		return f.Choices()
	case f.Day != nil:
		return []string{"2026-01-15", "2027-03-01"}
	case f.Text != nil:
		return []string{"Invented", house.Lines[0].Name, house.Lines[1].Name}
	}
	low, high := f.Low, f.High
	if f.Unbounded != "" {
		p, err := units.Parse(f.Kind, f.House, units.SI)
		if err != nil {
			return nil
		}
		low, high = p.SI/2, p.SI*2
	}
	for _, share := range []float64{0.5, 0.1, 0.9, 0.01, 0.03, 0.3, 0.001} {
		si := low + share*(high-low)
		if f.Whole != nil {
			si = math.Round(si)
		}
		out = append(out, strconv.FormatFloat(units.In(f.Kind, si, units.SI), 'g', 6, 64)+" "+f.Kind.Unit(units.SI))
	}
	return out
}

// answers returns what the page says of a design, but for the form: its figures, remarks and verdicts, and if it is to be whole the
// cases, the curves and how it is made too. ok is false where its entries do not go together.
func answers(t *testing.T, d document.Document, house *shop.Capability, whole bool) (said string, ok bool) {
	t.Helper()
	in, h, err := design.ReadAndRate(d, house)
	if err != nil {
		return "", false
	}
	result := design.Evaluate(in, h)
	plan := design.Make(in, result.Heat)
	plan.Day, _ = shop.ParseDay("2026-11-27")
	result.AddMaking(&plan)
	w := report.Writer{Texts: message.English(), System: units.SI}
	result.AddCarried(d)
	view := w.View(d, nil, &result)
	view.Fields, view.Spans = nil, nil
	all := []any{view}
	if whole {
		all = append(all, w.Cases(in, h), w.Making(&plan, report.Room{Wide: 700}))
		for _, c := range slices.Concat(w.Curves(in, h), w.HeatCurves(in, h)) {
			all = append(all, plots.Patch(c, nil, units.SI))
		}
	}
	text, err := json.Marshal(all)
	if err != nil {
		t.Fatal(err)
	}
	return string(text), true
}

// basesOfUse are designs that are changed until they ask for a field: a new one, one that says what a new one leaves open and others
// hang on (sulphur and the water of a dry flue gas, the pressure of an own fluid, how far a tube is bowed), and the examples.
func basesOfUse() []document.Document {
	open := document.New()
	for id, text := range map[string]string{"flue_basis": "dry", "share_n2": "88.2 %", "share_so2": "0.4 %", "flue_water": "15 %", "own_fluid_pressure": "1000 kPa", "tube_bow": "2 mm"} {
		open = said(open, id, text)
	}
	bases := []document.Document{document.New(), open}
	for _, c := range cases.List() {
		bases = append(bases, c.Document())
	}
	return bases
}

// useFaults says of a field that nothing uses it: in no design does another entry change an answer, or is it refused though it lies in
// the field's range.
func useFaults(t *testing.T, f *field.Field, house *shop.Capability, bases []document.Document) string {
	for _, whole := range []bool{false, true} {
		for _, base := range bases {
			if _, ok := base.Fields[f.ID]; !ok {
				base = said(base, f.ID, f.House)
			}
			d, ok := asked(f, base, 4)
			if !ok {
				return "no design asks for it"
			}
			before, ok := answers(t, d, house, whole)
			if !ok {
				continue
			}
			for _, text := range textsOf(f, house) {
				if after, ok := answers(t, said(d, f.ID, text), house, whole); !ok || after != before {
					return ""
				}
			}
		}
	}
	return "whatever is entered, no answer changes"
}

func TestEveryFieldIsUsed(t *testing.T) {
	house, bases := shop.House(), basesOfUse()
	for i := range field.Fields {
		if fault := useFaults(t, &field.Fields[i], &house, bases); fault != "" {
			t.Errorf("%s: %s", field.Fields[i].ID, fault)
		}
	}
}

// A field that is read and then forgotten is told, and one that no design asks for.
func TestUselessFieldIsFaulty(t *testing.T) {
	listed := field.Fields
	defer func() { field.Fields = listed }()
	house, bases := shop.House(), basesOfUse()
	var forgotten float64
	for want, used := range map[string]bool{"whatever is entered, no answer changes": true, "no design asks for it": false} {
		invented := field.Field{
			ID: "invented", Group: "air", Since: 1, House: "3 m/s", Used: func(func(string) string) bool { return used },
			Kind: units.Velocity, Low: 1, High: 9, Real: func(*field.Input) *float64 { return &forgotten },
		}
		field.Fields = append(slices.Clone(listed), invented)
		if got := useFaults(t, &invented, &house, bases); got != want {
			t.Errorf("it is said %q, want %q", got, want)
		}
	}
}
