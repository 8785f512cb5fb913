package making

import (
	"iter"

	"finwright/core/shop"
	"finwright/core/units"
)

// event is one activity of the line, in the order of the work.
type event struct {
	activity Activity
	time     units.Duration // productive
	tubes    int            // finished with it
}

// events runs an order: set-up with the first coil, then tube by tube with racks
// and coils changed when they run out, and the check after the first-off tubes. A
// tube that must be joined waits for its coil.
func events(l *shop.Line, w *Winding, tubeTime TubeTime, setUp units.Duration) iter.Seq[event] {
	return func(yield func(event) bool) {
		if setUp > 0 && !yield(event{SettingUp, setUp, 0}) {
			return
		}
		tubes, coils := 0, 0
		for begun, joined := range w.coils() {
			if tubes%l.Racks.Tubes == 0 && !yield(event{RackChange, l.Racks.Change, 0}) {
				return
			}
			for range begun {
				coils++
				if coils > 1 && !yield(event{CoilChange, w.Coil.Change, 0}) {
					return
				}
			}
			if restarts := units.Duration(joined) * w.Restart; restarts > 0 && !yield(event{CoilChange, restarts, 0}) {
				return
			}
			tubes++
			if !yield(event{Finning, tubeTime.Total(), 1}) {
				return
			}
			if tubes == w.FirstOff && setUp > 0 && !yield(event{Checking, l.Times.Check, 0}) {
				return
			}
		}
	}
}

// Block is one bar of a schedule. Times count from the start of its shift.
type Block struct {
	Shift    int
	Activity Activity
	From, To units.Duration // by the clock
	Tubes    int            // finished in it
}

// Schedule is an order over shifts.
type Schedule struct {
	Blocks []Block
	Shifts int  // begun
	More   bool // the order goes on after what is listed
}

// A schedule lists one tube after the other, so it ends after so many events or blocks.
// Twelve shifts hold fewer events, unless a tube takes seconds; more blocks could not be
// seen apart in a picture.
const (
	mostEvents = 20000
	mostBlocks = 1000
)

// ScheduleOf lays the order over shifts, at most so many. The clock runs slower than
// the work by the crew's efficiency; neighbours of one activity are one block.
//
// Valid: shifts > 0.
// Source: addition.
func ScheduleOf(c *shop.Capability, l *shop.Line, w *Winding, tubeTime TubeTime, setUp units.Duration, shifts int) Schedule {
	var s Schedule
	length := c.Crew.Shift
	var at units.Duration
	n := 0
order:
	for e := range events(l, w, tubeTime, setUp) {
		if n++; n > mostEvents {
			s.More = true
			break
		}
		left := e.time / units.Duration(c.Crew.Efficiency)
		for left > 0 {
			if len(s.Blocks) > mostBlocks {
				s.More = true
				break order
			}
			if at >= length*(1-shop.Slack) {
				s.Shifts, at = s.Shifts+1, 0
			}
			if s.Shifts >= shifts {
				s.More = true
				return s
			}
			part := min(left, length-at)
			left -= part
			if left < length*shop.Slack {
				left = 0
			}
			s.add(Block{s.Shifts, e.activity, at, at + part, e.tubes}, left == 0)
			at += part
		}
	}
	s.Shifts++
	return s
}

// add joins a block to the last one if it goes on with the same in the same shift.
func (s *Schedule) add(b Block, finished bool) {
	if !finished {
		b.Tubes = 0
	}
	if n := len(s.Blocks); n > 0 && s.Blocks[n-1].Shift == b.Shift && s.Blocks[n-1].Activity == b.Activity {
		s.Blocks[n-1].To = b.To
		s.Blocks[n-1].Tubes += b.Tubes
		return
	}
	s.Blocks = append(s.Blocks, b)
}
