package lesson

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/numeric"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/units"
)

// caseOf is an exercise with a tube in hand.
func caseOf(x *Exercise, d document.Document) *Case {
	house := shop.House()
	return &Case{Read(x.Document("", d.Units), &house), Read(d, &house)}
}

// asked is the number that an exercise asks for, as a trainee types it off the page, times some factor.
func asked(t *testing.T, x *Exercise, c *Case, times float64) string {
	t.Helper()
	if x.Asked.Of == nil {
		return ""
	}
	si, ok := x.Asked.Of(c)
	if !ok || si <= 0 {
		t.Fatalf("%s: there is no number to type: %v", x.ID, si)
	}
	style := units.Style{}
	return style.Figure(x.Asked.Kind, si*times, c.Now.Document.Units).String()
}

// Every exercise is solved by its solution, in either system of units, and by nothing less: not by the tube that it starts with, not by
// any of its entries left out, not by another number, not by a change that it does not ask for.
func TestEachIsSolvedAndNotByLess(t *testing.T) {
	if len(Exercises) < 12 {
		t.Errorf("%d exercises", len(Exercises))
	}
	for _, x := range Exercises {
		for _, s := range []units.System{units.SI, units.US} {
			t.Run(fmt.Sprint(x.ID, " ", s), func(t *testing.T) {
				c := caseOf(x, x.Solved("", s))
				right := asked(t, x, c, 1)
				if v := x.Check(c, right); !v.Solved {
					t.Errorf("not solved with %q: %s", right, failed(v))
				}
				for _, other := range []string{"", "abc", "0", asked(t, x, c, 1.04), asked(t, x, c, 0.96)} {
					if x.Asked.Of != nil && x.Check(c, other).Solved {
						t.Errorf("solved with %q typed for %q", other, right)
					}
				}
				if v := x.Check(caseOf(x, x.Document("", s)), right); v.Solved {
					t.Error("solved by the tube that it starts with")
				}
				for i := range x.Solution {
					if part, _ := spanPart(x.Solution[i].Field); part != "" {
						continue // a span of which half is left out cannot be read
					}
					less := x.Document("", s)
					put(&less, append(append([]Entry{}, x.Solution[:i]...), x.Solution[i+1:]...))
					if v := x.Check(caseOf(x, less), right); v.Solved {
						t.Errorf("solved without %s", x.Solution[i].Field)
					}
				}
				strayed := x.Solved("", s)
				put(&strayed, []Entry{{"tube_length", "5.1 m"}})
				if v := x.Check(caseOf(x, strayed), right); v.Solved {
					t.Error("solved by another tube")
				}
				if x.FreeSpans {
					return
				}
				put(&strayed, []Entry{x.entry("tube_length"), {SpanEntry("centre", 0), "2 m"}, {SpanEntry("width", 0), "80 mm"}})
				if v := x.Check(caseOf(x, strayed), right); v.Solved {
					t.Error("solved with a bare span that nobody asked for")
				}
			})
		}
	}
}

// entry is what an entry says at the start.
func (x *Exercise) entry(field string) Entry {
	return Entry{field, x.Document("", units.SI).Text(field)}
}

func failed(v Verdict) (out string) {
	for _, l := range v.Lines {
		if !l.Holds {
			out += fmt.Sprintf(" %s (%s %v)", l.Text.Key, l.Found.Key, l.Found.Args())
		}
	}
	return out
}

// A wrong answer of each kind that a trainee gives is told from a right one.
func TestWrongAnswers(t *testing.T) {
	for name, wrong := range map[string]struct {
		x     *Exercise
		put   []Entry
		typed string
	}{
		"all of the surface for what is in use":      {&double, double.Solution, "1.70 m²/m"},
		"aluminium's height for steel":               {&metal, []Entry{{"fin_metal", steelStrip}}, ""},
		"the taper's cost of the higher fin":         {&taper, taper.Solution, "3.6 %"},
		"as tall as it goes per kilogram":            {&kilogram, []Entry{{"fin_height", "15.875 mm"}}, "0 %"},
		"the held film's height with a computed one": {&face, []Entry{{"film_source", "computed"}, {"fin_height", "16.4 mm"}}, "106.8 kW/m²"},
		"the share with dirt":                        {&bore, bore.Solution, "68 %"},
		"half the fins, half the heat":               {&oil, oil.Solution, "50 %"},
		"more fins in place of more air":             {&steam, []Entry{{"fin_pitch", "11 fpi"}, {"fin_height", "3/4 in"}}, "147 °C"},
		"the factor of another pitch":                {&basis, basis.Solution, "21.31"},
		"discs for strip":                            {&disc, disc.Solution, "0.71 kg/m"},
		"a count that is safe and not the most":      {&drop, []Entry{{"fin_pitch", "6 fpi"}}, "1025 kW"},
		"a wall too thin below the groove":           {&startUp, []Entry{{"fin_type", "embedded"}}, "1.6 mm"},
		"a knurled foot":                             {&startUp, []Entry{{"fin_type", "knurled_footed"}, {"tube_wall", "12 BWG"}}, "2.2 mm"},
		"a shallower groove":                         {&startUp, []Entry{{"fin_type", "embedded"}, {"tube_wall", "12 BWG"}, {"groove_depth", "0.1 mm"}}, "2.34 mm"},
		"the growth of the whole tube":               {&growth, growth.Solution, "5.9 mm"},
		"a quote with a fin cut short":               {&quote, []Entry{{"fin_height", "1/4 in"}, {"tube_wall", "12 BWG"}, {"plain_end_b", "1 1/2 in"}}, "400"},
		"bar absolute":                               {&slip, []Entry{{"fin_height", "5/8 in"}, {"fin_pitch", "11 fpi"}}, "1000 kW"},
	} {
		d := wrong.x.Document("", units.SI)
		put(&d, wrong.put)
		if v := wrong.x.Check(caseOf(wrong.x, d), wrong.typed); v.Solved {
			t.Errorf("%s: solved", name)
		}
	}
}

// The truth of a guess lies in exactly one band, well inside it, and a guess beside it is near.
func TestGuesses(t *testing.T) {
	house := shop.House()
	for _, x := range Exercises {
		start := Read(x.Document("", units.SI), &house)
		number, _ := x.Guess.Truth(start)
		place := x.Guess.place(number)
		for _, bound := range x.Guess.Bands {
			if math.Abs(number/bound-1) < 0.03 {
				t.Errorf("%s: the truth, %g, is at the edge of a band, %g", x.ID, number, bound)
			}
		}
		for guess := range x.Guess.Choices() {
			want := Far
			switch off := guess - place; {
			case off == 0:
				want = Hit
			case off*off == 1 && len(x.Guess.Words) == 0:
				want = Near
			}
			if s := x.Score(start, guess); s.How != want || s.Place != place {
				t.Errorf("%s: guess %d: %s at %d, want %s at %d", x.ID, guess, s.How, s.Place, want, place)
			}
		}
	}
}

// Each exercise has all its words, its worked answer all its workings, and its typed number is not told before.
func TestShown(t *testing.T) {
	house := shop.House()
	for _, s := range []units.System{units.SI, units.US} {
		w := report.Writer{Texts: message.English(), System: s}
		for i, shown := range Show(w) {
			x := Exercises[i]
			if len(shown.Choices) != x.Guess.Choices() || len(shown.Hints) != 2 || (shown.Asked != "") != (x.Asked.Of != nil) {
				t.Errorf("%s: shown as %+v", x.ID, shown)
			}
			c := caseOf(x, x.Solved(x.Title(w), s))
			start := Read(x.Document("", s), &house)
			if told := ShowScore(w, x.Score(start, 0)); told.Told == "" {
				t.Errorf("%s: nothing is told", x.ID)
			}
			answer := x.ShowAnswer(w, c)
			if len(answer.Workings) != len(x.Workings) || (answer.Number != "") != (x.Asked.Of != nil) {
				t.Errorf("%s: answer %+v %+v", x.ID, answer.Number, answer.Workings)
			}
			typed := asked(t, x, c, 1)
			for _, early := range append([]string{shown.Question, shown.Task, shown.Guess}, shown.Hints...) {
				if typed != "" && strings.Contains(early, typed) {
					t.Errorf("%s: %q tells the answer", x.ID, early)
				}
			}
			if v := ShowVerdict(w, x.Check(c, ""), c.Now); len(v.Lines) < 2 || v.Film == "" {
				t.Errorf("%s: verdict %+v", x.ID, v)
			}
		}
	}
}

// A story tells figures of the tube in hand, and its numbers that are pulled are entries that the tube asks for.
func TestStoriesFollow(t *testing.T) {
	house := shop.House()
	w := report.Writer{Texts: message.English(), System: units.SI}
	told := func(id string, entries ...Entry) ShownStory {
		d := document.New()
		put(&d, entries)
		for _, s := range ShowStories(w, id, ReadBriefly(d, &house)) {
			if s.ID == id {
				return s
			}
		}
		t.Fatal("no story ", id)
		return ShownStory{}
	}
	all := func(s ShownStory) (text string, pulls []string) {
		for _, p := range s.Paragraphs {
			for _, piece := range p.Pieces {
				text += piece.Text
				if piece.Field != "" {
					pulls = append(pulls, piece.Field)
				}
			}
		}
		return text, pulls
	}
	for _, s := range Stories {
		text, pulls := all(told(s.ID))
		other, _ := all(told(s.ID, Entry{"fin_height", "1/2 in"}))
		if text == other || len(pulls) < 3 {
			t.Errorf("%s does not follow the height: %q pulls %v", s.ID, text, pulls)
		}
	}
	if _, pulls := all(told("efficiency", heldFilm...)); fmt.Sprint(pulls) != "[fin_height strip_thickness film_coefficient]" {
		t.Errorf("a held film: %v", pulls)
	}
	if _, pulls := all(told("resistances", Entry{"inside_fluid", "steam"}, Entry{"inside_in", "150 °C"})); fmt.Sprint(pulls) != "[fin_pitch face_velocity]" {
		t.Errorf("steam: %v", pulls)
	}
	low, high := told("efficiency", Entry{"fin_height", "1/4 in"}).Curve, told("efficiency").Curve
	if !(low.Tip < high.Tip) || !strings.HasPrefix(low.Path, "M0.00 0.00 L") {
		t.Errorf("the tip of a higher fin is not cooler: %g, %g, %s", low.Tip, high.Tip, low.Path)
	}
	sum := 0.0
	for _, b := range told("resistances").Bars {
		sum += b.Share
	}
	if math.Abs(sum-1) > 1e-9 {
		t.Errorf("the bars add up to %g", sum)
	}
}

// Along a fin of one thickness the curve is the closed solution, of which the tip's is only the end.
func TestCurveAlongAFin(t *testing.T) {
	house := shop.House()
	d := document.New()
	put(&d, append(heldFilm, Entry{"fin_profile", "uniform"}, Entry{"fin_height", "25 mm"}))
	r := ReadBriefly(d, &house)
	path, _ := alongFin(r)
	m := math.Sqrt(2 * 50 / (float64(r.Result.Surface.Conductivity) * 0.4e-3))
	root, tip := 0.0127, 0.0377
	_, i1, _, k1 := numeric.Bessel01(m * tip)
	theta := func(x float64) float64 {
		i0, _, k0, _ := numeric.Bessel01(m * x)
		grown := math.Exp(m * (x - tip)) // the functions come scaled
		return i0*k1*grown + i1*k0/grown
	}
	for i, point := range strings.Split(strings.TrimPrefix(path, "M"), " L") {
		var x, y float64
		if _, err := fmt.Sscan(point, &x, &y); err != nil {
			t.Fatal(err)
		}
		want := boxHeight * (1 - theta(root+x/boxWidth*(tip-root))/theta(root))
		if math.Abs(y-want) > 0.006 {
			t.Errorf("point %d: %g, want %g", i, y, want)
		}
	}
}

// What turns in the winding turns as on the line: a coil gives off by its rim what goes once round the tube, and the factor is the spindle's.
func TestWindingAtItsKinematics(t *testing.T) {
	house := shop.House()
	w := report.Writer{Texts: message.English(), System: units.SI}
	read := func(entries ...Entry) (*Reading, *Winding) {
		d := document.New()
		put(&d, entries)
		r := ReadBriefly(d, &house)
		return r, woundOf(w, r)
	}
	r, v := read()
	perTurn := math.Pi * float64(r.In.Tube.TurnOD())
	if rim := v.Coil * math.Pi * float64(r.Made.Plan.Winding.Coil.OD); math.Abs(rim/perTurn-1) > 1e-12 {
		t.Errorf("the coil's rim gives %g m, a turn takes %g", rim, perTurn)
	}
	scale := v.Tip / float64(r.In.Tube.FinOD()/2)
	if math.Abs(v.Strip/scale/perTurn-1) > 1e-12 || math.Abs(v.Pitch/scale/0.00254-1) > 1e-12 || v.Foot <= 0 || v.Groove != 0 || !(v.Edge < v.Root) {
		t.Errorf("%+v", v)
	}
	if got, want := fmt.Sprint(tellWinding(r)[0].Args[3]), fmt.Sprint(math.Round(float64(r.Made.Plan.Speeds.Spindle)*turnShown)); got != want {
		t.Errorf("%s times slower, want %s", got, want)
	}
	if _, v := read(Entry{"fin_type", "embedded"}, Entry{"tube_wall", "12 BWG"}); v.Groove <= 0 || v.Foot != 0 {
		t.Errorf("embedded: %+v", v)
	}
	if r, v := read(Entry{"fin_type", "extruded"}); v != nil || tellWinding(r)[0].Key != "lesson.story.winding.not_wound" {
		t.Errorf("extruded: %+v", v)
	}
}
