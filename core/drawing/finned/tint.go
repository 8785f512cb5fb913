package finned

import (
	"cmp"
	"maps"
	"math"
	"slices"

	"finwright/core/drawing/ink"
	"finwright/core/numeric"
)

// Sizes of pieces on the sheet [mm].
const (
	cellSize  = 0.6  // about, of the cells within which the temperature is taken as linear
	slack     = 0.02 // by which an edge may be moved to save corners
	mostCells = 64   // along a pitch, whatever the scale: the field itself has far fewer
)

// piece is convex metal of one step of temperature, in real millimetres.
type piece struct {
	step   int
	narrow float64
	loop   []ink.Point
	lining bool // part of what goes on under the fins
	passed [2][]ink.Point
}

// pieces parts one pitch of the metal by temperature, to be drawn at a scale.
func (c composer) pieces(scale float64) []piece { return c.parted(scale, c.lining(), c.turn()) }

// parted does that for what goes on under the fins and for one turn of them.
func (c composer) parted(scale float64, lining, turn []part) []piece {
	p := parting{composer: c, cell: max(cellSize/scale, c.pitch/mostCells), slack: slack / scale, open: map[base]int{}}
	add := func(parts []part, lining bool) {
		for _, x := range parts {
			b := c.ofFin
			if x.class == ink.TubeMetal {
				b = c.ofTube
			}
			from := len(p.out)
			p.part(x, b)
			for i := range p.out[from:] {
				p.out[from+i].lining, p.out[from+i].narrow = lining, x.narrow
			}
		}
	}
	add(lining, true)
	add(turn, false)
	return p.out
}

// parting is the work on one pitch.
type parting struct {
	composer
	cell, slack float64 // [mm real]
	open        map[base]int
	out         []piece
}

// base is the lower edge of a piece, in nanometres, on which the next may be joined.
type base struct {
	step           int
	y, left, right int64
}

// heatPoint is a corner with its temperature [C].
type heatPoint struct {
	ink.Point
	t float64
}

func (p *parting) part(x part, b body) {
	clear(p.open)
	var levels []float64
	for _, row := range b {
		if y := row.low*1e3 - p.od/2; len(levels) == 0 || y > levels[len(levels)-1]+p.cell/2 {
			levels = append(levels, y)
		}
	}
	at := func(q ink.Point) heatPoint {
		return heatPoint{q, b.at((p.od/2+q.Y)/1e3, (q.X+p.strip/2)/1e3, p.pitch/1e3)}
	}
	for _, q := range ink.Fill([][]ink.Point{x.loop}, levels...) {
		n := max(1, int(math.Ceil(max(q[1].X-q[0].X, q[2].X-q[3].X)/p.cell-1e-9)))
		run, since := -1, 0 // a run of cells of one step
		end := func(i int) {
			if run >= 0 {
				f, g := float64(since)/float64(n), float64(i)/float64(n)
				p.add(run, []ink.Point{ink.Between(q[0], q[1], f), ink.Between(q[0], q[1], g), ink.Between(q[3], q[2], g), ink.Between(q[3], q[2], f)})
			}
			run, since = -1, i
		}
		var left [2]heatPoint
		for i := 0; i <= n; i++ {
			f := float64(i) / float64(n)
			right := [2]heatPoint{at(ink.Between(q[0], q[1], f)), at(ink.Between(q[3], q[2], f))}
			if i > 0 {
				cell := []heatPoint{left[0], right[0], right[1], left[1]}
				if n == 1 { // no more than a line: temperature changes along it
					cell[0].t, cell[1].t = (left[0].t+right[0].t)/2, (left[0].t+right[0].t)/2
					cell[2].t, cell[3].t = (left[1].t+right[1].t)/2, (left[1].t+right[1].t)/2
				}
				low, high := p.steps(cell)
				if low != high || low != run {
					end(i - 1)
				}
				if low == high {
					run = low
				} else {
					p.split(cell, low, high)
					since = i
				}
			}
			left = right
		}
		end(n)
	}
}

// steps returns the coldest and the warmest step that a cell touches.
func (p *parting) steps(cell []heatPoint) (low, high int) {
	least, most := cell[0].t, cell[0].t
	for _, q := range cell {
		least, most = min(least, q.t), max(most, q.t)
	}
	return p.Heat.step(least), p.Heat.step(most)
}

// split cuts a cell where its temperature passes from one step to the next.
func (p *parting) split(cell []heatPoint, low, high int) {
	for s := low; s <= high; s++ {
		band := cell
		if s > low {
			band = warmer(band, p.Heat.from(s), 1)
		}
		if s < high {
			band = warmer(band, p.Heat.from(s+1), -1)
		}
		loop := make([]ink.Point, len(band))
		for i, q := range band {
			loop[i] = q.Point
		}
		p.add(s, loop)
	}
}

// warmer returns the part of a convex loop above a temperature, or with sign -1 below it.
func warmer(loop []heatPoint, t, sign float64) []heatPoint {
	var out []heatPoint
	for i, a := range loop {
		b := loop[(i+1)%len(loop)]
		da, db := sign*(a.t-t), sign*(b.t-t)
		if da >= 0 {
			out = append(out, a)
		}
		if da > 0 && db < 0 || da < 0 && db > 0 {
			out = append(out, heatPoint{ink.Between(a.Point, b.Point, da/(da-db)), t})
		}
	}
	return out
}

// add keeps a piece, or joins it to the one on whose lower edge it stands.
func (p *parting) add(step int, loop []ink.Point) {
	const least = 1e-9 // mm2
	if len(loop) < 3 || math.Abs(ink.Area(loop)) < least {
		return
	}
	if !level(loop) {
		p.out = append(p.out, piece{step: step, loop: loop})
		return
	}
	nano := func(x float64) int64 { return int64(math.Round(x * 1e6)) }
	key := func(l, r ink.Point) base { return base{step, nano(l.Y), nano(l.X), nano(r.X)} }
	place, found := p.open[key(loop[0], loop[1])]
	if found {
		last := &p.out[place]
		left, right := append(last.passed[0], loop[0]), append(last.passed[1], loop[1])
		if p.straight(left, last.loop[0], loop[3]) && p.straight(right, last.loop[1], loop[2]) {
			delete(p.open, key(loop[0], loop[1]))
			last.passed = [2][]ink.Point{left, right}
			last.loop[2], last.loop[3] = loop[2], loop[3]
		} else {
			found = false
		}
	}
	if !found {
		place = len(p.out)
		p.out = append(p.out, piece{step: step, loop: loop})
	}
	p.open[key(loop[3], loop[2])] = place
}

// level turns a loop so that it begins with its upper edge, and reports whether that edge and the lower one are level.
func level(loop []ink.Point) bool {
	const tiny = 1e-9
	if len(loop) != 4 {
		return false
	}
	for range 4 {
		if math.Abs(loop[0].Y-loop[1].Y) < tiny && math.Abs(loop[2].Y-loop[3].Y) < tiny && loop[0].Y < loop[2].Y {
			return true
		}
		loop[0], loop[1], loop[2], loop[3] = loop[1], loop[2], loop[3], loop[0]
	}
	return false
}

// straight reports whether points lie near enough to the line from a to b.
func (p *parting) straight(points []ink.Point, a, b ink.Point) bool {
	for _, q := range points {
		on := ink.Between(a, b, (q.Y-a.Y)/(b.Y-a.Y))
		if math.Abs(on.X-q.X) > p.slack {
			return false
		}
	}
	return true
}

// tint repeats the pieces of one pitch from a to b, placed on the sheet and cut off.
func (c composer) tint(pieces []piece, a, b, scale float64, place func(ink.Point) ink.Point, cuts ...halfPlane) {
	type kind struct {
		narrow float64
		step   int
	}
	loops := map[kind][][]ink.Point{}
	fins := c.reaching(a, b)
	var linings []int
	for k := int(math.Floor(a/c.pitch)) - 1; float64(k)*c.pitch < b+c.pitch; k++ {
		linings = append(linings, k)
	}
	for _, p := range pieces {
		turns := fins
		if p.lining {
			turns = linings
		}
		k := kind{p.narrow * scale, p.step}
		all := loops[k]
		for _, turn := range turns {
			loop := move(p.loop, float64(turn)*c.pitch)
			for _, h := range cuts {
				if slices.ContainsFunc(loop, func(q ink.Point) bool { return h.depth(q) > 0 }) {
					loop = h.clip(loop)
				}
			}
			if len(loop) < 3 {
				continue
			}
			for i, q := range loop {
				loop[i] = place(q)
			}
			all = append(all, loop)
		}
		if len(all) > 0 {
			loops[k] = all
		}
	}
	kinds := numeric.Sorted(slices.Collect(maps.Keys(loops)), func(a, b *kind) int {
		return cmp.Or(cmp.Compare(b.narrow, a.narrow), cmp.Compare(a.step, b.step))
	})
	for _, k := range kinds {
		c.Scene.Tints = append(c.Scene.Tints, ink.Tint{Step: k.step, Narrow: k.narrow, Loops: loops[k]})
	}
}
