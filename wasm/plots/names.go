package plots

import (
	"cmp"
	"encoding/json"
	"math"
	"slices"

	"finwright/core/numeric"
	"finwright/core/report"
)

// apart is how far the names of two lines stay from each other, as a share of the panel's height: one line of text
// in the lowest panel that the page shows.
const apart = 0.28

// same is how near two lines can be and still look like one, as a share of the panel's height.
const same = 0.02

// names is the data that writes each line's name right of where it ends, but for lines that lie under the design's own all
// along. Names that would touch are moved apart, about their own middle; where lines meet, in the order given.
func names(lines []report.Curve, right float64, y scale) raw {
	type name struct {
		line report.Curve
		at   float64 // share of the panel's height
	}
	var all []name
	own := slices.IndexFunc(lines, func(l report.Curve) bool { return l.Main })
	for i, l := range lines {
		if own >= 0 && i != own && hidden(l, lines[own], y) {
			continue
		}
		for k := len(l.Y) - 1; k >= 0; k-- {
			if !math.IsNaN(l.Y[k]) && !math.IsInf(l.Y[k], 0) {
				all = append(all, name{l, y.share(l.Y[k])})
				break
			}
		}
	}
	all = numeric.Sorted(all, func(a, b *name) int { return cmp.Compare(math.Round(a.at/same), math.Round(b.at/same)) })
	at := make([]float64, len(all))
	for i, n := range all {
		at[i] = n.at
	}
	spread(at, apart)
	b := raw("[")
	for i, n := range all {
		if i > 0 {
			b = append(b, ',')
		}
		label := n.line.Label
		if n.line.Main {
			label = "{own|" + label + "}"
		}
		text, _ := json.Marshal(label) // a string always marshals
		b = append(append(b, `{"name":`...), text...)
		b = appendPair(append(b, `,"value":`...), right, y.at(at[i]), markDigits)
		b = append(b, '}')
	}
	return append(b, ']')
}

// hidden reports whether a line cannot be told from the design's own.
func hidden(l, own report.Curve, y scale) bool {
	for i := range min(len(l.Y), len(own.Y)) {
		if !(math.Abs(l.Y[i]-own.Y[i]) < same*(y.high-y.low)) {
			return false
		}
	}
	return true
}

// spread moves rising places so that neighbours are gap or more apart, each cluster about its own mean, and all within
// 0 to 1 if they fit.
func spread(at []float64, gap float64) {
	type cluster struct {
		sum float64 // of what the first place would be for each member alone
		n   int
	}
	low := func(c cluster) float64 {
		width := gap * float64(c.n-1)
		return math.Max(0, math.Min(c.sum/float64(c.n), 1-width))
	}
	var clusters []cluster
	for _, v := range at {
		next := cluster{v, 1}
		for len(clusters) > 0 {
			last := clusters[len(clusters)-1]
			if low(last)+gap*float64(last.n) <= low(next) {
				break
			}
			next = cluster{last.sum + next.sum - gap*float64(last.n*next.n), last.n + next.n}
			clusters = clusters[:len(clusters)-1]
		}
		clusters = append(clusters, next)
	}
	i := 0
	for _, c := range clusters {
		for j := range c.n {
			at[i] = low(c) + gap*float64(j)
			i++
		}
	}
}
