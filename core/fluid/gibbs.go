package fluid

// gibbs holds the dimensionless Gibbs energy of water or steam and its derivatives,
// each already multiplied by its powers of reduced pressure (p) and inverse reduced
// temperature (t): tt is tau^2 d2g/dtau2, and so on.
type gibbs struct{ p, pp, t, tt, pt float64 }

// term is n x^i y^j.
type term struct{ i, j, n float64 }

// state is the thermodynamic answer of one Gibbs function.
type state struct {
	volume          float64 // [m3/kg]
	enthalpy        float64 // [J/kg]
	cp, cv          float64 // [J/(kg K)]
	compressibility float64 // [1/Pa] isothermal
}

// at turns derivatives into properties at t [K] and p [Pa].
//
// Valid: where the Gibbs function holds.
// Source: IAPWS-IF97, tables 3 and 12.
func (g gibbs) at(t, p float64) state {
	return state{
		volume:          g.volume(t, p),
		enthalpy:        g.t * (steamGasConstant * t),
		cp:              -steamGasConstant * g.tt,
		cv:              steamGasConstant * (-g.tt + (g.p-g.pt)*(g.p-g.pt)/g.pp),
		compressibility: -g.pp / (g.p * p),
	}
}

func (g gibbs) volume(t, p float64) float64 { return g.p * (steamGasConstant * t) / p }

// liquidWater returns the Gibbs function of region 1 at t [K] and p [Pa].
//
// Valid: 273.15 <= t <= 623.15; saturation pressure <= p <= 100e6.
// Source: IAPWS-IF97 (R7-97(2012)), eq. 7 and table 2.
func liquidWater(t, p float64) gibbs {
	pi, tau := p/16.53e6, 1386/t
	x, y := 7.1-pi, tau-1.222
	ofX, ofY := wholePowers(x), wholePowers(y)
	var g gibbs
	for i := range region1 {
		c := &region1[i]
		v := c.n * ofX.whole(int(c.i)) * ofY.whole(int(c.j))
		dp, dt := -c.i*pi/x, c.j*tau/y
		g.p += v * dp
		g.t += v * dt
		g.pt += v * dp * dt
		g.pp += v * c.i * (c.i - 1) * pi * pi / (x * x)
		g.tt += v * c.j * (c.j - 1) * tau * tau / (y * y)
	}
	return g
}

// liquidVolume returns the volume of region 1 [m3/kg] at t [K] and p [Pa], as state has it, without the rest of the state.
//
// Valid: as liquidWater.
// Source: as liquidWater.
func liquidVolume(t, p float64) float64 {
	pi, tau := p/16.53e6, 1386/t
	x, y := 7.1-pi, tau-1.222
	ofX, ofY := wholePowers(x), wholePowers(y)
	var g gibbs
	for i := range region1 {
		c := &region1[i]
		g.p += c.n * ofX.whole(int(c.i)) * ofY.whole(int(c.j)) * (-c.i * pi / x)
	}
	return g.volume(t, p)
}

// idealSteam returns the ideal-gas part of region 2 at t [K]; its tt is -cp0/R.
//
// Valid: 273.15 <= t <= 1073.15; used down to 233.15, where its heat capacity has
// all but settled at 4 R.
// Source: IAPWS-IF97, eq. 16 and table 10.
func idealSteam(t float64) gibbs {
	tau := 540 / t
	ofTau := wholePowers(tau)
	g := gibbs{p: 1, pp: -1}
	for _, c := range region2Ideal {
		v := c.n * ofTau.whole(int(c.j))
		g.t += v * c.j
		g.tt += v * c.j * (c.j - 1)
	}
	return g
}

// steam returns the Gibbs function of region 2 at t [K] and p [Pa].
//
// Valid: 273.15 <= t <= 863.15; p up to saturation, above 623.15 K up to the
// boundary of region 3.
// Source: IAPWS-IF97, eqs 15 to 17 and table 11.
func steam(t, p float64) gibbs {
	pi, tau := p/1e6, 540/t
	y := tau - 0.5
	ofPi, ofY := wholePowers(pi), wholePowers(y)
	g := idealSteam(t)
	for i := range region2 {
		c := &region2[i]
		v := c.n * ofPi.whole(int(c.i)) * ofY.whole(int(c.j))
		dt := c.j * tau / y
		g.p += v * c.i
		g.t += v * dt
		g.pt += v * c.i * dt
		g.pp += v * c.i * (c.i - 1)
		g.tt += v * c.j * (c.j - 1) * tau * tau / (y * y)
	}
	return g
}
