package report

import (
	"strings"

	"finwright/core/message"
	"finwright/core/search"
	"finwright/core/shop"
	"finwright/core/units"
)

// ShownSearch is the answer of a search as the page shows it, the part of it that has been looked at.
type ShownSearch struct {
	Measures []ShownMeasure `json:"measures"` // columns of the best
	Cuts     []ShownCut     `json:"cuts"`     // what leaves designs out, in the order in which it is looked at
	Best     []ShownFound   `json:"best"`
	Points   []ShownPoint   `json:"points"` // of the front and of the best that are not on it, with both measures known
}

// ShownMeasure is a measure of designs. Unit is that of the numbers of points, and of the cells that have it.
type ShownMeasure struct {
	ID     search.Measure `json:"id"`
	Label  string         `json:"label"`
	Unit   string         `json:"unit"`
	More   bool           `json:"more"`   // more of it is better
	Wanted bool           `json:"wanted"` // it may be wanted
}

// ShownCut is how many designs something leaves out.
type ShownCut struct {
	ID    string `json:"id"`
	Label string `json:"label"`
	Count string `json:"count"`
}

// ShownFound is a design that was found, a cell a measure.
type ShownFound struct {
	Place   int         `json:"place"`
	Outside bool        `json:"outside"`
	Cells   []ShownCell `json:"cells"`
}

// ShownPoint is a design in a picture of two measures, in the units shown.
type ShownPoint struct {
	Place   int     `json:"place"`
	X       float64 `json:"x"`
	Y       float64 `json:"y"`
	Front   bool    `json:"front"`
	Outside bool    `json:"outside"`
}

// Search prints an answer and draws it over two measures, by their places.
func (w Writer) Search(p *search.Part, x, y int) ShownSearch {
	out := ShownSearch{Cuts: []ShownCut{}, Best: make([]ShownFound, len(p.Best)), Points: []ShownPoint{}}
	for i := range search.Measures {
		m := &search.Measures[i]
		out.Measures = append(out.Measures, ShownMeasure{m.ID, w.Texts.Text("search.measure." + string(m.ID)), w.unitOf(m.Kind), m.More, m.Wanted})
	}
	counts := p.Counts()
	for _, c := range search.Cuts() {
		if n, any := counts[string(c)]; any {
			out.Cuts = append(out.Cuts, ShownCut{string(c), w.Texts.Text(string(c.Name())), w.Texts.Numbers.Figure(units.Count, float64(n), w.System).Value})
		}
	}
	for i := range p.Best {
		f := &p.Best[i]
		shown := ShownFound{f.Place, f.Outside, make([]ShownCell, len(search.Measures))}
		for at := range search.Measures {
			shown.Cells[at] = w.foundCell(f, at)
		}
		out.Best[i] = shown
	}
	on := make(map[int]bool, len(p.Front))
	for i := range p.Front {
		on[p.Front[i].Place] = true
		out.Points = w.point(out.Points, &p.Front[i], x, y, true)
	}
	for i := range p.Best {
		if !on[p.Best[i].Place] {
			out.Points = w.point(out.Points, &p.Best[i], x, y, false)
		}
	}
	return out
}

func (w Writer) unitOf(k units.Kind) string {
	if k.Money() {
		return strings.TrimSpace(w.Currency + " " + k.Unit(w.System))
	}
	return k.Unit(w.System)
}

func (w Writer) foundCell(f *search.Found, at int) ShownCell {
	m := &search.Measures[at]
	cell := ShownCell{ID: string(m.ID)}
	switch si := f.Values.SI[at]; {
	case !f.Values.Known(at):
		cell.Absent = w.say(message.New("search.not_known"))
	case m.ID == search.Ready:
		cell.SI, cell.Value = si, shop.Day(si).String()
	default:
		cell.SI, cell.Value, cell.Unit = si, w.Texts.Numbers.Figure(m.Kind, si, w.System).Value, w.unitOf(m.Kind)
	}
	return cell
}

func (w Writer) point(to []ShownPoint, f *search.Found, x, y int, front bool) []ShownPoint {
	if !f.Values.Known(x) || !f.Values.Known(y) {
		return to
	}
	shown := func(at int) float64 { return units.In(search.Measures[at].Kind, f.Values.SI[at], w.System) }
	return append(to, ShownPoint{f.Place, shown(x), shown(y), front, f.Outside})
}
