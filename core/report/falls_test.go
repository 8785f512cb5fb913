package report

import (
	"regexp"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/units"
)

// What the title of the height plot says is true when it is typed: at that height the efficiency is below 0.8, a step lower it
// is not.
func TestThresholdIsTrueWhenTyped(t *testing.T) {
	number := regexp.MustCompile(`falls below 0\.8 at ([0-9./ ]+(?:mm|in))`)
	for _, sys := range []units.System{units.SI, units.US} {
		for _, change := range [][2]string{{}, {"face_velocity", "5 m/s"}, {"fin_metal", "c11000"}, {"strip_thickness", "0.3 mm"}, {"film_source", "given"}, {"layout", "in_line"}} {
			d := document.New()
			d.Units = sys
			if change[0] != "" {
				d.Fields[change[0]] = document.Entry{Text: change[1], Origin: document.Customer}
			}
			eta := func(height string) float64 {
				if height != "" {
					d.Fields["fin_height"] = document.Entry{Text: height, Origin: document.Customer}
				}
				in, h, err := design.ReadAndRate(d, nil)
				if err != nil {
					t.Fatal(err)
				}
				return in.Surface(&h.Thermal).Fin.Efficiency
			}
			in, h, err := design.ReadAndRate(d, nil)
			if err != nil {
				t.Fatal(err)
			}
			title := Writer{Texts: message.English(), System: sys}.Curves(in, h)[0].Title
			found := number.FindStringSubmatch(title)
			if found == nil {
				t.Errorf("%v: no height in %q", change, title)
				continue
			}
			p, err := units.Parse(units.Height, found[1], sys)
			if err != nil {
				t.Fatal(err)
			}
			lower := units.Plain.Echo(units.Height, units.Step(units.Height, p.SI, -1, sys), sys)
			if at, before := eta(found[1]), eta(lower); at >= 0.8 || before < 0.8 {
				t.Errorf("%v: %q, but it is %.5f at %s and %.5f at %s", change, title, at, found[1], before, lower)
			}
		}
	}
}
