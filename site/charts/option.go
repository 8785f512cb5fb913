// Package charts writes the options of the page's charts with go-echarts: how
// they are laid out and look. That depends on nothing but the units, so it is
// done once, when the page is built; the data come from the engine, by
// wasm/plots.
package charts

import (
	"encoding/json"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"finwright/wasm/plots"
)

// Plot is one chart's option without data, in both themes.
type Plot struct {
	ID     string          `json:"id"`
	Option json.RawMessage `json:"option"` // on light paper
	Dark   json.RawMessage `json:"dark"`
	Ring   Ring            `json:"ring"`
}

// Ring is what marks the design on a printed chart; on the screen the page's style does.
type Ring struct {
	Accent string `json:"accent"`
	Paper  string `json:"paper"`
}

var printed = Ring{plots.Light.Accent, plots.Light.Paper}

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
		Name    *opts.TextStyle `json:"nameTextStyle"`
		Pointer pointer         `json:"axisPointer"`
	}
	yAxis struct {
		opts.YAxis
		Tick *opts.AxisTick  `json:"axisTick"`
		Text upright         `json:"axisLabel"`
		Name *opts.TextStyle `json:"nameTextStyle"`
	}
	// upright are the numbers up an axis. In a low chart those between are left out where they would touch; the ends stay. The
	// height of a line is said, since the library takes it from a letter that a machine's fonts may not have.
	upright struct {
		opts.AxisLabel
		LineHeight int `json:"lineHeight"`
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
	theme  plots.Theme
	series []series
	names  []string       // colours of the y axes' names
	ticks  *opts.AxisTick // of the y axes
	reads  bool           // whether an upright follows the pointer from sample to sample
}

func (c completion) VisitSeriesOpt(charts.MultiSeries) any { return c.series }

func (c completion) VisitXAxis(axes []opts.XAxis) any {
	out := make([]xAxis, len(axes))
	for i, a := range axes {
		out[i] = xAxis{
			a, text(c.theme.Ink),
			pointer{Show: c.reads, Snap: true, LineStyle: &opts.LineStyle{Color: c.theme.Grey, Width: 1, Type: "solid"}},
		}
	}
	return out
}

func (c completion) VisitYAxis(axes []opts.YAxis) any {
	out := make([]yAxis, len(axes))
	for i, a := range axes {
		name := text(c.names[i])
		name.Align, name.Padding = "left", []int{0, 0, 0, -yLabelWidth} // from the left edge of the chart
		numbers := *a.AxisLabel
		numbers.HideOverlap, numbers.ShowMinLabel, numbers.ShowMaxLabel = opts.Bool(true), opts.Bool(true), opts.Bool(true)
		out[i] = yAxis{a, c.ticks, upright{numbers, fontTick}, name}
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

func text(colour string) *opts.TextStyle {
	return &opts.TextStyle{Color: colour, FontFamily: family, FontSize: fontName}
}

func axisLabel(t plots.Theme) *opts.AxisLabel {
	return &opts.AxisLabel{Show: opts.Bool(true), Color: t.Grey, FontFamily: family, FontSize: fontTick, Margin: 9}
}

func axisLine(t plots.Theme) *opts.AxisLine {
	return &opts.AxisLine{Show: opts.Bool(true), OnZero: opts.Bool(false), LineStyle: &opts.LineStyle{Color: t.Grey, Width: 1}}
}

func ticks(t plots.Theme) *opts.AxisTick {
	return &opts.AxisTick{Show: opts.Bool(true), LineStyle: &opts.LineStyle{Color: t.Grey, Width: 1}}
}

func rules(t plots.Theme) *opts.SplitLine {
	return &opts.SplitLine{Show: opts.Bool(true), LineStyle: &opts.LineStyle{Color: t.Faint, Width: 1, Opacity: opts.Float(0.7)}}
}

// draw writes the option of one chart.
func draw(c completion, options ...charts.GlobalOpts) json.RawMessage {
	chart := charts.NewLine()
	for len(chart.XAxisList) < len(c.names) {
		chart.ExtendXAxis(opts.XAxis{})
		chart.ExtendYAxis(opts.YAxis{})
	}
	chart.SetGlobalOptions(append(options,
		charts.WithAnimation(false),
		charts.WithTitleOpts(opts.Title{Show: opts.Bool(false)}), // the page sets it as a heading
	)...)
	chart.Accept(c)
	chart.Validate()
	return json.RawMessage(chart.JSONNotEscaped())
}
