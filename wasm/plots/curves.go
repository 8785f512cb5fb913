package plots

import (
	"encoding/json"
	"math"
	"strconv"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"finwright/core/report"
)

// Options returns the full option of each plot.
func Options(curves ...report.Curves) []Plot {
	plots := make([]Plot, len(curves))
	for i, c := range curves {
		plots[i] = Plot{c.ID, curveOption(c, Light), curveOption(c, Dark)}
	}
	return plots
}

// Patch returns what changes in a plot when the design does. The plot keeps its panels and lines.
func Patch(c report.Curves) Update {
	s := scales(c)
	patch := patch{Title: heading{c.Title}}
	for i, p := range c.Panels {
		patch.X = append(patch.X, axisPatch(s.x))
		patch.Y = append(patch.Y, axisPatch(s.y[i]))
		for _, d := range panelData(p, s.x, s.y[i]) {
			patch.Series = append(patch.Series, seriesPatch{panelID(i, d.id), d.data})
		}
	}
	u := Update{ID: c.ID, Patch: patch.json(), X: place(c.X), Label: c.Alt}
	if len(c.Panels) > 0 && c.Panels[0].Mark != nil {
		u.Mark = &Mark{c.Panels[0].Mark.X, c.Panels[0].Mark.Y}
	}
	return u
}

type plotScales struct {
	x scale
	y []scale
}

func scales(c report.Curves) plotScales {
	var s plotScales
	left, right := math.Inf(1), math.Inf(-1)
	for _, p := range c.Panels {
		low, high := math.Inf(1), math.Inf(-1)
		for _, l := range p.Lines {
			left, right = reach(left, right, l.X)
			low, high = reach(low, high, l.Y)
		}
		low, high = reach(low, high, p.Low)
		low, high = reach(low, high, p.High)
		low, high = atLeast(low, high)
		s.y = append(s.y, round(low, high, ticksUp))
	}
	s.x = filled(left, right, ticksAcross)
	return s
}

// leastSpan keeps an axis from blowing up what hardly varies, as a share of the values.
const leastSpan = 0.05

func atLeast(low, high float64) (float64, float64) {
	if more := leastSpan*math.Abs(high) - (high - low); more > 0 {
		return low - more/2, high + more/2
	}
	return low, high
}

// part is one series of a panel: what it is and its data.
type part struct {
	id   string
	data raw
}

// panelData lists a panel's series from back to front: other lines, upright, own line, ring, labels.
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
		parts = append(parts, part{"floor", lineData(report.Line{X: x, Y: p.Low})}, part{"band", lineData(report.Line{X: x, Y: differences(p.High, p.Low)})})
	}
	parts = append(parts, part{"guide", guideData(p.Mark, y)})
	if own >= 0 {
		parts = append(parts, part{"own", lineData(p.Lines[own])})
	}
	return append(parts, part{"ring", markData(p.Mark)}, part{"names", names(p.Lines, x.high, y)})
}

// differences returns what a band adds to its floor.
func differences(high, low []float64) []float64 {
	out := make([]float64, len(high))
	for i := range high {
		out[i] = high[i] - low[i]
	}
	return out
}

func panelID(panel int, id string) string { return strconv.Itoa(panel) + id }

func curveOption(c report.Curves, t Theme) json.RawMessage {
	s := scales(c)
	done := completion{theme: t, y: s.y, ticks: &opts.AxisTick{Show: opts.Bool(false)}, reads: true}
	var options []charts.GlobalOpts
	var together []int
	last := len(c.Panels) - 1
	for i, p := range c.Panels {
		done.x = append(done.x, s.x)
		done.names = append(done.names, t.series(p.Figure))
		together = append(together, i)
		x := opts.XAxis{
			Type: "value", GridIndex: i, Min: s.x.low, Max: s.x.high,
			AxisLine: t.axisLine(), AxisTick: t.ticks(), AxisLabel: t.axisLabel(), SplitLine: &opts.SplitLine{Show: opts.Bool(false)},
		}
		if i == last {
			x.Name, x.NameLocation, x.NameGap = named(c.X.Label, c.X.Unit), "middle", 26
		} else {
			x.AxisLabel.Show = opts.Bool(false)
		}
		y := opts.YAxis{
			Type: "value", GridIndex: i, Min: s.y[i].low, Max: s.y[i].high,
			Name: named(p.Label, p.Unit), NameLocation: "end", NameGap: 10,
			AxisLine: &opts.AxisLine{Show: opts.Bool(false)}, AxisLabel: t.axisLabel(), SplitLine: t.rules(),
		}
		options = append(options, charts.WithXAxisOpts(x, i), charts.WithYAxisOpts(y, i))
		for _, d := range panelData(p, s.x, s.y[i]) {
			one := style(d.id, p, t)
			one.Id, one.Data, one.XAxisIndex, one.YAxisIndex = panelID(i, d.id), d.data, i, i
			one.Silent = true
			if one.Stack != "" {
				one.Stack = panelID(i, one.Stack) // series of one stack are heaped whatever their grid
			}
			done.series = append(done.series, one)
		}
	}
	return draw(done, c.Title, append(options,
		charts.WithGridOpts(stack(len(c.Panels))...),
		charts.WithAxisPointerOpts(&opts.AxisPointer{Link: []opts.AxisPointerLink{{XAxisIndex: together}}}),
	)...)
}

const (
	yLabelWidth = 38 // px left of a grid
	nameWidth   = 66 // px right of a grid, for the names of the lines
)

// stack lays n grids over one another, with room above each for its name and below the last for the x axis.
func stack(n int) []opts.Grid {
	grids := make([]opts.Grid, n)
	for i := range grids {
		grids[i] = opts.Grid{
			Left: strconv.Itoa(yLabelWidth), Right: strconv.Itoa(nameWidth),
			Top: percent(float64(i)/float64(n) + 0.03), Bottom: percent(float64(n-1-i)/float64(n) + 0.10),
		}
	}
	if n > 0 {
		grids[0].Top, grids[n-1].Bottom = "26", "44"
	}
	return grids
}

func percent(x float64) string { return strconv.FormatFloat(100*x, 'f', 1, 64) + "%" }

// style is how one series of a panel looks.
func style(id string, p report.Panel, t Theme) series {
	unread := &show{} // the pointer passes it by
	line := func(colour string, width float32, dash string) series {
		return series{
			SingleSeries: charts.SingleSeries{
				Type: "line", ShowSymbol: opts.Bool(false), Color: colour,
				LineStyle: &opts.LineStyle{Color: colour, Width: width, Type: dash},
			},
			Tooltip: unread,
		}
	}
	switch id {
	case "floor", "band":
		s := line(t.series(p.Figure), 0, "solid")
		s.Stack, s.LineStyle.Opacity = "band", opts.Float(0)
		if id == "band" {
			s.AreaStyle = &opts.AreaStyle{Color: t.series(p.Figure), Opacity: opts.Float(0.18)}
		}
		return s
	case "own":
		s := line(t.series(p.Figure), 2.25, "solid")
		s.Name, s.Tooltip, s.Z = p.Label, nil, 3
		return s
	case "guide":
		s := line(t.Accent, 1, "dashed")
		s.LineStyle.Opacity = opts.Float(0.7)
		return s
	case "ring":
		return ring(t)
	case "names":
		open := false
		return series{
			SingleSeries: charts.SingleSeries{Type: "scatter", SymbolSize: 0, ItemStyle: solid()},
			Tooltip:      unread,
			Clip:         &open,
			Label: &label{
				Label: opts.Label{
					Show: opts.Bool(true), Position: "right", Formatter: "{b}",
					Color: t.Grey, FontFamily: family, FontSize: fontTick,
				},
				Rich: map[string]opts.TextStyle{"own": {Color: t.series(p.Figure), FontFamily: family, FontSize: fontTick, FontWeight: "600"}},
			},
		}
	}
	return line(t.Grey, 1, "solid")
}

// ring marks the design.
func ring(t Theme) series {
	s := series{
		SingleSeries: charts.SingleSeries{Type: "scatter", Symbol: "circle", SymbolSize: 11, ItemStyle: solid()},
		Z:            6, Tooltip: &show{},
	}
	s.ItemStyle.Color, s.ItemStyle.BorderColor, s.ItemStyle.BorderWidth = t.Paper, t.Accent, 2.5
	return s
}

// solid undoes the chart library's habit of letting the ground show through marks and their labels.
func solid() *opts.ItemStyle { return &opts.ItemStyle{Opacity: opts.Float(1)} }
