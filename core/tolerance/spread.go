package tolerance

import (
	"math"
	"slices"
)

// Draws are made where nobody says otherwise: shares are known to a third of a hundredth then. A part of them is some ten milliseconds' work.
const (
	Draws = 20_000
	Part  = 100
)

// Width is how wide a measure comes out [SI].
type Width struct {
	Known          bool // there is such a figure in every draw that could be rated
	Low, Mid, High float64
}

// Told is what draws say together.
type Told struct {
	Draws    int // of them
	Unrated  int // could not be rated
	Widths   [measures]Width
	MeetDuty int // of those rated reach the duty wanted
	MeetDrop int // stay within the drop allowed
	MeetBoth int
}

// ends are the shares [-] of draws below Low and above High.
const ends = 0.05

// Tell tells what outcomes come to: of each measure the middle, and the ends that a twentieth of the draws pass.
//
// Valid: outcomes of Draw; at least one.
// Source: order statistics.
func (b *Bench) Tell(outcomes []Outcome) Told {
	t := Told{Draws: len(outcomes)}
	for i := range outcomes {
		o := &outcomes[i]
		if math.IsNaN(o[duty]) {
			t.Unrated++
			continue
		}
		enough, low := o[duty] >= b.Wanted, o[Drop] <= b.Allows
		t.MeetDuty += count(enough)
		t.MeetDrop += count(low)
		t.MeetBoth += count(enough && low)
	}
	list := make([]float64, 0, len(outcomes))
	for m := range Measures {
		list = list[:0]
		for i := range outcomes {
			if x := outcomes[i][m]; !math.IsNaN(x) {
				list = append(list, x)
			}
		}
		if known := len(outcomes) - t.Unrated; len(list) == 0 || m != area && m != mass && len(list) < known {
			continue
		}
		slices.Sort(list)
		at := func(share float64) float64 { return list[int(math.Round(share*float64(len(list)-1)))] }
		t.Widths[m] = Width{true, at(ends), at(0.5), at(1 - ends)}
	}
	return t
}

func count(is bool) int {
	if is {
		return 1
	}
	return 0
}
