package making

import (
	"iter"
	"math"
	"sort"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// Winding is the strip and the tubes of an order, coil by coil.
type Winding struct {
	Strip    Strip
	Coil     FilledCoil
	Losses   shop.Losses
	Joints   int          // allowed on one tube
	Apart    units.Length // of strip, between two joints
	Good     int
	FirstOff int
	Rejected int  // expected, rounded up
	Spent    bool // what is left on the last coil is scrap, not for another order
}

// Made returns the tubes that are wound.
func (w *Winding) Made() int { return w.Good + w.FirstOff + w.Rejected }

// Usable returns the strip [m] of one coil less the losses at its two ends.
//
// Valid: any.
// Source: subtraction; losses are the capability's.
func (w *Winding) Usable() units.Length {
	return w.Coil.Length - w.Losses.CoilStart - w.Losses.CoilEnd
}

// Fresh returns what a coil gives [m] when it is joined on within a tube.
//
// Valid: any.
// Source: subtraction.
func (w *Winding) Fresh() units.Length { return w.Usable() - w.Losses.Joint }

// allowed returns the most joints that one tube may carry; two in one tube stand a whole coil apart.
func (w *Winding) allowed() int {
	if w.Joints > 1 && w.Fresh() < w.Apart*(1-shop.Slack) {
		return 1
	}
	return w.Joints
}

// TooLittle says why the coil serves no tube.
func (w *Winding) TooLittle() message.Message {
	if w.Fresh() <= 0 {
		return message.New("shop.why.coil_lost", "coil", message.Of(units.Run, w.Coil.Length))
	}
	return message.New("shop.why.coil", "need", message.Of(units.Run, w.Strip.PerTube()), "coil", message.Of(units.Run, w.Capacity()))
}

// Capacity returns the strip [m] that one tube can have from fresh coils within the joint rule.
//
// Valid: any.
// Source: addition.
func (w *Winding) Capacity() units.Length {
	return w.Usable() + units.Length(w.allowed())*w.Fresh()
}

// joined returns how many coils are joined on while so many tubes are wound, one after
// the other, from a fresh coil on.
func (w *Winding) joined(tubes int) int {
	missing := float64((w.Strip.PerTube()*units.Length(tubes) - w.Usable()) / w.Fresh())
	return int(math.Ceil(min(max(missing*(1-roundOff)-shop.Slack, 0), farTooMany)))
}

// roundOff is the share by which a sum over a million tubes may be rounded; farTooMany
// joints are more than any order has, and fewer than an int holds.
const (
	roundOff   = 1e-15
	farTooMany = 1e12
)

// Possible reports whether a tube that begins on a fresh coil can be wound.
func (w *Winding) Possible() bool {
	return w.Usable() > 0 && w.Fresh() > 0 && w.joined(1) <= w.allowed()
}

// served returns how many tubes, at most so many, are wound from a fresh coil on before
// the rest of a coil cannot serve the next one within the joint rule.
//
// From the first joint on, each tube takes n joints or n + 1, where the strip of a tube is
// between n and n + 1 fresh coils long. So if n joints are allowed and no more, the first tube
// with n + 1 breaks the rule: counted from the first joined tube, it is the first by which more
// than n joints a tube have been made.
//
// Valid: Possible.
// Source: own derivation.
func (w *Winding) served(most int) int {
	allowed := w.allowed()
	whole := sort.Search(most, func(i int) bool { return w.joined(i+1) > 0 }) // without any joint
	first := w.joined(whole + 1)
	return sort.Search(most, func(i int) bool {
		return i >= whole && (first > allowed || w.joined(i+1)-first > allowed*(i-whole))
	})
}

// TubesPerCoil returns how many tubes the usable strip of a coil winds [-]; need not be whole.
//
// Valid: any strip above nought.
// Source: division.
func (w *Winding) TubesPerCoil() float64 { return float64(w.Usable() / w.Strip.PerTube()) }

// WholeTubes returns how many tubes a coil serves without a joint, and the strip [m]
// that is then stranded.
//
// Valid: any.
// Source: division.
func (w *Winding) WholeTubes() (tubes int, stranded units.Length) {
	tubes = int(math.Floor(w.TubesPerCoil() + shop.Slack))
	return tubes, max(0, w.Usable()-units.Length(tubes)*w.Strip.PerTube())
}

// StrandlessCoil returns the coil length [m] that serves whole tubes and strands
// nothing: the longest that the line takes; ok is false if none serves a tube.
//
// Valid: any.
// Source: WholeTubes, taken back.
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
	Left      units.Length // on the last coil, scrap
	Remainder units.Length // on the last coil, back to stock
	Jointed   int          // joints made
	Changes   int          // coils put on after the first
}

// Scrap returns all strip [m] that neither ships nor goes back to stock.
//
// Valid: a ledger of Account.
// Source: addition.
func (l *Ledger) Scrap() units.Length {
	return l.RunDown + l.FirstOff + l.Rejected + l.CoilEnds + l.Joints + l.Stranded + l.Left
}

// JointsPerTube returns the mean number of joints on a tube [-].
//
// Valid: tubes made > 0.
// Source: definition.
func (l *Ledger) JointsPerTube(made int) float64 { return float64(l.Jointed) / float64(made) }

// Account says where the strip [m] goes when first-off, good and rejected tubes are wound
// one after the other. A coil that cannot serve the next tube within the joint rule is
// taken off, its rest is stranded, and winding starts again with a fresh one.
//
// Valid: Possible, one tube or more.
// Source: arithmetic.
func (w *Winding) Account() Ledger {
	made := w.Made()
	run := w.served(made)
	runs := (made + run - 1) / run
	last := made - (runs-1)*run
	full := units.Length(runs - 1)
	l := Ledger{Jointed: (runs-1)*w.joined(run) + w.joined(last)}
	l.Coils = runs + l.Jointed
	l.Changes = l.Coils - 1
	l.OnGood, l.RunDown = w.Strip.Kept*units.Length(w.Good), w.Strip.Lost*units.Length(w.Good)
	l.FirstOff, l.Rejected = w.Strip.PerTube()*units.Length(w.FirstOff), w.Strip.PerTube()*units.Length(w.Rejected)
	l.Stranded = full * w.left(run)
	l.Remainder = w.left(last) + w.Losses.CoilEnd // the last coil is not wound to its end
	if w.Spent {
		l.Left, l.Remainder = l.Remainder, 0
	}
	l.Bought = w.Coil.Length * units.Length(l.Coils)
	l.CoilEnds = w.Losses.CoilStart*units.Length(l.Coils) + w.Losses.CoilEnd*units.Length(l.Changes)
	l.Joints = w.Losses.Joint * units.Length(l.Jointed)
	return l
}

// left returns the strip on the coil in work after so many tubes, wound from a fresh one on.
func (w *Winding) left(tubes int) units.Length {
	return w.Usable() + w.Fresh()*units.Length(w.joined(tubes)) - w.Strip.PerTube()*units.Length(tubes)
}

// coils returns how many coils are begun for each tube, in the order of winding: one if
// the rest before it is stranded, and one with each joint within it.
//
// Valid: Possible, one tube or more.
func (w *Winding) coils() iter.Seq[int] {
	return func(yield func(int) bool) {
		run := w.served(w.Made())
		for i := range w.Made() {
			at := i % run
			begun := w.joined(at+1) - w.joined(at)
			if at == 0 {
				begun++
			}
			if !yield(begun) {
				return
			}
		}
	}
}
