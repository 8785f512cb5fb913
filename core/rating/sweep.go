package rating

// Designs gives a sweep its i-th design, or nil where that is impossible. It may give the same Input each time, changed:
// a copy for each would cost more than its evaluation.
type Designs func(i int) *Input

// SweepSurface evaluates the surface of n designs about near, and hands each to visit; ok is false where the design is impossible.
func SweepSurface(n int, at Designs, near *Thermal, visit func(i int, s Surface, ok bool)) {
	for i := range n {
		in := at(i)
		if in == nil {
			visit(i, Surface{}, false)
			continue
		}
		visit(i, in.Surface(near), true)
	}
}

// SweepBank rates n banks, each from the cold, so that a point does not hang on where the curve came from: cold glycol can
// stand at two heats. Where a design is impossible the answers are nil.
func SweepBank(n int, at Designs, visit func(i int, answers map[Quantity]Answer)) {
	var s settling
	for i := range n {
		in := at(i)
		if in == nil {
			visit(i, nil)
			continue
		}
		t, hindered := s.from(in, cold(in), coarse)
		if hindered != nil {
			visit(i, nil)
			continue
		}
		s.complete(&t)
		visit(i, Answers(in, &t))
	}
}
