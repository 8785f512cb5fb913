package plots

import (
	"encoding/json"

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

// NewMap returns a field ready to show.
func NewMap(f report.Map) Map {
	x, y := fieldScales(f)
	p := Option{Title: Heading{f.Title}, X: []AxisRange{axisPatch(x, f.Numbers)}, Y: []AxisRange{axisPatch(y, f.Numbers)}}
	for _, d := range fieldData(f) {
		p.Series = append(p.Series, SeriesPatch{d.id, d.data})
	}
	return Map{
		Quantity: f.Quantity, Columns: f.Columns, Rows: f.Rows, Bands: f.Bands, Colours: Steps(len(f.Levels) + 1),
		Area: [4]float64{f.X.From, f.Y.From, f.X.To, f.Y.To}, Update: fieldUpdate(f, p),
	}
}

// MoveRing returns what changes in a map while the design is dragged: its ring. The map itself follows on release.
func MoveRing(f report.Map) Update {
	return fieldUpdate(f, Option{Title: Heading{f.Title}, Series: []SeriesPatch{}})
}

func fieldUpdate(f report.Map, p Option) Update {
	return Update{ID: f.ID, Patch: p, X: place(f.X.Axis).from(f.Ring.X, f.X.Nudge), Y: place(f.Y.Axis).from(f.Ring.Y, f.Y.Nudge), Label: f.Alt, Rings: []*Spot{{f.Ring.X, f.Ring.Y}}, Held: f.Held}
}

func fieldScales(f report.Map) (x, y scale) {
	return filled(f.X.From, f.X.To, ticksAcross), filled(f.Y.From, f.Y.To, ticksAcross)
}

func fieldData(f report.Map) []part {
	return []part{{"contours", contourData(f.Contours)}, {"levels", levelData(f.Contours)}}
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

// MapSeries lists the series that NewMap fills, from back to front.
func MapSeries() []string { return ids(fieldData(report.Map{})) }
