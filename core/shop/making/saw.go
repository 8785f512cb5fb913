package making

import (
	"math"

	"finwright/core/shop"
	"finwright/core/units"
)

// Sawing is how the tubes of an order are cut from mill lengths. Kerf is charged to stock.
type Sawing struct {
	Stock   units.Length // length of one mill tube
	Tubes   int          // mill tubes to buy
	PerTube int          // pieces from each but perhaps the last
	Pieces  int
	Cut     units.Length // one piece
	OnTubes units.Length // all pieces
	Kerf    units.Length
	Offcut  units.Length
}

// Bought returns the length of tube bought [m].
//
// Valid: a sawing of Saw.
// Source: multiplication.
func (s *Sawing) Bought() units.Length { return s.Stock * units.Length(s.Tubes) }

// Saw cuts pieces from the mill length [m] that leaves the least behind; ok is
// false if none is long enough.
//
// Valid: cut > 0, pieces > 0.
// Source: arithmetic; one kerf after each piece, unless it ends with the mill tube.
func Saw(c *shop.Cutting, cut units.Length, pieces int) (best Sawing, ok bool) {
	for _, stock := range c.Stock {
		per := int(math.Floor(float64((stock+c.Kerf)/(cut+c.Kerf)) + shop.Slack))
		if per < 1 {
			continue
		}
		s := Sawing{Stock: stock, PerTube: per, Pieces: pieces, Cut: cut, Tubes: (pieces + per - 1) / per, OnTubes: units.Length(pieces) * cut}
		s.saw(c.Kerf, per, s.Tubes-1)
		s.saw(c.Kerf, pieces-(s.Tubes-1)*per, 1)
		if !ok || s.Bought() < best.Bought() {
			best, ok = s, true
		}
	}
	return best, ok
}

// saw charges kerf and offcut of so many mill tubes that give n pieces each.
func (s *Sawing) saw(kerf units.Length, n, tubes int) {
	cuts := units.Length(n - 1)
	rest := max(0, s.Stock-units.Length(n)*s.Cut-cuts*kerf)
	last := min(kerf, rest)
	s.Kerf += units.Length(tubes) * (cuts*kerf + last)
	s.Offcut += units.Length(tubes) * (rest - last)
}
