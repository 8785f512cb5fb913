package exchanger

import (
	"math"

	"finwright/core/message"
)

// TubesForDuty returns the least number of tubes in a row whose heat reaches a
// duty [W], or why no number does. heat returns the duty [W] of so many tubes, not ok where they have no answer;
// it must not fall as tubes are added. guess is where it begins, and no part of the answer. answered is false where no answer stands
// behind a no: the caller knows why.
//
// Valid: duty > 0, most >= 1.
// Source: strides from the guess that double, then bisection, on whole numbers; tubes without an answer are passed over, and never
// taken for enough.
func TubesForDuty(duty float64, guess, most int, heat func(tubesPerRow int) (watts float64, ok bool)) (tubes int, absent message.Message, answered bool) {
	ok := false
	short := func(n int) bool {
		watts, has := heat(n)
		ok = has
		return !has || watts < duty
	}
	low, high := 0, min(max(guess, 1), most)
	if short(high) {
		for stride := 1; ; stride *= 2 {
			if high == most {
				return 0, message.New("exchanger.too_many", "most", most), ok
			}
			if low, high = high, min(high+stride, most); !short(high) {
				break
			}
		}
	} else {
		for stride := 1; high-stride > 0; stride *= 2 {
			if short(high - stride) {
				low = high - stride
				break
			}
			high -= stride
		}
	}
	for high-low > 1 {
		if middle := (low + high) / 2; short(middle) {
			low = middle
		} else {
			high = middle
		}
	}
	return high, message.Message{}, true
}

// RowsForDuty is TubesForDuty [W] for rows: each is asked, since more rows may carry less where the air slows down for them.
//
// Valid: duty > 0, most >= 1.
// Source: one after the other.
func RowsForDuty(duty float64, most int, heat func(rows int) (watts float64, ok bool)) (rows int, absent message.Message, answered bool) {
	ok := false
	for n := 1; n <= most; n++ {
		var watts float64
		if watts, ok = heat(n); ok && watts >= duty {
			return n, message.Message{}, true
		}
	}
	return 0, message.New("exchanger.too_many", "most", most), ok
}

// FaceVelocity returns the velocity [m/s] between low and high at which a
// pressure drop [Pa] is reached, to 1e-9 of the drop, or why none there does. drop returns the
// pressure drop [Pa] at a velocity [m/s], not ok where there is no answer; it must rise with it. At the velocity known there
// is one. answered is false where a no is only that of the last velocity that has an answer: the caller knows why.
//
// Valid: 0 < low <= known <= high, target > 0.
// Source: secants from the velocity known, within a bracket, on logarithms, since drop is nearly a power of velocity.
func FaceVelocity(target, low, known, high float64, drop func(velocity float64) (pascals float64, ok bool)) (velocity float64, absent message.Message, answered bool) {
	from, to := end{math.Log(low), true}, end{math.Log(high), true}
	least, most := from.log, to.log
	x, power := math.Log(known), usualPower
	lastX, lastY := x, 0.0
	for round := range closings {
		pascals, ok := drop(math.Exp(x))
		switch {
		case !ok && round == 0:
			return 0, message.New("exchanger.no_velocity"), false
		case !ok: // half-way back to the last that has an answer
			if x > lastX {
				to = end{x, false}
			} else {
				from = end{x, false}
			}
			x = lastX + (x-lastX)/2
		default:
			y := math.Log(pascals / target)
			switch {
			case math.Abs(y) <= reached: // and what is left is a straight line
				return math.Exp(x - y/power), message.Message{}, true
			case y > 0 && x <= least:
				return 0, message.New("exchanger.drop_above"), true
			case y < 0 && x >= most:
				return 0, message.New("exchanger.drop_below"), true
			case y > 0:
				to = end{x, true}
			default:
				from = end{x, true}
			}
			if rise := (y - lastY) / (x - lastX); round > 0 && rise > 0 {
				power = rise
			}
			lastX, lastY = x, y
			x = between(x-y/power, from, to, least, most)
		}
		switch left := to.log - from.log; {
		case !from.answers && left <= edge:
			return 0, message.New("exchanger.drop_above"), false
		case !to.answers && left <= edge:
			return 0, message.New("exchanger.drop_below"), false
		}
	}
	return 0, message.New("exchanger.no_velocity"), true
}

// end is one of a bracket: a logarithm, and whether the drop there has an answer.
type end struct {
	log     float64
	answers bool
}

// between keeps a step in its bracket: at an end of the range, which may be asked, else half-way.
func between(x float64, from, to end, least, most float64) float64 {
	switch {
	case x > from.log && x < to.log:
		return x
	case x >= to.log && to.log == most && to.answers:
		return most
	case x <= from.log && from.log == least && from.answers:
		return least
	}
	return from.log + (to.log-from.log)/2
}

const (
	usualPower = 1.8  // of the velocity with which a drop goes
	reached    = 1e-9 // [-] of the drop
	edge       = 1e-6 // [-] of the velocity, within which answers end
	closings   = 100  // rounds
)
