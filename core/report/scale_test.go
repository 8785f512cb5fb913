package report

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/units"
)

// Ranges chosen by hand as a person would draw the axis; engineering judgement, no source.
func TestNiceRange(t *testing.T) {
	for _, c := range []struct {
		lo, hi float64
		n      int
		want   string
	}{
		{5, 25, 5, "5 10 15 20 25"},
		{10.7, 29.3, 4, "10 15 20 25 30"},
		{0.74, 0.985, 4, "0.7 0.8 0.9 1.0"},
		{0.861, 0.93, 4, "0.86 0.88 0.90 0.92 0.94"},
		{0, 0.3, 3, "0.0 0.1 0.2 0.3"},
		{200, 450, 5, "200 250 300 350 400 450"},
		{5, 12, 4, "4 6 8 10 12"},
		{0.1, 7.4, 3, "0.0 2.5 5.0 7.5"},
		{-0.2, 0.7, 5, "-0.2 0.0 0.2 0.4 0.6 0.8"},
		{21, 21, 4, "18 19 20 21 22 23 24"},
		{0.0004, 0.0016, 4, "0.0000 0.0005 0.0010 0.0015 0.0020"},
		{0, 43210, 5, "0 10000 20000 30000 40000 50000"},
	} {
		if c.lo == c.hi {
			s := NiceRange(c.lo, c.hi, c.n)
			if !(s.Low < c.lo && c.hi < s.High) {
				t.Errorf("%g alone: %g to %g leaves it at the edge", c.lo, s.Low, s.High)
			}
			continue
		}
		if got := strings.Join(NiceRange(c.lo, c.hi, c.n).Texts(), " "); got != c.want {
			t.Errorf("NiceRange(%g, %g, %d): %s, want %s", c.lo, c.hi, c.n, got, c.want)
		}
	}
}

func TestNiceRangeIsNeat(t *testing.T) {
	proof.Proof{Share: 500, Full: 5000, Seed: 1}.Run(t, func(c *proof.Case) {
		t, rng := c, c.Rand
		lo := (rng.Float64() - 0.5) * math.Pow(10, float64(rng.IntN(9)-4))
		hi := lo + rng.Float64()*math.Pow(10, float64(rng.IntN(9)-4))
		n := 2 + rng.IntN(8)
		s := NiceRange(lo, hi, n)
		name := fmt.Sprintf("%g to %g in %d", lo, hi, n)
		slack := 1e-8*s.Step + 1e-14*math.Max(math.Abs(lo), math.Abs(hi))
		if s.Low > lo+slack || s.High < hi-slack {
			t.Fatalf("%s: %g to %g does not hold it", name, s.Low, s.High)
		}
		ticks := s.Ticks()
		if len(ticks)-1 > n {
			t.Fatalf("%s: %d steps", name, len(ticks)-1)
		}
		mantissa := strings.TrimRight(strings.NewReplacer(".", "", "-", "").Replace(strings.Split(strconv.FormatFloat(s.Step, 'e', -1, 64), "e")[0]), "0")
		if !strings.Contains(" 1 2 25 5 ", " "+mantissa+" ") {
			t.Fatalf("%s: step %g", name, s.Step)
		}
		for i, text := range s.Texts() {
			if v, err := strconv.ParseFloat(text, 64); err != nil || v != ticks[i] {
				t.Fatalf("%s: tick %g prints as %s", name, ticks[i], text)
			}
			if off := math.Abs(math.Remainder(ticks[i], s.Step)); off > slack {
				t.Fatalf("%s: tick %g is no multiple of %g", name, ticks[i], s.Step)
			}
		}
	})
}

func TestLevels(t *testing.T) {
	for _, c := range []struct{ lo, hi float64 }{{3.1, 34}, {0.55, 0.99}, {1, 8}, {0, 1}, {0.12, 0.1201}} {
		levels := Levels(c.lo, c.hi, MaxBands)
		if n := len(levels) + 1; n < 3 || n > MaxBands {
			t.Errorf("%g to %g: %d bands", c.lo, c.hi, n)
		}
		for _, v := range levels {
			if v <= c.lo || v >= c.hi {
				t.Errorf("%g to %g: level %g parts nothing", c.lo, c.hi, v)
			}
		}
	}
}

func TestBandIndex(t *testing.T) {
	levels := []float64{5, 10, 15}
	for v, want := range map[float64]byte{4.9: 0, 5: 1, 9.9: 1, 10: 2, 40: 3} {
		if got := BandIndex(levels, v); got != want {
			t.Errorf("%g is in band %d, want %d", v, got, want)
		}
	}
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if BandIndex(levels, v) != Absent {
			t.Errorf("%g has a band", v)
		}
	}
}

// What is in sight along a curve stays as long as the design is within, and what no reader could have in sight is left aside.
func TestSightStaysAlongCurves(t *testing.T) {
	w := Writer{Texts: message.English(), System: units.SI}
	by := w.span(heightAxis, 0.016, hair)
	for _, c := range []struct {
		name  string
		sight Range
		at    float64
		holds bool
	}{
		{"within", Range{by.From, 40}, 0.016, true},
		{"at its end", Range{by.From, 40}, 0.040, true},
		{"beyond", Range{by.From, 40}, 0.041, false},
		{"before", Range{20, 40}, 0.016, false},
		{"turned round", Range{40, 20}, 0.030, false},
		{"without end", Range{by.From, 1e6}, 0.016, false},
		{"from nought", Range{0, 40}, 0.016, false},
	} {
		held := w
		held.Along = Sight{"fin_height": c.sight}
		got, rule := held.span(heightAxis, c.at, hair), w.span(heightAxis, c.at, hair)
		want := rule
		if c.holds {
			want.From, want.To = c.sight.Low, c.sight.High
		}
		if got != want {
			t.Errorf("%s: %g to %g, want %g to %g", c.name, got.From, got.To, want.From, want.To)
		}
	}
}
