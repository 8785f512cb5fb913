package rating

import (
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
	InsideLoss   *inside.Drop      // nil where the stream condenses
	Vapour       inside.Condensing // where it does
	OutsideFilm  float64           // in force [W/(m2 K)]
	Overall      exchanger.Overall
	Duty         exchanger.Duty
	Bank         exchanger.Bank
	Eta          float64 // surface efficiency [-]
	TipRatio     float64 // of the tip's difference to the air over the root's [-]
	FaceFlow     float64 // [m3/s] at the inlet
	Condensed    float64 // [kg/s]; 0 where nothing condenses
	Wet          bool    // the coldest metal is below the dew point of the gas
	Joint        Joint
	finEta       float64 // of the fins alone [-]
	state        means
	Rounds       int // that it took to settle, of MostRounds at most
}

// settling is a bank while it settles: what no round changes is taken once, and what a round needs room for is kept.
type settling struct {
	in      *Input
	gas     gas
	pitches airside.Bank
	bank    exchanger.Bank
	path    exchanger.Path // all but the films, the surface efficiency and the wall's conductivity
	disc    fin.Fin        // all but its conductivity
	areas   tube.Areas
	stream  stream
	pair    airside.Pair
	at      means
	air     exchanger.Stream // of the last round
	process exchanger.Stream
	warmth  warmth // capacity of the stream inside over its mean temperature

	crossing airside.Crossing // of the stream that was asked of last: here, so that it is not made anew

	hindered *Hindrance // the end of a range that served the last round
}

// begin takes what no round changes; it may be called again for another bank.
func (s *settling) begin(in *Input) *Hindrance {
	var err error
	if s.gas, err = in.gas(); err != nil {
		return beyond(GasBeyond, err)
	}
	s.in, s.pair, s.pitches, s.areas = in, in.Pair(), in.Pitches(), in.Tube.Areas()
	s.warmth = warmth{}
	s.disc = Disc(&in.Tube, 1)
	var hindered *Hindrance
	if s.stream, hindered = in.stream(); hindered != nil {
		return hindered
	}
	s.bank = exchanger.Bank{
		Arrangement: exchanger.Arrangement{Rows: in.Bank.Rows, Passes: in.Bank.Passes},
		TubesPerRow: in.Bank.TubesPerRow, TransversePitch: s.pitches.TransversePitch,
		FinnedLength: float64(in.Tube.FinnedLength()), OD: float64(in.Tube.OD),
	}
	s.path = exchanger.Path{
		OD: float64(in.Tube.OD), ID: float64(in.Tube.InsideOD()), InsideFouling: in.Process.Fouling,
		Bond: in.Bond(), OutsideFouling: in.Air.Fouling, AreaRatio: s.areas.Ratio(),
	}
	return nil
}

// from begins with a bank and settles it, first with its joint closed.
func (s *settling) from(in *Input, start means, tolerance float64) (Thermal, *Hindrance) {
	if hindered := s.begin(in); hindered != nil {
		return Thermal{}, hindered
	}
	t, hindered := s.settle(start, tolerance)
	if hindered != nil {
		return t, hindered
	}
	return s.loosen(t, tolerance)
}

// evaluate asks all correlations of a bank that has settled.
func (s *settling) evaluate(t *Thermal) {
	crossing := s.cross(t)
	t.Films = airside.Evaluate(airside.FilmMethods, crossing)
	t.Drops = airside.Evaluate(airside.DropMethods, crossing)
	t.UsedFilm = t.Films[t.Film]
	if t.HasDrop() {
		t.UsedDrop = t.Drops[t.Drop]
	}
}

// shorten asks the correlations in use alone, and leaves the lists of all empty.
func (s *settling) shorten(t *Thermal) {
	crossing := s.cross(t)
	t.UsedFilm = airside.Evaluate(airside.FilmMethods[t.Film:t.Film+1], crossing)[0]
	if t.HasDrop() {
		t.UsedDrop = airside.Evaluate(airside.DropMethods[t.Drop:t.Drop+1], crossing)[0]
	}
}
