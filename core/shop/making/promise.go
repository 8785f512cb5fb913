package making

import (
	"math"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// Gate is something that an order waits for before its turn comes. Its name is the text "making.gate.<ID>".
type Gate struct {
	ID   string
	Days int // from the order on
}

// Promise is when an order is ready to go: the latest gate, the queue, then the work on working days, with what is away at
// suppliers before and after it.
type Promise struct {
	Ordered shop.Day
	Gates   []Gate
	Governs int // which of them is the latest
	Before  int // days at suppliers before finning
	Queue   int // working days
	Hours   units.Duration
	Work    int // working days
	After   int // days at suppliers after finning
	In      shop.Day
	Turn    shop.Day // work begins
	Done    shop.Day // work is done
	Day     shop.Day // all is back and packed
}

// mostDays bounds the work that a promise is made for: beyond, nobody promises a day.
const mostDays = 2500

// WorkHours returns the hours of an order one after the other [s]: on the line, and of one person beside it.
//
// Valid: any order's time.
// Source: addition; what could go on beside one another does not, to be on the safe side.
func (o *OrderTime) WorkHours(efficiency float64) units.Duration {
	return o.Clock + (o.Saw+o.Steps+o.Pack)/units.Duration(efficiency)
}

// Promise returns when an order is ready, its work in [s] and the rest in days, or why that cannot be said. What does not say when it
// was ordered is ordered today; a drawing that is approved before it is ordered is not waited for.
//
//	in   = ordered + latest of (tubes, strip, tooling, drawing), + days of suppliers before finning
//	done = in + queue + hours / (shifts x shift), in working days
//	day  = done + days of suppliers after finning, on a working day
//
// Valid: a planned order.
// Source: the shop's calendar; counting.
func (p *Plan) Promise(c *shop.Capability, today shop.Day) (out Promise, why message.Message) {
	if p.Cost == nil {
		return out, p.WhyNoCost()
	}
	if out.Ordered = p.Order.Ordered; out.Ordered == 0 {
		out.Ordered = today
	}
	if why = p.gates(c, &out); !why.None() {
		return out, why
	}
	for i, g := range out.Gates {
		if g.Days > out.Gates[out.Governs].Days {
			out.Governs = i
		}
	}
	for i := range p.Steps {
		switch s := &p.Steps[i]; {
		case !s.SubLet():
		case s.Step.When == shop.BeforeFinning:
			out.Before += s.Step.Lead
		default:
			out.After += s.Step.Lead
		}
	}
	cal := &c.Calendar
	out.Queue, out.Hours = cal.Queue, p.Time.WorkHours(c.Crew.Efficiency)
	days := math.Ceil(float64(out.Hours)/(float64(cal.Shifts)*float64(c.Crew.Shift)) - shop.Slack)
	if days > mostDays {
		return out, message.New("making.promise_far", "days", mostDays)
	}
	out.Work = max(1, int(days))
	out.In = out.Ordered + shop.Day(out.Gates[out.Governs].Days+out.Before)
	out.Turn = cal.Working(out.In, out.Queue)
	out.Done = cal.Working(out.Turn, out.Work-1)
	out.Day = cal.Working(out.Done+shop.Day(out.After), 0)
	return out, message.Message{}
}

// gates lists what an order waits for, or says what the shop does not know.
func (p *Plan) gates(c *shop.Capability, out *Promise) message.Message {
	cal, o := &c.Calendar, p.Order
	add := func(id string, days int) { out.Gates = append(out.Gates, Gate{id, days}) }
	if p.BoughtIn != nil {
		add("tubes", p.BoughtIn.Days)
		add("drawing", p.approval(cal, out.Ordered))
		return message.Message{}
	}
	if !o.FreeIssue {
		if p.Supply == nil {
			return p.Absent[TheSupply]
		}
		days, ok := tubeLead(cal, o, p.Supply.Way)
		if !ok {
			return message.New("making.no_lead", "metal", o.TubeMetal.Name())
		}
		if p.Supply.Tubes > 0 { // else all are on hand
			add("tubes", days)
		}
	}
	days, ok := stripLead(cal, o.FinMetal.ID, p.Winding.Coil.Form)
	if !ok {
		return message.New("making.no_lead", "metal", o.FinMetal.Name())
	}
	if p.Ledger.ToBuy() > 0 { // else all is on hand
		add("strip", days)
	}
	if p.ToBuy.Days > 0 {
		add("tooling", p.ToBuy.Days)
	}
	add("drawing", p.approval(cal, out.Ordered))
	return message.Message{}
}

// approval returns how many days after its order a drawing is approved.
func (p *Plan) approval(cal *shop.Calendar, ordered shop.Day) int {
	if p.Order.Approved == 0 {
		return cal.Approval
	}
	return max(0, int(p.Order.Approved-ordered))
}

// tubeLead returns in how many days an order's tubes come: the first entry of the list that is for them.
func tubeLead(cal *shop.Calendar, o *Order, way shop.TubeWay) (days int, ok bool) {
	od := o.Tube.OD
	for _, l := range cal.TubeLeads {
		if l.Metal == o.TubeMetal.ID && l.Way == way && od >= l.OD.Low*(1-shop.Slack) && od <= l.OD.High*(1+shop.Slack) {
			return l.Days, true
		}
	}
	return 0, false
}

func stripLead(cal *shop.Calendar, metal string, form shop.CoilForm) (days int, ok bool) {
	for _, l := range cal.StripLeads {
		if l.Metal == metal && l.Form == form {
			return l.Days, true
		}
	}
	return 0, false
}

// OldPrices lists the prices of an order that are older on a day than the shop lets prices stand.
//
// Valid: any day.
// Source: the dates of the shop's prices.
func (p *Plan) OldPrices(c *shop.Capability, day shop.Day) (out []message.Message) {
	if c.Buying.PriceDays == 0 || p.Cost == nil {
		return nil
	}
	look := func(metal message.Message, dated string) {
		if d, ok := shop.ParseDay(dated); ok && int(day-d) > c.Buying.PriceDays {
			out = append(out, message.New("making.old_price", "metal", metal, "dated", dated, "age", int(day-d), "days", c.Buying.PriceDays))
		}
	}
	if p.BoughtIn != nil {
		look(message.New("choice.fin_type."+string(p.BoughtIn.Type)), p.BoughtIn.Dated)
		return out
	}
	if p.Supply != nil {
		look(p.Order.TubeMetal.Name(), p.Supply.Price.Dated)
	}
	if price, ok := stripPrice(c.Rates.FinMetals, p.Order.FinMetal.ID); ok {
		look(p.Order.FinMetal.Name(), price.Dated)
	}
	return out
}
