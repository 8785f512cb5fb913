package search

import (
	"maps"
	"slices"
	"strings"

	"finwright/core/design"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// Problem is what a search is asked: of a document, what may vary, what must hold and what is wanted.
type Problem struct {
	Axes    []Axis            `json:"axes"`
	Must    map[string]string `json:"must"`   // texts as typed, by what must hold: see Musts
	Wanted  []Measure         `json:"wanted"` // one to three; the first orders
	Outside bool              `json:"outside,omitempty"`
	Day     string            `json:"day,omitempty"` // the page's, for what is promised

	Give string `json:"give,omitempty"` // what need not hold, to see by how much it must give: one of Gives, or All
}

// What must hold, beside a bound of a measure, which has its name: of duty and UA a least, of the others a most. Each has a text
// "search.must.<id>".
const (
	Surplus  = "surplus"   // share [-] that the duty has over its least
	LowerEnd = "lower_end" // "yes": the least duty of the correlations in range counts
	Limits   = "limits"    // "yes": of temperature, of joint and metals, in all cases; a case that is not stated does not hold
	Line     = "line"      // Made or Clear
)

// Verdicts of the line that must hold.
const (
	Made  = "made"  // no rule of the line refuses
	Clear = "clear" // nor says that something must be watched, bought or asked
)

const yes = "yes"

// Musts lists what may have to hold beside bounds.
var Musts = []string{Surplus, LowerEnd, Limits, Line}

// must is what must hold, read.
type must struct {
	bound   [measureCount]float64 // [SI]
	stated  uint32                // by place
	surplus float64
	lower   bool
	limits  bool
	line    string
	outside bool // what is beyond a correlation's range holds
}

func (m *must) states(at int) bool { return m.stated>>at&1 == 1 }

// breaks reports whether a number [SI] breaks the bound at a place. The noise of a conversion breaks none.
func (m *must) breaks(at int, si float64) bool {
	switch {
	case !m.states(at):
		return false
	case Measures[at].More:
		return units.Above(m.bound[at], si)
	}
	return units.Above(si, m.bound[at])
}

// misses returns by what share of the bound at a place a number passes it [-]; a bound of nought counts as one.
func (m *must) misses(at int, si float64) float64 {
	if !m.breaks(at, si) {
		return 0
	}
	over := si - m.bound[at]
	if Measures[at].More {
		over = -over
	}
	if m.bound[at] == 0 {
		return over
	}
	return over / max(m.bound[at], -m.bound[at])
}

// readMust reads what must hold; what cannot be read is told at "must.<id>".
func (p *Problem) readMust(system units.System) (m must, errs design.FieldErrors) {
	m.outside = p.Outside
	for _, id := range slices.Sorted(maps.Keys(p.Must)) {
		at, text := "must."+id, p.Must[id]
		switch place, is := Measure(id).Place(); {
		case id == Surplus:
			m.surplus, errs = quantity(units.Percent, at, text, system, errs)
		case id == LowerEnd && text == yes:
			m.lower = true
		case id == Limits && text == yes:
			m.limits = true
		case id == Line && (text == Made || text == Clear):
			m.line = text
		case place == ready && is:
			day, ok := shop.ParseDay(strings.TrimSpace(text))
			if !ok {
				errs = append(errs, design.FieldError{Field: at, Message: message.New("search.day", "text", text)})
			}
			m.bound[ready], m.stated = float64(day), m.stated|1<<ready
		case is && place != miss:
			m.bound[place], errs = quantity(Measures[place].Kind, at, text, system, errs)
			m.stated |= 1 << place
		default:
			errs = append(errs, design.FieldError{Field: at, Message: message.New("search.no_must", "text", text)})
		}
	}
	m.bound[duty] *= 1 + m.surplus
	return m, errs
}

// quantity reads a number of what must hold.
func quantity(k units.Kind, at, text string, system units.System, errs design.FieldErrors) (float64, design.FieldErrors) {
	parsed, err := units.Parse(k, text, system)
	if err != nil {
		errs = append(errs, design.FieldError{Field: at, Message: message.Unread(err.(*units.ParseError))})
	}
	return parsed.SI, errs
}

// readWanted returns the places of what is wanted.
func (p *Problem) readWanted() (places []int, errs design.FieldErrors) {
	fault := func(key string) design.FieldErrors {
		return design.FieldErrors{{Field: "wanted", Message: message.New(key)}}
	}
	if len(p.Wanted) == 0 || len(p.Wanted) > mostWanted {
		return nil, fault("search.wanted_count")
	}
	for _, m := range p.Wanted {
		at, ok := m.Place()
		if !ok || !Measures[at].Wanted || slices.Contains(places, at) {
			return nil, fault("search.no_wanted")
		}
		places = append(places, at)
	}
	return places, nil
}
