package report

import (
	"strings"

	"finwright/core/design"
	"finwright/core/message"
	"finwright/core/units"
)

// mostBatches are shown of those that items are made in.
const mostBatches = 60

// ShownGroups says how the items of an enquiry are made together.
type ShownGroups struct {
	Said    []string     `json:"said"` // what it comes to
	Batches []ShownBatch `json:"batches"`
	Adds    []string     `json:"adds"` // of each item, what it alone adds to the price of all; empty: nothing is known of it
}

// ShownBatch is items that are made one after the other without a change of the line.
type ShownBatch struct {
	Line   string `json:"line"`
	SetUp  string `json:"set_up"`
	Items  string `json:"items"`
	Change string `json:"change"` // of the line, before it
	Saved  string `json:"saved"`
}

// Groups prints how items are made together, each by what its customer calls it.
func (w Writer) Groups(g *design.Grouped, marks []string) ShownGroups {
	out := ShownGroups{Said: []string{}, Batches: []ShownBatch{}, Adds: make([]string, len(marks))}
	amount := func(kind units.Kind, si float64) message.Amount { return message.Amount{Kind: kind, SI: si} }
	money := func(x float64) string {
		return strings.TrimSpace(w.Texts.Numbers.Figure(units.Cost, x, w.System).Value + " " + w.Currency)
	}
	say := func(key string, args ...any) { out.Said = append(out.Said, w.say(message.New(key, args...))) }
	if g.Together == 0 {
		say("enquiry.group.none")
		return out
	}
	say("enquiry.group.batches", "items", g.Together, "batches", len(g.Batches), "alone", amount(units.Hours, float64(g.SetUps)), "grouped", amount(units.Hours, float64(g.Changes)))
	if g.Shared < g.Crates {
		say("enquiry.group.crates", "alone", g.Crates, "together", g.Shared)
	}
	if g.Saved > 0 {
		say("enquiry.group.total", "alone", money(g.Alone), "together", money(g.Alone-g.Saved))
	}
	for _, s := range g.Strips {
		say("enquiry.group.strip", "metal", message.Key("metal."+s.Metal), "width", amount(units.Width, s.Width), "thickness", amount(units.Thickness, s.Thickness), "alone", s.Coils, "together", s.Together)
	}
	if g.Trucks > 0 {
		say("enquiry.group.trucks", "count", g.Trucks)
	}
	switch {
	case g.Unknown > 0:
		say("enquiry.group.no_day", "count", g.Unknown)
	case g.Ready == 0:
		say("enquiry.group.far")
	default:
		say("enquiry.group.ready", "day", g.Ready.String(), "hours", amount(units.Hours, float64(g.Hours)), "item", marks[g.Governs])
	}
	for i := range g.Batches[:min(len(g.Batches), mostBatches)] {
		b := &g.Batches[i]
		names := make([]string, 0, mostMarks)
		for _, k := range b.Orders[:min(len(b.Orders), mostMarks)] {
			names = append(names, marks[k])
		}
		list := strings.Join(names, ", ")
		if len(b.Orders) > mostMarks {
			list += " …"
		}
		out.Batches = append(out.Batches, ShownBatch{
			Line: b.Line,
			SetUp: w.say(message.New("enquiry.group.set_up", "type", message.Key("choice.fin_type."+b.Type), "od", amount(units.Diameter, b.OD), "height", amount(units.Height, b.Height),
				"strip", amount(units.Thickness, b.Strip), "pitch", amount(units.FinCount, b.Count))),
			Items:  w.say(message.New("enquiry.items", "count", len(b.Orders), "marks", list)),
			Change: w.say(message.New("enquiry.group.change", "time", amount(units.Hours, float64(b.Change)))),
			Saved:  money(b.Saved),
		})
	}
	if more := len(g.Batches) - mostBatches; more > 0 {
		say("enquiry.group.more", "count", more)
	}
	for i, x := range g.Adds {
		if x != 0 {
			out.Adds[i] = w.say(message.New("enquiry.group.adds", "price", money(x)))
		}
	}
	return out
}
