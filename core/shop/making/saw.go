package making

import (
	"math"

	"finwright/core/shop"
	"finwright/core/units"
)

// Sawing is how the tubes of an order come out of what is bought. Kerf is charged to stock.
type Sawing struct {
	Stock   units.Length // length of one tube as bought
	Tubes   int          // to buy
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

// Saw cuts pieces from tubes of a stock length [m]; ok is false if it is too short for one.
//
// Valid: cut > 0, pieces > 0.
// Source: arithmetic; one kerf after each piece, unless it ends with the stock tube.
func Saw(stock, kerf, cut units.Length, pieces int) (s Sawing, ok bool) {
	per := int(math.Floor(float64((stock+kerf)/(cut+kerf)) + shop.Slack))
	if per < 1 {
		return s, false
	}
	s = Sawing{Stock: stock, PerTube: per, Pieces: pieces, Cut: cut, Tubes: (pieces + per - 1) / per, OnTubes: units.Length(pieces) * cut}
	s.saw(kerf, per, s.Tubes-1)
	s.saw(kerf, pieces-(s.Tubes-1)*per, 1)
	return s, true
}

// saw charges kerf and offcut of so many stock tubes that give n pieces each.
func (s *Sawing) saw(kerf units.Length, n, tubes int) {
	cuts := units.Length(n - 1)
	rest := max(0, s.Stock-units.Length(n)*s.Cut-cuts*kerf)
	last := min(kerf, rest)
	s.Kerf += units.Length(tubes) * (cuts*kerf + last)
	s.Offcut += units.Length(tubes) * (rest - last)
}
