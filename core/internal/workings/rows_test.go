package workings

import (
	"errors"
	"math"
	"math/big"
)

// rows returns the air's effectiveness for (NTU, R_c, N_r, N_p), by finite steps along the tubes: in each the air of each row
// meets the mean of what flows in and out of the step. Steps are halved twice and their errors, of second and fourth
// order, taken out.
func rows(args []*big.Float) (*big.Float, error) {
	if len(args) != 4 {
		return nil, errors.New("four arguments are wanted")
	}
	b := stepped{ntu: plain(args[0]), ratio: plain(args[1]), rows: int(plain(args[2])), passes: int(plain(args[3]))}
	n := 60 + int(12*b.perPass(0))
	coarse, middle, finest := b.effectiveness(n), b.effectiveness(2*n), b.effectiveness(4*n)
	second, better := middle+(middle-coarse)/3, finest+(finest-middle)/3
	return big.NewFloat(better + (better-second)/15), nil
}

// stepped is a bank of rows that the air crosses one after the other. The first pass holds the rows that the air leaves.
type stepped struct {
	ntu, ratio   float64
	rows, passes int
}

func (b stepped) rowsOf(pass int) int {
	n := b.rows / b.passes
	if pass < b.rows%b.passes {
		n++
	}
	return n
}

// perPass returns how fast the stream of a pass nears the air, a length of tube.
func (b stepped) perPass(pass int) float64 {
	return b.ratio * (1 - math.Exp(-b.ntu/float64(b.rows))) * float64(b.rowsOf(pass))
}

// effectiveness finds the temperatures at which the passes begin: each pass begins with what the one before it gives.
func (b stepped) effectiveness(steps int) float64 {
	// What all passes give is linear in what they get, so that as many runs as passes tell all.
	zero := make([]float64, b.passes)
	base, _ := b.run(zero, steps)
	gain := make([][]float64, b.passes) // of each pass, by the pass that gets one more
	for p := range gain {
		gain[p] = make([]float64, b.passes)
	}
	for q := range b.passes {
		one := make([]float64, b.passes)
		one[q] = 1
		out, _ := b.run(one, steps)
		for p := range out {
			gain[p][q] = out[p] - base[p]
		}
	}
	// in[0] = 1; in[p+1] = base[p] + sum of gain[p][q] in[q].
	m := make([][]float64, b.passes)
	for p := range m {
		m[p] = make([]float64, b.passes+1)
		m[p][p] = 1
		if p == 0 {
			m[p][b.passes] = 1
			continue
		}
		for q := range b.passes {
			m[p][q] -= gain[p-1][q]
		}
		m[p][b.passes] = base[p-1]
	}
	_, air := b.run(eliminate(m), steps)
	return air
}

// run walks through all rows from the air's inlet on, air at nought and each pass at its own temperature, and returns how
// the passes and the air leave.
func (b stepped) run(in []float64, steps int) (leaving []float64, air float64) {
	g := 1 - math.Exp(-b.ntu/float64(b.rows))
	stream := make([]float64, steps) // the air over each step
	leaving = make([]float64, b.passes)
	for pass := b.passes - 1; pass >= 0; pass-- {
		rate := b.perPass(pass) / float64(steps)
		for range b.rowsOf(pass) {
			t := in[pass]
			for i := range steps {
				at := i
				if pass%2 == 1 {
					at = steps - 1 - i
				}
				next := (t*(1-rate/2) + rate*stream[at]) / (1 + rate/2)
				stream[at] += g * ((t+next)/2 - stream[at])
				t = next
			}
			leaving[pass] += t / float64(b.rowsOf(pass))
		}
	}
	for _, x := range stream {
		air += x / float64(steps)
	}
	return leaving, air
}

// eliminate solves linear equations whose right sides stand in the last column, by Gauss with the largest pivot.
func eliminate(m [][]float64) []float64 {
	n := len(m)
	for c := range n {
		best := c
		for r := c + 1; r < n; r++ {
			if math.Abs(m[r][c]) > math.Abs(m[best][c]) {
				best = r
			}
		}
		m[c], m[best] = m[best], m[c]
		for r := c + 1; r < n; r++ {
			f := m[r][c] / m[c][c]
			for k := c; k <= n; k++ {
				m[r][k] -= f * m[c][k]
			}
		}
	}
	x := make([]float64, n)
	for r := n - 1; r >= 0; r-- {
		x[r] = m[r][n]
		for k := r + 1; k < n; k++ {
			x[r] -= m[r][k] * x[k]
		}
		x[r] /= m[r][r]
	}
	return x
}
