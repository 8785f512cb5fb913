package plots

import (
	"math"
	"testing"

	"finwright/core/report"
	"finwright/core/units"
)

// shownBy is what the page sends back of an update.
func shownBy(u Update) []Axes {
	a := Axes{ID: u.ID, Units: units.SI, Field: u.X.Field, X: [2]float64{u.Patch.X[0].Min, u.Patch.X[0].Max}}
	for _, y := range u.Patch.Y {
		a.Y = append(a.Y, [2]float64{y.Min, y.Max})
	}
	return []Axes{a}
}

// times multiplies what the first panel shows.
func times(by float64) report.Curves {
	c := sample()
	for _, l := range c.Panels[0].Lines {
		for i := range l.Y {
			l.Y[i] *= by
		}
	}
	return c
}

// Axes hold while the curves stay within and when they shrink; they widen for a curve that leaves; without any in sight, or with those of
// other units or another plot, they fit.
func TestAxesHold(t *testing.T) {
	first := Patch(sample(), nil, units.SI)
	shown := shownBy(first)
	same := func(name string, got, want AxisRange) {
		t.Helper()
		if got.Min != want.Min || got.Max != want.Max {
			t.Errorf("%s: %g to %g, want %g to %g", name, got.Min, got.Max, want.Min, want.Max)
		}
	}
	if first.Loose {
		t.Error("what fits is called loose")
	}
	lower := Patch(times(0.5), shown, units.SI)
	same("lower curves", lower.Patch.Y[0], first.Patch.Y[0])
	if !lower.Loose {
		t.Error("what is wider than its curves is not called loose")
	}
	higher := Patch(times(3), shown, units.SI)
	if y := higher.Patch.Y[0]; y.Max < 3*first.Patch.Y[0].Max*0.8 || y.Min > first.Patch.Y[0].Min {
		t.Errorf("higher curves: %g to %g, after %g to %g", y.Min, y.Max, first.Patch.Y[0].Min, first.Patch.Y[0].Max)
	}
	same("the panel that stayed", higher.Patch.Y[1], first.Patch.Y[1])
	same("and back", Patch(sample(), shownBy(higher), units.SI).Patch.Y[0], higher.Patch.Y[0])

	fits := Patch(times(0.5), nil, units.SI).Patch.Y[0]
	other := shownBy(first)
	other[0].ID = "pitch"
	same("of another plot", Patch(times(0.5), other, units.SI).Patch.Y[0], fits)
	same("of other units", Patch(times(0.5), shown, units.US).Patch.Y[0], fits)
	for _, odd := range [][2]float64{{5, 5}, {9, 1}, {0, 1e300}, {-math.MaxFloat64, 1}} {
		shown[0].Y[0] = odd
		same("odd ends", Patch(times(0.5), shown, units.SI).Patch.Y[0], fits)
	}
}

// An axis that would mislead says where it begins, if that is not at nought.
func TestAxisSaysWhereItBegins(t *testing.T) {
	c := sample()
	c.Panels[1].From = func(low string) string { return "from " + low }
	y := Patch(c, nil, units.SI).Patch.Y
	if y[0].Name != "" || y[1].Min == 0 || y[1].Name != "from "+y[1].Texts[0] {
		t.Errorf("axes are named %q and %q, from %g", y[0].Name, y[1].Name, y[1].Min)
	}
	for _, l := range c.Panels[1].Lines {
		for i := range l.Y {
			l.Y[i] = 0.98 + 0.02*float64(i)/60
		}
	}
	if y := Patch(c, nil, units.SI).Patch.Y[1]; y.Max != 1 {
		t.Errorf("an efficiency is shown up to %g", y.Max)
	}
	for _, l := range c.Panels[1].Lines {
		for i := range l.Y {
			l.Y[i] = float64(i) / 60
		}
	}
	if y := Patch(c, nil, units.SI).Patch.Y[1]; y.Min != 0 || y.Name != "Fin efficiency" {
		t.Errorf("from nought it is named %q", y.Name)
	}
}
