package exchanger

import (
	"math"

	"finwright/core/numeric"
)

// Arrangement is how the two streams meet: rows of tubes that the air crosses
// one after the other, and passes of the tube stream. The stream enters the rows
// that the air leaves and works towards the air inlet, turning round after every
// pass; it is mixed in the headers. Where rows do not divide evenly, the first
// passes have one more, as suits a stream that shrinks.
//
// Valid: 1 <= Passes <= Rows.
type Arrangement struct {
	Rows   int
	Passes int
	Mixed  bool // the air is mixed between rows; a finned bank leaves it unmixed
}

// PassRows returns how many rows each pass has, in the order of the tube stream.
func (a Arrangement) PassRows() []int {
	rows := make([]int, a.Passes)
	for p := range rows {
		rows[p] = a.Rows / a.Passes
		if p < a.Rows%a.Passes {
			rows[p]++
		}
	}
	return rows
}

// passOf returns the pass, from 0, of each row, counted from the air inlet.
func (a Arrangement) passOf() []int {
	var passes []int
	for p, rows := range a.PassRows() {
		for range rows {
			passes = append(passes, p)
		}
	}
	for i, j := 0, len(passes)-1; i < j; i, j = i+1, j-1 {
		passes[i], passes[j] = passes[j], passes[i]
	}
	return passes
}

// mostFoldings bounds how far a row relaxes to the air: beyond, it has long arrived.
const mostFoldings = 600

// rowParts is one row's temperatures along it, at the places of the bank, as parts
// of the way from the air's inlet (0) to the tube stream's (1).
type rowParts struct {
	Pass    int // from 0, in the order of the tube stream
	Process []float64
	AirIn   []float64
	AirOut  []float64
}

// response is the bank's answer to unit temperatures.
type response struct {
	places   []float64 // along the tubes, 0 to 1, both ends among them
	rows     []rowParts
	air      float64 // [-] rise of the mean air leaving: its temperature effectiveness P
	airLeft  float64 // [-] 1 - air, without cancellation
	process  float64 // [-] tube stream leaving
	transfer float64 // [-] number of transfer units UA/Cair
}

// profile holds values at the inner places and at both ends.
type profile struct {
	inner    []float64
	from, to float64 // at place 0 and 1
}

// respond solves the bank row by row for ntu = UA/Cair [-] and ratio = Cair/Cprocess [-].
//
// In a row the air meets a tube stream that is uniform across it, so that
//
//	air out = air in + g (T - air in),  g = 1 - exp(-ntu/rows)
//	dT/ds = -ratio g m (T - air in),    m rows in the pass
//
// Rows follow from the air inlet on, for a unit inlet temperature of the air and
// of each pass in turn; the headers then say what those temperatures are.
//
// Valid: 0 < ntu <= 500, ratio >= 0.
// Source: heat balance of each row, derived here; checked against matrix-exponential solutions.
func (a Arrangement) respond(ntu, ratio float64) response {
	if a.Rows < 1 || a.Passes < 1 || a.Passes > a.Rows || !(ntu > 0 && ntu <= 500) || !(ratio >= 0) {
		panic("exchanger: rows, passes, ntu or ratio out of range")
	}
	g, kept := -math.Expm1(-ntu/float64(a.Rows)), math.Exp(-ntu/float64(a.Rows))
	passRows, passOf := a.PassRows(), a.passOf()
	rate := func(pass int) float64 { return min(ratio*g*float64(passRows[pass]), mostFoldings) }
	panels := numeric.Panels(rate(0))
	places, weights := numeric.Places(panels)
	relax := map[int]numeric.Relaxation{}
	for pass, rows := range passRows {
		if _, ok := relax[rows]; !ok {
			relax[rows] = numeric.NewRelaxation(rate(pass), panels)
		}
	}

	// Basis 0 has air at one and every pass at nought; basis q has pass q-1 at one.
	bases := a.Passes + 1
	flat := func(v float64) profile {
		p := profile{make([]float64, len(places)), v, v}
		for i := range p.inner {
			p.inner[i] = v
		}
		return p
	}
	air := make([]profile, bases)
	for q := range air {
		air[q] = flat(0)
	}
	air[0] = flat(1)
	leaving := make([][]float64, a.Passes) // of each pass, by basis
	for p := range leaving {
		leaving[p] = make([]float64, bases)
	}
	type rowBasis struct{ process, airIn, airOut []profile }
	rows := make([]rowBasis, a.Rows)
	for k, pass := range passOf {
		row := rowBasis{airIn: air}
		next := make([]profile, bases)
		backward := pass%2 == 1
		for q, in := range air {
			start := 0.0
			if q == pass+1 {
				start = 1
			}
			t := profile{make([]float64, len(places)), start, start}
			end := relax[passRows[pass]].Run(start, in.inner, t.inner, backward)
			if backward {
				t.from = end
			} else {
				t.to = end
			}
			leaving[pass][q] += end
			row.process = append(row.process, t)
			next[q] = in.weighed(kept, t, g)
		}
		row.airOut = next
		rows[k] = row
		if a.Mixed {
			mixed := make([]profile, bases)
			for q := range next {
				mixed[q] = flat(next[q].mean(weights))
			}
			next = mixed
		}
		air = next
	}

	for p, sums := range leaving {
		for q := range sums {
			sums[q] /= float64(passRows[p])
		}
	}
	inlet := passInlets(leaving)
	blend := func(basis []profile) []float64 {
		out := make([]float64, len(places)+2)
		for q, p := range basis[1:] {
			out[0] += p.from * inlet[q]
			for i, v := range p.inner {
				out[i+1] += v * inlet[q]
			}
			out[len(out)-1] += p.to * inlet[q]
		}
		return out
	}
	out := response{places: append(append([]float64{0}, places...), 1), transfer: ntu}
	for k, row := range rows {
		out.rows = append(out.rows, rowParts{passOf[k], blend(row.process), blend(row.airIn), blend(row.airOut)})
	}
	out.airLeft = air[0].mean(weights)
	for q := range inlet {
		part := air[q+1].mean(weights)
		out.air += part * inlet[q]
		out.airLeft += part * (1 - inlet[q])
	}
	out.process = leaving[a.Passes-1][a.Passes] * inlet[a.Passes-1]
	return out
}

// weighed returns a p + b q, place by place.
func (p profile) weighed(a float64, q profile, b float64) profile {
	out := profile{make([]float64, len(p.inner)), a*p.from + b*q.from, a*p.to + b*q.to}
	for i, v := range p.inner {
		out.inner[i] = a*v + b*q.inner[i]
	}
	return out
}

func (p profile) mean(weights []float64) float64 {
	sum := 0.0
	for i, v := range p.inner {
		sum += weights[i] * v
	}
	return sum
}

// passInlets returns the temperature at which each pass begins, the first at
// one and the air at nought. leaving[p][0] is what pass p takes from the air,
// leaving[p][q+1] from the inlet of pass q; they add up to one, and only later
// passes q, which the air meets first, and p itself count. Each inlet is found
// as a part of the one before, from the last pass back, in sums of positive terms alone.
func passInlets(leaving [][]float64) []float64 {
	last := len(leaving) - 1
	fall := make([]float64, last+1) // inlet q over inlet q-1
	for p := last - 1; p >= 0; p-- {
		own := leaving[p][p+1]
		lost, of := leaving[p][0], 1.0
		for q := p + 2; q <= last; q++ {
			of *= fall[q]
			lost += leaving[p][q+1] * (1 - of)
		}
		fall[p+1] = own / (own + lost)
	}
	inlet := []float64{1}
	for p := 1; p <= last; p++ {
		inlet = append(inlet, inlet[p-1]*fall[p])
	}
	return inlet
}
