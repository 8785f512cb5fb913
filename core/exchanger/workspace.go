package exchanger

import (
	"sync"

	"finwright/core/numeric"
)

// workspace is the memory of one solution, used again by the next: a design that settles while it is swept asks for
// hundreds, and the largest bank would leave a megabyte behind with each.
type workspace struct {
	mesh    numeric.Mesh
	relax   [2]numeric.Relaxation // of passes with one row more, and of the others
	numbers []float64
	taken   int
	lines   [][]float64
	lined   int
	rows    []rowParts

	asked  question // whose answer still lies here
	answer response
	filled int // of the numbers, with that answer
}

// question is what a response follows from.
type question struct {
	Arrangement
	ntu, ratio float64
}

var workspaces = sync.Pool{New: func() any { return new(workspace) }}

// clear gives all that was taken back.
func (w *workspace) clear() { w.taken, w.lined, w.asked = 0, 0, question{} }

// table returns so many lines of n noughts, which hold as long.
func (w *workspace) table(lines, n int) [][]float64 {
	if w.lined+lines > len(w.lines) {
		w.lines, w.lined = make([][]float64, max(lines, 2*len(w.lines))), 0
	}
	out := w.lines[w.lined : w.lined+lines : w.lined+lines]
	w.lined += lines
	for i := range out {
		out[i] = w.take(n)
	}
	return out
}

// take returns n noughts, which hold until the workspace is used again.
func (w *workspace) take(n int) []float64 {
	if w.taken+n > len(w.numbers) {
		w.numbers, w.taken = make([]float64, max(n, 2*len(w.numbers))), 0
	}
	out := w.numbers[w.taken : w.taken+n : w.taken+n]
	w.taken += n
	fill(out, 0)
	return out
}
