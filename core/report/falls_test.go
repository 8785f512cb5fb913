package report

import (
	"fmt"
	"regexp"
	"sync/atomic"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/units"
)

// What the title of the height plot says is true when it is typed: at that height the efficiency is below 0.8, a step lower it
// is not; where it stays above or below, it does at the ends of the axis.
func TestThresholdIsTrueWhenTyped(t *testing.T) {
	changes := [][]string{{}, {"face_velocity", "5 m/s"}, {"fin_metal", "c11000"}, {"strip_thickness", "0.3 mm"}, {"film_source", "given"}, {"layout", "in_line"}}
	for _, sys := range []units.System{units.SI, units.US} {
		for _, change := range changes {
			if !titled(t, sys, change) {
				t.Errorf("%v: no height in the title", change)
			}
		}
	}
	// The curve of this one ends at 0.80, the design there has 0.79927.
	if !titled(t, units.US, []string{"face_velocity", "4.679 m/s", "fin_metal", "c11000", "strip_thickness", "0.3236 mm", "fin_pitch", "11.58 fpi", "fin_height", "11.55 mm", "fouling_outside", "0.0004594 m²K/W"}) {
		t.Error("a curve that ends above hides that the design falls below")
	}
	var named atomic.Int32
	count := proof.Proof{Share: 6, Full: 400, Seed: 77}.Run(t, func(c *proof.Case) {
		between := func(low, high float64, unit string) string {
			return fmt.Sprintf("%.4g %s", low+(high-low)*c.Rand.Float64(), unit)
		}
		one := func(list ...string) string { return list[c.Rand.IntN(len(list))] }
		if titled(c, []units.System{units.SI, units.US}[c.Rand.IntN(2)], []string{
			"face_velocity", between(1, 7, "m/s"), "fin_metal", one("al1060", "al1100", "c11000", "cs1010", "ss304"), "strip_thickness", between(0.15, 0.9, "mm"),
			"fin_pitch", between(5, 12, "fpi"), "fin_height", between(6, 18, "mm"), "layout", one("staggered", "in_line"), "fouling_outside", between(0, 0.0005, "m²K/W"),
		}) {
			named.Add(1)
		}
	})
	if int(named.Load()) < count/3 {
		t.Errorf("%d of %d titles name a height", named.Load(), count)
	}
}

var heightIn = regexp.MustCompile(`falls below 0\.8 at ([0-9./ ]+(?:mm|in))`)

// titled holds the title of a design to what comes of typing it. It reports whether the title names a height.
func titled(t testing.TB, sys units.System, pairs []string) bool {
	t.Helper()
	d := document.New()
	d.Units = sys
	for i := 0; i < len(pairs); i += 2 {
		d.Fields[pairs[i]] = document.Entry{Text: pairs[i+1], Origin: document.Customer}
	}
	in, h, err := design.ReadAndRate(d, nil)
	if err != nil {
		return false
	}
	eta := func(height string) float64 {
		d.Fields["fin_height"] = document.Entry{Text: height, Origin: document.Customer}
		in, h, err := design.ReadAndRate(d, nil)
		if err != nil {
			t.Fatal(err)
		}
		return in.Surface(&h.Thermal).Fin.Efficiency
	}
	curves := Writer{Texts: message.English(), System: sys}.Curves(in, h)[0]
	found := heightIn.FindStringSubmatch(curves.Title)
	if found == nil {
		last := units.Plain.Echo(units.Height, units.Out(units.Height, curves.Panels[1].Lines[1].X[samples-1], sys), sys)
		if at := eta(last); (curves.Title == "Efficiency stays above 0.8 at every height shown") != (at >= 0.8) {
			t.Errorf("%v: %q, but it is %.5f at %s", pairs, curves.Title, at, last)
		}
		return false
	}
	p, err := units.Parse(units.Height, found[1], sys)
	if err != nil {
		t.Fatal(err)
	}
	lower := units.Plain.Echo(units.Height, units.Step(units.Height, p.SI, -1, sys), sys)
	if at, before := eta(found[1]), eta(lower); at >= 0.8 || before < 0.8 {
		t.Errorf("%v: %q, but it is %.5f at %s and %.5f at %s", pairs, curves.Title, at, found[1], before, lower)
	}
	return true
}
