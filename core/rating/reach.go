package rating

import (
	"math"

	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/figure"
	"finwright/core/fin"
	"finwright/core/inside"
)

// Reach is what no bank of one tube, pitch, face velocity and number of rows passes, however many such tubes stand in a row, however
// long they are and however the stream goes through them.
type Reach struct {
	Drop       float64 // [Pa] least of the correlation in use; 0: none known
	FacePower  float64 // [W/m2] least of the fan, by the area of the face; 0: none known
	Beyond     bool    // the film or drop correlation in use is out of its range at whatever temperatures
	resistance float64 // [m2 K/W] least, on the bare area, of all but the film inside
	capacity   float64 // [W/(m2 K)] most of the gas, by the area of the face
	b          *Scope
}

// Reach returns it, of drops [Pa] and powers [W/m2]: the film is asked at every state that gas and root can have, and taken for as much
// more as it can rise between two of them; so is the drop, for as much less.
//
//	U A at most: heat that a fin carries rises with its film and its conductivity, and a gap only adds to the joint
//	fan at least: volume at the densest, pressure of friction alone, for a gas that leaves lighter than it came
//
// Valid: an Input that has been checked and differs from that of b in neither stream; its face velocity is its own.
// Source: as named at Scope; monotonic in each part, see TestNoBankPassesItsReach.
func (b *Scope) Reach(in *Input) Reach {
	flux := b.flux * in.Air.Velocity
	pair, pitches, areas := in.Pair(), in.Pitches(), in.Tube.Areas()
	r := Reach{b: b, capacity: flux * b.heat * b.heatSlack, Beyond: b.beyond(in, pair, pitches, flux)}
	film, drop := 0.0, math.Inf(1)
	for i := range b.gasAt {
		for j := 0; j < gasStates; j += rootEvery {
			x := airside.Cross(pitches, b.flow(i, j, flux))
			if !in.Air.FilmGiven {
				film = max(film, airside.FilmMethods[pair.Film].Compute(&x).Coefficient)
			}
			if pair.HasDrop() {
				drop = min(drop, airside.DropMethods[pair.Drop].Compute(&x).Total)
			}
		}
	}
	if film *= b.filmSlack; in.Air.FilmGiven {
		film = float64(in.Air.Film)
	}
	if pair.HasDrop() {
		r.Drop = drop / b.dropSlack
		if fan := &in.Air.Fan; in.Process.In > in.Air.In {
			r.FacePower = exchanger.FanPower(flux/b.dense, r.Drop*(1+fan.Entry), fan.Efficiency) * (1 - rounding)
		}
	}
	met := in.dirty(film)
	eta := fin.SurfaceEfficiency(float64(areas.Fin()), float64(areas.Total()), fin.Solve(Disc(&in.Tube, b.conducts(in, &in.FinMetal)), met).Efficiency)
	od, bore := float64(in.Tube.OD), float64(in.Tube.InsideOD())
	r.resistance = od/bore*in.Process.Fouling + od*math.Log(od/bore)/(2*b.conducts(in, &in.TubeMetal)) + in.Bond() + 1/(met*areas.Ratio()*eta)
	return r
}

// flow is the gas in one state, at a root in another.
func (b *Scope) flow(gas, root int, flux float64) airside.Flow {
	return airside.Flow{
		Properties: b.gasAt[gas], FaceMassVelocity: flux, WallPrandtl: b.gasAt[root].Prandtl(),
		TemperatureRatio: (b.state(gas, gasStates) + zeroCelsius) / (b.state(root, gasStates) + zeroCelsius),
	}
}

// beyond reports whether a limit of the correlations in use is passed to one side both where the gas is coldest and where it is hottest. Of
// all that they limit the Reynolds number alone goes with temperature, one way all along, as viscosity does.
func (b *Scope) beyond(in *Input, pair airside.Pair, pitches airside.Bank, flux float64) bool {
	cold := airside.Cross(pitches, b.flow(0, 0, flux))
	hot := airside.Cross(pitches, b.flow(gasStates-1, gasStates-1, flux))
	var room [2][airside.MostLimits]figure.Limit
	passed := func(limits func(to []figure.Limit, x *airside.Crossing) []figure.Limit) bool {
		here, there := limits(room[0][:0], &cold), limits(room[1][:0], &hot)
		for i := range here {
			if !here[i].In() && !there[i].In() && (here[i].Value > here[i].High) == (there[i].Value > there[i].High) {
				return true
			}
		}
		return false
	}
	return !in.Air.FilmGiven && passed(airside.FilmMethods[pair.Film].Limits) || pair.HasDrop() && passed(airside.DropMethods[pair.Drop].Limits)
}

// Transfer returns the most that a bank of in has of U A [W/K] and carries [W].
//
//	Q <= eps(U A/Cmin, Cmin/Cmax) Cmin dT,  eps in counterflow
//
// No arrangement carries more between two streams than counterflow with the same U A, and that carries more with either capacity.
//
// Valid: an Input of r, but for tubes in a row, length and passes.
// Source: second law; Reach.
func (r *Reach) Transfer(in *Input) (ua, heat float64) {
	b, od := r.b, float64(in.Tube.OD)
	tubes, length := float64(in.Bank.Rows*in.Bank.TubesPerRow), float64(in.Tube.FinnedLength())
	film := b.inside(in)
	ua = math.Pi * od * length * tubes / (r.resistance + od/float64(in.Tube.InsideOD())/film) * (1 + rounding)
	gas, stream := r.capacity*float64(in.TubePitch())*float64(in.Bank.TubesPerRow)*length, math.Inf(1)
	if !b.condenses {
		stream = in.Process.Flow * b.warmth * b.heatSlack
	}
	least, most := min(gas, stream), max(gas, stream)
	return ua, exchanger.Counterflow(ua/least, least/most) * least * (b.high - b.low) * (1 + rounding)
}

// insideAsked is all that the film inside hangs on, but for the stream.
type insideAsked struct{ bore, length, section float64 }

// inside returns the most that the film inside can be [W/(m2 K)]; of condensing steam there is none.
//
// Nusselt numbers rise with the Reynolds and the Prandtl number and with the viscosity ratio. So of each stretch between two states of
// the stream that film is asked which has the largest of all these and of the conductivity at its ends: each of them goes one way
// there, but for the conductivity of water, which bends by less than the slack of a heat capacity.
//
// Source: inside.Convection.
func (b *Scope) inside(in *Input) float64 {
	if b.condenses {
		return math.Inf(1)
	}
	asked := insideAsked{float64(in.Tube.InsideOD()), float64(in.Tube.Length), in.PassSection()}
	if in.Process.Flow/asked.section*asked.bore/b.thick >= inside.TurbulentFrom {
		asked.length = 0 // it hangs on none
	}
	kept := &b.films[asked.place()]
	if kept.insideAsked == asked {
		return kept.film
	}
	most := 0.0
	for i := range streamStates - 1 {
		p, q := &b.streamAt[i], &b.streamAt[i+1]
		thin, k, pr := min(p.Viscosity, q.Viscosity), max(p.Conductivity, q.Conductivity), max(p.Prandtl(), q.Prandtl())
		f := inside.Flow{MassVelocity: in.Process.Flow / asked.section}
		f.Density, f.Viscosity, f.Conductivity, f.HeatCapacity = p.Density, thin, k, pr*k/thin
		if in.thickens() {
			f.WallViscosity = thin * b.thin / max(p.Viscosity, q.Viscosity)
		}
		most = max(most, inside.Convection(inside.Tube{Bore: asked.bore, Length: float64(in.Tube.Length)}, f).Coefficient)
	}
	kept.insideAsked, kept.film = asked, most*b.heatSlack
	return kept.film
}

// filmPlaces is how many films are remembered, each at the place that its question falls on.
const filmPlaces = 1 << 9

// place mixes the digits of a question.
func (a *insideAsked) place() uint64 {
	return (math.Float64bits(a.section)*0x9e3779b97f4a7c15 ^ math.Float64bits(a.length)*0xc2b2ae3d27d4eb4f ^ math.Float64bits(a.bore)*0x165667b19e3779f9) >> (64 - 9)
}
