package report

import (
	"strings"
	"testing"

	"finwright/core/design"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// lines is the first example, made by the house's shop.
func lines(t *testing.T, s units.System) (w Writer, in field.Input, res design.Result) {
	t.Helper()
	house := shop.House()
	in, h, err := design.ReadAndRate(cases.First(), &house)
	if err != nil {
		t.Fatal(err)
	}
	res = design.Evaluate(in, h)
	m := design.Make(in, h)
	res.AddMaking(&m)
	return Writer{Texts: message.English(), System: s, Currency: house.Currency}, in, res
}

// A figure stands by itself in a line: with its area, its mark and what it was found at.
func TestFigureAsALine(t *testing.T) {
	for _, c := range []struct {
		id     string
		system units.System
		want   string
	}{
		{"area_ratio", units.SI, "Area ratio (on bare tube area) 21.31, at 25.4 mm × 2.108 mm, fins 15.875 mm × 0.4 mm, 393.7 fins/m"},
		{"u_bare", units.SI, "U on bare tube (on bare tube area) 318.1 W/m²K, at 25.4 mm × 2.108 mm, fins 15.875 mm × 0.4 mm, 393.7 fins/m; Moist air 3 m/s, 32 °C; Own fluid 30 kg/s, 95 °C; 4 rows of 30"},
		{"u_bare", units.US, "U on bare tube (on bare tube area) 56.02 Btu/h·ft²·°F, at 1 in × 0.083 in, fins 5/8 in × 0.01575 in, 10 fins/in; Moist air 590.6 ft/min, 89.6 °F; Own fluid 238100 lb/h, 203 °F; 4 rows of 30"},
		{"fin_efficiency", units.SI, "Fin efficiency (on the fin faces) 0.8582 (good), at 25.4 mm × 2.108 mm, fins 15.875 mm × 0.4 mm, 393.7 fins/m; film 48.17 W/m²K"},
		{"price_tube", units.SI, "Price per tube (per tube) 53.78 EUR, at 25.4 mm × 2.108 mm, fins 15.875 mm × 0.4 mm, 393.7 fins/m; 120 tubes of 5600 mm"},
		{LineFigure, units.SI, "Line 1, tension-wound (good), at 25.4 mm × 2.108 mm, fins 15.875 mm × 0.4 mm, 393.7 fins/m; 120 tubes of 5600 mm"},
		{"pitch", units.SI, "Fin pitch 2.540 mm (393.7 fins/m, 10 fpi), at 25.4 mm × 2.108 mm, fins 15.875 mm × 0.4 mm, 393.7 fins/m"},
		{"invented", units.SI, ""},
	} {
		w, in, res := lines(t, c.system)
		if got := w.FigureLine(c.id, &in, &res); got != c.want {
			t.Errorf("%s: %q, want %q", c.id, got, c.want)
		}
	}
}

// Every figure has a line, in plain text and one line long.
func TestEveryFigureIsALine(t *testing.T) {
	w, in, res := lines(t, units.SI)
	for _, g := range res.Groups {
		for _, f := range g.Figures {
			line, shown := w.FigureLine(f.ID, &in, &res), w.Figure(f)
			if strings.ContainsAny(line, "\n\t<") || !strings.HasPrefix(line, shown.Label) || !strings.Contains(line, shown.Value+shown.Absent) || !strings.Contains(line, "25.4 mm × 2.108 mm") {
				t.Errorf("%s is the line %q", f.ID, line)
			}
		}
	}
}

func TestSentenceAsALine(t *testing.T) {
	w, in, _ := lines(t, units.SI)
	got := w.SentenceLine("Efficiency falls below 0.8\n at 19.7 mm", &in, "surface")
	if want := "Efficiency falls below 0.8 at 19.7 mm (25.4 mm × 2.108 mm, fins 15.875 mm × 0.4 mm, 393.7 fins/m)"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
