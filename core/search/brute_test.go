package search

import (
	"cmp"
	"fmt"
	"maps"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// The search is held here to one that is written anew: every design of the grid is read from its document and answered in full, and what
// the answer shows is held and compared as plainly as it can be said.

// answer is one design as the brute search sees it.
type answer struct {
	place   int
	rated   bool
	figures map[Measure]float64
	least   float64 // duty of the lowest correlation in range; NaN: none is
	limits  figure.State
	line    figure.State // No, Watch or Good
	outside bool
}

const today = "2026-11-27"

func bruteAnswer(d document.Document, c *shop.Capability) (a answer) {
	in, h, err := design.ReadAndRate(d, c)
	if err != nil || !h.Absent.None() {
		return a
	}
	r := design.Evaluate(in, h)
	m := design.Make(in, r.Heat)
	r.AddMaking(&m)
	a.rated, a.figures, a.least = true, map[Measure]float64{}, math.NaN()
	for measure, id := range map[Measure]string{
		Duty: "duty", UA: "ua", InsideLoss: "inside_loss", FanPower: "fan_power", Mass: "mass_dry",
		Width: "bank_width", Depth: "bank_depth", Face: "face_area", Tubes: "order_bank",
	} {
		if f, ok := r.Find(id); ok && f.Absent.None() {
			a.figures[measure] = f.SI
		}
	}
	t := &r.Heat.Thermal
	if t.HasDrop() {
		a.figures[AirDrop] = in.DropJudged(t)
	}
	a.figures[Length] = float64(in.Tube.Length)
	if m.Plan.Cost != nil {
		a.figures[Price] = float64(m.Plan.Cost.Price)
		a.figures[PerKilowatt] = a.figures[Price] / (a.figures[Duty] * float64(in.Job.Bundles) / 1000)
	}
	day, _ := shop.ParseDay(today)
	if promise, why := m.Plan.Promise(c, day); why.None() {
		a.figures[Ready] = float64(promise.Day)
	}
	if s := &r.Heat.Spread; s.Count > 0 {
		a.least = min(a.figures[Duty], math.Abs(s.Low.Duty.Heat))
	}
	a.limits = figure.Good
	for _, f := range r.Heat.Findings {
		if f.State == figure.No || f.State == figure.Watch {
			a.limits = f.State
		}
	}
	a.line = figure.Good
	for _, v := range m.Verdicts {
		if v.State == figure.No || v.State == figure.Watch && a.line == figure.Good {
			a.line = v.State
		}
	}
	if in.FinMetal.Family.Suits(in.Tube.Fin.Type.Fixing().Forming) == material.Unsuitable || m.Plan.Programme == nil && m.Plan.BoughtIn == nil {
		a.line = figure.No
	}
	if !m.NoLine.None() && a.line == figure.Good {
		a.line = figure.Watch
	}
	for _, method := range r.Heat.Methods {
		a.outside = a.outside || method.Used && !method.InRange
	}
	a.outside = a.outside || !t.Inside.InRange()
	return a
}

// holds holds an answer to a problem.
func (a *answer) holds(p *Problem, system units.System) bool {
	if !a.rated || a.outside && !p.Outside || p.Must[Limits] != "" && a.limits != figure.Good ||
		p.Must[Line] != "" && a.line == figure.No || p.Must[Line] == Clear && a.line != figure.Good {
		return false
	}
	for _, m := range Measures {
		text, asked := p.Must[string(m.ID)]
		if !asked {
			continue
		}
		has, known := a.figures[m.ID]
		if !known {
			return false
		}
		if m.ID == Ready {
			day, _ := shop.ParseDay(text)
			if has > float64(day) {
				return false
			}
			continue
		}
		bound, err := units.Parse(m.Kind, text, system)
		if err != nil {
			panic(err)
		}
		if m.ID == Duty {
			if p.Must[LowerEnd] != "" {
				has = a.least
			}
			if p.Must[Surplus] != "" {
				surplus, _ := units.Parse(units.Percent, p.Must[Surplus], system)
				bound.SI *= 1 + surplus.SI
			}
		}
		if m.More && !(has >= bound.SI*(1-1e-9)) || !m.More && has > bound.SI*(1+1e-9) {
			return false
		}
	}
	for _, m := range p.Wanted {
		if _, known := a.figures[m]; !known {
			return false
		}
	}
	return true
}

// wants returns what is wanted of an answer, less being better.
func (a *answer) wants(p *Problem) (out []float64) {
	for _, m := range p.Wanted {
		x := a.figures[m]
		if at, _ := m.Place(); Measures[at].More {
			x = -x
		}
		out = append(out, rounded(x))
	}
	return out
}

// bruteForce answers a problem: those that hold in their order, and the places of their front.
func bruteForce(base document.Document, p *Problem, c *shop.Capability) (answers []answer, passed []answer, front []int) {
	texts := map[string][]string{}
	for _, a := range p.Axes {
		texts[a.Field] = a.Texts
	}
	designs := []document.Document{base}
	for _, id := range []string{
		"tube_metal", "fin_metal", "fin_type", "tube_od", "tube_wall", "strip_thickness", "fin_height", "fin_pitch",
		"tube_pitch", "face_velocity", "rows", "passes", "tubes_per_row", "tube_length",
	} {
		if texts[id] == nil {
			continue
		}
		var more []document.Document
		for _, d := range designs {
			for _, text := range texts[id] {
				more = append(more, with(d, id, text))
			}
		}
		designs = more
	}
	for place, d := range designs {
		number := func(id string) int {
			var n int
			fmt.Sscan(d.Text(id), &n)
			return n
		}
		a := bruteAnswer(with(d, "quantity", fmt.Sprint(number("rows")*number("tubes_per_row")*number("bundles"))), c)
		a.place = place
		answers = append(answers, a)
		if a.holds(p, base.Units) {
			passed = append(passed, a)
		}
	}
	slices.SortStableFunc(passed, func(a, b answer) int { return cmp.Compare(a.wants(p)[0], b.wants(p)[0]) })
	for i := range passed {
		at := passed[i].wants(p)
		if !slices.ContainsFunc(passed, func(o answer) bool {
			other, better := o.wants(p), false
			for k := range other {
				if other[k] > at[k] {
					return false
				}
				better = better || other[k] < at[k]
			}
			return better || o.place < passed[i].place // of equals the first
		}) {
			front = append(front, passed[i].place)
		}
	}
	slices.Sort(front)
	return answers, passed, front
}

func with(d document.Document, id, text string) document.Document {
	d.Fields = maps.Clone(d.Fields)
	d.Fields[id] = document.Entry{Text: text, Origin: document.Customer}
	return d
}

// drawn is a small problem with a document. Its bounds lie near what one of its designs does, so that they cut some and leave some.
func drawn(r *rand.Rand, c *shop.Capability) (document.Document, Problem) {
	d := document.New()
	pick := func(texts ...string) string { return texts[r.IntN(len(texts))] }
	if r.IntN(3) > 0 {
		d = with(with(with(d, "start_up", "95 °C"), "upset", "98 °C"), "flow_lost", "excluded")
	}
	varied := map[string][]string{
		"inside_fluid":  {"water", "water", "water", "steam", "ethylene_glycol", "own"},
		"gas":           {"air", "air", "dry_air", "own"},
		"inside_in":     {"90 °C", "110 °C", "140 °C"},
		"inside_flow":   {"15 kg/s", "6 kg/s", "25 kg/s"},
		"supply":        {"ours", "ours", "free_issue"},
		"draught":       {"forced", "induced"},
		"line":          {"", "", "", c.Lines[0].Name, "none such"},
		"film_method":   {"rule", "rule", "briggs_young_1963"},
		"film_source":   {"computed", "computed", "computed", "given"},
		"bundles":       {"1", "1", "2"},
		"layout":        {"staggered", "staggered", "staggered", "in_line"},
		"tip_clearance": {"1/4 in", "3 mm"},
		"house_limit":   {"", "", "100 °C"},
		"plain_end_a":   {"1 1/2 in", "1 1/2 in", "1 1/2 in", "1.95 m"},
	}
	for _, id := range slices.Sorted(maps.Keys(varied)) {
		d = with(d, id, pick(varied[id]...))
	}
	p := Problem{Must: map[string]string{}, Day: today, Outside: r.IntN(2) == 0}
	values := map[string][]string{
		"tube_metal": {"cs", "tp304", "c12200"}, "fin_metal": {"al1060", "c11000", "cs1010"},
		"fin_type": {string(tube.Footed), string(tube.Embedded), string(tube.EdgeWound), string(tube.Extruded), string(tube.Welded)},
		"tube_od":  {"1 in", "1.25 in", "38.1 mm", "27 mm"}, "tube_wall": {"14 BWG", "12 BWG", "0.8 mm", "13 mm"},
		"strip_thickness": {"0.4 mm", "0.3 mm", "1.2 mm"}, "fin_height": {"1/2 in", "5/8 in", "20 mm"}, "fin_pitch": {"7 fpi", "9 fpi", "10 fpi", "10.5 fpi"},
		"tube_pitch": {"2.5 in", "60 mm", "75 mm"}, "face_velocity": {"2 m/s", "3 m/s", "4.5 m/s"}, "rows": {"2", "4", "6", "3"}, "passes": {"1", "2", "4"},
		"tubes_per_row": {"20", "30", "45"}, "tube_length": {"2 m", "4 m", "6 m"},
	}
	for _, i := range r.Perm(len(entries))[:2+r.IntN(3)] {
		id := entries[i].field
		texts := slices.Clone(values[id])
		r.Shuffle(len(texts), func(i, j int) { texts[i], texts[j] = texts[j], texts[i] })
		p.Axes = append(p.Axes, Axis{Field: id, Texts: texts[:min(len(texts), 2+r.IntN(2))]})
	}
	for _, i := range r.Perm(measureCount) {
		if Measures[i].Wanted && len(p.Wanted) < 1+r.IntN(3) {
			p.Wanted = append(p.Wanted, Measures[i].ID)
		}
	}
	s, err := New(d, Problem{Axes: p.Axes, Wanted: p.Wanted}, c)
	if err != nil {
		return d, p
	}
	near := bruteAnswer(s.Document(r.IntN(s.Count())), c)
	for _, m := range Measures {
		if r.IntN(5) > 0 || m.ID == Miss {
			continue
		}
		has, known := near.figures[m.ID]
		if m.ID == Ready {
			p.Must[string(m.ID)] = pick("2027-01-10", "2027-03-01", "2027-06-01")
			continue
		}
		if !known {
			continue
		}
		bound := units.In(m.Kind, has*(0.85+0.3*r.Float64()), d.Units)
		if m.Kind == units.Count {
			bound = math.Round(bound)
		}
		p.Must[string(m.ID)] = fmt.Sprintf("%.6g %s", bound, m.Kind.Unit(d.Units))
	}
	for i, texts := range [][]string{{"5 %"}, {yes}, {yes}, {Made, Clear}} {
		if r.IntN(3) == 0 {
			p.Must[Musts[i]] = pick(texts...)
		}
	}
	return d, p
}

func TestSearchIsBruteForce(t *testing.T) {
	c := shop.House()
	kinds := map[string]int{}
	proof.Proof{Share: 5, Full: 200, Seed: 71, Alone: true}.Run(t, func(pc *proof.Case) {
		d, p := drawn(pc.Rand, &c)
		s, err := New(d, p, &c)
		if err != nil {
			if _, _, err := design.ReadAndRate(d, &c); err == nil {
				pc.Errorf("%v: %v", p, err)
			}
			return
		}
		answers, passed, front := bruteForce(d, &p, &c)
		if len(answers) != s.Count() {
			pc.Fatalf("%d designs, %d counted", len(answers), s.Count())
		}
		whole := s.Chunk(0, s.Count(), Hurdle{})
		if whole.Passed != len(passed) || whole.Seen != len(answers) {
			pc.Errorf("%d of %d pass, brute force passes %d of %d: %+v", whole.Passed, whole.Seen, len(passed), len(answers), p)
		}
		sameAnswer(pc, &whole, passed, front)
		inChunks(pc, s, Hurdle{}, &whole)
		if n := len(passed); n > 0 {
			// What is outdone by some that hold is none of the best up to those, nor on the front.
			hurdle := Hurdle{Full: true, Last: passed[n/3].wants(&p)[0], Place: passed[n/3].place}
			for _, f := range whole.Front {
				if pc.Rand.IntN(2) == 0 {
					hurdle.Front = append(hurdle.Front, HurdlePoint{slices.Clone(f.worth[:len(p.Wanted)]), f.Place})
				}
			}
			hurdled := s.Chunk(0, s.Count(), hurdle)
			inChunks(pc, s, hurdle, &hurdled)
			if hurdled.Cuts[outdone] > 0 {
				kinds["outdone"]++
			}
			if !slices.EqualFunc(hurdled.Front, whole.Front, sameFound) || !slices.EqualFunc(hurdled.Best[:n/3+1], whole.Best[:n/3+1], sameFound) {
				pc.Errorf("with a hurdle the answer is another: %+v", p)
			}
		}
		for cut, n := range whole.Cuts {
			if n > 0 {
				kinds[string(cuts[cut])]++
			}
		}
	})
	for _, cut := range cuts[:outdone+1] {
		if proof.Long() && cut != Cut(Miss) && cut != Cut(Ready) && kinds[string(cut)] == 0 {
			t.Errorf("no problem has designs that are cut by %s", cut)
		}
	}
}

func sameFound(a, b Found) bool { return a == b }

// inChunks cuts the grid anew and merges what it is told in any order, which is the whole answer again.
func inChunks(c *proof.Case, s *Search, hurdle Hurdle, whole *Part) {
	var parts []Part
	for from := 0; from < s.Count(); {
		to := min(s.Count(), from+1+c.Rand.IntN(s.Count()))
		parts = append(parts, s.Chunk(from, to, hurdle))
		from = to
	}
	for len(parts) > 1 {
		i, j := c.Rand.IntN(len(parts)), c.Rand.IntN(len(parts)-1)
		if j >= i {
			j++
		}
		parts[i] = Merge(parts[i], parts[j])
		parts = slices.Delete(parts, j, j+1)
	}
	got := parts[0]
	if got.Seen != whole.Seen || got.Passed != whole.Passed || got.Cuts != whole.Cuts || !slices.EqualFunc(got.Best, whole.Best, sameFound) || !slices.EqualFunc(got.Front, whole.Front, sameFound) {
		c.Errorf("in chunks the answer is another: %+v, whole %+v", got, *whole)
	}
}

// sameAnswer holds a part to the brute answer, figure by figure.
func sameAnswer(t testing.TB, got *Part, passed []answer, front []int) {
	t.Helper()
	for i, f := range got.Best {
		if i >= len(passed) || f.Place != passed[i].place || f.Outside != passed[i].outside {
			t.Fatalf("the best of number %d is at %d", i, f.Place)
		}
		for at, m := range Measures {
			want, known := passed[i].figures[m.ID]
			if f.Values.Known(at) != known || f.Values.Known(at) && math.Abs(f.Values.SI[at]-want) > 1e-12*math.Abs(want) {
				t.Errorf("%s of the design at %d is %v, brute force has %v", m.ID, f.Place, f.Values.SI[at], want)
			}
		}
	}
	if len(got.Best) != min(len(passed), mostBest) {
		t.Errorf("%d best of %d that pass", len(got.Best), len(passed))
	}
	var places []int
	for _, f := range got.Front {
		places = append(places, f.Place)
	}
	slices.Sort(places)
	if !slices.Equal(places, front) {
		t.Errorf("front at %v, brute force has %v", places, front)
	}
}
