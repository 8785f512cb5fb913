package plots

import (
	"math"
	"strconv"
	"strings"

	"finwright/core/report"
)

// readings says at each sample where it is and what the design's own line of each panel has there.
func readings(c report.Curves) []string {
	var said []strings.Builder
	for _, p := range c.Panels {
		for _, l := range p.Lines {
			if !l.Main {
				continue
			}
			if said == nil {
				said = make([]strings.Builder, len(l.X))
			}
			for i := range min(len(said), len(l.Y)) {
				if math.IsNaN(l.Y[i]) || math.IsInf(l.Y[i], 0) {
					continue
				}
				if said[i].Len() == 0 {
					said[i].WriteString(c.X.Name() + ": " + c.Numbers.Write(printed(l.X[i])))
				}
				said[i].WriteString(" · " + p.Label + ": " + c.Numbers.Write(printed(l.Y[i])))
			}
		}
	}
	list := make([]string, len(said))
	for i := range said {
		list[i] = said[i].String()
	}
	return list
}

// printed prints what a sample's data say, without an exponent for everyday sizes.
func printed(v float64) string {
	b := strconv.AppendFloat(make([]byte, 0, 24), v, 'g', shownDigits, 64)
	shown, _ := strconv.ParseFloat(string(b), 64)
	if size := math.Abs(shown); size != 0 && (size < 1e-6 || size >= 1e21) {
		return string(b)
	}
	return string(strconv.AppendFloat(b[:0], shown+0, 'f', -1, 64))
}
