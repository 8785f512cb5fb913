// Package numeric holds the special functions that the fin formulas need.
//
// Arguments and results are bare, dimensionless float64.
package numeric

import "math"

// Above this argument the asymptotic series of the modified Bessel functions
// reach full precision: their smallest term is about exp(-2x).
const asymptoticFrom = 18

// Up to this argument the logarithmic series of K0 keeps 14 digits; beyond it
// the two large terms of that series begin to cancel.
const logarithmicTo = 2

// Bessel01 returns the modified Bessel functions of orders 0 and 1 [-], scaled
// so that none of them overflows:
//
//	i0 = e^-x I0(x), i1 = e^-x I1(x), k0 = e^x K0(x), k1 = e^x K1(x)
//
// The four are computed together because a fin needs them together and they
// share their series. Relative error is below 1e-13.
//
// Valid: x > 0 [-]; K1 overflows below about 1e-308.
// Source: Abramowitz & Stegun (1964): 9.6.10 and 9.6.13 (series), 9.6.24
// (integral for K0), 9.6.15 (Wronskian), 9.7.1 and 9.7.2 (asymptotic series).
// Clause numbers from memory.
func Bessel01(x float64) (i0, i1, k0, k1 float64) {
	if !(x > 0) {
		panic("numeric: Bessel01 needs a positive argument")
	}
	if x >= asymptoticFrom {
		return besselAsymptotic(x)
	}
	down := math.Exp(-x)
	if x <= logarithmicTo {
		i0, i1, k0 = besselLogarithmic(x)
		k0 /= down
	} else {
		i0, i1 = besselPower(x)
		k0 = besselIntegral(x)
	}
	i0 *= down
	i1 *= down
	// The Wronskian I0 K1 + I1 K0 = 1/x gives K1; I1 K0 is at most half of 1/x.
	k1 = (1/x - i1*k0) / i0
	return i0, i1, k0, k1
}

// besselLogarithmic sums I0, I1 and, with harmonic numbers, K0 (all unscaled).
func besselLogarithmic(x float64) (i0, i1, k0 float64) {
	q := x * x / 4
	term, harmonic := 1.0, 0.0
	i0, i1 = 1, 1
	for k := 1.0; term > 1e-18; k++ {
		term *= q / (k * k)
		harmonic += 1 / k
		i0 += term
		i1 += term / (k + 1)
		k0 += term * harmonic
	}
	i1 *= x / 2
	k0 -= (math.Log(x/2) + eulerGamma) * i0
	return i0, i1, k0
}

const eulerGamma = 0.57721566490153286060651209008240243

// besselPower sums I0 and I1 (unscaled); every term is positive.
func besselPower(x float64) (i0, i1 float64) {
	q := x * x / 4
	term := 1.0
	i0, i1 = 1, 1
	for k := 1.0; term > 1e-17*i0; k++ {
		term *= q / (k * k)
		i0 += term
		i1 += term / (k + 1)
	}
	return i0, i1 * x / 2
}

// besselIntegral returns e^x K0(x) by the trapezoidal rule on
//
//	e^x K0(x) = integral from 0 to infinity of exp(-x (cosh u - 1)) du
//
// The integrand is even, analytic, and at most e^x on the lines |Im u| = pi/2, so
// that the rule's error is about exp(x - pi^2/step): 1e-16 at the largest x used.
func besselIntegral(x float64) float64 {
	sum := 0.5
	for _, c := range coshLess1 {
		e := math.Exp(-x * c)
		sum += e
		if e < 1e-17 {
			break
		}
	}
	return integralStep * sum
}

const integralStep = 0.18

// coshLess1 holds cosh(u) - 1 at the nodes u = step, 2 step, ... 3.96.
var coshLess1 = func() (c [22]float64) {
	for i := range c {
		s := math.Sinh(float64(i+1) * integralStep / 2)
		c[i] = 2 * s * s
	}
	return c
}()

// besselAsymptotic sums the large-argument series. I and K have the same terms
// apart from alternating signs, so that one pass gives both.
func besselAsymptotic(x float64) (i0, i1, k0, k1 float64) {
	even0, odd0 := 1.0, 0.0
	even1, odd1 := 1.0, 0.0
	a0, a1 := 1.0, 1.0
	for k := 1.0; k < 2*asymptoticFrom; k += 2 {
		a0 *= -(2*k - 1) * (2*k - 1) / (8 * k * x)
		a1 *= (4 - (2*k-1)*(2*k-1)) / (8 * k * x)
		odd0 += a0
		odd1 += a1
		a0 *= -(2*k + 1) * (2*k + 1) / (8 * (k + 1) * x)
		a1 *= (4 - (2*k+1)*(2*k+1)) / (8 * (k + 1) * x)
		even0 += a0
		even1 += a1
		if math.Abs(a1) < 1e-17 {
			break
		}
	}
	i := 1 / math.Sqrt(2*math.Pi*x)
	k := math.Sqrt(math.Pi / (2 * x))
	return i * (even0 - odd0), i * (even1 - odd1), k * (even0 + odd0), k * (even1 + odd1)
}
