package lesson

import "finwright/core/message"

// How near a guess came. None of them fails.
const (
	Hit  = "hit"
	Near = "near" // in the band beside
	Far  = "far"
)

// Score is how a guess came out, and what is true.
type Score struct {
	How   string
	Place int // of what is true among the choices
	Told  message.Message
}

// Choices is how many there are.
func (g *Guess) Choices() int {
	if len(g.Words) > 0 {
		return len(g.Words)
	}
	return len(g.Bands) + 1
}

// place is the band that a number [SI] lies in, or that of a word.
func (g *Guess) place(number float64) int {
	if len(g.Words) > 0 {
		return int(number)
	}
	at := 0
	for at < len(g.Bands) && number >= g.Bands[at] {
		at++
	}
	return at
}

// Score scores a guess, the place of a choice, on the tube that the exercise starts with.
func (x *Exercise) Score(start *Reading, guess int) Score {
	number, told := x.Guess.Truth(start)
	s := Score{How: Far, Place: x.Guess.place(number), Told: message.New(x.text("told"), told...)}
	switch off := guess - s.Place; {
	case off == 0:
		s.How = Hit
	case len(x.Guess.Words) == 0 && (off == 1 || off == -1):
		s.How = Near
	}
	return s
}
