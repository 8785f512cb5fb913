package units

import (
	"slices"
	"testing"
)

// What was typed in the other system is shown whole where it is round there too, else with four digits.
func TestEntryOfTheOtherSystem(t *testing.T) {
	for _, c := range []struct {
		kind Kind
		text string
		s    System
		want string
	}{
		{Height, "40 mm", US, "1.575 in"}, // 40 / 25.4 = 1.5748
		{Height, "5/8 in", SI, "15.875 mm"},
		{Diameter, "25.4 mm", US, "1 in"},
		{Diameter, "300 mm", US, "11.811 in"},
		{Thickness, "0.4 mm", US, "0.01575 in"},
		{Wall, "14 BWG", SI, "2.108 mm"},
		{FinCount, "10 fpi", SI, "393.7 fins/m"},
		{Distance, "18 ft", SI, "5486.4 mm"},
		{Temp, "200 °F", SI, "93.33 °C"},
	} {
		p, err := Parse(c.kind, c.text, c.s)
		if got := Plain.Entry(c.kind, p.SI, c.s); err != nil || got != c.want {
			t.Errorf("%s is shown as %q (%v), want %q", c.text, got, err, c.want)
		}
	}
}

func TestReadingsOfANumberAlone(t *testing.T) {
	for _, c := range []struct {
		kind  Kind
		alone string
		unit  string
		s     System
		want  []string
	}{
		{FinCount, "10", "fins/m", SI, []string{"10 fins/m", "10 fpi"}},
		{FinCount, "400", "fins/in", US, []string{"400 fins/in", "400 fins/m"}},
		{FinCount, "2.5", "mm", SI, []string{"2.5 mm", "2.5 fpi", "2.5 fins/m"}},
		{Wall, "14", "mm", SI, []string{"14 mm", "14 BWG", "14 in"}},
		{Wall, "0.083", "BWG", US, []string{"0.083 in", "0.083 mm"}}, // there is no such gauge
		{Height, "5/8", "mm", SI, []string{"5/8 mm", "5/8 in"}},
		{Distance, "6", "mm", SI, []string{"6 mm", "6 m", "6 ft", "6 in"}},
		{Height, "0", "mm", SI, []string{"0 mm"}}, // nought is nought
		{Height, "5 mm", "mm", SI, nil},
		{Height, "high", "mm", SI, nil},
		{Count, "5", "", SI, nil},
	} {
		got, si := Readings(c.kind, c.alone, c.unit, c.s)
		if !slices.Equal(got, c.want) || len(si) != len(got) {
			t.Errorf("%s %q in %s may be %q of %v, want %q", c.kind, c.alone, c.unit, got, si, c.want)
		}
	}
}

func TestFinCountKeepsTheInchBeside(t *testing.T) {
	comma := Style{Decimal: ","}
	for _, c := range []struct {
		style *Style
		fpi   float64
		s     System
		want  string
		other string
	}{
		{&Plain, 10, SI, "393.7 fins/m, 10 fpi", "10 fpi"},
		{&Plain, 10, US, "10.00 fins/in", ""},
		{&Plain, 10.16, SI, "400.0 fins/m, 10.16 fpi", "10.16 fpi"},
		{&comma, 10.5, SI, "413,4 fins/m, 10,5 fpi", "10,5 fpi"},
	} {
		si := c.fpi / 0.0254
		if got, other := c.style.FinCount(si, c.s), c.style.Other(FinCount, si, c.s); got != c.want || other != c.other {
			t.Errorf("%g fpi: %q beside %q, want %q beside %q", c.fpi, got, other, c.want, c.other)
		}
	}
	if got := Plain.Other(Height, 0.016, SI); got != "" {
		t.Errorf("beside a height stands %q", got)
	}
}
