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
	Rejected int            // expected, rounded up
	Spent    bool           // what is left on the last coil that is bought is scrap, not for another order
	Hand     []DrawnCoil    // coils on hand, taken before any are bought
	Stay     int            // coils on hand that would serve, too, and save no strip
	Placed   bool           // joints stand only at Places
	Places   []Interval     // of a tube's strip, as wound; none: joints stand nowhere
	Restart  units.Duration // of the weld at each joint
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
	switch {
	case w.Usable() <= 0 || w.Fresh() <= 0:
		return false
	case w.Placed:
		one := w.begin(len(w.Hand), 1)
		return one.tubes == 1
	}
	return w.joined(1) <= w.allowed()
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

// coils returns how many coils are begun for each tube, in the order of winding, and how many of them within it: all but the first
// of a run.
//
// Valid: Possible, one tube or more.
func (w *Winding) coils() iter.Seq2[int, int] {
	return func(yield func(begun, joined int) bool) {
		left := w.Made()
		own, again := w.runs(left)
		for n := 0; left > 0; n++ {
			r := again
			if n < len(own) {
				r = own[n]
			}
			tubes := min(left, r.tubes)
			for i := range tubes {
				joined := r.joined(i+1) - r.joined(i)
				begun := joined
				if i == 0 {
					begun++
				}
				if !yield(begun, joined) {
					return
				}
			}
			left -= tubes
		}
	}
}
