package rating

import (
	"math"

	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/fin"
	"finwright/core/fluid"
	"finwright/core/inside"
	"finwright/core/tube"
)

const zeroCelsius = 273.15 // [K]

// Thermal is the bank at work.
type Thermal struct {
	Gas          fluid.Properties // at the mean temperature
	Flow         airside.Flow
	Films        []airside.Estimate[airside.Film] // of every correlation
	Drops        []airside.Estimate[airside.Drop]
	airside.Pair // in use
	UsedFilm     airside.Estimate[airside.Film]
	UsedDrop     airside.Estimate[airside.Drop] // nothing where HasDrop is false
	Inside       inside.Film
	InsideLoss   *inside.Drop // nil where the stream condenses
	OutsideFilm  float64      // in force [W/(m2 K)]
	Overall      exchanger.Overall
	Duty         exchanger.Duty
	Bank         exchanger.Bank
	Eta          float64 // surface efficiency [-]
	TipRatio     float64 // of the tip's difference to the air over the root's [-]
	FaceFlow     float64 // [m3/s] at the inlet
	Condensed    float64 // [kg/s]; 0 where nothing condenses
	Wet          bool    // the coldest metal is below the dew point of the gas
	state        means
	Rounds       int // that it took to settle, of MostRounds at most
}

// means are the temperatures [C] at which properties are taken.
type means struct {
	air, process, wall, root float64
	condensed                float64 // [kg/s]
}

// cold starts the search: no heat has passed yet, and the wall is as hot as what it holds.
func cold(in *Input) means {
	air, process := float64(in.Air.In), float64(in.Process.In)
	return means{air: air, process: process, wall: process, root: (air + process) / 2}
}

// Tolerances of the mean temperatures [K]: for a figure, and for a point of a curve.
const (
	fine   = 1e-7
	coarse = 1e-3
)

// MostRounds bounds the search: what has not settled by then is going round.
const MostRounds = 60

// settling is a bank while it settles: what no round changes is taken once, and what a round needs room for is kept.
type settling struct {
	in      *Input
	gas     gas
	pitches airside.Bank
	bank    exchanger.Bank
	path    exchanger.Path // all but the films and the surface efficiency
	disc    fin.Fin
	areas   tube.Areas
	stream  stream
	pair    airside.Pair
}

// begin takes what no round changes; it may be called again for another bank.
func (s *settling) begin(in *Input) *Hindrance {
	var err error
	if s.gas, err = in.gas(); err != nil {
		return beyond(GasBeyond, err)
	}
	k, _ := in.FinMetal.ConductivityAt(in.Air.Metal)
	kw, _ := in.TubeMetal.ConductivityAt(in.Air.Metal)
	s.in, s.pair, s.pitches, s.areas = in, in.Pair(), in.Pitches(), in.Tube.Areas()
	s.disc, s.stream = Disc(&in.Tube, float64(k)), in.stream()
	s.bank = exchanger.Bank{
		Arrangement: exchanger.Arrangement{Rows: in.Bank.Rows, Passes: in.Bank.Passes},
		TubesPerRow: in.Bank.TubesPerRow, TransversePitch: s.pitches.TransversePitch,
		FinnedLength: float64(in.Tube.FinnedLength()), OD: float64(in.Tube.OD),
	}
	s.path = exchanger.Path{
		OD: float64(in.Tube.OD), ID: float64(in.Tube.InsideOD()), InsideFouling: in.Process.Fouling, WallConductivity: float64(kw),
		Bond: in.Bond(), OutsideFouling: in.Air.Fouling, AreaRatio: s.areas.Ratio(),
	}
	return nil
}

// from begins with a bank and settles it.
func (s *settling) from(in *Input, start means, tolerance float64) (Thermal, *Hindrance) {
	if hindered := s.begin(in); hindered != nil {
		return Thermal{}, hindered
	}
	return s.settle(start, tolerance)
}

// settle finds the temperatures, properties and films that agree with one
// another, by repeating from start. Of the correlations it asks the film in use alone; complete asks the others.
//
// Source: fixed point of the mean temperatures; each step changes them by a few per cent of the last.
func (s *settling) settle(start means, tolerance float64) (t Thermal, _ *Hindrance) {
	at := start
	for round := range MostRounds {
		if hindered := s.once(&t, at); hindered != nil {
			return Thermal{}, hindered
		}
		next := t.means(s.in)
		change := max(math.Abs(next.air-at.air), math.Abs(next.process-at.process), math.Abs(next.wall-at.wall), math.Abs(next.root-at.root))
		t.state, t.Rounds = next, round+1
		if change < tolerance {
			t.Pair, t.Wet = s.pair, s.gas.wets(t.Duty.Coldest.Celsius)
			return t, nil
		}
		at = next
	}
	return Thermal{}, &Hindrance{Cause: NotSettled}
}

// complete asks all correlations of a bank that has settled, and the stream inside for its range and its loss.
func (s *settling) complete(t *Thermal) {
	t.Films = airside.Evaluate(airside.FilmMethods, s.pitches, t.Flow)
	t.Drops = airside.Evaluate(airside.DropMethods, s.pitches, t.Flow)
	t.UsedFilm = t.Films[t.Film]
	if t.HasDrop() {
		t.UsedDrop = t.Drops[t.Drop]
	}
	s.stream.complete(t, s.in)
}

// shorten asks the correlations in use alone, and leaves the lists of all empty.
func (s *settling) shorten(t *Thermal) {
	t.UsedFilm = airside.Evaluate(airside.FilmMethods[t.Film:t.Film+1], s.pitches, t.Flow)[0]
	if t.HasDrop() {
		t.UsedDrop = airside.Evaluate(airside.DropMethods[t.Drop:t.Drop+1], s.pitches, t.Flow)[0]
	}
	s.stream.complete(t, s.in)
}

// once rates the bank with properties at the given mean temperatures.
func (s *settling) once(t *Thermal, at means) *Hindrance {
	in := s.in
	var err error
	if t.Gas, err = s.gas.at(at.air); err != nil {
		return beyond(GasBeyond, err)
	}
	wall, err := s.gas.at(at.root)
	if err != nil {
		return beyond(StreamBeyond, err)
	}
	flux := s.gas.inlet.Density * in.Air.Velocity
	t.Flow = airside.Flow{
		Properties: t.Gas, FaceMassVelocity: flux, WallPrandtl: wall.Prandtl(),
		TemperatureRatio: (at.air + zeroCelsius) / (at.root + zeroCelsius),
	}
	t.OutsideFilm = s.film(t)
	t.Bank = s.bank
	face := t.Bank.FaceArea()
	t.FaceFlow = in.Air.Velocity * face
	process, hindered := s.stream.inside(t, in, at)
	if hindered != nil {
		return hindered
	}
	solved := fin.Solve(s.disc, t.OutsideFilm)
	t.Eta, t.TipRatio = fin.SurfaceEfficiency(float64(s.areas.Fin()), float64(s.areas.Total()), solved.Efficiency), solved.TipRatio
	path := s.path
	path.InsideFilm, path.OutsideFilm, path.SurfaceEfficiency = t.Inside.Coefficient, t.OutsideFilm, t.Eta
	t.Overall = exchanger.OverallU(path)
	air := exchanger.Stream{In: float64(in.Air.In), Capacity: flux * face * t.Gas.HeatCapacity}
	t.Duty = t.Bank.Rate(t.Overall, air, process)
	if in.Process.Fluid == Steam {
		t.Condensed = t.Duty.Heat / s.stream.saturated.LatentHeat
	}
	return nil
}

// film returns the outside film coefficient in force [W/(m2 K)].
func (s *settling) film(t *Thermal) float64 {
	if s.in.Air.FilmGiven {
		return float64(s.in.Air.Film)
	}
	return airside.FilmMethods[s.pair.Film].Compute(s.pitches, t.Flow).Coefficient
}

// means returns the temperatures that follow from the duty.
func (t *Thermal) means(in *Input) means {
	return means{
		air:       (float64(in.Air.In) + t.Duty.AirOut) / 2,
		process:   (float64(in.Process.In) + t.Duty.ProcessOut) / 2,
		wall:      t.Duty.MeanWall,
		root:      t.Duty.MeanRoot,
		condensed: t.Condensed,
	}
}
