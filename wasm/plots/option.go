// Package plots makes ECharts options from the plain series of core/report,
// with go-echarts. It formats and lays out; it computes nothing.
package plots

import (
	"encoding/json"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"finwright/core/report"
)

// Plot is one chart's full option, in both themes.
type Plot struct {
	ID     string          `json:"id"`
	Option json.RawMessage `json:"option"` // on light paper
	Dark   json.RawMessage `json:"dark"`
}

// Update is what a change of the design changes in a chart that is there.
type Update struct {
	ID    string          `json:"id"`
	Patch json.RawMessage `json:"patch"` // partial option, for setOption
	X     *Place          `json:"x"`
	Y     *Place          `json:"y"` // nil where the plot's height is no input
	Mark  *Mark           `json:"mark"`
	Label string          `json:"label"` // what the plot shows, said
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

const (
	family   = "Barlow Semi Condensed"
	fontName = 13
	fontTick = 12
)

// The parts of an option that go-echarts has no fields for.
type (
	series struct {
		charts.SingleSeries
		Silent  bool   `json:"silent,omitempty"`
		Z       int    `json:"z,omitempty"`
		Clip    *bool  `json:"clip,omitempty"`
		Tooltip *show  `json:"tooltip,omitempty"`
		Label   *label `json:"label,omitempty"`
	}
	label struct {
		opts.Label
		Padding []int                     `json:"padding,omitempty"`
		Rich    map[string]opts.TextStyle `json:"rich,omitempty"` // {own|text} in a name has the style "own"
	}
	show struct {
		Show bool `json:"show"`
	}
	xAxis struct {
		opts.XAxis
		Tick    axisTick        `json:"axisTick"`
		Label   axisLabel       `json:"axisLabel"`
		Texts   []string        `json:"texts"` // the ticks as printed; the page looks them up
		Name    *opts.TextStyle `json:"nameTextStyle"`
		Pointer pointer         `json:"axisPointer"`
	}
	yAxis struct {
		opts.YAxis
		Tick  axisTick        `json:"axisTick"`
		Label axisLabel       `json:"axisLabel"`
		Texts []string        `json:"texts"`
		Name  *opts.TextStyle `json:"nameTextStyle"`
	}
	axisTick struct {
		*opts.AxisTick
		custom
	}
	axisLabel struct {
		*opts.AxisLabel
		custom
	}
	grid struct {
		opts.Grid
		OuterBounds string `json:"outerBoundsMode"` // "none": the grids stay where they are, whatever the ticks
	}
	pointer struct {
		Show      bool            `json:"show"`
		Snap      bool            `json:"snap"`
		LineStyle *opts.LineStyle `json:"lineStyle,omitempty"`
		Label     show            `json:"label"`
	}
)

// completion adds those parts while go-echarts writes the option.
type completion struct {
	charts.BaseConfigurationVisitor
	theme  Theme
	series []series
	x, y   []scale
	names  []string       // colours of the y axes' names
	ticks  *opts.AxisTick // of the y axes
	reads  bool           // whether an upright follows the pointer from sample to sample
}

func (c completion) VisitSeriesOpt(charts.MultiSeries) any { return c.series }

func (c completion) VisitXAxis(axes []opts.XAxis) any {
	out := make([]xAxis, len(axes))
	for i, a := range axes {
		ticks := custom{c.x[i].ticks}
		out[i] = xAxis{
			a,
			axisTick{a.AxisTick, ticks},
			axisLabel{a.AxisLabel, ticks},
			c.x[i].texts, c.theme.text(c.theme.Ink),
			pointer{Show: c.reads, Snap: true, LineStyle: &opts.LineStyle{Color: c.theme.Grey, Width: 1, Type: "solid"}},
		}
	}
	return out
}

func (c completion) VisitYAxis(axes []opts.YAxis) any {
	out := make([]yAxis, len(axes))
	for i, a := range axes {
		name := c.theme.text(c.names[i])
		name.Align, name.Padding = "left", []int{0, 0, 0, -yLabelWidth} // from the left edge of the chart
		ticks := custom{c.y[i].ticks}
		out[i] = yAxis{a, axisTick{c.ticks, ticks}, axisLabel{a.AxisLabel, ticks}, c.y[i].texts, name}
	}
	return out
}

func (c completion) VisitGrid(grids []opts.Grid) any {
	out := make([]grid, len(grids))
	for i, g := range grids {
		out[i] = grid{g, "none"}
	}
	return out
}

// Visit takes out what the page does not load. It shows a reading of its own in the page's type: a tooltip of the chart
// library would either have another font or break the page's style policy.
func (c completion) Visit(option map[string]any) {
	delete(option, "tooltip")
	delete(option, "toolbox")
	delete(option, "legend")
	delete(option, "color")
	option["textStyle"] = opts.TextStyle{FontFamily: family}
}

func (t Theme) text(colour string) *opts.TextStyle {
	return &opts.TextStyle{Color: colour, FontFamily: family, FontSize: fontName}
}

func (t Theme) axisLabel() *opts.AxisLabel {
	return &opts.AxisLabel{Show: opts.Bool(true), Color: t.Grey, FontFamily: family, FontSize: fontTick, Margin: 9}
}

func (t Theme) axisLine() *opts.AxisLine {
	return &opts.AxisLine{Show: opts.Bool(true), OnZero: opts.Bool(false), LineStyle: &opts.LineStyle{Color: t.Grey, Width: 1}}
}

func (t Theme) ticks() *opts.AxisTick {
	return &opts.AxisTick{Show: opts.Bool(true), LineStyle: &opts.LineStyle{Color: t.Grey, Width: 1}}
}

func (t Theme) rules() *opts.SplitLine {
	return &opts.SplitLine{Show: opts.Bool(true), LineStyle: &opts.LineStyle{Color: t.Faint, Width: 1, Opacity: opts.Float(0.7)}}
}

// named writes a quantity and its unit as an axis does.
func named(label, unit string) string {
	if unit == "" {
		return label
	}
	return label + ", " + unit
}

// draw writes the option of one chart.
func draw(c completion, title string, options ...charts.GlobalOpts) json.RawMessage {
	chart := charts.NewLine()
	for len(chart.XAxisList) < len(c.x) {
		chart.ExtendXAxis(opts.XAxis{})
		chart.ExtendYAxis(opts.YAxis{})
	}
	chart.SetGlobalOptions(append(options,
		charts.WithAnimation(false),
		charts.WithTitleOpts(opts.Title{Show: opts.Bool(false), Title: title}), // the page sets it as a heading
	)...)
	chart.Accept(c)
	chart.Validate()
	return json.RawMessage(chart.JSONNotEscaped())
}
