package charts

import (
	"encoding/json"
	"strconv"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"finwright/core/report"
	"finwright/wasm/plots"
)

func fieldOption(f report.Map, t plots.Theme) json.RawMessage {
	done := completion{theme: t, names: []string{t.Ink}, ticks: ticks(t)}
	for _, id := range plots.MapSeries() {
		one := fieldStyle(id)
		one.Id, one.Silent, one.Tooltip = id, true, &show{}
		done.series = append(done.series, one)
	}
	bare := &opts.SplitLine{Show: opts.Bool(false)}
	return draw(done,
		charts.WithGridOpts(opts.Grid{Left: strconv.Itoa(yLabelWidth), Right: "14", Top: "26", Bottom: "44"}),
		charts.WithXAxisOpts(opts.XAxis{
			Type: "value", Name: f.X.Name(), NameLocation: "middle", NameGap: 26,
			AxisLine: axisLine(t), AxisTick: ticks(t), AxisLabel: axisLabel(t), SplitLine: bare,
		}),
		charts.WithYAxisOpts(opts.YAxis{
			Type: "value", Name: f.Y.Name(), NameLocation: "end", NameGap: 10,
			AxisLine: axisLine(t), AxisLabel: axisLabel(t), SplitLine: bare,
		}),
	)
}

// fieldStyle is how one series of a map looks. The bands are the same on any paper, and so is what is written on them.
func fieldStyle(id string) series {
	if id == "contours" {
		return series{SingleSeries: charts.SingleSeries{
			Type: "line", ShowSymbol: opts.Bool(false), Color: plots.Light.Ink,
			LineStyle: &opts.LineStyle{Color: plots.Light.Ink, Width: 1},
		}}
	}
	return series{
		SingleSeries: charts.SingleSeries{Type: "scatter", SymbolSize: 0, ItemStyle: solid()},
		Z:            4,
		Label: &label{
			Label: opts.Label{
				Show: opts.Bool(true), Position: "inside", Formatter: "{b}", Color: plots.Light.Ink,
				FontFamily: family, FontSize: fontTick, BackgroundColor: plots.Light.Paper, BorderRadius: 2,
			},
			Padding: []int{3, 5, 2, 5},
		},
	}
}
