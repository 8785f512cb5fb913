package units

import "testing"

func TestStyles(t *testing.T) {
	for _, c := range []struct {
		short, long    string
		figure, full   string
		echo, scarcely string
	}{
		{"1234.5", "12\u202f345.6", "12\u202f345.68 mm", "12345.6789", "12345.679 mm", "1234.57 mm"},
		{"1,234.5", "12,345.6", "12,345.68 mm", "12345.6789", "12345.679 mm", "1,234.57 mm"},
		{"1.234,5", "12.345,6", "12.345,68 mm", "12345,6789", "12345,679 mm", "1.234,57 mm"},
		{"1234,5", "12345,6", "12345,68 mm", "12345,6789", "12345,679 mm", "1234,57 mm"},
	} {
		n, ok := StyleOf(c.short, c.long)
		if !ok {
			t.Fatalf("%s and %s are no style", c.short, c.long)
		}
		for want, got := range map[string]string{
			c.figure: n.Figure(Diameter, 12.3456789, SI).String(), c.full: n.Full(Diameter, 12.3456789, SI),
			c.echo: n.Echo(Diameter, 12.3456789, SI), c.scarcely: n.Figure(Diameter, 1.23456789, SI).String(),
		} {
			if got != want {
				t.Errorf("%s: %q, want %q", c.long, got, want)
			}
		}
	}
	for _, bad := range [][2]string{{"", ""}, {"1234", "12345"}, {"1234,5", "12 345.6"}, {"1,234.5", "12345.6"}, {"1.234.5", "12.345.6"}} {
		if n, ok := StyleOf(bad[0], bad[1]); ok {
			t.Errorf("%q is the style %+v", bad, n)
		}
	}
}

// What a reader types in a language reads as meant there, or as two ways; and is shown as it was typed.
func TestTypedInAnotherLanguage(t *testing.T) {
	comma := Style{Decimal: ",", Group: ".", From: 4}
	for typed, want := range map[string]float64{"2,108 mm": 2.108e-3, "12,5": 12.5e-3, "0,4 mm": 0.4e-3, "1234,5": 1.2345, "5/8 in": 0.015875, "12.5 mm": 12.5e-3, "2.108 mm": 0, "1.234,5": 1.2345, "1.234,": 0} {
		p, err := Parse(Diameter, comma.Typed(typed), SI)
		if want == 0 && err == nil || want != 0 && p.SI-want > 1e-12 || want-p.SI > 1e-12 {
			t.Errorf("%s is read as %g, %v", typed, p.SI, err)
		}
		if back := comma.Typed(comma.Typed(typed)); back != typed {
			t.Errorf("%s is shown as %s", typed, back)
		}
	}
	if Plain.Typed("2,108") != "2,108" {
		t.Error("English changes what is typed")
	}
	if got := comma.Write("0.134 Re^0.681 (s / t)^0.2. π/2.5"); got != "0,134 Re^0,681 (s / t)^0,2. π/2,5" {
		t.Errorf("written as %s", got)
	}
}
