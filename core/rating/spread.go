package rating

// Spread is a rated bank as the correlations in range have it.
type Spread struct {
	Low, High Thermal // settled with the lowest and with the highest film
	Count     int     // films in range; Low and High mean nothing where it is 0
}

// Spread returns what the films in range make of a bank that was rated as t. It is empty where the film is given.
//
// Valid: t of Rate, whose list of films is full.
// Source: the correlations in range, each settled by itself.
func (in *Input) Spread(t *Thermal) Spread {
	var out Spread
	if in.Air.FilmGiven {
		return out
	}
	lowest, highest := -1, -1
	for i, v := range t.Films {
		if !v.InRange {
			continue
		}
		out.Count++
		if lowest < 0 || v.Answer.Coefficient < t.Films[lowest].Answer.Coefficient {
			lowest = i
		}
		if highest < 0 || v.Answer.Coefficient > t.Films[highest].Answer.Coefficient {
			highest = i
		}
	}
	if out.Count == 0 {
		return out
	}
	var s settling
	with := func(i int) (Thermal, bool) {
		if i == t.Film {
			return *t, true
		}
		at := *in
		at.Air.FilmMethod = t.Films[i].ID
		settled, hindered := s.from(&at, t.state, coarse)
		return settled, hindered == nil
	}
	var okLow, okHigh bool
	out.Low, okLow = with(lowest)
	out.High, okHigh = with(highest)
	if !okLow || !okHigh {
		return Spread{}
	}
	return out
}
