package rating

import (
	"math"

	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/fin"
	"finwright/core/fluid"
	"finwright/core/inside"
)

const zeroCelsius = 273.15 // [K]

// Thermal is the bank at work.
type Thermal struct {
	Gas          fluid.Properties // at the mean temperature
	Flow         airside.Flow
	Films        []airside.Verdict[airside.Film]
	Drops        []airside.Verdict[airside.Drop]
	airside.Pair // in use
	Inside       inside.Film
	InsideLoss   *inside.Drop // nil where the stream condenses
	Overall      exchanger.Overall
	Duty         exchanger.Duty
	Bank         exchanger.Bank
	Eta          float64 // surface efficiency [-]
	TipRatio     float64 // of the tip's difference to the air over the root's [-]
	FaceFlow     float64 // [m3/s] at the inlet
	Condensed    float64 // [kg/s]; 0 where nothing condenses
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

// settle finds the temperatures, properties and films that agree with one
// another, by repeating from start. It keeps to the correlations held; with nil it chooses.
//
// Source: fixed point of the mean temperatures; each step changes them by a few per cent of the last.
func settle(in *Input, start means, held *airside.Pair, tolerance float64) (Thermal, *Hindrance) {
	at := start
	for round := range MostRounds {
		t, hindered := once(in, at, held)
		if hindered != nil {
			return Thermal{}, hindered
		}
		next := t.means(in)
		change := max(math.Abs(next.air-at.air), math.Abs(next.process-at.process), math.Abs(next.wall-at.wall), math.Abs(next.root-at.root))
		t.state, t.Rounds = next, round+1
		if change < tolerance {
			return t, nil
		}
		at = next
	}
	return Thermal{}, &Hindrance{Cause: NotSettled}
}

// once rates the bank with properties at the given mean temperatures.
func once(in *Input, at means, held *airside.Pair) (Thermal, *Hindrance) {
	var t Thermal
	inlet, err := in.GasAt(float64(in.Air.In))
	if err != nil {
		return t, beyond(GasBeyond, err)
	}
	if t.Gas, err = in.GasAt(at.air); err != nil {
		return t, beyond(GasBeyond, err)
	}
	wall, err := in.GasAt(at.root)
	if err != nil {
		return t, beyond(StreamBeyond, err)
	}
	geometry := in.Pitches()
	flux := inlet.Density * in.Air.Velocity
	t.Flow = airside.Flow{
		Properties: t.Gas, FaceMassVelocity: flux, WallPrandtl: wall.Prandtl(),
		TemperatureRatio: (at.air + zeroCelsius) / (at.root + zeroCelsius),
	}
	t.Films = airside.Evaluate(airside.FilmMethods, geometry, t.Flow)
	t.Drops = airside.Evaluate(airside.DropMethods, geometry, t.Flow)
	if held != nil {
		t.Pair = *held
	} else {
		t.Pair = airside.Pair{Film: airside.Choose(airside.FilmMethods, geometry, t.Flow, nil), Drop: airside.Choose(airside.DropMethods, geometry, t.Flow, nil)}
	}
	h := t.film(in)
	t.Bank = exchanger.Bank{
		Arrangement: exchanger.Arrangement{Rows: in.Bank.Rows, Passes: in.Bank.Passes},
		TubesPerRow: in.Bank.TubesPerRow, TransversePitch: float64(in.TubePitch()),
		FinnedLength: float64(in.Tube.FinnedLength()), OD: float64(in.Tube.OD),
	}
	face := t.Bank.FaceArea()
	t.FaceFlow = in.Air.Velocity * face
	process, hindered := t.inside(in, at)
	if hindered != nil {
		return t, hindered
	}
	k, _ := in.FinMetal.ConductivityAt(in.Air.Metal)
	kw, _ := in.TubeMetal.ConductivityAt(in.Air.Metal)
	areas := in.Tube.Areas()
	solved := fin.Solve(Disc(&in.Tube, float64(k)), h)
	t.Eta, t.TipRatio = fin.SurfaceEfficiency(float64(areas.Fin()), float64(areas.Total()), solved.Efficiency), solved.TipRatio
	t.Overall = exchanger.OverallU(exchanger.Path{
		OD: float64(in.Tube.OD), ID: float64(in.Tube.InsideOD()),
		InsideFilm: t.Inside.Coefficient, InsideFouling: in.Process.Fouling, WallConductivity: float64(kw),
		Bond: in.Process.Bond, OutsideFilm: h, OutsideFouling: in.Air.Fouling,
		AreaRatio: areas.Ratio(), SurfaceEfficiency: t.Eta,
	})
	air := exchanger.Stream{In: float64(in.Air.In), Capacity: flux * face * t.Gas.HeatCapacity}
	t.Duty = t.Bank.Rate(t.Overall, air, process)
	if in.Process.Fluid == Steam {
		t.Condensed = t.Duty.Heat / t.Latent(in)
	}
	return t, nil
}

// GasAt returns the gas at a temperature [C].
func (in *Input) GasAt(celsius float64) (fluid.Properties, error) {
	if in.Air.OwnGas {
		return in.Air.Gas, nil
	}
	p, err := fluid.PressureAtAltitude(float64(in.Air.Altitude))
	if err != nil {
		return fluid.Properties{}, err
	}
	w, err := fluid.HumidityRatio(float64(in.Air.In)+zeroCelsius, p, in.Air.Humidity)
	if err != nil {
		return fluid.Properties{}, err
	}
	if celsius < float64(in.Air.In) {
		// Cooled below its dew point air holds no more than this; the rest is water, and a remark.
		most, err := fluid.HumidityRatio(celsius+zeroCelsius, p, 1)
		if err != nil {
			return fluid.Properties{}, err
		}
		w = min(w, most)
	}
	return fluid.MoistAir(celsius+zeroCelsius, p, w)
}

// Wets reports whether air of the inlet drops water on metal of this temperature [C].
func (in *Input) Wets(metal float64) bool {
	if in.Air.OwnGas || metal >= float64(in.Air.In) {
		return false
	}
	p, err := fluid.PressureAtAltitude(float64(in.Air.Altitude))
	if err != nil {
		return false // settle has said so
	}
	carried, err1 := fluid.HumidityRatio(float64(in.Air.In)+zeroCelsius, p, in.Air.Humidity)
	most, err2 := fluid.HumidityRatio(metal+zeroCelsius, p, 1)
	return err1 == nil && err2 == nil && carried > most
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
