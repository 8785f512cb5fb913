package report

import (
	"math"
	"sort"
	"strconv"
	"strings"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/search"
	"finwright/core/shop"
	"finwright/core/units"
)

// SearchForm is what can be asked of a search.
type SearchForm struct {
	Axes   []SearchAxis  `json:"axes"`
	Musts  []SearchMust  `json:"musts"`
	Wanted []NamedFigure `json:"wanted"`
}

// SearchAxis is an entry that may vary: over texts that are typed, or over some of its choices.
type SearchAxis struct {
	Field   string        `json:"field"`
	Label   string        `json:"label"`
	Typed   string        `json:"typed"`
	Choices []NamedFigure `json:"choices,omitempty"` // of which those are ticked that Typed has
	On      bool          `json:"on"`                // it varies unless somebody says otherwise
}

// SearchMust is something that must hold: a bound that is typed, or a choice of which none is no bound.
type SearchMust struct {
	ID      string        `json:"id"`
	Label   string        `json:"label"`
	Means   string        `json:"means"` // the text that its meaning is found by
	Typed   string        `json:"typed"`
	Choices []NamedFigure `json:"choices,omitempty"`
}

// usuallyVaried vary unless somebody says otherwise.
var usuallyVaried = map[string]bool{"fin_height": true, "fin_pitch": true, "rows": true, "tubes_per_row": true, "tube_length": true}

// SearchForm lists what can be asked, with what is usual: what the design wants must hold.
func (w Writer) SearchForm(axes []search.Axis, d document.Document) SearchForm {
	var out SearchForm
	for _, a := range axes {
		f := field.Must(a.Field)
		shown := SearchAxis{Field: a.Field, Label: w.Texts.Text("field." + a.Field), Typed: a.Said(), On: usuallyVaried[a.Field]}
		if f.Choice != nil {
			for _, id := range a.Texts {
				shown.Choices = append(shown.Choices, NamedFigure{id, w.Texts.Text(f.ChoiceKey(id))})
			}
			shown.Typed = d.Text(a.Field)
		}
		out.Axes = append(out.Axes, shown)
	}
	wants := map[search.Measure]string{search.Duty: d.Text("duty_wanted"), search.AirDrop: d.Text("drop_allowed"), search.InsideLoss: d.Text("inside_drop_allowed")}
	for _, m := range search.Measures {
		means := "search.measure." + string(m.ID)
		label := w.Texts.Text(means)
		if m.Wanted {
			out.Wanted = append(out.Wanted, NamedFigure{string(m.ID), label})
		}
		if m.ID == search.Miss {
			continue
		}
		key := "search.most"
		if m.More {
			key = "search.least"
		}
		out.Musts = append(out.Musts, SearchMust{ID: string(m.ID), Label: w.say(message.New(key, "what", label)), Means: means, Typed: wants[m.ID]})
	}
	yes := []NamedFigure{{"yes", w.Texts.Text("search.choice.yes")}}
	chosen := map[string][]NamedFigure{search.LowerEnd: yes, search.Limits: yes, search.Line: {{search.Made, w.Texts.Text("search.choice.made")}, {search.Clear, w.Texts.Text("search.choice.clear")}}}
	usual := map[string]string{search.Limits: "yes", search.Line: search.Made}
	for _, id := range search.Musts {
		out.Musts = append(out.Musts, SearchMust{ID: id, Label: w.Texts.Text("search.must." + id), Means: "search.must." + id, Typed: usual[id], Choices: chosen[id]})
	}
	return out
}

// SearchTold is the answer of a search as the page shows it.
type SearchTold struct {
	Said     []string     `json:"said"`     // how many were seen, cut by what, and hold
	Columns  []SearchHead `json:"columns"`  // what varied, then what was asked
	Measures int          `json:"measures"` // how many of the columns were asked
	Rows     []SearchRow  `json:"rows"`     // the best
	Beyond   []SearchRow  `json:"beyond"`   // those of the front that are not among them
	Picture  SearchChart  `json:"picture"`  // two measures against one another
}

// SearchHead is the head of a column.
type SearchHead struct {
	ID    string `json:"id"`
	Label string `json:"label"`
	Unit  string `json:"unit"`
}

// SearchRow is one design.
type SearchRow struct {
	Place   int      `json:"place"`
	Name    string   `json:"name"` // how many come before it in what is wanted first, and a mark of the front
	Cells   []string `json:"cells"`
	Orders  []int    `json:"orders"`  // of each cell, by what it stands for: of a value that was tried its place in what was entered, of a measure how many rows have less
	Front   bool     `json:"front"`   // none is better in all that is wanted
	Outside string   `json:"outside"` // a correlation that it rests on is beyond its range
}

// SearchChart is a picture of two measures: places run from 0 to 1, the second upwards.
type SearchChart struct {
	X      SearchScale   `json:"x"`
	Y      SearchScale   `json:"y"`
	Points []SearchPoint `json:"points"`
}

// SearchScale is one of its axes.
type SearchScale struct {
	ID    string       `json:"id"`
	Label string       `json:"label"` // with its unit
	Ticks []SearchTick `json:"ticks"`
}

// SearchTick is a round value of an axis.
type SearchTick struct {
	At   float64 `json:"at"`
	Text string  `json:"text"`
}

// SearchPoint is a design in the picture. That in hand has the place -1, those that are kept -2 and on.
type SearchPoint struct {
	Place int     `json:"place"`
	X     float64 `json:"x"`
	Y     float64 `json:"y"`
	Kind  string  `json:"kind"` // best, front, hand or kept
	Text  string  `json:"text"` // what is told of it
}

// mostPoints of the front are drawn: more lie over one another.
const mostPoints = 400

// Found tells the answer of a search; marks are the designs in hand and kept, where they could be rated.
func (w Writer) Found(s *search.Search, p *search.Part, thinned float64, marks []search.Found, x, y string) SearchTold {
	out := SearchTold{Said: w.foundSaid(s, p, thinned), Columns: []SearchHead{}}
	for _, id := range s.Varied() {
		out.Columns = append(out.Columns, SearchHead{id, w.Texts.Text("field." + id), ""})
	}
	shown := s.Asked()
	out.Measures = len(shown)
	for _, at := range shown {
		m := search.Measures[at]
		out.Columns = append(out.Columns, SearchHead{string(m.ID), w.Texts.Text("search.measure." + string(m.ID)), w.unitOf(m.Kind)})
	}
	out.Rows, out.Beyond = w.foundRows(s, p)
	out.Picture = w.chart(s, p, marks, x, y)
	return out
}

// inFront marks a design of the front.
const inFront = "◇"

// foundRows returns the best, and what else is on the front.
func (w Writer) foundRows(s *search.Search, p *search.Part) (best, beyond []SearchRow) {
	shown := s.Asked()
	all := make([]*search.Found, 0, len(p.Best)+len(p.Front))
	among, front := map[int]bool{}, map[int]bool{}
	for i := range p.Best {
		all, among[p.Best[i].Place] = append(all, &p.Best[i]), true
	}
	for i := range p.Front {
		f := &p.Front[i]
		if front[f.Place] = true; !among[f.Place] {
			all = append(all, f)
		}
	}
	order := make([]func(*search.Found) int, len(shown))
	for j, at := range shown {
		order[j] = orderBy(all, at)
	}
	rows := make([]SearchRow, len(all))
	for i, f := range all {
		row := SearchRow{Place: f.Place, Front: front[f.Place]}
		if i < len(p.Best) {
			row.Name = strconv.Itoa(i + 1)
		}
		if row.Front {
			row.Name = strings.TrimSpace(row.Name + " " + inFront)
		}
		if f.Outside {
			row.Outside = w.Texts.Text("search.outside")
		}
		for j, text := range s.Texts(f.Place) {
			row.Cells = append(row.Cells, w.entryText(s.Varied()[j], text))
		}
		row.Orders = s.Steps(f.Place)
		for j, at := range shown {
			row.Cells = append(row.Cells, w.measured(f, at))
			row.Orders = append(row.Orders, order[j](f))
		}
		rows[i] = row
	}
	return rows[:len(p.Best):len(p.Best)], rows[len(p.Best):]
}

// orderBy returns how many of a list have less than a design of a measure; one of which it is not known comes after all.
func orderBy(list []*search.Found, at int) func(*search.Found) int {
	values := make([]float64, 0, len(list))
	for _, f := range list {
		if f.Values.Known(at) {
			values = append(values, f.Values.SI[at])
		}
	}
	sort.Float64s(values)
	return func(f *search.Found) int {
		if !f.Values.Known(at) {
			return len(list)
		}
		return sort.SearchFloat64s(values, f.Values.SI[at])
	}
}

// unitOf is the unit in which a measure is told.
func (w Writer) unitOf(k units.Kind) string {
	if k.Money() {
		return strings.TrimSpace(w.Currency + " " + k.Unit(w.System))
	}
	return k.Unit(w.System)
}

// entryText is a value that was tried, a choice by its name.
func (w Writer) entryText(id, text string) string {
	if f := field.Must(id); f.Choice != nil {
		return w.Texts.Text(f.ChoiceKey(text))
	}
	return text
}

// measured is a measure of a design, a dash where it is not known.
func (w Writer) measured(f *search.Found, at int) string {
	m := search.Measures[at]
	switch {
	case !f.Values.Known(at):
		return "–"
	case m.ID == search.Ready:
		return shop.Day(f.Values.SI[at]).String()
	}
	return w.Texts.Numbers.Figure(m.Kind, f.Values.SI[at], w.System).Value
}

// foundSaid says how many designs were seen, what cut them, and how many hold.
func (w Writer) foundSaid(s *search.Search, p *search.Part, thinned float64) []string {
	said := []string{w.say(message.New("search.seen", "seen", p.Seen, "all", s.Count(), "hold", p.Passed))}
	var cuts []string
	for _, c := range p.CutsByCount() {
		cuts = append(cuts, w.say(message.New("search.cut_by", "what", c.Cut.Name(), "count", c.Count)))
	}
	if len(cuts) > 0 {
		said = append(said, w.say(message.New("search.cuts", "list", strings.Join(cuts, ", "))))
	}
	if p.Passed == 0 && p.Seen == s.Count() {
		said = append(said, w.Texts.Text("search.nothing"))
	}
	if n := len(p.Front); n > 1 {
		said = append(said, w.say(message.New("search.front", "count", n)))
	}
	if thinned > 0 {
		said = append(said, w.say(message.New("search.thinned", "share", message.Of(units.Percent, thinned))))
	}
	return said
}

// chart places the designs by two measures.
func (w Writer) chart(s *search.Search, p *search.Part, marks []search.Found, x, y string) SearchChart {
	shown := s.Asked()
	ax, ay := placeOf(shown, x, 0), placeOf(shown, y, 1)
	type dot struct {
		f    *search.Found
		kind string
		at   int
	}
	var dots []dot
	step := max(1, (len(p.Front)+mostPoints-1)/mostPoints)
	for i := 0; i < len(p.Front); i += step {
		dots = append(dots, dot{&p.Front[i], "front", p.Front[i].Place})
	}
	for i := range p.Best {
		dots = append(dots, dot{&p.Best[i], "best", p.Best[i].Place})
	}
	for i := range marks {
		kind := "kept"
		if i == 0 {
			kind = "hand"
		}
		dots = append(dots, dot{&marks[i], kind, -1 - i})
	}
	known := func(d dot) bool { return d.f.Values.Known(ax) && d.f.Values.Known(ay) }
	xs, ys := w.scaleOf(ax), w.scaleOf(ay)
	for _, d := range dots {
		if known(d) {
			xs.take(d.f.Values.SI[ax])
			ys.take(d.f.Values.SI[ay])
		}
	}
	out := SearchChart{X: w.ticks(&xs), Y: w.ticks(&ys), Points: []SearchPoint{}}
	for _, d := range dots {
		if known(d) {
			out.Points = append(out.Points, SearchPoint{
				Place: d.at, X: xs.at(d.f.Values.SI[ax]), Y: ys.at(d.f.Values.SI[ay]), Kind: d.kind,
				Text: w.say(message.New("search.point", "x", w.measuredWhole(d.f, ax), "y", w.measuredWhole(d.f, ay))),
			})
		}
	}
	return out
}

func (w Writer) measuredWhole(f *search.Found, at int) string {
	return strings.TrimSpace(w.measured(f, at) + " " + w.unitOf(search.Measures[at].Kind))
}

// placeOf returns the place of a measure among those that are shown, or that of the n-th of them.
func placeOf(shown []int, id string, n int) int {
	for _, at := range shown {
		if string(search.Measures[at].ID) == id {
			return at
		}
	}
	return shown[min(n, len(shown)-1)]
}

// measureScale is an axis of the picture in the reader's unit.
type measureScale struct {
	meaning   search.Meaning
	system    units.System
	low, high float64
	any       bool
}

func (w Writer) scaleOf(at int) measureScale {
	return measureScale{meaning: search.Measures[at], system: w.System}
}

func (m *measureScale) in(si float64) float64 { return units.In(m.meaning.Kind, si, m.system) }

func (m *measureScale) take(si float64) {
	x := m.in(si)
	if !m.any {
		m.low, m.high, m.any = x, x, true
	}
	m.low, m.high = min(m.low, x), max(m.high, x)
}

// at returns where a value lies, with a twentieth of the way free at both ends.
func (m *measureScale) at(si float64) float64 {
	if m.high <= m.low {
		return 0.5
	}
	return 0.05 + 0.9*(m.in(si)-m.low)/(m.high-m.low)
}

// ticks are round values within the scale, five or so.
func (w Writer) ticks(m *measureScale) SearchScale {
	out := SearchScale{ID: string(m.meaning.ID), Label: strings.TrimSpace(w.Texts.Text("search.measure."+string(m.meaning.ID)) + " " + w.unitOf(m.meaning.Kind)), Ticks: []SearchTick{}}
	if m.high <= m.low {
		return out
	}
	step := roundStep((m.high - m.low) / 4)
	for n := math.Ceil(m.low / step); n*step <= m.high; n++ {
		x := n * step
		text := w.Texts.Numbers.Write(strconv.FormatFloat(x, 'g', 6, 64))
		if m.meaning.ID == search.Ready {
			text = shop.Day(x).String()
		}
		out.Ticks = append(out.Ticks, SearchTick{0.05 + 0.9*(x-m.low)/(m.high-m.low), text})
	}
	return out
}

// roundStep is 1, 2 or 5 times a power of ten, at least x.
func roundStep(x float64) float64 {
	power := math.Pow10(int(math.Floor(math.Log10(x))))
	for _, n := range []float64{1, 2, 5} {
		if n*power >= x {
			return n * power
		}
	}
	return 10 * power
}

// Binds says by how much each thing that must hold would have to give alone for one design to pass, or that none helps alone.
func (w Writer) Binds(id string, p *search.Part, missed bool) string {
	name := search.Cut(id).Name()
	switch {
	case len(p.Best) == 0:
		return w.say(message.New("search.gives_nothing", "what", name))
	case !missed:
		return w.say(message.New("search.gives_whole", "what", name))
	}
	return w.say(message.New("search.gives", "what", name, "by", message.Of(units.Percent, p.Best[0].Missed())))
}
