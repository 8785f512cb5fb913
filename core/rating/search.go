package rating

import (
	"math"

	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/fin"
	"finwright/core/numeric"
)

// means are the heat that passes and the temperatures [C] at which properties are taken.
type means struct {
	heat         float64 // [W] from one stream to the other, whichever is the hotter
	air, process float64
	wall         float64 // the surface that the stream inside wets: on the dirt, where there is some
	tube, root   float64 // the middle of the wall, and where fins stand
	fin          float64 // mean of a fin
	fallen       float64 // [-] of its fall that the stream inside has behind it, mean over the bank
}

// cold starts the search where nothing is known yet: no heat has been found, and the temperatures are as far from one inlet to
// the other as they mostly lie in a bank. A round brings them a hundred times nearer, so that a good guess saves one.
//
// Source: engineering judgement.
func cold(in *Input) means {
	process, air := float64(in.Process.In), float64(in.Air.In)
	at := func(part float64) float64 { return process + part*(air-process) }
	m := means{air: at(0.8), process: at(0.1), wall: at(0.25), tube: at(0.3), root: at(0.35), fin: at(0.45), fallen: 0.5}
	if in.Process.Fluid == Steam {
		m.process = process
	}
	return m
}

// Tolerances of the mean temperatures [K]: for a figure, and for a point of a curve.
const (
	fine   = 1e-6
	coarse = 1e-3
)

// MostRounds bounds the search. A bank takes some five.
const MostRounds = 200

// settle finds the heat, temperatures, properties and films that agree with one another, beginning with start. Of the
// correlations it asks the film in use alone; complete asks the others.
//
// The heat is the one unknown: at the films of too great a heat the bank carries less. The temperatures follow round by round,
// and the bracket of the heat is narrowed only where they are known well enough to tell to which side. Where a property is asked for beyond
// its range, that of the range's end serves the search; if it has to serve the answer, that is what hinders.
//
// How well is well enough hangs on how the heat changes with the temperatures: little, but for an oil between laminar and
// turbulent flow. A search that takes long may have been told a side too soon: it begins again and asks for more.
//
// Source: numeric.Descent. There is one root where the overall coefficient rises by less than its own share with the heat.
func (s *settling) settle(start means, tolerance float64) (t Thermal, _ *Hindrance) {
	s.at = start
	if start.heat == 0 || start.heat > s.most() {
		s.at = cold(s.in)
		found, _ := s.once(&t)
		s.move(&t, found, found)
	}
	whole := numeric.Descent{High: s.most()}
	side, sensitivity := whole, usual
	for t.Rounds < MostRounds {
		heat := s.at.heat
		found, change := s.once(&t)
		short := found - heat
		switch {
		case change < tolerance && math.Abs(short)*s.between() <= tolerance*heat:
			s.finish(&t)
			return t, s.hindered
		case sensitivity == usual && t.Rounds > patience:
			side, sensitivity = whole, steep
		case math.Abs(short) < 2*sensitivity*change*heat:
			// Not known well enough to tell a side: the heat found is tried, or in steep films the same again.
			if sensitivity == usual && found > side.Low && found < side.High {
				s.move(&t, found, found)
			}
		default:
			next := side.Next(heat, short)
			s.move(&t, next, next)
		}
	}
	return t, &Hindrance{Cause: NotSettled}
}

// Shares by which a bank's heat may change with one of its temperatures [1/K].
const (
	usual = 1e-3 // water changes by a fifth of it
	steep = 1    // an oil between laminar and turbulent flow comes near to it
)

// patience is how many rounds a search has before it asks for more. Water takes some five.
const patience = 8

// between returns the difference between the inlets [K].
func (s *settling) between() float64 { return math.Abs(float64(s.in.Process.In - s.in.Air.In)) }

// most returns a heat [W] that the air cannot take up.
func (s *settling) most() float64 {
	return 2 * s.gas.flux(&s.in.Air) * s.bank.FaceArea() * s.gas.inlet.HeatCapacity * s.between()
}

// finish rates the bank as it has settled.
func (s *settling) finish(t *Thermal) {
	t.Duty = t.Bank.Rate(t.Overall, s.air, s.process)
	s.at.heat = math.Abs(t.Duty.Heat)
	if s.in.Process.Fluid == Steam {
		t.Condensed = s.at.heat / s.stream.saturated.LatentHeat
	}
	t.state, t.Pair, t.Wet = s.at, s.pair, s.gas.wets(t.Duty.Coldest.Celsius)
}

// once asks the films at the temperatures at hand and returns the heat [W] that the bank carries with them, and by how much
// the temperatures [K] that follow from the heat at hand are others.
func (s *settling) once(t *Thermal) (found, change float64) {
	t.Rounds++
	in, at := s.in, s.at
	t.Gas, s.hindered = s.gas.near(at.air)
	wall, beyond := s.gas.near(at.root)
	if beyond != nil {
		s.hindered = &Hindrance{StreamBeyond, beyond.Range}
	}
	flux := s.gas.flux(&in.Air)
	t.Flow = airside.Flow{
		Properties: t.Gas, FaceMassVelocity: flux, WallPrandtl: wall.Prandtl(),
		TemperatureRatio: (at.air + zeroCelsius) / (at.root + zeroCelsius),
	}
	t.OutsideFilm = s.film(t)
	t.Bank = s.bank
	face := t.Bank.FaceArea()
	t.FaceFlow = flux / s.gas.inlet.Density * face
	process, beyond := s.stream.inside(t, in, at)
	if beyond != nil {
		s.hindered = beyond
	}
	s.warmth.take(at.process, process.Capacity)
	s.process, s.air = process, exchanger.Stream{In: float64(in.Air.In), Capacity: flux * face * t.Gas.HeatCapacity}

	disc := s.disc
	disc.Conductivity = in.conductivity(&in.FinMetal, at.fin)
	solved := fin.Solve(disc, in.dirty(t.OutsideFilm))
	t.finEta, t.TipRatio = solved.Efficiency, solved.TipRatio
	t.Eta = fin.SurfaceEfficiency(float64(s.areas.Fin()), float64(s.areas.Total()), t.finEta)
	path := s.path
	path.WallConductivity = in.conductivity(&in.TubeMetal, at.tube)
	path.InsideFilm, path.OutsideFilm, path.SurfaceEfficiency = t.Inside.Coefficient, t.OutsideFilm, t.Eta
	t.Overall = exchanger.OverallU(path)

	b := t.Bank.Balance(t.Overall.OnBare, s.air, s.process)
	if fall := b.Heat / s.process.Capacity; fall != 0 {
		s.at.fallen = (s.process.In - b.MeanProcess) / fall
	}
	found = math.Abs(b.Heat)
	s.move(t, at.heat, found)
	return found, at.differs(s.at)
}

// move takes the temperatures that follow, with the resistances and capacities of the last round: those of the streams from
// the heat sought [W], those of wall and fins from the heat that passes [W]. With the heat sought a wall in thick oil would run
// away: the colder it is, the thicker the oil, the worse its film, and the colder the wall at the same heat. None is beyond the
// inlets, whatever the heats.
func (s *settling) move(t *Thermal, sought, passes float64) {
	at := &s.at
	at.heat = sought
	way := math.Copysign(1, s.process.In-s.air.In)
	low, high := min(s.air.In, s.process.In), max(s.air.In, s.process.In)
	within := func(celsius float64) float64 { return min(max(celsius, low), high) }
	at.air = within(s.air.In + way*sought/(2*s.air.Capacity))
	at.process = within(s.warmth.mean(s.process.In, way*sought/2))
	flux, inner := way*passes/s.bank.BareArea(), s.process.In-at.fallen*way*passes/s.process.Capacity
	upTo := func(last exchanger.Layer) float64 { return within(inner - flux*t.Overall.UpTo(last)) }
	at.wall, at.root = upTo(exchanger.InsideFilm), upTo(exchanger.Joint)
	at.tube = (upTo(exchanger.InsideFouling) + upTo(exchanger.TubeWall)) / 2
	at.fin = at.root + (1-t.finEta)*(upTo(exchanger.OutsideFilm)-at.root)
}

// differs returns the largest difference of temperatures [K].
func (m means) differs(n means) float64 {
	return max(math.Abs(m.air-n.air), math.Abs(m.process-n.process), math.Abs(m.wall-n.wall), math.Abs(m.tube-n.tube), math.Abs(m.root-n.root), math.Abs(m.fin-n.fin))
}

// film returns the outside film coefficient in force [W/(m2 K)].
func (s *settling) film(t *Thermal) float64 {
	h := float64(s.in.Air.Film)
	if !s.in.Air.FilmGiven {
		h = airside.FilmMethods[s.pair.Film].Compute(s.cross(t)).Coefficient
	}
	return h * (1 + s.in.Air.FilmError)
}

// cross takes the stream as it is now.
func (s *settling) cross(t *Thermal) *airside.Crossing {
	s.crossing = airside.Cross(s.pitches, t.Flow)
	return &s.crossing
}
