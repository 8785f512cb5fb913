package units

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"
)

// digitsOf is a printed quantity without what groups its digits, as it may be typed.
func digitsOf(text string) string { return strings.ReplaceAll(text, Plain.Group, "") }

// Of every kind, in both systems: two quantities that differ by more than the noise of a conversion are not printed alike beside
// each other, and read back they stand in the order in which they are; what is the same is printed as ever.
func TestWhatDiffersIsNotPrintedAlike(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 8))
	for _, k := range kinds {
		for _, s := range []System{SI, US} {
			for range 40 {
				shown := math.Pow(10, 6*r.Float64()-2)
				if r.IntN(3) == 0 {
					shown = math.Round(shown*8) / 8
				}
				limit := Out(k.kind, shown+0.125, s)
				value := limit * (1 + math.Pow(10, -8.5+7*r.Float64())*float64(1-2*r.IntN(2)))
				both := []float64{value, limit}
				for form, print := range map[string]func(float64, Beside) string{
					"said":   func(si float64, b Beside) string { return Plain.SayBeside(k.kind, si, b, s) },
					"figure": func(si float64, b Beside) string { return Plain.FigureBeside(k.kind, si, b, s).String() },
				} {
					a, b := print(value, Beside{Others: both}), print(limit, Beside{Others: both})
					if a == b {
						t.Fatalf("%s of %s in %s: %.12g and %.12g both print %q", form, k.kind, s, value, limit, a)
					}
					if same := print(limit, Beside{Others: []float64{limit, limit * (1 + 1e-12)}}); same != print(limit, Beside{}) {
						t.Fatalf("%s of %s in %s: %q beside itself, %q alone", form, k.kind, s, same, print(limit, Beside{}))
					}
					pa, errA := Parse(k.kind, digitsOf(a), s)
					pb, errB := Parse(k.kind, digitsOf(b), s)
					if errA != nil || errB != nil || k.kind.Money() {
						continue // not a kind that is entered
					}
					if (pa.SI < pb.SI) != (value < limit) {
						t.Fatalf("%s of %s in %s: %.12g prints %q, %.12g prints %q", form, k.kind, s, value, a, limit, b)
					}
				}
			}
		}
	}
}

// A least is printed so that what is typed from it is no less, a most so that it is no more, and neither is far from it.
func TestWhatIsPrintedToASideDoesWhenTyped(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for _, k := range kinds {
		for _, s := range []System{SI, US} {
			for range 40 {
				si := Out(k.kind, math.Pow(10, 5*r.Float64()-1), s)
				for _, side := range []Side{Up, Down} {
					for _, text := range []string{Plain.SayBeside(k.kind, si, Beside{Side: side}, s), Plain.FigureBeside(k.kind, si, Beside{Side: side}, s).String()} {
						p, err := Parse(k.kind, digitsOf(text), s)
						if err != nil {
							continue // not a kind that is entered
						}
						if side == Up && Above(si, p.SI) || side == Down && Above(p.SI, si) {
							t.Errorf("%s in %s: %.12g is printed %q to the side %d", k.kind, s, si, text, side)
						}
						if at, near := In(k.kind, p.SI, s), In(k.kind, si, s); math.Abs(at-near) > max(1, 0.02*near) {
							t.Errorf("%s in %s: %.12g is printed %q", k.kind, s, near, text)
						}
					}
				}
			}
		}
	}
}

func TestDigitsAreAddedAsNeeded(t *testing.T) {
	for _, c := range []struct {
		kind         Kind
		value, limit float64
		s            System
		a, b         string
	}{
		{Factor, 0.79996, 0.8, SI, "0.79996", "0.8"},
		{Factor, 0.7996, 0.8, SI, "0.7996", "0.8"},
		{Height, 0.015875001, 0.015875, US, "0.62500004 in", "0.625 in"},
		{Height, 0.016, 0.015875, US, "0.63 in", "5/8 in"},
		{Temp, 130.0004, 130, SI, "130.0004 °C", "130 °C"},
		{Count, 10000.4, 10000, SI, "10000.4", "10000"},
		{Distance, 6.0001, 6, US, "19 ft 8.224 in", "19 ft 8.22 in"},
	} {
		both := []float64{c.value, c.limit}
		if a, b := Plain.SayBeside(c.kind, c.value, Beside{Others: both}, c.s), Plain.SayBeside(c.kind, c.limit, Beside{Others: both}, c.s); a != c.a || b != c.b {
			t.Errorf("%q beside %q, want %q beside %q", a, b, c.a, c.b)
		}
	}
}
