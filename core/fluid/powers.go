package fluid

// powers gives many whole powers of one base, each to the last bit the one that math.Pow
// gives: what takes most of its time, the repeated squares, is
// shared. Tables of coefficients raise the same two numbers dozens of times.
type powers struct {
	squares [7]float64 // the base to the powers 1, 2, 4 ... 64
}

// wholePowers makes the powers of a base.
func wholePowers(x float64) powers {
	var p powers
	for i := range p.squares {
		p.squares[i] = x
		x *= x
	}
	return p
}

// lowPowers returns a base to the powers from 0 to 6.
func lowPowers(x float64) (list [7]float64) {
	p := wholePowers(x)
	for n := range list {
		list[n] = p.whole(n)
	}
	return list
}

// whole returns the base to a whole exponent.
//
// Valid: exponents from -127 to 127.
func (p *powers) whole(n int) float64 {
	if n < 0 {
		return 1 / p.times(1, -n)
	}
	return p.times(1, n)
}

// times multiplies v by the base to an exponent of nought or more, from the lowest square on as math.Pow does.
func (p *powers) times(v float64, n int) float64 {
	for i := 0; n > 0; i, n = i+1, n>>1 {
		if n&1 == 1 {
			v *= p.squares[i]
		}
	}
	return v
}
