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
		rows[p] = a.passRows(p)
	}
	return rows
}

// passRows returns how many rows a pass has, counted from 0 in the order of the tube stream.
func (a Arrangement) passRows(pass int) int {
	if pass < a.Rows%a.Passes {
		return a.Rows/a.Passes + 1
	}
	return a.Rows / a.Passes
}

// rowParts is one row's temperatures along it, at the places of the bank, as parts
// of the way from the air's inlet (0) to the tube stream's (1).
type rowParts struct {
	Process []float64
	AirIn   []float64
	AirOut  []float64
}

// response is the bank's answer to unit temperatures.
type response struct {
	places  []float64  // along the tubes, 0 to 1; both ends among them once the rows have been followed
	weights []float64  // of the places in a mean; nought at the ends
	inlets  []float64  // [-] at which each pass begins
	rows    []rowParts // once they have been followed
	air     float64    // [-] rise of the mean air leaving: its temperature effectiveness P
	airLeft float64    // [-] 1 - air, without cancellation
	process float64    // [-] tube stream leaving
	within  float64    // [-] mean of the tube stream over all of the bank
	kept, g float64    // [-] of the way from the tube stream to the air entering a row: left, and gone
	exact   bool       // whether that keeps its digits however small it is
}

// respond solves the bank row by row for ntu = UA/Cair [-] and ratio = Cair/Cprocess [-].
//
// In a row the air meets a tube stream that is uniform across it, so that
//
//	air out = air in + g (T - air in),  g = 1 - exp(-ntu/rows)
//	dT/ds = -ratio g m (T - air in),    m rows in the pass
//
// Rows follow from the air inlet on, for a unit inlet temperature of the air and of each pass in turn; the headers then say
// what those temperatures are. The work is bounded whatever ntu and ratio: see numeric.MostPanels.
// What is returned lies in w. A bank that has settled is asked once more the same, for its duty: then it lies there still.
//
// Valid: ntu > 0, ratio >= 0.
// Source: heat balance of each row, derived here; checked against matrix-exponential solutions.
func (a Arrangement) respond(w *workspace, ntu, ratio float64) response {
	if a.Rows < 1 || a.Passes < 1 || a.Passes > a.Rows || !(ntu > 0) || !(ratio >= 0) {
		panic("exchanger: rows, passes, ntu or ratio out of range")
	}
	if w.asked == (question{a, ntu, ratio}) {
		w.taken = w.filled
		return w.answer
	}
	g, kept := -math.Expm1(-ntu/float64(a.Rows)), math.Exp(-ntu/float64(a.Rows))
	rate := func(pass int) float64 { return ratio * g * float64(a.passRows(pass)) }
	w.clear()
	w.mesh.Divide(rate(0), a.Rows)
	places, weights := w.take(w.mesh.Places()), w.take(w.mesh.Places())
	w.mesh.Fill(places, weights)
	w.relax[0].Prepare(rate(0), w.mesh)
	if a.Rows%a.Passes > 0 {
		w.relax[1].Prepare(rate(a.Passes-1), w.mesh)
	}

	// Basis 0 has air at one and every pass at nought; basis q has pass q-1 at one.
	air := w.table(a.Passes+1, len(places))
	fill(air[0], 1)
	leaving := w.table(a.Passes, a.Passes+1) // of each pass, by basis
	within := w.take(a.Passes + 1)           // sum over the rows, by basis
	t := w.take(len(places))
	for pass := a.Passes - 1; pass >= 0; pass-- {
		for range a.passRows(pass) {
			for q, in := range air {
				if q > 0 && q <= pass {
					continue // the air has not met that pass yet
				}
				start := 0.0
				if q == pass+1 {
					start = 1
				}
				leaving[pass][q] += a.relax(w, pass).Run(start, in, t, pass%2 == 1)
				within[q] += mean(t, weights)
				for i, v := range t {
					in[i] = kept*in[i] + g*v
				}
				if a.Mixed {
					fill(in, mean(in, weights))
				}
			}
		}
	}
	for p, sums := range leaving {
		for q := range sums {
			sums[q] /= float64(a.passRows(p))
		}
	}
	inlet := w.take(a.Passes)
	passInlets(leaving, w.take(a.Passes), inlet)

	out := response{places: places, weights: weights, inlets: inlet, kept: kept, g: g, exact: rate(0) <= numeric.MostEven}
	out.airLeft = mean(air[0], weights)
	for q, at := range inlet {
		part := mean(air[q+1], weights)
		out.air += part * at
		out.airLeft += part * (1 - at)
		out.within += within[q+1] * at
	}
	out.within /= float64(a.Rows)
	out.process = leaving[a.Passes-1][a.Passes] * inlet[a.Passes-1]
	w.asked, w.answer, w.filled = question{a, ntu, ratio}, out, w.taken
	return out
}

// relax is what a pass was prepared with.
func (a Arrangement) relax(w *workspace, pass int) *numeric.Relaxation {
	if a.passRows(pass) == a.passRows(0) {
		return &w.relax[0]
	}
	return &w.relax[1]
}

// follow walks the rows of a response once more, with the inlets of all passes, and adds the ends of the tubes to its places.
// w is the one that the response lies in.
func (a Arrangement) follow(w *workspace, r *response) {
	n := len(r.places) + 2
	places, weights := w.take(n), w.take(n)
	copy(places[1:], r.places)
	copy(weights[1:], r.weights)
	places[n-1] = 1
	r.places, r.weights, r.rows = places, weights, w.rows[:0]
	now := w.take(n)
	for pass := a.Passes - 1; pass >= 0; pass-- {
		for range a.passRows(pass) {
			row := rowParts{w.take(n), now, w.take(n)}
			last := n - 1
			end := a.relax(w, pass).Run(r.inlets[pass], now[1:last], row.Process[1:last], pass%2 == 1)
			row.Process[0], row.Process[last] = r.inlets[pass], end
			if pass%2 == 1 {
				row.Process[0], row.Process[last] = end, r.inlets[pass]
			}
			for i, v := range row.Process {
				row.AirOut[i] = r.kept*now[i] + r.g*v
			}
			r.rows = append(r.rows, row)
			if now = row.AirOut; a.Mixed {
				now = w.take(n)
				fill(now, mean(row.AirOut, weights))
			}
		}
	}
	w.rows = r.rows
}

func fill(x []float64, v float64) {
	for i := range x {
		x[i] = v
	}
}

func mean(x, weights []float64) float64 {
	sum := 0.0
	for i, v := range x {
		sum += weights[i] * v
	}
	return sum
}

// passInlets fills inlet with the temperature at which each pass begins, the first at
// one and the air at nought. leaving[p][0] is what pass p takes from the air,
// leaving[p][q+1] from the inlet of pass q; they add up to one, and only later
// passes q, which the air meets first, and p itself count. Each inlet is found
// as a part of the one before, which fills fall, from the last pass back, in sums of positive terms alone.
func passInlets(leaving [][]float64, fall, inlet []float64) {
	last := len(leaving) - 1
	for p := last - 1; p >= 0; p-- {
		own := leaving[p][p+1]
		lost, of := leaving[p][0], 1.0
		for q := p + 2; q <= last; q++ {
			of *= fall[q]
			lost += leaving[p][q+1] * (1 - of)
		}
		fall[p+1] = own / (own + lost)
	}
	inlet[0] = 1
	for p := 1; p <= last; p++ {
		inlet[p] = inlet[p-1] * fall[p]
	}
}
