// Package tolerance tells how sure the figures of a design are: each thing that comes out otherwise than it is entered moved
// by itself to its limits, and all together by chance.
package tolerance

import (
	"math"

	"finwright/core/field"
	"finwright/core/units"
)

// Band is something that comes out up to a limit otherwise than it is entered, as a share of it [-]. The limit is two standard
// deviations. Its name is the text "tolerance.band.<id>".
type Band struct {
	ID    string
	Limit float64 // [-] what the house takes where nobody says otherwise
	Most  float64 // [-] that may be said

	of   func(b *Bench) int         // how many pieces of the bank come out each its own way; nil: the whole bank one way
	move func(t *trial, by float64) // by is 1 where nothing is off
}

// trial is a design as it comes out, and by what its drop and what is paid for tubes and strip are multiplied. They are bought
// in the sizes that are entered, strip by its mass: as much more as it is thicker, and as there are more turns of it.
type trial struct {
	field.Input
	drop, tubes, strip float64
}

// Bands lists them. Their limits are common practice without a source, but for the wall, whose tenth tubing standards have for an
// average wall (from memory), and film and drop, which are about how far measured banks lie from published correlations
// (engineering judgement). Fouling is what nobody knows: it is drawn only where a limit is said.
var Bands = []Band{
	{ID: "strip", Limit: 0.05, Most: 0.5, of: func(b *Bench) int { return b.coils }, move: func(t *trial, by float64) {
		t.Tube.Fin.Strip *= units.Length(by)
		t.strip *= by
	}},
	{ID: "wall", Limit: 0.1, Most: 0.5, of: func(b *Bench) int { return b.tubes }, move: func(t *trial, by float64) { t.Tube.Wall *= units.Length(by) }},
	{ID: "count", Limit: 0.02, Most: 0.3, move: func(t *trial, by float64) {
		t.Tube.Fin.Count *= units.PerLength(by)
		t.strip *= by
	}},
	{ID: "height", Limit: 0.02, Most: 0.3, move: func(t *trial, by float64) { t.Tube.Fin.Height *= units.Length(by) }},
	{ID: "film", Limit: 0.15, Most: 0.9, move: func(t *trial, by float64) { t.Air.FilmError = by - 1 }},
	{ID: "drop", Limit: 0.2, Most: 0.9, move: func(t *trial, by float64) { t.drop *= by }},
	{ID: "bond", Limit: 0.5, Most: 1, move: func(t *trial, by float64) {
		t.Process.Bond.SI, t.Process.Bond.Stated = t.Bond()*by, true
	}},
	{ID: "tube_price", Limit: 0.05, Most: 0.9, move: func(t *trial, by float64) { t.tubes *= by }},
	{ID: "strip_price", Limit: 0.1, Most: 0.9, move: func(t *trial, by float64) { t.strip *= by }},
	{ID: "fouling", Limit: 0, Most: 1, move: func(t *trial, by float64) { t.Air.Fouling *= by; t.Process.Fouling *= by }},
}

// Limits are those of the bands in the order of Bands [-].
type Limits [10]float64

// House returns the limits that the house takes.
func House() (l Limits) {
	for i := range Bands {
		l[i] = Bands[i].Limit
	}
	return l
}

// kept is the variance of what a limit of two standard deviations leaves of a normal distribution, over that of the whole of it.
//
//	1 - 4 phi(2)/(2 Phi(2) - 1)
var kept = 1 - 4*math.Exp(-2)/math.Sqrt(2*math.Pi)/math.Erf(math.Sqrt2)

// chance returns the share [-] by which a band is off in a draw, at most its limit: a normal distribution cut at two
// standard deviations. It hangs on seed, draw and band alone, so that two designs meet the same films.
func chance(limit float64, seed uint64, draw, band int) float64 {
	return limit / 2 * math.Sqrt2 * math.Erfinv((2*uniform(seed, draw, band)-1)*math.Erf(math.Sqrt2))
}

// mean returns by what share [-] the mean of n pieces is off in a draw, each of which is off by itself; it is taken for normal.
func mean(limit float64, n int, seed uint64, draw, band int) float64 {
	u := uniform(seed, draw, len(Bands)+band)
	return limit / 2 * math.Sqrt(kept/float64(n)) * math.Sqrt2 * math.Erfinv(2*u-1)
}

// uniform returns a number within 0 to 1, ends left out.
//
// Source: the finaliser of splitmix64, from memory.
func uniform(seed uint64, draw, stream int) float64 {
	x := seed + uint64(draw)*0x9e3779b97f4a7c15 + uint64(stream)*0xd1342543de82ef95
	for range 2 {
		x += 0x9e3779b97f4a7c15
		x = (x ^ x>>30) * 0xbf58476d1ce4e5b9
		x = (x ^ x>>27) * 0x94d049bb133111eb
		x ^= x >> 31
	}
	return (float64(x>>11) + 0.5) / (1 << 53)
}
