package design

import (
	"math"
	"strings"
	"testing"

	"finwright/core/airside"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/units"
)

// said puts messages in words.
func said(list []message.Message) string {
	var out []string
	for _, m := range list {
		out = append(out, message.English().Render(m, units.SI))
	}
	return strings.Join(out, "; ")
}

// At 15.875 mm every correlation of high fins is in range and at 16 mm some are not: nothing takes over, so the figures
// change by little, not from 103 to 83 Pa.
func TestNoCorrelationTakesOver(t *testing.T) {
	low, high := evaluate(t, read(t, "fin_height", "15.875 mm")), evaluate(t, read(t, "fin_height", "16 mm"))
	if low.Heat.Thermal.Pair != high.Heat.Thermal.Pair {
		t.Errorf("correlations %v and %v", low.Heat.Thermal.Pair, high.Heat.Thermal.Pair)
	}
	if low.Heat.Thermal.UsedDrop.InRange == high.Heat.Thermal.UsedDrop.InRange {
		t.Error("the range does not end between the heights: the test proves nothing")
	}
	for _, id := range []string{"duty", "air_drop", "film", "u_bare"} {
		a, _ := low.Find(id)
		b, _ := high.Find(id)
		if math.Abs(b.SI/a.SI-1) > 0.01 { // of a height that grows by 0.8 %
			t.Errorf("%s goes from %g to %g", id, a.SI, b.SI)
		}
	}
}

// What is named is used whatever its range; what is in range is a press away.
func TestNamedMethod(t *testing.T) {
	in := read(t, "film_method", "briggs_young_1963", "drop_method", "ganguli_1985_drop")
	r := evaluate(t, in)
	th := r.Heat.Thermal
	if th.UsedFilm.ID != "briggs_young_1963" || th.UsedDrop.ID != "ganguli_1985_drop" || th.UsedFilm.InRange {
		t.Fatalf("film by %s in range %v, drop by %s", th.UsedFilm.ID, th.UsedFilm.InRange, th.UsedDrop.ID)
	}
	if film, _ := r.Find("film"); film.SI != th.UsedFilm.Answer.Coefficient {
		t.Errorf("film %g, not %g", film.SI, th.UsedFilm.Answer.Coefficient)
	}
	for _, n := range r.Notices {
		if n.Field != "film_method" {
			continue
		}
		if n.State != figure.Outside || len(n.Change) != 1 || n.Change[0].Choice != "esdu_86022" {
			t.Errorf("the remark on the range proposes %v", n.Change)
		}
		return
	}
	t.Error("no remark on the range")
}

// The headline tells a spread of more than a tenth, a correlation out of its range, and constants that are not confirmed.
func TestWhatAFigureRestsOn(t *testing.T) {
	calm := evaluate(t, read(t))
	for _, id := range []string{"u_bare", "duty"} {
		if f, _ := calm.Find(id); len(f.Beside) > 0 {
			t.Errorf("beside %s of the default design: %q", id, said(f.Beside))
		}
	}
	for _, c := range []struct {
		name   string
		pairs  []string
		figure string
		want   string
	}{
		{"out of range", []string{"fin_height", "19 mm"}, "duty", "out of range; in range 1"},
		{"none in range", []string{"layout", "in_line", "drop_method", "esdu_86022_drop"}, "air_drop", "no correlation is in range"},
		{"from memory", []string{"fin_type", "welded", "fin_metal", "cs1010", "strip_thickness", "1.27 mm", "fin_pitch", "5 fpi"}, "duty", "constants from memory, not confirmed"},
		{"from memory", []string{"fin_type", "welded", "fin_metal", "cs1010", "strip_thickness", "1.27 mm", "fin_pitch", "5 fpi"}, "air_drop", "constants from memory, not confirmed"},
		{"wide", []string{"drop_method", "esdu_86022_drop", "fin_height", "12.7 mm"}, "air_drop", "in range "},
	} {
		f, _ := evaluate(t, read(t, c.pairs...)).Find(c.figure)
		if got := said(f.Beside); !strings.Contains(got, c.want) {
			t.Errorf("%s: beside %s stands %q, not %q", c.name, c.figure, got, c.want)
		}
	}
}

// The spread of the duty is that of banks that are settled anew by each correlation in range.
func TestSpreadIsSettled(t *testing.T) {
	in := read(t)
	h := rate(t, in)
	low, high, n := math.Inf(1), 0.0, 0
	for i, v := range h.Thermal.Films {
		if !v.InRange {
			continue
		}
		n++
		other := in
		other.Air.FilmMethod = airside.FilmMethods[i].ID
		q := math.Abs(rate(t, other).Thermal.Duty.Heat)
		low, high = min(low, q), max(high, q)
	}
	got := h.Spread
	if got.Count != n || n < 2 || math.Abs(got.Low.Duty.Heat/low-1) > 1e-5 || math.Abs(got.High.Duty.Heat/high-1) > 1e-5 {
		t.Errorf("duty %g to %g by %d, want %g to %g by %d", got.Low.Duty.Heat, got.High.Duty.Heat, got.Count, low, high, n)
	}
}

// A drop that nothing computes is absent, and a limit on it is neither passed nor failed.
func TestNoDropIsNotJudged(t *testing.T) {
	in := read(t, "layout", "in_line", "drop_allowed", "1 Pa")
	r := evaluate(t, in)
	for _, id := range []string{"air_drop", "fan_power", "velocity_allowed"} {
		if f, ok := r.Find(id); !ok || f.Absent.None() || f.State != figure.Plain && f.State != figure.Watch {
			t.Errorf("%s: absent %v, state %s", id, f.Absent, f.State)
		}
	}
	judged := ""
	for _, n := range r.Notices {
		if n.Field == "drop_allowed" {
			judged = string(n.State) + " " + n.Message.Key
		}
	}
	if judged != "watch notice.drop_not_judged" {
		t.Errorf("the limit of the drop is judged: %q", judged)
	}
	row, err := RowOf(in)
	if err != nil {
		t.Fatal(err)
	}
	for i, c := range row.Cells {
		if RowFigures[i].ID == "air_drop" && c.Absent.None() {
			t.Error("a row has a drop")
		}
	}
}

// Faster air always costs more drop: there is one velocity for a drop allowed, and the bank keeps to it there.
func TestVelocityAllowedIsTheOnlyOne(t *testing.T) {
	in := read(t, "drop_allowed", "80 Pa")
	f, _ := evaluate(t, in).Find("velocity_allowed")
	last := 0.0
	for v := 0.2; v < 12; v *= 1.02 {
		at := in
		field.Must("face_velocity").Set(&at, v)
		drop := dropOf(t, at)
		if drop <= last {
			t.Fatalf("the drop falls from %g to %g Pa at %g m/s", last, drop, v)
		}
		if (drop < 80) != (v < f.SI) {
			t.Errorf("%g Pa at %g m/s, while 80 Pa are said to be reached at %g", drop, v, f.SI)
		}
		last = drop
	}
}

// With the root counted over the foot free area, diameter, height and areas move together and the fin OD stays; the drop is
// 4.5 % larger footed, 9.3 % overlapped (computed independently), and a limit is held against the larger.
func TestRootIsCountedOneWay(t *testing.T) {
	for _, c := range []struct {
		kind string
		more float64
	}{{"footed", 0.045}, {"overlap_footed", 0.093}} {
		bare, foot := read(t, "fin_type", c.kind), read(t, "fin_type", c.kind, "root_basis", "foot")
		a, b := bare.Pitches(), foot.Pitches()
		if b.OD <= a.OD || b.FinHeight() >= a.FinHeight() || b.AreaRatio >= a.AreaRatio || b.FreeRatio() >= a.FreeRatio() || b.FinOD != a.FinOD {
			t.Errorf("%s: bare %+v, over the foot %+v", c.kind, a, b)
		}
		r := evaluate(t, bare)
		drop, _ := r.Find("air_drop")
		other, _ := r.Find("air_drop_foot")
		if got := other.SI/drop.SI - 1; math.Abs(got-c.more) > 0.0005 {
			t.Errorf("%s: the drop over the foot is %.4f larger, want %.3f", c.kind, got, c.more)
		}
		between := (drop.SI + other.SI) / 2
		in := bare
		in.Bank.DropAllowed = between
		over := false
		for _, n := range evaluate(t, in).Notices {
			over = over || n.Message.Key == "notice.drop_over_other"
		}
		if !over {
			t.Errorf("%s: %g Pa allowed, %g Pa over the foot, and nothing is said", c.kind, between, other.SI)
		}
	}
	if f, ok := evaluate(t, read(t, "fin_type", "embedded", "tube_wall", "2.77 mm")).Find("air_drop_foot"); ok {
		t.Errorf("a tube without a foot has %+v", f)
	}
}
