package numeric

import (
	"math"
	"math/rand/v2"
	"testing"
)

// TestSkylineSolves multiplies a random solution by a random matrix and asks
// for it back; a dominant diagonal makes the matrix positive definite.
func TestSkylineSolves(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for _, n := range []int{1, 2, 17, 120} {
		first := make([]int, n)
		for i := range first {
			first[i] = max(0, i-random.IntN(12))
		}
		s := NewSkyline(first)
		want, b := make([]float64, n), make([]float64, n)
		for i := range want {
			want[i] = random.NormFloat64()
		}
		for i := range n {
			for j := first[i]; j < i; j++ {
				v := random.NormFloat64()
				s.Add(j, i, v)
				s.Add(i, i, math.Abs(v))
				s.Add(j, j, math.Abs(v))
				b[i] += v*want[j] + math.Abs(v)*want[i]
				b[j] += v*want[i] + math.Abs(v)*want[j]
			}
			s.Add(i, i, 1)
			b[i] += want[i]
		}
		if err := s.Factor(); err != nil {
			t.Fatal(err)
		}
		s.Solve(b)
		for i := range b {
			if math.Abs(b[i]-want[i]) > 1e-12 {
				t.Errorf("n = %d: x[%d] = %g, want %g", n, i, b[i], want[i])
			}
		}
	}
}

func TestSkylineRefusesIndefinite(t *testing.T) {
	s := NewSkyline([]int{0, 0})
	s.Add(0, 0, 1)
	s.Add(1, 0, 2)
	s.Add(1, 1, 1)
	if s.Factor() == nil {
		t.Error("a matrix with determinant -3 was factored")
	}
}
