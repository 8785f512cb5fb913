package lesson

import (
	"math"

	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// TubeGrows is a tube as it was cut and as it is while the head runs along it, in a box that is 300 wide: the edges between its zones, whose
// moves are drawn larger by a factor that is said. A growth of a thousandth would not be seen.
type TubeGrows struct {
	Zones  []string    `json:"zones"`  // between the edges: finned, bare, or nothing: an end
	Cut    []float64   `json:"cut"`    // where the edges are on the tube as cut
	States [][]float64 `json:"states"` // and where when the head has come to each of them
	Before string      `json:"before"`
	After  string      `json:"after"`
	Said   string      `json:"said"` // the picture in words
}

// growthWide is how wide the longest tube is in the box.
const growthWide = 296.0

// growsOf is what growth does to a tube; nil: it does not grow.
func growsOf(w report.Writer, p *making.Programme) *TubeGrows {
	if p.Grown <= 0 {
		return nil
	}
	cut, grown := float64(p.CutLength), float64(p.Grown)
	times := magnified(grown, cut)
	scale := growthWide / (cut + times*grown)
	at := func(n int) (place, moved float64) { // of edge n as cut, and by how much it has moved in the end
		if n == 0 {
			return 0, 0
		}
		z := &p.Zones[n-1]
		place = float64(z.Cut.To)
		return scale * place, scale * times * (float64(z.Finished.To+p.TrimA) - place)
	}
	g := TubeGrows{
		Before: w.Texts.Render(message.New("lesson.story.winding.as_cut", "cut", message.Of(units.Distance, p.CutLength)), w.System),
		After:  w.Texts.Render(message.New("lesson.story.winding.as_wound", "off", message.Of(units.Distance, p.CutLength+p.Grown)), w.System),
		Said:   w.Texts.Render(message.New("lesson.story.winding.moves_on", "times", int(times)), w.System),
	}
	for head := range len(p.Zones) + 1 {
		place, passed := at(head)
		g.Cut = append(g.Cut, place)
		state := make([]float64, 0, len(p.Zones)+1)
		for n := range len(p.Zones) + 1 {
			from, moved := at(n)
			state = append(state, from+math.Min(moved, passed)) // what the head has not come to has moved with what it has passed
		}
		g.States = append(g.States, state)
	}
	for _, z := range p.Zones {
		g.Zones = append(g.Zones, map[making.ZoneKind]string{making.Finned: "finned", making.BareSpan: "bare"}[z.Kind])
	}
	return &g
}

// magnified is how many times larger growth is drawn: the most of 1, 2, 5, 10 and so on that adds no more than a sixth to the tube.
func magnified(grown, length float64) float64 {
	most := length / 6 / grown
	decade := math.Pow(10, math.Floor(math.Log10(most)))
	for _, n := range []float64{5, 2} {
		if n*decade <= most {
			return n * decade
		}
	}
	return decade
}
