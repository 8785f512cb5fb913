package making

import (
	"math"
	"testing"

	"finwright/core/material"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Hand calculation: 1000 rpm, 10 fpi and a 1 in tube feed 2.54 m/min of tube and
// 79.8 m/min of strip; 5.9 m of finned length take 2.32 min.
func TestSpeedsByHand(t *testing.T) {
	rpm := units.Rotation(1000.0 / 60)
	near(t, "feed", float64(TubeFeed(rpm, 10*fpi))*60, 2.54, 1e-12)
	near(t, "strip", float64(StripSpeed(rpm, 0.0254))*60, 79.8, 0.05/79.8)
	near(t, "time", 5.9/float64(TubeFeed(rpm, 10*fpi))/60, 2.32, 0.005/2.32)
	if got := units.Plain.Figure(units.Feed, float64(TubeFeed(rpm, 10*fpi)), units.SI).String(); got != "2.54 m/min" {
		t.Errorf("feed shows as %s", got)
	}
}

func TestLowestLimitBinds(t *testing.T) {
	o := footed()
	for _, k := range []struct {
		binding string
		change  func(*shop.Line)
	}{
		{"spindle", func(*shop.Line) {}},
		{"strip_speed", func(l *shop.Line) { l.StripSpeed = 1 }},
		{"drive", func(l *shop.Line) { l.Drive = 3000 }},
	} {
		c := shop.House()
		l := &c.Lines[0]
		k.change(l)
		m, _ := l.Practice(o.Tube.Fin.Type)
		s := SpeedsOf(&c, l, m, &o)
		if s.Binding != k.binding {
			t.Errorf("%s binds, want %s", s.Binding, k.binding)
		}
		for _, limit := range s.Limits {
			if s.Spindle > limit.Spindle {
				t.Errorf("the spindle passes its limit by %s", limit.ID)
			}
		}
		if s.Strip > l.StripSpeed*(1+shop.Slack) || *s.Power > l.Drive*(1+shop.Slack) {
			t.Errorf("%s binds, but strip runs at %v and the drive gives %v", k.binding, s.Strip, *s.Power)
		}
		if k.binding == "drive" {
			near(t, "power", float64(*s.Power), float64(l.Drive), 1e-9)
		}
		near(t, "feed and strip speed", float64(s.Strip/s.Feed), o.Tube.StripPerMetre(), 1e-12)
	}
}

// Steel strip runs at about half of aluminium's speed: engineering judgement, the house's file.
func TestSteelRunsSlower(t *testing.T) {
	c, o := shop.House(), embedded()
	m, _ := c.Lines[1].Practice(o.Tube.Fin.Type)
	soft := SpeedsOf(&c, &c.Lines[1], m, &o)
	o.FinMetal, _ = material.FinMetal("cs1010")
	o.Tube.Fin.Density = units.Density(o.FinMetal.Density.SI)
	hard := SpeedsOf(&c, &c.Lines[1], m, &o)
	for i := range 2 {
		near(t, soft.Limits[i].ID, float64(hard.Limits[i].Spindle), float64(soft.Limits[i].Spindle)/2, 1e-12)
	}
	near(t, "drive", float64(hard.Limits[2].Spindle/soft.Limits[2].Spindle), 250.0/900, 1e-12)
}

// Turn by turn, a second route to the run-up, steady run and run-down.
func TestSpellBySteps(t *testing.T) {
	s := Speeds{Spindle: 20, RunUp: 10, RunDown: 40}
	for _, turns := range []float64{3, 15, 400} {
		got := s.Wind(turns)
		const dt = 1e-5
		wound, speed, clock := 0.0, 0.0, 0.0
		for wound < turns {
			speed = min(20, speed+10*dt)
			wound += speed * dt
			clock += dt
		}
		peak := speed
		for after := wound; speed > 0; {
			speed -= 40 * dt
			after += max(0, speed) * dt
			clock += dt
			wound = after
		}
		near(t, "peak", float64(got.Peak), peak, 1e-3)
		near(t, "time", float64(got.Time), clock, 1e-3)
		if math.Abs(got.RunDown-(wound-turns)) > 0.01 {
			t.Errorf("%g turns: run-down %.4f, by steps %.4f", turns, got.RunDown, wound-turns)
		}
	}
}

// welded is a steel strip of 1.2 mm on a tube of 50.8 mm.
func welded() Order {
	o := embedded()
	o.FinMetal, _ = material.FinMetal("cs1010")
	f := &o.Tube.Fin
	f.Type, f.Strip, f.Height, f.Count, f.Groove, f.Density = tube.Welded, 0.0012, 0.019, 197, 0, units.Density(o.FinMetal.Density.SI)
	o.Tube.OD, o.Tube.Wall = 0.0508, 0.00376
	return o
}

// The weld and its generator bound the spindle, each in turn; nothing is rolled. By hand: at 1.2 mm the shop's table has
// 1.7 m/s between 2 at 0.9 and 1.6 at 1.3 mm, the generator 95 kW / (52 J/mm2 1.2 mm) = 1.5224 m/s; a turn is pi 50.8 mm.
func TestWeldSetsThePace(t *testing.T) {
	c, o := shop.House(), welded()
	l := &c.Lines[2]
	m, _ := l.Practice(tube.Welded)
	s := SpeedsOf(&c, l, m, &o)
	if s.Binding != "generator" || s.Power != nil || s.Note.Key != "shop.why.not_rolled" {
		t.Errorf("%s binds, power %v, %s", s.Binding, s.Power, s.Note.Key)
	}
	near(t, "generator", float64(s.Spindle), 1.522436/(math.Pi*0.0508), 1e-6)
	near(t, "weld", float64(s.Limits[2].Spindle), 1.7/(math.Pi*0.0508), 1e-12)

	m.Weld.Power = 1e6
	if s = SpeedsOf(&c, l, m, &o); s.Binding != "weld_edge" {
		t.Errorf("%s binds, want the weld", s.Binding)
	}
	m.Spindle = 5
	if s = SpeedsOf(&c, l, m, &o); s.Binding != "spindle" || s.Spindle != 5 {
		t.Errorf("%s binds at %v", s.Binding, s.Spindle)
	}
	m.Weld = shop.Weld{}
	if s = SpeedsOf(&c, l, m, &o); len(s.Limits) != 2 || s.Note.Key != "shop.why.no_weld" {
		t.Errorf("nothing is known of the weld, yet %v, %s", s.Limits, s.Note.Key)
	}
}
