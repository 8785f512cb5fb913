package plots

import (
	"math"
	"slices"
	"strconv"

	"finwright/core/report"
	"finwright/core/units"
)

// Patch returns what changes in a plot when the design does. The plot keeps its panels and lines, and the axes that are shown as far as it can.
func Patch(c report.Curves, shown []Axes, system units.System) Update {
	s := scales(c, of(c, shown, system))
	patch := Option{Title: Heading{c.Title}}
	for i, p := range c.Panels {
		patch.X = append(patch.X, axisPatch(s.x, c.Numbers))
		y := axisPatch(s.y[i], c.Numbers)
		if p.From != nil {
			if y.Name = p.Label; s.y[i].low != 0 {
				y.Name = p.From(y.Texts[0])
			}
		}
		patch.Y = append(patch.Y, y)
		for _, d := range panelData(p, s.x, s.y[i]) {
			patch.Series = append(patch.Series, SeriesPatch{SeriesID(i, d.id), d.data})
		}
	}
	u := Update{ID: c.ID, Patch: patch, X: place(c.X), Label: c.Alt, Rings: rings(c), Held: c.Held, Readings: readings(c), Loose: s.loose || c.Wide}
	if len(c.Panels) > 0 && c.Panels[0].Mark != nil {
		u.X.from(c.Panels[0].Mark.X, c.X.Nudge)
	}
	return u
}

type plotScales struct {
	x     scale
	y     []scale
	loose bool // what holds is wider than the curves ask for
}

func scales(c report.Curves, held [][2]float64) plotScales {
	var s plotScales
	left, right := math.Inf(1), math.Inf(-1)
	for i, p := range c.Panels {
		low, high := math.Inf(1), math.Inf(-1)
		for _, l := range p.Lines {
			left, right = reach(left, right, l.X)
			low, high = reach(low, high, l.Y)
		}
		low, high = reach(low, high, p.Low)
		low, high = reach(low, high, p.High)
		least, most := atLeast(low, high)
		if p.From != nil && high <= whole {
			over := max(0, most-whole)
			least, most = least-over, most-over
		}
		low, high = least, most
		y := round(low, high, ticksUp)
		if held != nil {
			fits := y
			low, high = holding(low, high, held[i])
			y = round(low, high, ticksUp)
			s.loose = s.loose || y.low < fits.low || y.high > fits.high
		}
		s.y = append(s.y, y)
	}
	s.x = filled(left, right, ticksAcross)
	return s
}

// whole is the most that an efficiency can be: its axis ends there.
const whole = 1

// leastSpan keeps an axis from blowing up what hardly varies, as a share of the values.
const leastSpan = 0.2

func atLeast(low, high float64) (float64, float64) {
	if more := leastSpan*math.Abs(high) - (high - low); low <= high && more > 0 { // else there is not a single value
		return low - more/2, high + more/2
	}
	return low, high
}

// part is one series of a panel: what it is and its data.
type part struct {
	id   string
	data raw
}

// panelData lists a panel's series from back to front: other lines, own line and where it is out of range, labels. The page sets the design's ring.
func panelData(p report.Panel, x, y scale) []part {
	parts := make([]part, 0, len(p.Lines)+3)
	own := -1
	for i, l := range p.Lines {
		if l.Main {
			own = i
			continue
		}
		parts = append(parts, part{"line" + strconv.Itoa(i), lineData(l)})
	}
	if len(p.Low) > 0 {
		x := p.Lines[0].X
		parts = append(parts, part{"floor", lineData(report.Curve{X: x, Y: p.Low})}, part{"band", lineData(report.Curve{X: x, Y: differences(p.High, p.Low)})})
	}
	if own >= 0 {
		parts = append(parts, part{"own", lineData(p.Lines[own])})
		if p.Lines[own].Beyond != nil {
			parts = append(parts, part{"beyond", lineData(beyond(p.Lines[own]))})
		}
	}
	return append(parts, part{"names", names(p.Lines, x.high, y)})
}

// beyond returns the part of a line where its correlation is out of its range.
func beyond(l report.Curve) report.Curve {
	y := slices.Clone(l.Y)
	for i, out := range l.Beyond {
		if !out {
			y[i] = math.NaN()
		}
	}
	return report.Curve{X: l.X, Y: y}
}

// differences returns what a band adds to its floor.
func differences(high, low []float64) []float64 {
	out := make([]float64, len(high))
	for i := range high {
		out[i] = high[i] - low[i]
	}
	return out
}

// SeriesID is the id of a panel's series in the chart of all panels.
func SeriesID(panel int, id string) string { return strconv.Itoa(panel) + id }

// Series lists the series of each panel that Patch fills, from back to front.
func Series(c report.Curves) [][]string {
	s := scales(c, nil)
	list := make([][]string, len(c.Panels))
	for i, p := range c.Panels {
		list[i] = ids(panelData(p, s.x, s.y[i]))
	}
	return list
}

func ids(parts []part) []string {
	list := make([]string, len(parts))
	for i, p := range parts {
		list[i] = p.id
	}
	return list
}
