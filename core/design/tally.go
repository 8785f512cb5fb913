package design

import (
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// Tally is what one order adds to a list of orders: all of it in SI, money in the shop's currency. What its plan lacks is not there, and is
// counted as unplanned or unpriced.
type Tally struct {
	Tubes    int     `json:"tubes"`
	Metres   float64 `json:"metres"`          // of tube [m]
	Finned   float64 `json:"finned"`          // of them finned [m]
	Strip    *Bought `json:"strip,omitempty"` // none of what is not wound, or not planned
	Hours    float64 `json:"hours"`           // of the line [s]
	Crates   int     `json:"crates"`
	Trucks   float64 `json:"trucks"` // that the crates fill [-]
	Weight   float64 `json:"weight"` // of all tubes [kg]
	Price    float64 `json:"price"`  // [money]
	Refused  bool    `json:"refused,omitempty"`
	Unpriced bool    `json:"unpriced,omitempty"`
	Work     *Work   `json:"work,omitempty"` // where it was asked for
}

// AddWork adds to the tally of an order what it has in common with others, of a day on which it is ordered.
func (t *Tally) AddWork(in field.Input, today shop.Day) {
	m := brief(&in, &Heat{})
	if w, ok := workOf(&m.Plan, m.Line.Name, in.Shop, today); ok {
		t.Work = &w
	}
}

// Bought is the strip that an order takes.
type Bought struct {
	Metal     string  `json:"metal"`
	Width     float64 `json:"width"`     // as slit [m]
	Thickness float64 `json:"thickness"` // [m]
	Length    float64 `json:"length"`    // used, scrap among it [m]
	Mass      float64 `json:"mass"`      // of that [kg]
	Coils     int     `json:"coils"`
}

// RowAndTally is RowOf, with what the order adds to a list of orders. Of an order that asks for no duty, heat does not watch: its bank is
// whatever stands in the base. What it refuses is refused all the same.
func RowAndTally(in field.Input) (Row, Tally, error) {
	w := workplaces.Get().(*workplace)
	defer workplaces.Put(w)
	w.in = in
	row, s, err := rowOf(w, nil)
	if err != nil {
		return Row{}, Tally{}, err
	}
	if in.Bank.DutyWanted == 0 && row.State != figure.No {
		row.State, row.Why = figure.Good, message.Message{}
		row.remark(notices(&w.in, &s.surface, judgeShape(&w.in)))
		if s.Production != nil {
			row.remark(s.Production.notices())
		}
	}
	return row, s.tally(), nil
}

// LineAndTally is RowAndTally of an order of which nothing is said but the tube: there is no bank to be rated, so that the line alone judges. The
// row has no figures.
func LineAndTally(in field.Input) (Row, Tally) {
	w := workplaces.Get().(*workplace)
	defer workplaces.Put(w)
	w.in, w.heat = in, Heat{}
	row := Row{State: figure.Good}
	row.remark(formNotices(&w.in, judgeShape(&w.in)))
	m := brief(&w.in, &w.heat)
	row.Line = m.Line.Name
	row.remark(m.notices())
	s := sources{Production: &m, in: &w.in, heat: &w.heat}
	return row, s.tally()
}

func (s *sources) tally() Tally {
	n := s.in.Job.Quantity
	t := Tally{
		Tubes: n, Metres: float64(n) * float64(s.in.Tube.Length), Finned: float64(n) * float64(s.in.Tube.FinnedLength()),
		Weight: float64(n) * float64(s.in.Tube.Weight()), Unpriced: true,
	}
	if s.Production == nil {
		return t
	}
	p := &s.Plan
	if p.Packing != nil {
		t.Crates = p.Packing.Crates
		if p.Packing.PerTruck > 0 {
			t.Trucks = float64(t.Crates) / float64(p.Packing.PerTruck)
		}
	}
	if p.Time != nil {
		t.Hours = float64(p.Time.Clock)
	}
	if p.Cost != nil {
		t.Price, t.Unpriced = float64(p.Cost.Price), false
	}
	if strip := p.Strip(); strip != nil && needs(making.TheStrip)(s).None() {
		used := p.Ledger.Used()
		t.Strip = &Bought{
			Metal: s.in.FinMetal.ID, Width: float64(strip.Slit), Thickness: float64(strip.Thickness),
			Length: float64(used), Mass: float64(strip.Mass(used)), Coils: p.Ledger.Coils,
		}
	}
	return t
}

// Sum is a list of orders together.
type Sum struct {
	Tally
	Strips   []Bought // by metal, width and gauge, as they come
	Refused  int      // orders that a rule refuses, or that cannot be read: no money of theirs is in it
	Unpriced int
	Orders   int
}

// Add adds an order. A refused tube has no price, and adds nothing but its count.
func (s *Sum) Add(t Tally) {
	s.Orders++
	if t.Refused {
		s.Refused++
		return
	}
	if t.Unpriced {
		s.Unpriced++
	}
	s.Tubes, s.Crates, s.Trucks = s.Tubes+t.Tubes, s.Crates+t.Crates, s.Trucks+t.Trucks
	s.Metres, s.Finned, s.Hours = s.Metres+t.Metres, s.Finned+t.Finned, s.Hours+t.Hours
	s.Weight, s.Price = s.Weight+t.Weight, s.Price+t.Price
	if t.Strip == nil {
		return
	}
	for i := range s.Strips {
		if b := &s.Strips[i]; b.Metal == t.Strip.Metal && alikeSize(b.Width, t.Strip.Width) && alikeSize(b.Thickness, t.Strip.Thickness) {
			b.Length, b.Mass, b.Coils = b.Length+t.Strip.Length, b.Mass+t.Strip.Mass, b.Coils+t.Strip.Coils
			return
		}
	}
	s.Strips = append(s.Strips, *t.Strip)
}

// alikeSize reports whether two sizes differ by no more than the noise of a conversion.
func alikeSize(a, b float64) bool { return !units.Above(a, b) && !units.Above(b, a) }
