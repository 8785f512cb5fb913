package plots

import (
	"math"
	"strconv"

	"finwright/core/report"
)

// BesidePlot is what a plot shows of designs beside the one that it is of.
type BesidePlot struct {
	ID     string        `json:"id"`
	Panels []BesidePanel `json:"panels"`
}

// BesidePanel is that of a panel, in the units of its axes: where they stand, and their own curves as paths of a picture.
type BesidePanel struct {
	Spots []Spot   `json:"spots"`
	Paths []string `json:"paths"`
}

// Beside adds a design to what plots show beside: its place in each, and its curve where it has one there.
func Beside(to []BesidePlot, list []report.Curves) []BesidePlot {
	for _, c := range list {
		at := find(to, c.ID)
		if at < 0 {
			at = len(to)
			to = append(to, BesidePlot{c.ID, make([]BesidePanel, len(c.Panels))})
			for i := range to[at].Panels {
				to[at].Panels[i] = BesidePanel{[]Spot{}, []string{}}
			}
		}
		for i, spot := range rings(c) {
			if spot != nil {
				to[at].Panels[i].Spots = append(to[at].Panels[i].Spots, *spot)
			}
		}
		for i, p := range c.Panels {
			for _, l := range p.Lines {
				if path := pathOf(l); l.Main && path != "" {
					to[at].Panels[i].Paths = append(to[at].Panels[i].Paths, path)
				}
			}
		}
	}
	return to
}

func find(list []BesidePlot, id string) int {
	for i, p := range list {
		if p.ID == id {
			return i
		}
	}
	return -1
}

// pathOf is a curve as a path, begun anew behind each gap.
func pathOf(l report.Curve) string {
	var out []byte
	pen := byte('M')
	for i, y := range l.Y {
		if math.IsNaN(y) || math.IsInf(y, 0) {
			pen = 'M'
			continue
		}
		out = strconv.AppendFloat(append(out, pen), l.X[i], 'g', 6, 64)
		out = strconv.AppendFloat(append(out, ' '), y, 'g', 6, 64)
		pen = 'L'
	}
	return string(out)
}
