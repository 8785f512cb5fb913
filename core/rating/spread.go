package rating

import (
	"math"

	"finwright/core/airside"
)

// Spread is a rated bank as the correlations in range have it.
type Spread struct {
	Low, High Thermal // settled with the lowest and with the highest film: Low carries the least heat, High the most
	Count     int     // films in range; Low and High mean nothing where it is 0
}

// Spread returns what the films in range make of a bank that was rated as t. It is empty where the film is given.
//
// The lowest film is the one that stays the lowest in the bank that it makes: correlations go with temperatures in different
// ways, and two that are close can change places between one bank and the next.
//
// Valid: t of Rate, whose list of films is full.
// Source: the correlations in range, each settled by itself.
func (in *Input) Spread(t *Thermal) Spread {
	var out Spread
	if in.Air.FilmGiven {
		return out
	}
	for _, v := range t.Films {
		if v.InRange {
			out.Count++
		}
	}
	if out.Count == 0 {
		return out
	}
	var s settling
	var okLow, okHigh bool
	out.Low, okLow = s.last(in, t, -1)
	out.High, okHigh = s.last(in, t, 1)
	if !okLow || !okHigh {
		return Spread{}
	}
	return out
}

// last returns the bank settled with the lowest (way -1) or highest (way 1) of the films in range of t; ok is false where
// something hinders. A film that another passes in its own bank gives way to it, so that the heat goes one way from bank to bank.
func (s *settling) last(in *Input, t *Thermal, way float64) (bank Thermal, ok bool) {
	film := furthest(t.Films, -1, func(i int) float64 { return way * t.Films[i].Answer.Coefficient })
	for range t.Films {
		if film == t.Film {
			return *t, true
		}
		at := *in
		at.Air.FilmMethod = t.Films[film].ID
		var hindered *Hindrance
		if bank, hindered = s.from(&at, t.state, coarse); hindered != nil {
			return bank, false
		}
		crossing := s.cross(&bank)
		passes := furthest(t.Films, film, func(i int) float64 { return way * airside.FilmMethods[i].Compute(crossing).Coefficient })
		if passes == film {
			break
		}
		film = passes
	}
	return bank, true
}

// furthest returns the place of the film in range that has most of something, or film where none has more; -1 is none.
func furthest(films []airside.Estimate[airside.Film], film int, of func(i int) float64) int {
	most := math.Inf(-1)
	if film >= 0 {
		most = of(film)
	}
	for i, v := range films {
		if !v.InRange || i == film {
			continue
		}
		if h := of(i); h > most {
			film, most = i, h
		}
	}
	return film
}
