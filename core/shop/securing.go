package shop

import "finwright/core/units"

// SecuringWay is how the ends of the fins are held, so that they do not unwind. Its name is the text "choice.end_security.<way>".
type SecuringWay string

// Ways to hold the ends of fins.
//
// Source: common practice, no source.
const (
	Band     SecuringWay = "band"
	Staple   SecuringWay = "staple"
	Peening  SecuringWay = "peening"
	SpotWeld SecuringWay = "spot_weld"
	Adhesive SecuringWay = "adhesive"
)

// SecuringWays lists them.
var SecuringWays = []SecuringWay{Band, Staple, Peening, SpotWeld, Adhesive}

// Securing is a way that a line has, and the time that one end takes.
type Securing struct {
	Way  SecuringWay
	Time units.Duration
}

// SecureTime returns the time to hold one end of the fins in a way; in the line's own where none is asked for or the line has it not.
func (l *Line) SecureTime(way SecuringWay) units.Duration {
	for _, s := range l.Securing {
		if s.Way == way {
			return s.Time
		}
	}
	return l.Times.Secure
}

// Straightness is by how much a bare tube may be out of straight in a length.
type Straightness struct {
	Bow  units.Length // 0: the shop does not care
	Over units.Length
}
