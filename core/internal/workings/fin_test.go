package workings

import (
	"errors"
	"math"
	"math/big"
)

// What expressions call of a fin, worked out anew: Bessel functions from their series and their integral, the fin equation
// by Runge and Kutta.

// besselI returns the function that I_{ν} names, summed as a power series
//
//	I(z) = (z/2)^ν / Γ(ν + 1) · sum of (z²/4)^k / (k! (ν + 1) (ν + 2) .. (ν + k))
//
// in as many bits as it is asked with; only Γ is rounded, in the same way for each order that shares its fraction, so that
// products which cancel exactly do so here.
//
// ν is thirds over 3.
func besselI(thirds int) function {
	return func(args []*big.Float) (*big.Float, error) {
		z := args[0]
		bits := z.Prec()
		of := func(x float64) *big.Float { return new(big.Float).SetPrec(bits).SetFloat64(x) }
		quarter := of(0).Quo(of(0).Mul(z, z), of(4))
		term, sum := of(1), of(1)
		for k := 1; ; k++ {
			term.Mul(term, of(3))
			term.Quo(term.Mul(term, quarter), of(float64(k*(thirds+3*k))))
			sum.Add(sum, term)
			if term.Sign() == 0 || term.MantExp(nil) < sum.MantExp(nil)-int(bits) {
				break
			}
		}
		half := of(0).Quo(z, of(2))
		power, gamma := of(1), of(1)
		if thirds%3 != 0 {
			root := cubeRoot(half)
			for range max(thirds, -thirds) {
				power.Mul(power, root)
			}
			if thirds < 0 {
				power.Quo(of(1), power)
			}
			// Γ(1/3) or Γ(2/3), and Γ(x + 1) = x Γ(x) up from there.
			fraction := ((thirds % 3) + 3) % 3
			gamma = of(math.Gamma(float64(fraction) / 3))
			for at := fraction; at < thirds+3; at += 3 {
				gamma.Mul(gamma, of(0).Quo(of(float64(at)), of(3)))
			}
		} else {
			for k := 1; k <= thirds/3; k++ {
				power.Mul(power, half)
				gamma.Mul(gamma, of(float64(k)))
			}
		}
		return sum.Quo(sum.Mul(sum, power), gamma), nil
	}
}

// cubeRoot doubles the digits of the rounded root until they fill x's bits.
func cubeRoot(x *big.Float) *big.Float {
	of := func(f float64) *big.Float { return new(big.Float).SetPrec(x.Prec()).SetFloat64(f) }
	root := of(math.Cbrt(plain(x)))
	for digits := uint(50); digits < 2*x.Prec(); digits *= 2 {
		square := of(0).Mul(root, root)
		root.Quo(root.Add(root.Mul(root, of(2)), square.Quo(x, square)), of(3))
	}
	return root
}

// besselK returns the function that K_n names, from its integral
//
//	K(x) = integral over t from 0 of exp(-x cosh t) cosh(n t)
//
// by steps so short that the sum is exact to rounding. e^-x is kept apart: it may be less than the least number.
func besselK(n int) function {
	return func(args []*big.Float) (*big.Float, error) {
		x := plain(args[0])
		if !(x > 0) {
			return nil, errors.New("an argument that is not positive")
		}
		const step = 1.0 / 64
		sum := 0.5
		for i := 1; ; i++ {
			t := step * float64(i)
			term := math.Exp(-x*(math.Cosh(t)-1)) * math.Cosh(float64(n)*t)
			sum += term
			if term < 1e-20*sum {
				break
			}
		}
		out := new(big.Float).SetPrec(args[0].Prec()).SetFloat64(sum * step)
		// e^-x as e^(-x/m) to the power of m.
		const m = 16
		small := new(big.Float).SetPrec(args[0].Prec()).SetFloat64(math.Exp(-x / m))
		for range m {
			out.Mul(out, small)
		}
		return out, nil
	}
}

// disc is a fin as conduction sees it.
type disc struct {
	film, conductivity float64
	root, tip          float64 // radii
	thickness          func(r float64) float64
}

// solve walks from the tip, where nothing flows, to the root by fourth-order Runge and Kutta:
//
//	q = r t dθ/dr,  dq/dr = (2 h/k) r θ
//
// and returns the efficiency on the faces, and the tip's excess over the root's.
func (d disc) solve() (efficiency, tipRatio float64) {
	m := math.Sqrt(2 * d.film / (d.conductivity * min(d.thickness(d.root), d.thickness(d.tip))))
	height := d.tip - d.root
	steps := 4000 + int(100*m*height)
	slope := func(r, theta, q float64) (float64, float64) {
		return q / (r * d.thickness(r)), 2 * d.film / d.conductivity * r * theta
	}
	theta, q := 1.0, 0.0
	h := -height / float64(steps)
	for i := range steps {
		r := d.tip + float64(i)*h
		a, b := slope(r, theta, q)
		a2, b2 := slope(r+h/2, theta+h/2*a, q+h/2*b)
		a3, b3 := slope(r+h/2, theta+h/2*a2, q+h/2*b2)
		a4, b4 := slope(r+h, theta+h*a3, q+h*b3)
		theta += h / 6 * (a + 2*a2 + 2*a3 + a4)
		q += h / 6 * (b + 2*b2 + 2*b3 + b4)
	}
	flow := -2 * math.Pi * d.conductivity * q / theta // per kelvin of the root
	return flow / (d.film * 2 * math.Pi * (d.tip*d.tip - d.root*d.root)), 1 / theta
}

// march returns a function of (h, k, t, t_t, r_o, r_e): the efficiency of a fin with a law of thickness, or its tip's ratio
// if that is the figure wanted.
func march(law func(t, tip, ro, re, r float64) float64, wanted string) function {
	return func(args []*big.Float) (*big.Float, error) {
		if len(args) != 6 {
			return nil, errors.New("six arguments are wanted")
		}
		var x [6]float64
		for i := range x {
			x[i] = plain(args[i])
		}
		d := disc{film: x[0], conductivity: x[1], root: x[4], tip: x[5], thickness: func(r float64) float64 { return law(x[2], x[3], x[4], x[5], r) }}
		eta, ratio := d.solve()
		if wanted == "tip_ratio" {
			eta = ratio
		}
		return big.NewFloat(eta), nil
	}
}

// The laws of thickness.
func straight(t, tip, ro, re, r float64) float64 { return t + (tip-t)*(r-ro)/(re-ro) }
func rolled(t, _, ro, _, r float64) float64      { return t * ro / r }
func even(t, _, _, _, _ float64) float64         { return t }
