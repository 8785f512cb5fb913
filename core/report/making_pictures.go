package report

import (
	"cmp"
	"math"

	"finwright/core/design"
	"finwright/core/drawing/ink"
	"finwright/core/drawing/order"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/numeric"
	"finwright/core/shop/making"
	"finwright/core/units"
)

var zoneKind = map[making.ZoneKind]order.ZoneKind{
	making.Trim: order.CutAway, making.PlainEnd: order.BareZone, making.BareSpan: order.BareZone, making.Finned: order.FinnedZone,
}

// whole is the tube over its whole length, finished and as cut.
func (w Writer) whole(m *design.Production, width float64) (sheet.Scene, bool) {
	p := m.Plan.Programme
	if p == nil {
		return sheet.Scene{}, false
	}
	t := &m.Order.Tube
	out := order.Whole{OD: t.OD.Millimetres(), FinOD: t.FinOD().Millimetres(), Finished: w.Texts.Text("making.finished"), AsCut: w.Texts.Text("making.as_cut")}
	for i, z := range p.Zones {
		zone := order.WholeZone{Kind: zoneKind[z.Kind], From: z.Finished.From.Millimetres(), To: z.Finished.To.Millimetres(), Cut: w.along(z.Cut.To), Stripped: z.Stripped.To.Millimetres()}
		if i < len(p.Zones)-1 {
			zone.Edge = w.along(z.Finished.To)
		}
		length := message.Amount{Kind: units.Distance, SI: float64(z.Finished.Length())}
		turns := message.New("making.turns", "turns", message.Amount{Kind: units.Count, SI: z.Turns})
		switch z.Kind {
		case making.Finned:
			zone.Label, zone.Brief = w.say(message.New("making.finned", "length", length, "turns", turns)), w.say(turns)
		case making.BareSpan:
			zone.Label = w.say(message.New("making.bare", "length", length))
		}
		if zone.To > zone.From {
			out.Zones = append(out.Zones, zone)
		}
	}
	return order.ComposeWhole(out, width), true
}

// activityFilling tells activities apart.
var activityFilling = map[making.Activity]order.Filling{
	making.SettingUp: order.Rising, making.Checking: order.Falling, making.Finning: order.Blank, making.CoilChange: order.Solid, making.RackChange: order.HalfSolid,
}

// schedule is the order over its first shifts.
func (w Writer) schedule(m *design.Production, width float64) (sheet.Scene, bool) {
	if m.Schedule == nil {
		return sheet.Scene{}, false
	}
	hours := func(t units.Duration) float64 { return units.In(units.Hours, float64(t), w.System) }
	c := order.Chart{Hours: hours(m.Shop.Crew.Shift), Unit: units.Hours.Unit(w.System)}
	for i := range m.Schedule.Shifts {
		c.Rows = append(c.Rows, w.say(message.New("making.shift", "number", i+1)))
	}
	seen := map[making.Activity]bool{}
	for _, b := range m.Schedule.Blocks {
		one := order.ChartBar{Row: b.Shift, From: hours(b.From), To: hours(b.To), Filling: activityFilling[b.Activity]}
		if b.Tubes > 0 {
			one.Text = w.say(message.New("making.count", "count", b.Tubes))
		}
		c.Bars = append(c.Bars, one)
		seen[b.Activity] = true
	}
	for _, a := range making.Activities {
		if seen[a] {
			key := "shop.activity." + string(a)
			if a == making.Finning {
				key = "making.finning_tubes" // they stand in its bars
			}
			c.Legend = append(c.Legend, order.ChartKey{Filling: activityFilling[a], Text: w.Texts.Text(key)})
		}
	}
	if m.Schedule.More {
		c.Ongoing = w.say(message.New("making.more", "shifts", message.Amount{Kind: units.Factor, SI: m.Plan.Time.Shifts}))
	}
	return order.ComposeChart(c, width), true
}

// packingHeight is how tall a packing view is, over its width.
const packingHeight = 0.8

// tubesDrawn is how many tubes a packing view draws one by one: more are dots, and megabytes.
const tubesDrawn = 800

func (w Writer) crate(m *design.Production, width float64) (sheet.Scene, bool) {
	c, ok := w.crated(m)
	if !ok {
		return sheet.Scene{}, false
	}
	return order.ComposeCrate(c, width, packingHeight*width), true
}

// crated is a full crate in section.
func (w Writer) crated(m *design.Production) (order.Crated, bool) {
	p := m.Plan.Packing
	if p == nil {
		return order.Crated{}, false
	}
	t, k := &m.Order.Tube, &m.Shop.Crate
	c := order.Crated{
		Width: k.Width.Millimetres(), Height: k.Height.Millimetres(), OD: t.OD.Millimetres(), FinOD: t.FinOD().Millimetres(),
		WidthText: w.along(k.Width), HeightText: w.along(k.Height),
		Title: w.say(message.New("making.crate", "tubes", p.PerCrate, "layers", len(p.Layers))),
	}
	if p.PerCrate > tubesDrawn {
		c.Title = w.say(message.New("making.crate_full", "tubes", p.PerCrate, "layers", len(p.Layers)))
		return c, true
	}
	for i, l := range p.Layers {
		for n := range l.Tubes {
			c.Centres = append(c.Centres, ink.At((l.First+units.Length(n)*p.Pitch).Millimetres(), l.Level.Millimetres()))
		}
		if i > 0 && p.Separator > 0 {
			c.Separators = append(c.Separators, (l.Level - p.Pitch/2 - p.Separator/2).Millimetres())
		}
	}
	return c, true
}

func (w Writer) bundle(m *design.Production, width float64) (sheet.Scene, bool) {
	b := m.Plan.Bundle
	if b == nil {
		return sheet.Scene{}, false
	}
	title := "making.bundle"
	if b.Tubes > tubesDrawn {
		title = "making.bundle_full"
	}
	return order.ComposeBundle(order.Bundled{
		OD: m.Order.Tube.OD.Millimetres(), Across: b.Across, Outline: b.Tubes > tubesDrawn, WidthText: w.along(b.Width), HeightText: w.along(b.Height),
		Title: w.say(message.New(title, "tubes", b.Tubes, "across", b.Across)),
	}, width, packingHeight*width), true
}

// swings shows what moves the price of a tube, the widest first.
func (w Writer) swings(m *design.Production, width float64) (sheet.Scene, bool) {
	if len(m.Swings) == 0 || m.Plan.Cost == nil {
		return sheet.Scene{}, false
	}
	reach := func(s *making.Swing) float64 { return math.Abs(float64(s.High - s.Low)) }
	list := numeric.Sorted(m.Swings, func(a, b *making.Swing) int { return cmp.Compare(reach(b), reach(a)) })
	base := float64(m.Plan.Cost.PerTube)
	c := order.Swings{Base: base, Down: w.Texts.Text("making.lower"), Up: w.Texts.Text("making.higher")}
	for _, s := range list {
		if reach(&s) < leastSwing {
			continue
		}
		by := max(math.Abs(float64(s.High)-base), math.Abs(float64(s.Low)-base))
		c.Rows = append(c.Rows, order.Swing{
			Label: w.Texts.Text("shop.driver." + s.ID), Low: float64(s.Low), High: float64(s.High),
			Text: w.say(message.New("making.by", "by", w.Texts.Numbers.Figure(units.Cost, by, w.System).String())),
		})
	}
	return order.ComposeSwings(c, width), len(c.Rows) > 0
}

// leastSwing is the least swing shown, in money: less prints as nought.
const leastSwing = 0.01
