package exchanger

import (
	"math"

	"finwright/core/message"
	"finwright/core/numeric"
)

// TubesForDuty returns the least number of tubes in a row whose heat reaches a
// duty [W], or why no number does. heat returns the duty [W] of so many tubes;
// it must not fall as tubes are added.
//
// Valid: duty > 0, most >= 1.
// Source: bisection on whole numbers.
func TubesForDuty(duty float64, most int, heat func(tubesPerRow int) float64) (tubes int, absent message.Message) {
	low, high := 0, 1 // heat(low) < duty
	for heat(high) < duty {
		if high == most {
			return 0, message.New("exchanger.too_many", "most", most)
		}
		low, high = high, min(2*high, most)
	}
	for high-low > 1 {
		if middle := (low + high) / 2; heat(middle) < duty {
			low = middle
		} else {
			high = middle
		}
	}
	return high, message.Message{}
}

// FaceVelocity returns the velocity [m/s] between low and high at which a
// pressure drop [Pa] is reached, or why none there does. drop returns the
// pressure drop [Pa] at a velocity [m/s]; it must rise with it.
//
// Valid: 0 < low < high, target > 0.
// Source: bracketing on the logarithm, since drop is nearly a power of velocity.
func FaceVelocity(target, low, high float64, drop func(velocity float64) float64) (velocity float64, absent message.Message) {
	over := func(log float64) float64 { return math.Log(drop(math.Exp(log)) / target) }
	switch {
	case drop(low) > target:
		return 0, message.New("exchanger.drop_above")
	case drop(high) < target:
		return 0, message.New("exchanger.drop_below")
	}
	log, err := numeric.Root(over, math.Log(low), math.Log(high))
	if err != nil {
		return 0, message.New("exchanger.no_velocity")
	}
	return math.Exp(log), message.Message{}
}
