package numeric

import (
	"fmt"
	"math"
)

// Skyline is a symmetric positive definite matrix kept by rows, each from its
// first non-zero to the diagonal: a band whose width may change from row to row.
type Skyline struct {
	first  []int     // column of the first entry of a row
	offset []int     // where column 0 of a row would lie in values
	values []float64 // rows one after the other
}

// NewSkyline returns a zero matrix whose row i starts at column first[i] <= i.
func NewSkyline(first []int) *Skyline {
	s := &Skyline{first: first, offset: make([]int, len(first))}
	size := 0
	for i, f := range first {
		if f < 0 || f > i {
			panic("numeric: a row must start at or before its diagonal")
		}
		s.offset[i] = size - f
		size += i - f + 1
	}
	s.values = make([]float64, size)
	return s
}

// Add adds v to the entry (i, j) and so to (j, i), which must lie inside the skyline.
func (s *Skyline) Add(i, j int, v float64) {
	if i < j {
		i, j = j, i
	}
	if j < s.first[i] {
		panic("numeric: entry outside the skyline")
	}
	s.values[s.offset[i]+j] += v
}

// row returns the entries of row i from column from up to but not including to.
func (s *Skyline) row(i, from, to int) []float64 {
	return s.values[s.offset[i]+from : s.offset[i]+to]
}

// Factor replaces the matrix by its lower Cholesky factor, inside the same skyline.
//
// Source: Cholesky's method by rows; George & Liu, Computer Solution of Large
// Sparse Positive Definite Systems (1981), envelope method, from memory.
func (s *Skyline) Factor() error {
	for i, first := range s.first {
		for j := first; j < i; j++ {
			from := max(first, s.first[j])
			sum := dot(s.row(i, from, j), s.row(j, from, j))
			at := s.offset[i] + j
			s.values[at] = (s.values[at] - sum) / s.values[s.offset[j]+j]
		}
		row := s.row(i, first, i)
		at := s.offset[i] + i
		pivot := s.values[at] - dot(row, row)
		if !(pivot > 0) {
			return fmt.Errorf("numeric: pivot %d of %d is %g: the matrix is not positive definite", i, len(s.first), pivot)
		}
		s.values[at] = math.Sqrt(pivot)
	}
	return nil
}

// Solve replaces the right-hand side b by the solution; Factor must have succeeded.
func (s *Skyline) Solve(b []float64) {
	for i, first := range s.first {
		b[i] = (b[i] - dot(s.row(i, first, i), b[first:i])) / s.values[s.offset[i]+i]
	}
	for i := len(b) - 1; i >= 0; i-- {
		b[i] /= s.values[s.offset[i]+i]
		first := s.first[i]
		for k, l := range s.row(i, first, i) {
			b[first+k] -= l * b[i]
		}
	}
}

// dot returns the inner product; four sums let a processor work on them side by side.
func dot(a, b []float64) float64 {
	var s0, s1, s2, s3 float64
	for len(a) >= 4 && len(b) >= 4 {
		s0 += a[0] * b[0]
		s1 += a[1] * b[1]
		s2 += a[2] * b[2]
		s3 += a[3] * b[3]
		a, b = a[4:], b[4:]
	}
	b = b[:len(a)]
	for i, v := range a {
		s0 += v * b[i]
	}
	return s0 + s1 + s2 + s3
}
