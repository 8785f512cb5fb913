package charts

import (
	"encoding/json"
	"strconv"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"finwright/core/report"
	"finwright/wasm/plots"
)

func curveOption(c report.Curves, t plots.Theme) json.RawMessage {
	done := completion{theme: t, ticks: &opts.AxisTick{Show: opts.Bool(false)}, reads: true}
	var options []charts.GlobalOpts
	var together []int
	last := len(c.Panels) - 1
	ids := plots.Series(c)
	for i, p := range c.Panels {
		done.names = append(done.names, t.Of(p.Figure))
		together = append(together, i)
		x := opts.XAxis{
			Type: "value", GridIndex: i,
			AxisLine: axisLine(t), AxisTick: ticks(t), AxisLabel: axisLabel(t), SplitLine: &opts.SplitLine{Show: opts.Bool(false)},
		}
		if i == last {
			x.Name, x.NameLocation, x.NameGap = c.X.Name(), "middle", 26
		} else {
			x.AxisLabel.Show = opts.Bool(false)
		}
		y := opts.YAxis{
			Type: "value", GridIndex: i,
			Name: report.Axis{Label: p.Label, Unit: p.Unit}.Name(), NameLocation: "end", NameGap: 9,
			AxisLine: &opts.AxisLine{Show: opts.Bool(false)}, AxisLabel: axisLabel(t), SplitLine: rules(t),
		}
		options = append(options, charts.WithXAxisOpts(x, i), charts.WithYAxisOpts(y, i))
		for _, id := range ids[i] {
			one := style(id, p, t)
			one.Id, one.XAxisIndex, one.YAxisIndex = plots.SeriesID(i, id), i, i
			one.Silent = true
			if one.Stack != "" {
				one.Stack = plots.SeriesID(i, one.Stack) // series of one stack are heaped whatever their grid
			}
			done.series = append(done.series, one)
		}
	}
	right := numberWidth
	if len(c.Panels[0].Lines) > 1 {
		right = nameWidth
	}
	return draw(done, append(options,
		charts.WithGridOpts(stack(len(c.Panels), right)...),
		charts.WithAxisPointerOpts(&opts.AxisPointer{Link: []opts.AxisPointerLink{{XAxisIndex: together}}}),
	)...)
}

const (
	yLabelWidth = 38 // px left of a grid
	nameWidth   = 88 // px right of a grid whose lines have names
	numberWidth = 16 // px right of one whose lines have none, for the half of its last number
)

// stack lays n grids over one another, with room above each for its name, clear of the numbers that end the one before, and
// below the last for the x axis.
func stack(n, right int) []opts.Grid {
	grids := make([]opts.Grid, n)
	for i := range grids {
		grids[i] = opts.Grid{
			Left: strconv.Itoa(yLabelWidth), Right: strconv.Itoa(right),
			Top: percent(float64(i)/float64(n) + 0.05), Bottom: percent(float64(n-1-i)/float64(n) + 0.12),
		}
	}
	if n > 0 {
		grids[0].Top, grids[n-1].Bottom = "26", "44"
	}
	return grids
}

func percent(x float64) string { return strconv.FormatFloat(100*x, 'f', 1, 64) + "%" }

// style is how one series of a panel looks.
func style(id string, p report.Panel, t plots.Theme) series {
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
		s := line(t.Of(p.Figure), 0, "solid")
		s.Stack, s.LineStyle.Opacity = "band", opts.Float(0)
		if id == "band" {
			s.AreaStyle = &opts.AreaStyle{Color: t.Of(p.Figure), Opacity: opts.Float(0.18)}
		}
		return s
	case "own":
		s := line(t.Of(p.Figure), 2.25, "solid")
		s.Name, s.Tooltip, s.Z = p.Label, nil, 3
		return s
	case "beyond":
		s := line(t.Paper, 2.75, "dotted") // over the own line, which so reads as dashed
		s.Z = 4
		return s
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
				Rich: map[string]opts.TextStyle{"own": {Color: t.Of(p.Figure), FontFamily: family, FontSize: fontTick, FontWeight: "600"}},
			},
		}
	}
	return line(t.Grey, 1, "solid")
}

// solid undoes the chart library's habit of letting the ground show through marks and their labels.
func solid() *opts.ItemStyle { return &opts.ItemStyle{Opacity: opts.Float(1)} }
