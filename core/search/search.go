package search

import (
	"maps"
	"strconv"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/shop"
)

// Search is a problem that has been read: a grid of designs of which each has a place, from nought on.
type Search struct {
	base   document.Document
	shop   *shop.Capability
	axes   []axis
	block  []int // of each axis: how many places its values share, so far as the outer ones stay
	count  int
	must   must
	wanted []int
	day    shop.Day
	needed shop.Day // the day, where what is promised must hold; else nought
	made   []combination

	asked uint32 // measures that must hold or are wanted, by place
	heats bool   // what the bank carries is asked
	plans bool   // what the making costs or takes is asked

	loose   uint32 // bounds and cuts that may be missed, by place: designs are searched by how much they miss
	nearest bool   // all may be
}

// combination is the input of one choice of metals and fin type.
type combination struct {
	in    field.Input
	wrong bool // an entry cannot be read with these choices
}

// MostPlaces bounds a grid.
const MostPlaces = 1_000_000_000

// New reads a problem for a document and the shop that is to make it. What cannot be read or used is told by field: of an entry by its
// id, of what must hold as "must.<id>", else "wanted" or "axes".
func New(d document.Document, p Problem, c *shop.Capability) (*Search, error) {
	s := &Search{base: d, shop: c}
	var more [3]design.FieldErrors
	s.axes, more[0] = p.readAxes(d.Units)
	s.must, more[1] = p.readMust(d.Units)
	s.wanted, more[2] = p.readWanted()
	var errs design.FieldErrors
	for _, m := range more {
		errs = append(errs, m...)
	}
	if day, ok := shop.ParseDay(p.Day); ok {
		s.day = day
		if s.must.states(ready) {
			s.needed = day
		}
	} else if p.Day != "" || s.must.states(ready) {
		errs = append(errs, design.FieldError{Field: "must." + string(Ready), Message: message.New("search.day", "text", p.Day)})
	}
	if len(errs) == 0 {
		errs = s.loosen(p.Give)
	}
	s.asked = s.must.stated
	for _, at := range s.wanted {
		s.asked |= 1 << at
	}
	s.plans = s.asks(price) || s.asks(perKilowatt) || s.asks(ready)
	s.heats = s.asks(duty) || s.asks(transfer) || s.asks(perKilowatt)
	if len(errs) == 0 {
		errs = s.lay()
	}
	if len(errs) > 0 {
		return nil, errs
	}
	return s, nil
}

// lay counts the grid and reads the document once for each choice of metals and fin type.
func (s *Search) lay() design.FieldErrors {
	total := 1.0
	for i := range s.axes {
		total *= float64(s.axes[i].size())
	}
	if total > MostPlaces {
		return design.FieldErrors{{Field: "axes", Message: message.New("search.too_many", "most", MostPlaces)}}
	}
	s.block, s.count = make([]int, len(s.axes)), 1
	for i := len(s.axes) - 1; i >= 0; i-- {
		s.block[i] = s.count
		s.count *= s.axes[i].size()
	}
	choices := s.count / s.share(ofMetal)
	s.made = make([]combination, choices)
	var first error
	readable := false
	for i := range s.made {
		m := &s.made[i]
		var err error
		if m.in, err = design.ReadEach(s.Document(i * s.share(ofMetal))); err != nil {
			m.wrong = true
			if first == nil {
				first = err
			}
			continue
		}
		readable = true
		m.in.MadeBy(s.shop)
		m.wrong = len(design.Check(&m.in, design.OfStreams)) > 0
	}
	if !readable {
		return first.(design.FieldErrors)
	}
	return nil
}

// share returns how many places a design of a level has: those that differ in the levels after it.
func (s *Search) share(l level) int {
	places := 1
	for i := range s.axes {
		if s.axes[i].level > l {
			places *= s.axes[i].size()
		}
	}
	return places
}

func (a *axis) size() int { return len(a.texts) }

// Count is how many designs there are.
func (s *Search) Count() int { return s.count }

// Document returns the design at a place, its order that of its bank. What was set is assumed, as by any hand.
func (s *Search) Document(place int) document.Document {
	d := s.base
	d.Fields = maps.Clone(d.Fields)
	for i := range s.axes {
		a := &s.axes[i]
		d.Fields[a.ID] = document.Entry{Text: a.texts[place/s.block[i]%a.size()], Origin: document.Assumed}
	}
	if in, err := design.ReadEach(d); err == nil {
		d.Fields["quantity"] = document.Entry{Text: strconv.Itoa(design.BankTubes(&in)), Origin: document.Assumed}
	}
	return d
}

// worthOf returns what is wanted of values, and whether all of it is known.
func (s *Search) worthOf(v *Values) (w worth, known bool) {
	for i, at := range s.wanted {
		if !v.Known(at) {
			return w, false
		}
		w[i] = rounded(v.SI[at])
		if Measures[at].More {
			w[i] = -w[i]
		}
	}
	return w, true
}
