package rating

import (
	"finwright/core/airside"
	"finwright/core/tube"
)

// ByRule stands for a method that is not named: airside.Rule has it.
const ByRule = "rule"

// Pair returns the correlations in use: those named, else those by rule. It hangs on choices alone.
//
// Valid: a film and a drop method of airside's lists, ByRule or nothing.
// Source: airside.Rule.
func (in *Input) Pair() airside.Pair {
	pair := airside.Rule(in.Bank.Layout, in.Tube.Fin.Type.Fixing().Section == tube.WeldSection)
	if id := in.Air.FilmMethod; id != "" && id != ByRule {
		pair.Film = airside.Place(airside.FilmMethods, id)
	}
	if id := in.Air.DropMethod; id != "" && id != ByRule {
		pair.Drop = airside.Place(airside.DropMethods, id)
	}
	return pair
}
