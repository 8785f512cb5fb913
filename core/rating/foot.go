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
	other, footed := in.otherPitches()
	if !footed || !t.HasDrop() {
		return 0, false
	}
	crossing := airside.Cross(other, t.Flow)
	return airside.DropMethods[t.Drop].Compute(&crossing).Total, true
}

// otherPitches returns the tubes as the air sees them with the root counted at the other place; ok is false where there is none.
func (in *Input) otherPitches() (bank airside.Bank, ok bool) {
	if in.Tube.Fin.Type.FootLayers() == 0 {
		return bank, false
	}
	other := *in
	other.Tube.Fin.Root = tube.FromFoot
	if in.Tube.Fin.Root == tube.FromFoot {
		other.Tube.Fin.Root = tube.FromTube
	}
	return other.Pitches(), true
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
