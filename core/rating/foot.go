package rating

import (
	"finwright/core/airside"
	"finwright/core/tube"
)

// DropOnOther returns the pressure drop [Pa] of a rated bank with the root counted at the other of bare tube and outside of the
// foot: free area, tube diameter, fin height and areas all count from there, while the fin OD stays. ok is false where there is no
// foot, or no drop.
//
// Valid: t of the same bank.
// Source: the correlation in use, in the stream of t.
func (in *Input) DropOnOther(t *Thermal) (pascal float64, ok bool) {
	if in.Tube.Fin.Type.FootLayers() == 0 || !t.HasDrop() {
		return 0, false
	}
	other := *in
	other.Tube.Fin.Root = tube.FromFoot
	if in.Tube.Fin.Root == tube.FromFoot {
		other.Tube.Fin.Root = tube.FromTube
	}
	return airside.DropMethods[t.Drop].Compute(other.Pitches(), t.Flow).Total, true
}

// DropJudged returns the larger of the pressure drops [Pa] with the root counted at the bare tube and over the foot: which of
// them the correlation's tests had is not known.
//
// Valid: a bank that has a drop.
// Source: DropOnOther.
func (in *Input) DropJudged(t *Thermal) float64 {
	drop := t.UsedDrop.Answer.Total
	if other, ok := in.DropOnOther(t); ok {
		drop = max(drop, other)
	}
	return drop
}
