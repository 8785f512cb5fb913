package design

import (
	"testing"

	"finwright/core/message"
	"finwright/core/units"
)

// What a coil saves is never told as less than nothing: where it costs more, the name says so.
func TestSavedIsNeverNegative(t *testing.T) {
	for _, c := range []struct {
		other, used int
		want        float64
		label       string
	}{{20, 4, 16, ""}, {4, 4, 0, ""}, {4, 20, 16, "changes_more"}} {
		f := against("changes_other", units.Count, number("X_x", c.other), number("X", c.used))
		if f.SI != c.want || f.Label != c.label {
			t.Errorf("%d against %d: %g, %q", c.used, c.other, f.SI, f.Label)
		}
	}
	for _, key := range []string{"figure.changes_more", "figure.joints_more", "figure.hours_more"} {
		if !message.English().Has(key) {
			t.Errorf("no text %s", key)
		}
	}
}
