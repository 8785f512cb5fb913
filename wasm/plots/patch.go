// Package plots turns the plain series of core/report into what a change of
// the design changes in the page's charts. What stays the same is written when
// the page is built, by site/charts. It formats; it computes nothing.
package plots

import "finwright/core/report"

// Update is what a change of the design changes in a chart that is there.
type Update struct {
	ID    string `json:"id"`
	Patch Option `json:"patch"` // for setOption
	X     *Place `json:"x"`
	Y     *Place `json:"y"` // nil where the plot's height is no input
	Mark  *Mark  `json:"mark"`
	Label string `json:"label"` // what the plot shows, said
}

// Place says what a click along an axis sets.
type Place struct {
	Field string  `json:"field"`
	Unit  string  `json:"unit"`
	Step  float64 `json:"step"` // one press of an arrow key
}

// Mark is where the design stands, in the units of the axes.
type Mark struct {
	X float64 `json:"x"`
	Y float64 `json:"y"`
}

func place(a report.Axis) *Place { return &Place{Field: a.Field, Unit: a.Unit, Step: a.Nudge} }

// Option is the partial option of a change. It says only what a change of the design can change.
type Option struct {
	Title  heading       `json:"title"`
	X      []axisRange   `json:"xAxis,omitempty"`
	Y      []axisRange   `json:"yAxis,omitempty"`
	Series []seriesPatch `json:"series"`
}

type heading struct {
	Text string `json:"text"`
}

type axisRange struct {
	Min   float64  `json:"min"`
	Max   float64  `json:"max"`
	Tick  custom   `json:"axisTick"`
	Label custom   `json:"axisLabel"`
	Texts []string `json:"texts"`
}

// custom puts ticks where we say, not where the chart library would.
type custom struct {
	Values []float64 `json:"customValues"`
}

type seriesPatch struct {
	ID   string `json:"id"`
	Data raw    `json:"data" ts:"unknown[]"`
}

func axisPatch(s scale) axisRange {
	return axisRange{s.low, s.high, custom{s.ticks}, custom{s.ticks}, s.texts}
}
