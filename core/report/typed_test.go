package report

import (
	"errors"
	"math/rand/v2"
	"regexp"
	"strings"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// argument is what fills a place of a message, as the reader sees it.
func argument(w Writer, m message.Message, name string) string {
	a, _ := message.AmountOf(m.Arg(name))
	b := units.Beside{}
	for _, arg := range m.Args() {
		if other, ok := message.AmountOf(arg); ok && other.Kind.Unit(w.System) == a.Kind.Unit(w.System) {
			b.Others = append(b.Others, other.SI)
		}
	}
	switch m.Arg(name).(type) {
	case message.Least:
		b.Side = units.Up
	case message.Most:
		b.Side = units.Down
	}
	return w.Texts.Numbers.SayBeside(a.Kind, a.SI, b, w.System)
}

// The ends that a refused number is told are taken when they are typed, of every field in both systems.
func TestRangeEndsAreTakenWhenTyped(t *testing.T) {
	for _, system := range []units.System{units.SI, units.US} {
		w := Writer{Texts: message.English(), System: system}
		for i := range field.Fields {
			f := &field.Fields[i]
			if !f.IsNumber() {
				continue
			}
			for _, end := range []float64{f.Low, f.High} {
				for _, side := range []units.Side{units.Up, units.Down} {
					text := w.Texts.Numbers.SayBeside(f.Kind, end, units.Beside{Side: side}, system)
					p, err := units.Parse(f.Kind, text, system)
					if inside := side == units.Up && end == f.Low || side == units.Down && end == f.High; err != nil || inside && !f.Within(p.SI) {
						t.Errorf("%s is told %s, and does not take it (%v)", f.ID, text, err)
					}
				}
			}
		}
	}
}

// Each limit that a message prints of a field, in both systems, is taken when it is typed as it is printed.
func TestPrintedLimitsAreTakenWhenTyped(t *testing.T) {
	english := message.English()
	printed := regexp.MustCompile("^" + strings.NewReplacer("{value}", ".*", "{low}", "(.*)", "{high}", "(.*)", ".", `\.`).Replace(english.Text("error.range")) + "$")
	met := 0
	for _, system := range []units.System{units.SI, units.US} {
		w := Writer{Texts: english, System: system}
		for i := range field.Fields {
			f := &field.Fields[i]
			if !f.IsNumber() {
				continue
			}
			told := func(text string) string {
				d := document.New()
				d.Units = system
				d.Fields[f.ID] = document.Entry{Text: text, Origin: document.Customer}
				_, err := design.Read(d)
				var wrong design.FieldErrors
				errors.As(err, &wrong)
				for _, e := range wrong {
					if e.Field == f.ID && e.Message.Key == "error.range" {
						return w.say(e.Message)
					}
				}
				return ""
			}
			for _, beyond := range []float64{f.Low - max(1, f.Low), 1.7*f.High + 1} {
				said := told(units.Plain.Full(f.Kind, beyond, units.SI) + " " + f.Kind.Unit(units.SI))
				if said == "" {
					continue // not an entry of this design, or no number of that kind
				}
				ends := printed.FindStringSubmatch(said)
				if ends == nil {
					t.Fatalf("%s is told %q", f.ID, said)
				}
				met++
				for _, limit := range ends[1:] {
					if again := told(limit); again != "" {
						t.Errorf("%s is told %q, and of %s %q", f.ID, said, limit, again)
					}
				}
			}
		}
	}
	if met < 100 {
		t.Errorf("only %d limits were met", met)
	}
}

// The velocity at which the drop allowed is reached keeps it when it is typed as it is printed, and is not far below.
func TestVelocityAllowedIsAllowedWhenTyped(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 2))
	for _, system := range []units.System{units.SI, units.US} {
		w := Writer{Texts: message.English(), System: system}
		for range 12 {
			d := document.New()
			d.Units = system
			allowed := 20 + 200*r.Float64()
			enter := func(id, text string) {
				d.Fields[id] = document.Entry{Text: text, Origin: document.Customer}
			}
			enter("drop_allowed", units.Plain.Full(units.Drop, allowed, units.SI)+" Pa")
			enter("layout", "staggered")
			answer := func() design.Result {
				in, h, err := design.ReadAndRate(d, nil)
				if err != nil {
					t.Fatal(err)
				}
				return design.Evaluate(in, h)
			}
			f, _ := answer().Find("velocity_allowed")
			shown := w.Figure(f)
			enter("face_velocity", shown.Value+" "+shown.Unit)
			res := answer()
			drop, _ := res.Find("air_drop")
			foot, _ := res.Find("air_drop_foot") // the larger is judged
			if worst := max(drop.SI, foot.SI); worst > allowed*(1+1e-6) || worst < allowed*(1-5e-3) {
				t.Errorf("%g Pa allowed, and %g Pa at %s %s", allowed, worst, shown.Value, shown.Unit)
			}
		}
	}
}

// What a rule of the line says that it needs is good when it is typed.
func TestBoundsOfTheLineAreGoodWhenTyped(t *testing.T) {
	house := shop.House()
	for i := range house.Lines { // bounds that are round in neither system
		l := &house.Lines[i]
		l.TubeOD.High *= 0.99137
		for k := range l.Types {
			m := &l.Types[k]
			m.LeastWall *= 1.01357
			m.Height.High *= 0.98713
			m.Strip.High *= 0.98713
			m.Count.High *= 0.98713
		}
	}
	seen := map[string]bool{}
	for _, system := range []units.System{units.SI, units.US} {
		w := Writer{Texts: message.English(), System: system}
		for _, c := range [][3]string{
			{"tube_od", "60 mm", "high"},
			{"tube_wall", "0.8 mm", "least"},
			{"fin_height", "25 mm", "high"},
			{"strip_thickness", "0.9 mm", "high"},
			{"fin_pitch", "20 fpi", "high"},
			{"fin_height", "3 mm", "low"},
			{"fin_pitch", "3 fpi", "low"},
			{"tube_length", "30 m", "high"},
		} {
			d := document.New()
			d.Units = system
			d.Fields["tube_wall"] = document.Entry{Text: "3 mm", Origin: document.House}
			state := func(text string) map[string]figure.State {
				d.Fields[c[0]] = document.Entry{Text: text, Origin: document.Customer}
				s, ok := speak(d, &house)
				if !ok {
					return nil
				}
				out := map[string]figure.State{}
				for _, v := range s.made.Verdicts {
					out[v.Rule.ID] = v.State
				}
				return out
			}
			state(c[1])
			s, ok := speak(d, &house)
			if !ok {
				continue
			}
			for _, v := range s.made.Verdicts {
				if v.State != figure.No || v.Rule.Field != c[0] || v.Measure.Kind != field.Must(c[0]).Kind || v.Why.Arg(c[2]) == nil {
					continue
				}
				text := argument(w, v.Why, c[2])
				if now := state(text)[v.Rule.ID]; now != figure.Good {
					t.Errorf("%s says %s, and is %s at %s", v.Rule.ID, w.say(v.Why), now, text)
				}
				seen[v.Rule.ID] = true
			}
		}
	}
	if len(seen) < 5 {
		t.Errorf("only %v were met", seen)
	}
}

// What an entry that is refused is told to be at least or at most is taken when it is typed.
func TestWhatIsAskedForIsTaken(t *testing.T) {
	r := rand.New(rand.NewPCG(6, 1))
	number := func(low, high float64, unit string) string {
		return units.Plain.Full(units.Number, low+(high-low)*r.Float64(), units.SI) + " " + unit
	}
	for _, system := range []units.System{units.SI, units.US} {
		w := Writer{Texts: message.English(), System: system}
		for range 25 {
			for _, c := range []struct {
				pairs []string
				place string
			}{
				{[]string{"fin_height", number(12, 19, "mm"), "tube_od", number(20, 30, "mm"), "tube_pitch", "49 mm"}, "least"},
				{[]string{"inside_fluid", "own", "own_fluid_points", "2", "own_fluid_at", number(60, 61, "°C"), "own_fluid_at_2", "60.5 °C"}, "low"},
				{[]string{"inside_fluid", "own", "own_fluid_points", "2", "own_fluid_at", number(60, 61, "°C"), "own_fluid_at_2", "60.5 °C"}, "high"},
				{[]string{"fin_type", "knurled_footed", "fin_pitch", "1.2 fpi"}, "least"},
			} {
				d := document.New()
				d.Units = system
				for i := 0; i < len(c.pairs); i += 2 {
					d.Fields[c.pairs[i]] = document.Entry{Text: c.pairs[i+1], Origin: document.Customer}
				}
				told := func() (design.FieldError, bool) {
					_, err := design.Read(d)
					var wrong design.FieldErrors
					if errors.As(err, &wrong) {
						return wrong[0], true
					}
					return design.FieldError{}, false
				}
				e, ok := told()
				if !ok || e.Message.Arg(c.place) == nil {
					t.Errorf("%v: %v says nothing of %s", c.pairs, e, c.place)
					continue
				}
				text := argument(w, e.Message, c.place)
				d.Fields[e.Field] = document.Entry{Text: text, Origin: document.Customer}
				if again, ok := told(); ok && again.Field == e.Field {
					t.Errorf("%v: %s; at %s: %s", c.pairs, w.say(e.Message), text, w.say(again.Message))
				}
			}
		}
	}
}
