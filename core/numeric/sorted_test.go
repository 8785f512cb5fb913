package numeric

import (
	"cmp"
	"math/rand/v2"
	"slices"
	"testing"
)

// The same as the library's stable sort, and the list stays as it was.
func TestSorted(t *testing.T) {
	type thing struct{ key, place int }
	r := rand.New(rand.NewPCG(1, 1))
	for n := range 200 {
		list := make([]thing, n)
		for i := range list {
			list[i] = thing{r.IntN(1 + n/3), i}
		}
		kept, want := slices.Clone(list), slices.Clone(list)
		slices.SortStableFunc(want, func(a, b thing) int { return cmp.Compare(a.key, b.key) })
		got := Sorted(list, func(a, b *thing) int { return cmp.Compare(a.key, b.key) })
		if !slices.Equal(got, want) || !slices.Equal(list, kept) {
			t.Fatalf("%v in order is %v", kept, got)
		}
	}
}
