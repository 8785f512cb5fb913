package design

import (
	"math"
	"strconv"
	"sync"

	"finwright/core/exchanger"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// Row is what decides of one design among many: the figures of RowFigures in SI, and the gravest that is remarked on.
// Each is the figure of the same id of the full answer.
type Row struct {
	Cells []Cell // in the order of RowFigures
	State figure.State
	Why   message.Message // the first remark that is so grave; none where State is good
	Line  string          // that is to make it; empty without a shop
}

// Cell is one figure of a row.
type Cell struct {
	SI     float64
	Absent message.Message // why there is no value
}

// RowFigure is one column of a list of designs.
type RowFigure struct {
	ID   string
	Kind units.Kind

	absent func(*sources) message.Message
	of     func(*sources) float64
}

// sources are what the cells of a row are read from.
type sources struct {
	*Production // nil without a shop
	in          *field.Input
	surface     rating.Surface
	heat        *Heat
}

// RowFigures lists the columns: the surface, the bank at work, the making.
var RowFigures = []RowFigure{
	{"fin_od", units.Diameter, always, func(s *sources) float64 { return float64(s.in.Tube.FinOD()) }},
	{"total_area", units.SurfacePerMetre, always, func(s *sources) float64 { return float64(s.surface.Areas.Total()) }},
	{"area_ratio", units.Factor, always, func(s *sources) float64 { return s.surface.Areas.Ratio() }},
	{"fin_efficiency", units.Factor, always, func(s *sources) float64 { return s.surface.Fin.Efficiency }},
	{"used_area", units.SurfacePerMetre, always, func(s *sources) float64 { return float64(s.surface.Used) }},
	{"metre_mass", units.WeightPerMetre, always, func(s *sources) float64 { return float64(s.in.Tube.TubeMass() + s.in.Tube.FinMass()) }},
	{"tube_weight", units.Weight, always, func(s *sources) float64 { return float64(s.in.Tube.Weight()) }},
	{"strip_width", units.Width, wound, func(s *sources) float64 { return float64(s.in.Tube.StripWidth()) }},
	{"strip_per_metre", units.RunPerMetre, wound, func(s *sources) float64 { return s.in.Tube.StripPerMetre() }},
	{"film", units.Film, atWork, func(s *sources) float64 { return s.heat.Thermal.OutsideFilm }},
	{"inside_film", units.Film, atWork, func(s *sources) float64 { return s.heat.Thermal.Inside.Coefficient }},
	{"u_bare", units.Film, atWork, func(s *sources) float64 { return s.heat.Thermal.Overall.OnBare }},
	{"duty", units.Duty, atWork, func(s *sources) float64 { return math.Abs(s.heat.Thermal.Duty.Heat) }},
	{"air_out", units.Temp, atWork, func(s *sources) float64 { return s.heat.Thermal.Duty.AirOut }},
	{"process_out", units.Temp, atWork, func(s *sources) float64 { return s.heat.Thermal.Duty.ProcessOut }},
	{"air_drop", units.Drop, dropped, func(s *sources) float64 { return s.heat.Thermal.UsedDrop.Answer.Total }},
	{"inside_loss", units.Loss, liquid, func(s *sources) float64 { return s.heat.Thermal.InsideLoss.Total }},
	{"hottest_root", units.Temp, atWork, func(s *sources) float64 { return s.heat.Case.Root[exchanger.Normal] }},
	{"strip_bought", units.Run, needs(making.TheStrip), func(s *sources) float64 { return float64(s.Plan.Ledger.Bought) }},
	{"tube_time", units.Time, needs(making.TheStrip), func(s *sources) float64 { return float64(s.Plan.Time.Tube.Total()) }},
	{"line_hours", units.Hours, needs(making.TheStrip), func(s *sources) float64 { return float64(s.Plan.Time.Clock) }},
	{"price_tube", units.Cost, needs(making.TheCost), func(s *sources) float64 { return float64(s.Plan.Cost.PerTube) }},
	{"price", units.Cost, needs(making.TheCost), func(s *sources) float64 { return float64(s.Plan.Cost.Price) }},
}

// What a cell needs to have a value: each says why there is none.

func always(*sources) message.Message { return message.Message{} }

func wound(s *sources) message.Message {
	if s.in.Tube.Fin.Type.Wound() {
		return message.Message{}
	}
	return message.New("absent.not_wound")
}

func atWork(s *sources) message.Message { return s.heat.Absent }

func dropped(s *sources) message.Message {
	if s.heat.Absent.None() && !s.heat.Thermal.HasDrop() {
		return message.New("absent.no_drop")
	}
	return s.heat.Absent
}

func liquid(s *sources) message.Message {
	if s.heat.Absent.None() && s.heat.Thermal.InsideLoss == nil {
		return s.in.NoInsideLoss()
	}
	return s.heat.Absent
}

func needs(part making.Part) func(*sources) message.Message {
	return func(s *sources) message.Message {
		switch {
		case s.Production == nil:
			return message.New("making.not_planned")
		case part != making.TheCost && s.Plan.Ledger == nil, part == making.TheCost && s.Plan.Cost == nil:
			return maker{s.Production, &s.Plan}.why(part)
		}
		return message.Message{}
	}
}

// RowOf reads off a checked Input what decides, without figures, curves or texts: a small part of the work of Evaluate and
// Make, for one design of thousands. The error is that of Rate.
func RowOf(in field.Input) (Row, error) {
	w := workplaces.Get().(*workplace)
	defer workplaces.Put(w)
	w.in = in
	row, _, err := rowOf(w, nil)
	return row, err
}

// workplace is where a row is made: large, and nothing of it outlasts the row.
type workplace struct {
	in   field.Input
	heat Heat
}

var workplaces = sync.Pool{New: func() any { return new(workplace) }}

// rowOf is RowOf with what its cells are read from, and tells hear, where there is one, all that is remarked on.
func rowOf(w *workplace, hear func([]Notice)) (Row, *sources, error) {
	in, h := &w.in, &w.heat
	var err error
	if *h, err = RateBriefly(in); err != nil {
		return Row{}, nil, err
	}
	s := sources{in: in, surface: in.Surface(&h.Thermal), heat: h}
	row := Row{State: figure.Good}
	remark := func(found []Notice) {
		if row.remark(found); hear != nil {
			hear(found)
		}
	}
	remark(notices(in, &s.surface, judgeShape(in)))
	remark(heatNotices(in, h))
	if in.Shop != nil {
		m := brief(in, h)
		s.Production, row.Line = &m, m.Line.Name
		remark(m.notices())
	}
	row.read(&s, RowFigures)
	return row, &s, nil
}

// read adds the cells of figures.
func (r *Row) read(s *sources, figures []RowFigure) {
	cells := make([]Cell, len(r.Cells)+len(figures))
	copy(cells, r.Cells)
	for i := range figures {
		c := &cells[len(r.Cells)+i]
		if c.Absent = figures[i].absent(s); c.Absent.None() {
			c.SI = figures[i].of(s)
		}
	}
	r.Cells = cells
}

// Saved is the row as an item holds it: to six digits, null where a figure has no value.
func (r Row) Saved() []*float64 {
	cells := make([]*float64, len(r.Cells))
	for i, c := range r.Cells {
		if !c.Absent.None() {
			continue
		}
		if x, err := strconv.ParseFloat(strconv.FormatFloat(c.SI, 'g', 6, 64), 64); err == nil {
			cells[i] = &x
		}
	}
	return cells
}

// remark keeps the gravest of what is said.
func (r *Row) remark(found []Notice) {
	for _, n := range found {
		if n.State.Graver(r.State) {
			r.State, r.Why = n.State, n.Message
		}
	}
}
