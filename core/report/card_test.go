package report

import (
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// The first example by hand: 1 in = 25.4 mm, 1 ft = 304.8 mm, 1 lb = 0.45359237 kg.
func TestCardSaysTheTubeInBothSystems(t *testing.T) {
	in, h, err := design.ReadAndRate(cases.First(), nil)
	if err != nil {
		t.Fatal(err)
	}
	for system, line := range map[units.System]string{
		units.SI: "25.4 mm × 2.108 mm, fins 15.875 mm × 0.4 mm, 393.7 fins/m; 1.701 m²/m, 1.818 kg/m",
		units.US: "1 in × 0.083 in, fins 5/8 in × 0.01575 in, 10 fins/in; 5.580 ft²/ft, 1.221 lb/ft",
	} {
		w := Writer{Texts: message.English(), System: system}
		card := w.Card(in, h)
		if card.Line != line {
			t.Errorf("%s: %q, want %q", system, card.Line, line)
		}
		got := map[string]CardRow{}
		for _, row := range card.Rows {
			got[row.Label] = row
		}
		for _, want := range []CardRow{
			{"Outside diameter", "25.4 mm", "1 in", ""},
			{"Wall", "2.108 mm", "0.083 in", "14 BWG"},
			{"Fin count", "393.7 fins/m", "10 fins/in", ""},
			{"Fin pitch", "2.540 mm", "0.1000 in", ""},
			{"Outside surface", "1.701 m²/m", "5.580 ft²/ft", ""}, // 1.7007 / 0.3048
			{"Finned tube mass", "1.818 kg/m", "1.221 lb/ft", ""}, // 1.8178 * 0.3048 / 0.45359
		} {
			if got[want.Label] != want {
				t.Errorf("%+v, want %+v", got[want.Label], want)
			}
		}
	}
}

// What is asked for on the telephone, by hand: 5.6 m with two plain ends of 40 mm, 120 of them. 1.2109 kg/m of tube over all and
// 0.6069 kg/m of fins over 5.52 m make 10.13 kg; 1.7007 m2/m over 5.52 m and pi 25.4 mm over 80 mm make 9.394 m2.
func TestCardTellsWeightAndArea(t *testing.T) {
	for count, want := range map[string]string{
		"120": "120 tubes of 5600 mm: 10.13 kg and 9.394 m² each, 1216 kg and 1127 m² in all",
		"1":   "One tube of 5600 mm: 10.13 kg and 9.394 m²",
	} {
		d := cases.First()
		d.Fields["quantity"] = document.Entry{Text: count, Origin: document.Customer}
		in, h, err := design.ReadAndRate(d, nil)
		if err != nil {
			t.Fatal(err)
		}
		card := Writer{Texts: message.English(), System: units.SI}.Card(in, h)
		if card.Told != want {
			t.Errorf("%q, want %q", card.Told, want)
		}
		if rows := map[string]int{"120": 4, "1": 2}[count]; len(card.Totals) != rows {
			t.Errorf("%+v", card.Totals)
		}
	}
}
