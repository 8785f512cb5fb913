package rating

// Designs gives a sweep its i-th design, or nil where that is impossible. It may give the same Input each time, changed:
// a copy for each would cost more than its evaluation.
type Designs func(i int) *Input

// SweepSurface evaluates the surface of n designs about near that follow k, and hands each to visit; ok is false where the
// design is impossible, or no velocity gives it what k holds.
func SweepSurface(n int, at Designs, k *Kept, near *Thermal, visit func(i int, s Surface, ok bool)) {
	stream := *near
	for i := range n {
		in := at(i)
		if in == nil || !in.Air.FilmGiven && !k.breeze(in, near, &stream) {
			visit(i, Surface{}, false)
			continue
		}
		visit(i, in.Surface(&stream), true)
	}
}

// SweepBank rates n banks that follow k while an entry is varied, each from the cold, so that a point does not hang on where the
// curve came from: cold glycol can stand at two heats. Where a design is impossible the answers are nil. Without the spread the
// answers are as of a bank that was rated briefly.
func SweepBank(n int, at Designs, k *Kept, varied string, spread bool, visit func(i int, answers map[Quantity]Answer)) {
	var s settling
	for i := range n {
		in := at(i)
		if in == nil {
			visit(i, nil)
			continue
		}
		t, ok, _ := s.following(k, in, varied, cold(in), coarse)
		if !ok {
			visit(i, nil)
			continue
		}
		if spread {
			s.evaluate(&t)
		} else {
			s.shorten(&t)
		}
		visit(i, Answers(in, &t))
	}
}
