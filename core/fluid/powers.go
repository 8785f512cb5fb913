package fluid

import "math"

// powers gives many powers of one base, each to the last bit the one that math.Pow
// gives: what takes most of its time, the repeated squares and the logarithm, is
// shared. Tables of coefficients raise the same two numbers dozens of times.
type powers struct {
	base, log float64
	squares   [6]float64 // the base to the powers 1, 2, 4 ... 32
}

// wholePowers makes the powers of a base to whole exponents alone.
func wholePowers(x float64) powers {
	p := powers{base: x}
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

// anyPowers makes the powers of a positive base to any exponent.
func anyPowers(x float64) powers {
	p := wholePowers(x)
	p.log = math.Log(x)
	return p
}

// whole returns the base to a whole exponent.
//
// Valid: exponents from -63 to 63.
func (p *powers) whole(n int) float64 {
	if n < 0 {
		return 1 / p.times(1, -n)
	}
	return p.times(1, n)
}

// to returns the base to any exponent, with a root where half of a logarithm would round.
//
// Valid: as whole; a base made by anyPowers.
func (p *powers) to(y float64) float64 {
	if y == 0.5 {
		return math.Sqrt(p.base)
	}
	whole, part := math.Modf(math.Abs(y))
	if part > 0.5 {
		whole, part = whole+1, part-1
	}
	v := 1.0
	if part != 0 {
		v = math.Exp(part * p.log)
	}
	if v = p.times(v, int(whole)); y < 0 {
		return 1 / v
	}
	return v
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
