package exchanger

import (
	"math"

	"finwright/core/message"
	"finwright/core/numeric"
)

// TubesForDuty returns the least number of tubes in a row whose heat reaches a
// duty [W], or why no number does. heat returns the duty [W] of so many tubes, not ok where they have no answer;
// it must not fall as tubes are added. answered is false where no answer stands behind a no: the caller knows why.
//
// Valid: duty > 0, most >= 1.
// Source: bisection on whole numbers; tubes without an answer are passed over, and never taken for enough.
func TubesForDuty(duty float64, most int, heat func(tubesPerRow int) (watts float64, ok bool)) (tubes int, absent message.Message, answered bool) {
	ok := false
	short := func(n int) bool {
		watts, has := heat(n)
		ok = has
		return !has || watts < duty
	}
	low, high := 0, 1
	for short(high) {
		if high == most {
			return 0, message.New("exchanger.too_many", "most", most), ok
		}
		low, high = high, min(2*high, most)
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
// pressure drop [Pa] is reached, or why none there does. drop returns the
// pressure drop [Pa] at a velocity [m/s], not ok where there is no answer; it must rise with it. At the velocity known there
// is one. answered is false where a no is only that of the last velocity that has an answer: the caller knows why.
//
// Valid: 0 < low <= known <= high, target > 0.
// Source: bracketing on the logarithm, since drop is nearly a power of velocity.
func FaceVelocity(target, low, known, high float64, drop func(velocity float64) (pascals float64, ok bool)) (velocity float64, absent message.Message, answered bool) {
	end := func(to float64) (at, pascals float64, whole bool) {
		if p, ok := drop(to); ok {
			return to, p, true
		}
		at = known
		pascals, _ = drop(at)
		for range halvings {
			middle := math.Sqrt(at * to)
			if p, ok := drop(middle); ok {
				at, pascals = middle, p
			} else {
				to = middle
			}
		}
		return at, pascals, false
	}
	low, least, whole := end(low)
	if least > target {
		return 0, message.New("exchanger.drop_above"), whole
	}
	high, most, whole := end(high)
	if most < target {
		return 0, message.New("exchanger.drop_below"), whole
	}
	over := func(log float64) float64 {
		pascals, _ := drop(math.Exp(log))
		return math.Log(pascals / target)
	}
	log, err := numeric.Root(over, math.Log(low), math.Log(high))
	if err != nil {
		return 0, message.New("exchanger.no_velocity"), true
	}
	return math.Exp(log), message.Message{}, true
}

// halvings of what lies between a velocity with an answer and one without.
const halvings = 20
