package shop

import (
	"iter"
	"math"

	"finwright/core/units"
)

// Step is one thing that happens to the strip of an order.
type Step struct {
	Kind   StepKind
	Strip  units.Length // taken from the coils, or stranded
	Joints int          // made within the tube
	Coils  int          // begun
}

// StepKind is what happens.
type StepKind string

// Kinds of step.
const (
	FirstOffTube StepKind = "first_off"
	GoodTube     StepKind = "good"
	RejectedTube StepKind = "rejected"
	Stranded     StepKind = "stranded" // too little left on the coil for a tube
)

// Winding is the strip and the tubes of an order, coil by coil.
type Winding struct {
	Strip    Strip
	Coil     Filled
	Losses   Losses
	Joints   int          // allowed on one tube
	Apart    units.Length // of strip, between two joints
	Good     int
	FirstOff int
	Rejected int // expected, rounded up
}

// Made returns the tubes that are wound.
func (w *Winding) Made() int { return w.Good + w.FirstOff + w.Rejected }

// Usable returns the strip of one coil less the losses at its two ends.
func (w *Winding) Usable() units.Length {
	return w.Coil.Length - w.Losses.CoilStart - w.Losses.CoilEnd
}

// fresh returns what a coil gives when it is joined on within a tube.
func (w *Winding) fresh() units.Length { return w.Usable() - w.Losses.Joint }

// joints returns how many joints a tube needs that begins with so much strip on the coil.
func (w *Winding) joints(left units.Length) int {
	need := w.Strip.PerTube()
	if left >= need*(1-slack) {
		return 0
	}
	return int(math.Ceil(float64((need-left)/w.fresh()) - slack))
}

// mayJoin reports whether so many joints keep the joint rule. Two joints in one
// tube stand one whole coil apart.
func (w *Winding) mayJoin(n int) bool {
	return n == 0 || n <= w.Joints && (n == 1 || w.fresh() >= w.Apart*(1-slack))
}

// Possible reports whether a tube that begins on a fresh coil can be wound.
func (w *Winding) Possible() bool {
	return w.Usable() > 0 && w.fresh() > 0 && w.mayJoin(w.joints(w.Usable()))
}

// Steps runs the order: first-off tubes, then good ones with the rejected
// spread evenly among them. A coil that cannot serve the next tube within the
// joint rule is taken off and its rest is stranded.
//
// Valid: Possible.
func (w *Winding) Steps() iter.Seq[Step] {
	return func(yield func(Step) bool) {
		need, left, coils := w.Strip.PerTube(), w.Usable(), 1
		for i := range w.Made() {
			n := w.joints(left)
			if !w.mayJoin(n) {
				if !yield(Step{Kind: Stranded, Strip: left}) {
					return
				}
				left, coils = w.Usable(), 1
				n = w.joints(left)
			}
			left += units.Length(n)*w.fresh() - need
			if !yield(Step{Kind: w.kind(i), Strip: need, Joints: n, Coils: coils + n}) {
				return
			}
			coils = 0
		}
	}
}

// kind says which tube the i-th is.
func (w *Winding) kind(i int) StepKind {
	if i < w.FirstOff {
		return FirstOffTube
	}
	i -= w.FirstOff
	if run := w.Good + w.Rejected; (i+1)*w.Rejected/run > i*w.Rejected/run {
		return RejectedTube
	}
	return GoodTube
}

// TubesPerCoil returns how many tubes the usable strip of a coil winds [-]; need not be whole.
func (w *Winding) TubesPerCoil() float64 { return float64(w.Usable() / w.Strip.PerTube()) }

// WholeTubes returns how many tubes a coil serves without a joint, and the strip
// that is then stranded.
//
// Valid: any.
func (w *Winding) WholeTubes() (tubes int, stranded units.Length) {
	tubes = int(math.Floor(w.TubesPerCoil() + slack))
	return tubes, max(0, w.Usable()-units.Length(tubes)*w.Strip.PerTube())
}

// StrandlessCoil returns the coil length that serves whole tubes and strands
// nothing: the longest that the line takes; ok is false if none serves a tube.
func (w *Winding) StrandlessCoil() (length units.Length, ok bool) {
	tubes, _ := w.WholeTubes()
	return units.Length(tubes)*w.Strip.PerTube() + w.Losses.CoilStart + w.Losses.CoilEnd, tubes > 0
}

// Ledger is where the strip of an order goes.
type Ledger struct {
	Coils     int
	Bought    units.Length
	OnGood    units.Length // tubes that ship
	RunDown   units.Length // of tubes that ship
	FirstOff  units.Length
	Rejected  units.Length
	CoilEnds  units.Length
	Joints    units.Length
	Stranded  units.Length
	Remainder units.Length // on the last coil, back to stock
	Jointed   int          // joints made
	Changes   int          // coils put on after the first
}

// Scrap returns all strip that neither ships nor goes back to stock.
func (l *Ledger) Scrap() units.Length {
	return l.RunDown + l.FirstOff + l.Rejected + l.CoilEnds + l.Joints + l.Stranded
}

// JointsPerTube returns the mean number of joints on a tube [-].
//
// Valid: tubes made > 0.
func (l *Ledger) JointsPerTube(made int) float64 { return float64(l.Jointed) / float64(made) }

// Account adds up the steps. What is left on the last coil is its length less
// what was taken since it was put on.
func (w *Winding) Account() Ledger {
	var l Ledger
	for s := range w.Steps() {
		l.Coils += s.Coils
		l.Jointed += s.Joints
		switch s.Kind {
		case GoodTube:
			l.OnGood += w.Strip.Kept
			l.RunDown += w.Strip.Lost
		case FirstOffTube:
			l.FirstOff += s.Strip
		case RejectedTube:
			l.Rejected += s.Strip
		case Stranded:
			l.Stranded += s.Strip
		}
		l.Remainder += fromCoils(w, s)
	}
	l.Remainder += w.Losses.CoilEnd // the last coil is not wound to its end
	l.Changes = l.Coils - 1
	l.Bought = w.Coil.Length * units.Length(l.Coils)
	l.CoilEnds = w.Losses.CoilStart*units.Length(l.Coils) + w.Losses.CoilEnd*units.Length(l.Changes)
	l.Joints = w.Losses.Joint * units.Length(l.Jointed)
	return l
}

// fromCoils returns what a step adds to the strip on the coil in work.
func fromCoils(w *Winding, s Step) units.Length {
	return units.Length(s.Coils-s.Joints)*w.Usable() + units.Length(s.Joints)*w.fresh() - s.Strip
}
