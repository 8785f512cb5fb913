package design

import (
	"maps"
	"math"
	"slices"

	"finwright/core/document"
	"finwright/core/exchanger"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/shop/verdict"
	"finwright/core/units"
)

// Production is how a design is made in a shop: every line judged, one chosen, and
// the plan of the order on it.
type Production struct {
	Shop     *shop.Capability // with what the order states of its own
	Order    *making.Order
	Lines    []LineVerdict // in the order of the file
	Line     *shop.Line    // in use
	Auto     bool          // the order names no line
	NoLine   message.Message
	Verdicts []verdict.Verdict // of that line
	Plan     making.Plan
	Schedule *making.Schedule // nil without a winding
	Swings   []making.Swing
	Breaks   []making.Break
	Offers   map[string]Offer // by rule, after TryChanges
	Day      shop.Day         // the page's; 0: not said
	Refused  *Part            // what refuses the tube, of surface and heat; nil where neither does, and until AddMaking

	in     *field.Input
	heat   *Heat
	ground *making.Groundwork
}

// LineVerdict counts what one line's rules say.
type LineVerdict struct {
	Name             string
	State            figure.State
	Refused, Watched int
}

// shiftsShown bounds the schedule that is drawn; an order may take a year.
const shiftsShown = 12

// swingShare is by how much each driver of the price is moved.
const swingShare = 0.10

// Make judges and plans a checked input in its shop. h tells how hot the metal gets.
func Make(in field.Input, h Heat) Production {
	m := brief(&in, &h)
	c := m.Shop
	for i := range c.Lines {
		l := &c.Lines[i]
		m.Lines = append(m.Lines, count(l.Name, verdict.Judge(c, l, m.Order)))
	}
	if s, ok := m.Plan.Schedule(c, shiftsShown); ok {
		m.Schedule = &s
	}
	m.Swings = making.Sensitivity(c, m.Line, m.Order, nil, swingShare)
	m.AddBreaks()
	return m
}

// InQuantities judges a checked input on the line that it is for, and prices it in the shop's quantities alone.
func InQuantities(in *field.Input, h *Heat) Production {
	m := judge(in, h)
	m.AddBreaks()
	return m
}

// Brief judges and plans a checked input on the line that it is for, as much as every section tells of its making: neither
// the other lines nor what moves the price.
func Brief(in field.Input, h Heat) Production { return brief(&in, &h) }

func brief(in *field.Input, h *Heat) Production {
	m := judge(in, h)
	m.Plan = m.ground.Plan()
	return m
}

// AddBreaks prices the order in other quantities too.
func (m *Production) AddBreaks() { m.Breaks = making.Breaks(m.Shop, m.Line, m.Order, nil) }

// Unmade is a design that nobody makes: what is tried in it is weighed by surface and heat alone.
func Unmade(in field.Input, h Heat) Production {
	return Production{in: &in, heat: &h}
}

// Judged judges a checked input on the line that it is for, without a plan; h may be empty where nothing is known of its metal.
func Judged(in *field.Input, h *Heat) Production { return judge(in, h) }

// judge holds an input against the rules of the line that it is for, without a plan.
func judge(in *field.Input, h *Heat) Production {
	c := over(&in.Wish, in.Shop)
	m := Production{Shop: c, Order: making.OrderOf(in, h.hottest()), Auto: in.Wish.Line == "", in: in, heat: h}
	i := 0
	for i < len(c.Lines) && c.Lines[i].Name != in.Wish.Line {
		i++
	}
	if i < len(c.Lines) {
		m.ground = making.GroundworkOf(c, &c.Lines[i], m.Order)
		m.Verdicts = verdict.JudgeOn(m.ground)
	} else {
		m.ground, m.Verdicts = verdict.Choose(c, m.Order)
	}
	m.Line = m.ground.Line
	if !m.Auto && i == len(c.Lines) {
		m.NoLine = message.New("making.no_line", "line", in.Wish.Line, "instead", m.Line.Name)
	}
	return m
}

func count(name string, list []verdict.Verdict) LineVerdict {
	v := LineVerdict{Name: name, State: verdict.Worst(list)}
	for _, one := range list {
		switch one.State {
		case figure.No:
			v.Refused++
		case figure.Watch:
			v.Watched++
		}
	}
	return v
}

// over returns the capability with the order's own wishes in it: itself where there are none, which is mostly so.
func over(w *field.Wish, of *shop.Capability) *shop.Capability {
	if !w.Tolerance.Stated && !w.Margin.Stated && !w.Joints.Stated {
		return of
	}
	c := *of
	if w.Tolerance.Stated {
		c.Placing.Tolerance = units.Length(w.Tolerance.SI)
	}
	if w.Margin.Stated {
		c.Rates.MarkUp = w.Margin.SI
	}
	if !w.Joints.Stated {
		return &c
	}
	c.Lines = slices.Clone(c.Lines)
	for i := range c.Lines {
		c.Lines[i].Types = slices.Clone(c.Lines[i].Types)
		for j := range c.Lines[i].Types {
			joints := &c.Lines[i].Types[j].Joints
			joints.Short, joints.Long = int(w.Joints.SI), int(w.Joints.SI)
		}
	}
	return &c
}

// hottest returns the hottest fin root of any case, nil where the bank is not rated.
func (h *Heat) hottest() *units.Temperature {
	var hottest units.Temperature
	known := false
	for _, c := range exchanger.Cases {
		at, ok := h.Case.Root[c]
		if t := units.Temperature(at); ok && (!known || t > hottest) {
			hottest, known = t, true
		}
	}
	if !known {
		return nil
	}
	return &hottest
}

// AddMaking adds the figures and the notices of making to a result. A price of a tube that surface or heat refuses is none to
// quote, whatever the line can make.
func (r *Result) AddMaking(m *Production) {
	found := m.notices()
	r.Making = found
	others := r.Verdict()
	r.remark(makingPart, figure.Good, found)
	if others.State == figure.No {
		m.Refused = &others
		n := Notice{State: figure.No, Field: "line", Figure: "price_tube", Message: message.New("making.not_to_quote", "line", m.Line.Name, "part", message.Key("part."+others.Section))}
		if m.Plan.Cost != nil && verdict.Worst(m.Verdicts) != figure.No {
			r.Notices = append(r.Notices, n)
			found = append(found, n)
		}
	}
	maps.Copy(r.Auto, m.auto())
	r.Line, r.BoughtIn = m.Line.Name, m.Plan.BoughtIn != nil
	r.Supports, r.SpanWidth = m.sensibleSpans()
	for _, g := range m.groups() {
		for i := range g.Figures {
			mark(&g.Figures[i], found)
		}
		r.Groups = append(r.Groups, g)
	}
}

// sensibleSpans returns how many bare spans keep supports as near as they are asked for, evenly spaced, and the width [m] that
// the house gives one, a tool's run-out added.
func (m *Production) sensibleSpans() (count int, width units.Length) {
	limit := m.Shop.Placing.Supports
	if asked := m.Order.Asked.Supports; asked.Stated {
		limit = units.Length(asked.SI)
	}
	count, width = 1, document.DefaultSpan
	if limit > 0 {
		count = min(max(1, int(math.Ceil(float64(m.Order.Tube.Length/limit)-shop.Slack))-1), document.MostSpans)
	}
	if m.Order.Tube.Fin.Type.CutInto() {
		width = max(width, m.Shop.Placing.LeastBare+m.Line.Groover.RunOut)
	}
	return count, width
}

// auto returns the shop's figures that stand in for empty entries.
func (m *Production) auto() map[string]message.Amount {
	out := map[string]message.Amount{
		"position_tolerance": of(units.Distance, m.Shop.Placing.Tolerance),
		"margin":             {Kind: units.Percent, SI: m.Shop.Rates.MarkUp},
	}
	for id, l := range map[string]units.Length{"support_spacing": m.Shop.Placing.Supports, "rolled_length": m.Shop.Placing.RolledEnd} {
		if l > 0 {
			out[id] = of(units.Distance, l)
		}
	}
	if over := m.Line.Straight.Over; over > 0 {
		out["tube_bow_over"] = of(units.Distance, over)
	}
	if k := m.Plan.Practice; k != nil {
		out["joints_allowed"] = message.Amount{Kind: units.Count, SI: float64(making.JointsAllowed(&k.Joints, m.Order.Tube.Length))}
	}
	return out
}

// notices remarks on every rule that is not kept, on every question to the customer, for which the price is provisional, and on the price of a tube that is refused. The rules
// of shape are remarked on with it already.
func (m *Production) notices() []Notice {
	var out []Notice
	if !m.NoLine.None() {
		out = append(out, Notice{State: figure.Watch, Field: "line", Message: m.NoLine})
	}
	for _, v := range m.Verdicts {
		if v.Asks {
			out = append(out, Notice{State: v.State, Field: v.Rule.Field, Figure: "price_tube", Message: message.New("making.ask", "rule", message.Key("shop.rule."+v.Rule.ID), "why", v.Why)})
		} else if v.State == figure.No || v.State == figure.Watch && !v.Rule.Shape {
			out = append(out, Notice{State: v.State, Field: v.Rule.Field, Figure: v.Rule.Figure, Message: message.New("making.rule", "rule", message.Key("shop.rule."+v.Rule.ID), "why", v.Why)})
		}
	}
	for _, k := range m.Plan.Lacking() {
		out = append(out, Notice{State: figure.Watch, Field: field.AskedStep(k), Figure: "price_tube", Message: message.New("making.step_lacking", "step", message.Key("field."+field.AskedStep(k)))})
	}
	if m.Plan.Cost != nil && verdict.Worst(m.Verdicts) == figure.No {
		out = append(out, Notice{State: figure.No, Field: "line", Figure: "price_tube", Message: message.New("making.none_to_quote", "line", m.Line.Name)})
	}
	return out
}
