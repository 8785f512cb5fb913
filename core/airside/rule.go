package airside

// Pair is a film and a pressure drop correlation: their places in FilmMethods and DropMethods.
type Pair struct {
	Film int
	Drop int // NoDrop where none is known
}

// NoDrop stands in a Pair for a pressure drop that nothing here computes.
const NoDrop = -1

// HasDrop reports whether the pair has a pressure drop.
func (p Pair) HasDrop() bool { return p.Drop != NoDrop }

// Rule returns the correlations for a bank of which none is named. It looks at choices
// alone, never at a number, so that none takes over from another while a dimension is
// pulled; outside its range a correlation goes on and is marked.
//
// Film and drop come from one work, so that they are of the same tubes: wound and
// extruded fins ESDU 86022, whose data are the widest; welded fins Weierman, whose data
// are theirs; rows in line Ganguli, Tung and Taborek, who alone had such rows. A pressure
// drop of rows in line could not be confirmed from a text and is absent.
//
// Source: engineering judgement.
func Rule(layout Layout, welded bool) Pair {
	switch {
	case layout == InLine:
		return Pair{Place(FilmMethods, ganguli1985.ID), NoDrop}
	case welded:
		return Pair{Place(FilmMethods, weierman1976.ID), Place(DropMethods, weierman1976Drop.ID)}
	}
	return Pair{Place(FilmMethods, esdu86022.ID), Place(DropMethods, esdu86022Drop.ID)}
}

// Place returns where a method of this ID stands in the list; it panics where none does.
func Place[A Answer](methods []Method[A], id string) int {
	for i := range methods {
		if methods[i].ID == id {
			return i
		}
	}
	panic("airside: no method " + id)
}
