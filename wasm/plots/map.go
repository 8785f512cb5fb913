package plots

import (
	"encoding/json"
	"strconv"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"finwright/core/report"
)

// Map is a field as the page shows it: bands to paint and a partial option for the chart over them.
type Map struct {
	Quantity string     `json:"quantity"`
	Columns  int        `json:"columns"`
	Rows     int        `json:"rows"`
	Bands    []byte     `json:"bands"` // base64 in JSON; row 0 at the bottom
	Colours  []string   `json:"colours"`
	Area     [4]float64 `json:"area"` // what the bands cover: left, bottom, right, top in the units of the axes
	Update
}

// MapOption returns the full option of the map's chart.
func MapOption(f report.Field) Plot {
	return Plot{f.ID, fieldOption(f, Light), fieldOption(f, Dark)}
}

// NewMap returns a field ready to show.
func NewMap(f report.Field) Map {
	x, y := fieldScales(f)
	p := patch{Title: heading{f.Title}, X: []axisRange{axisPatch(x)}, Y: []axisRange{axisPatch(y)}}
	for _, d := range fieldData(f) {
		p.Series = append(p.Series, seriesPatch{d.id, d.data})
	}
	return Map{
		Quantity: f.Quantity, Columns: f.Columns, Rows: f.Rows, Bands: f.Bands, Colours: Steps(len(f.Levels) + 1),
		Area: [4]float64{f.X.From, f.Y.From, f.X.To, f.Y.To}, Update: fieldUpdate(f, p),
	}
}

// MoveRing returns what changes in a map while the design is dragged: its ring. The map itself follows on release.
func MoveRing(f report.Field) Update {
	return fieldUpdate(f, patch{Title: heading{f.Title}, Series: []seriesPatch{{"ring", markData(&f.Ring)}}})
}

func fieldUpdate(f report.Field, p patch) Update {
	return Update{ID: f.ID, Patch: p.json(), X: place(f.X.Axis), Y: place(f.Y.Axis), Mark: &Mark{f.Ring.X, f.Ring.Y}, Label: f.Alt}
}

func fieldScales(f report.Field) (x, y scale) {
	return filled(f.X.From, f.X.To, ticksAcross), filled(f.Y.From, f.Y.To, ticksAcross)
}

func fieldData(f report.Field) []part {
	return []part{{"contours", contourData(f.Contours)}, {"levels", levelData(f.Contours)}, {"ring", markData(&f.Ring)}}
}

// levelData writes the levels on their lines.
func levelData(contours []report.Contour) raw {
	type label struct {
		Name  string `json:"name"`
		Value raw    `json:"value"`
	}
	labels := []label{}
	for _, c := range contours {
		if c.LabelAt != nil {
			labels = append(labels, label{c.Label, appendPair(nil, c.LabelAt.X, c.LabelAt.Y, shownDigits)})
		}
	}
	b, err := json.Marshal(labels)
	if err != nil {
		panic("plots: " + err.Error())
	}
	return b
}

func fieldOption(f report.Field, t Theme) json.RawMessage {
	x, y := fieldScales(f)
	done := completion{theme: t, x: []scale{x}, y: []scale{y}, names: []string{t.Ink}, ticks: t.ticks()}
	for _, d := range fieldData(f) {
		one := fieldStyle(d.id, t)
		one.Id, one.Data, one.Silent, one.Tooltip = d.id, d.data, true, &show{}
		done.series = append(done.series, one)
	}
	bare := &opts.SplitLine{Show: opts.Bool(false)}
	return draw(done, f.Title,
		charts.WithGridOpts(opts.Grid{Left: strconv.Itoa(yLabelWidth), Right: "14", Top: "26", Bottom: "44"}),
		charts.WithXAxisOpts(opts.XAxis{
			Type: "value", Min: x.low, Max: x.high, Name: named(f.X.Label, f.X.Unit), NameLocation: "middle", NameGap: 26,
			AxisLine: t.axisLine(), AxisTick: t.ticks(), AxisLabel: t.axisLabel(), SplitLine: bare,
		}),
		charts.WithYAxisOpts(opts.YAxis{
			Type: "value", Min: y.low, Max: y.high, Name: named(f.Y.Label, f.Y.Unit), NameLocation: "end", NameGap: 10,
			AxisLine: t.axisLine(), AxisLabel: t.axisLabel(), SplitLine: bare,
		}),
	)
}

// fieldStyle is how one series of a map looks. The bands are the same on any paper, and so is what is written on them.
func fieldStyle(id string, t Theme) series {
	switch id {
	case "contours":
		return series{SingleSeries: charts.SingleSeries{
			Type: "line", ShowSymbol: opts.Bool(false), Color: Light.Ink,
			LineStyle: &opts.LineStyle{Color: Light.Ink, Width: 1},
		}}
	case "levels":
		return series{
			SingleSeries: charts.SingleSeries{Type: "scatter", SymbolSize: 0, ItemStyle: solid()},
			Z:            4,
			Label: &label{
				Label: opts.Label{
					Show: opts.Bool(true), Position: "inside", Formatter: "{b}", Color: Light.Ink,
					FontFamily: family, FontSize: fontTick, BackgroundColor: Light.Paper, BorderRadius: 2,
				},
				Padding: []int{3, 5, 2, 5},
			},
		}
	}
	return ring(t)
}
