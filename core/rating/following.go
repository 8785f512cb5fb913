package rating

import (
	"math"

	"finwright/core/airside"
)

// following lets a design whose geometry is set follow what k holds of gas and stream, and settles it: the face velocity [m/s]
// and the flow inside [kg/s] are found at which drop, power, outlet or duty are those held. It leaves alone what is varied. Each
// round begins with start, so that the answer does not hang on the rounds before. ok is false where nothing between the ends
// of velocity or flow does it; hindered is what keeps a bank that was asked from an answer.
//
// Source: one root within another, each on logarithms: drop, power, fall and duty are nearly powers of velocity and flow.
func (s *settling) following(k *Kept, in *Input, varied string, start means, tolerance float64) (t Thermal, ok bool, hindered *Hindrance) {
	if v := in.Air.Velocity; k.holds.Air == HoldMass && varied != "face_velocity" && (v < LeastVelocity || v > MostVelocity) {
		return t, false, nil // nobody could enter it
	}
	stream, air := k.stream(in, varied), k.air(s, in, varied)
	if stream.measure != nil || air.measure != nil {
		tolerance = fine
	}
	settle := func() bool {
		t, hindered = s.from(in, start, tolerance)
		return hindered == nil
	}
	inside := func() bool {
		if stream.measure == nil {
			return settle()
		}
		return rising(k.inside, LeastFlow, MostFlow, stream.power, func(flow float64) (float64, bool) {
			in.Process.Flow = flow
			if !settle() {
				return 0, false
			}
			return stream.measure(&t), true
		})
	}
	if air.measure == nil {
		ok = inside()
		return t, ok, hindered
	}
	ok = rising(k.velocity, LeastVelocity, MostVelocity, air.power, func(v float64) (float64, bool) {
		in.Air.Velocity = v
		if !inside() {
			return 0, false
		}
		return air.measure(&t), true
	})
	return t, ok, hindered
}

// goal says how far a bank is from what it holds [-], 1 where it is held; it rises with what follows, about as this power of it.
// It has no measure where nothing has to be found.
type goal struct {
	measure func(t *Thermal) float64
	power   float64
}

// stream is what the stream inside holds by its flow.
func (k *Kept) stream(in *Input, varied string) goal {
	switch {
	case !k.finds(varied):
		return goal{}
	case k.holds.Process == HoldDuty:
		return goal{func(t *Thermal) float64 { return math.Abs(t.Duty.Heat) / k.duty }, 0.3}
	}
	inlet := float64(in.Process.In)
	return goal{func(t *Thermal) float64 { return (inlet - k.out) / (inlet - t.Duty.ProcessOut) }, 0.7}
}

// air is what the gas holds by its velocity.
func (k *Kept) air(s *settling, in *Input, varied string) goal {
	if varied == "face_velocity" {
		return goal{}
	}
	used := func(t *Thermal) { t.UsedDrop.Answer = airside.DropMethods[t.Drop].Compute(s.cross(t)) }
	switch k.holds.Air {
	case HoldDrop:
		return goal{func(t *Thermal) float64 {
			used(t)
			return in.DropJudged(t) / k.drop
		}, dropPower}
	case HoldPower:
		return goal{func(t *Thermal) float64 {
			used(t)
			return t.Draught(in).Power / k.power
		}, dropPower + 1}
	}
	return goal{}
}

// dropPower is about that of the velocity with which a drop goes.
const dropPower = 1.7

// breeze gives a stream to a design whose geometry is set: that of near, a bank close by, at the velocity with which the design
// follows what k holds of the gas. ok is false where none does.
//
// Source: as following, in the properties of near.
func (k *Kept) breeze(in *Input, near, stream *Thermal) (ok bool) {
	at := func(v float64) float64 { return near.Flow.FaceMassVelocity * (v / k.velocity) }
	if k.holds.Air != HoldDrop && k.holds.Air != HoldPower {
		stream.Flow.FaceMassVelocity = at(in.Air.Velocity)
		return true
	}
	bank := in.Pitches()
	other, footed := in.otherPitches()
	face := in.face()
	drop := func(b airside.Bank) airside.Drop {
		crossing := airside.Cross(b, stream.Flow)
		return airside.DropMethods[near.Drop].Compute(&crossing)
	}
	power := dropPower
	if k.holds.Air == HoldPower {
		power++
	}
	return rising(k.velocity, LeastVelocity, MostVelocity, power, func(v float64) (float64, bool) {
		in.Air.Velocity, stream.Flow.FaceMassVelocity = v, at(v)
		d := drop(bank)
		if k.holds.Air == HoldPower {
			return in.draught(bank, stream.Flow.FaceMassVelocity, d, face, k.inlet, k.outlet).Power / k.power, true
		}
		if footed {
			d.Total = max(d.Total, drop(other).Total)
		}
		return d.Total / k.drop, true
	})
}

const (
	held      = 1e-8  // [-] how near to what is held is held
	resolved  = 1e-12 // [-] of x, from which on rounding decides
	stride    = 0.2   // [-] of the logarithm of x
	mostHolds = 120   // rounds
)

// rising looks between low and high for the x at which f, which rises with it about as a power of it, is 1, beginning with start.
// It goes in strides, and ends where f turns: an outlet can be held by a turbulent flow and by a far smaller laminar one, and a
// curve must not go from one to the other. f is asked there last. ok is false where 1 is not reached, or f has no answer on the way.
func rising(start, low, high, power float64, f func(x float64) (float64, bool)) (ok bool) {
	from, to := math.Log(low), math.Log(high)
	x, slope := min(max(math.Log(start), from), to), power
	var shut [2]bool // whether the ends have been asked
	var lastX, lastY float64
	for round := range mostHolds {
		y, ok := f(math.Exp(x))
		if y = math.Log(y); !ok || math.IsNaN(y) {
			return false
		}
		switch {
		case math.Abs(y) <= held:
			return true
		case to-from <= resolved:
			return math.Abs(y) <= math.Sqrt(held) // what settles no closer
		case y < 0 && x >= to, y > 0 && x <= from:
			return false // it lies beyond the end
		}
		switch rise := (y - lastY) / (x - lastX); {
		case round > 0 && rise > 0:
			slope = rise
		case round > 0 && math.Abs(y) > math.Sqrt(held):
			return false // it turns
		}
		lastX, lastY = x, y
		if y < 0 {
			from, shut[0] = x, true
		} else {
			to, shut[1] = x, true
		}
		step := min(max(-y/slope, -stride), stride)
		x = within(x+step, from, to, shut)
	}
	return false
}

// within keeps a step in its bracket: at an end that was not asked yet, else half-way.
func within(x, from, to float64, shut [2]bool) float64 {
	switch {
	case x > from && x < to:
		return x
	case x >= to && !shut[1]:
		return to
	case x <= from && !shut[0]:
		return from
	}
	return from + (to-from)/2
}
