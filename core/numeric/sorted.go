package numeric

import "slices"

// Sorted returns a list in order, equals as they come. What is sorted are places in the list, so that whatever the type all
// share one sort: each that the library makes for another type adds some 2 kB to the engine.
//
// Valid: compare as for slices.SortFunc.
// Source: arithmetic.
func Sorted[T any](list []T, compare func(a, b *T) int) []T {
	places := inOrder(len(list), func(a, b int) int { return compare(&list[a], &list[b]) })
	out := make([]T, len(list))
	for i, p := range places {
		out[i] = list[p]
	}
	return out
}

// inOrder returns the places of n things in order.
func inOrder(n int, compare func(a, b int) int) []int {
	places := make([]int, n)
	for i := range places {
		places[i] = i
	}
	slices.SortFunc(places, func(a, b int) int {
		if c := compare(a, b); c != 0 {
			return c
		}
		return a - b
	})
	return places
}
