package search

import "finwright/core/message"

// Cut is why a design is not in the answer: the first of these, in this order, that is told before it is rated, else the first that is
// told after. So it hangs on the design alone.
type Cut string

// Name is the key of its name: of a bound that of its measure.
func (c Cut) Name() message.Key {
	if _, is := Measure(c).Place(); is {
		return message.Key("search.measure." + string(c))
	}
	return message.Key("search.cut." + string(c))
}

// Cuts that are no measures: a bound of a measure cuts by its name.
const (
	Impossible Cut = "impossible" // its entries do not go together
	ByLimits   Cut = Limits
	ByLine     Cut = Line
	Beyond     Cut = "range" // of a correlation in use
	Unrated    Cut = "unrated"
	Unknown    Cut = "unknown" // what is wanted of it
	Outdone    Cut = "outdone" // it cannot be among the best nor on the front, whether or not it holds
)

// Cuts lists them, those by what must hold first.
func Cuts() []Cut { return cuts[:] }

// bounds first, then the cuts that are none.
var cuts = [...]Cut{
	Cut(Duty), Cut(UA), Cut(AirDrop), Cut(InsideLoss), Cut(FanPower), Cut(Mass), Cut(Width), Cut(Depth), Cut(Length), Cut(Face), Cut(Tubes), Cut(Price), Cut(PerKilowatt), Cut(Ready), Cut(Miss),
	Impossible, ByLimits, ByLine, Beyond, Unrated, Unknown, Outdone,
}

// Places in cuts behind those of the measures; none is no cut.
const (
	impossible = measureCount + iota
	byLimits
	byLine
	beyond
	unrated
	unknown
	outdone
	cutCount
	none = -1
)
