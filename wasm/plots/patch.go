// Package plots turns the plain series of core/report into what a change of
// the design changes in the page's charts. What stays the same is written when
// the page is built, by site/charts. It formats; it computes nothing.
package plots

import (
	"math"

	"finwright/core/report"
	"finwright/core/units"
)

// Update is what a change of the design changes in a chart that is there.
type Update struct {
	ID    string  `json:"id"`
	Patch Option  `json:"patch"` // for setOption
	Loose bool    `json:"loose"` // an axis is wider than the curves ask for, since it was
	X     *Place  `json:"x"`
	Y     *Place  `json:"y"`     // nil where the plot's height is no input
	Label string  `json:"label"` // what the plot shows, said
	Rings []*Spot `json:"rings"` // where the design stands in each panel; nil where it lies outside the plot or has no such quantity
	Held  string  `json:"held"`  // what stands still along it; empty where nothing hangs on that

	// Readings are what the design's own curves say at each of their samples; empty where they have a gap. A map has none.
	Readings []string `json:"readings,omitempty"`
}

// Spot is a place in a panel, in the units of its axes.
type Spot struct {
	X float64 `json:"x"`
	Y float64 `json:"y"`
}

// Rings says where the design stands in a plot that is there.
type Rings struct {
	ID    string  `json:"id"`
	Rings []*Spot `json:"rings"`
}

// Move returns where the design stands in a plot.
func Move(c report.Curves) Rings { return Rings{c.ID, rings(c)} }

func rings(c report.Curves) []*Spot {
	out := make([]*Spot, len(c.Panels))
	for i, p := range c.Panels {
		if p.Mark != nil && !math.IsNaN(p.Mark.Y) && !math.IsInf(p.Mark.Y, 0) {
			out[i] = &Spot{p.Mark.X, p.Mark.Y}
		}
	}
	return out
}

// Place says what a click along an axis sets.
type Place struct {
	Field string      `json:"field"`
	Unit  string      `json:"unit"`
	At    float64     `json:"at"`    // where the design stands
	Said  string      `json:"said"`  // the same in words
	Steps *[2]float64 `json:"steps"` // one press of an arrow key down and up from the design; nil where it lies outside the plot
}

func place(a report.Axis) *Place { return &Place{Field: a.Field, Unit: a.Unit, Said: a.Said} }

// from returns the place with its steps from where the design stands.
func (p *Place) from(at, nudge float64) *Place {
	p.At, p.Steps = at, &[2]float64{at - nudge, at + nudge}
	return p
}

// Option is the partial option of a change. It says only what a change of the design can change.
type Option struct {
	Title  Heading       `json:"title"`
	X      []AxisRange   `json:"xAxis,omitempty"`
	Y      []AxisRange   `json:"yAxis,omitempty"`
	Series []SeriesPatch `json:"series"`
}

// Heading is the title of a plot.
type Heading struct {
	Text string `json:"text"`
}

// AxisRange is where an axis ends and what its ticks say.
type AxisRange struct {
	Name  string   `json:"name,omitempty"` // where it says where the axis begins
	Min   float64  `json:"min"`
	Max   float64  `json:"max"`
	Tick  Custom   `json:"axisTick"`
	Label Custom   `json:"axisLabel"`
	Texts []string `json:"texts"`
}

// Custom puts ticks where we say, not where the chart library would.
type Custom struct {
	Values []float64 `json:"customValues"`
}

// SeriesPatch is the new data of one series.
type SeriesPatch struct {
	ID   string `json:"id"`
	Data raw    `json:"data" ts:"unknown[]"`
}

func axisPatch(s scale, n units.Style) AxisRange {
	texts := make([]string, len(s.texts))
	for i, text := range s.texts {
		texts[i] = n.Write(text)
	}
	return AxisRange{Min: s.low, Max: s.high, Tick: Custom{s.ticks}, Label: Custom{s.ticks}, Texts: texts}
}
