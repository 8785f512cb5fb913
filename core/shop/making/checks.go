package making

import (
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// FirstOffCheck is one of the shop's checks of the first tubes off a set-up, with what is to be found in them.
type FirstOffCheck struct {
	Check *shop.Check
	Find  message.Message
}

// PullPerOD is the force on a quarter turn of an embedded fin that it must bear, by the tube's outside diameter [N/m].
//
// Source: one public specification of embedded fins: 2.16 N per mm of outside diameter, on a sector of 90 degrees. Of stainless tube
// it reduces the force "by a factor of 1/3", which may be read either way.
const PullPerOD = 2160

// What a weld must come to: its width as a share of the strip [-], or the pull that it bears on its section [Pa].
//
// Source: agreed industry standard for welded fins, 1990, as read in a public text.
const (
	weldWidth              = 0.9
	weldPull  units.Stress = 170e6
)

// Lengths over which fins are counted.
const (
	countShort = 0.1 * units.Metre
	countLong  = 1 * units.Metre
)

// Checks lists what the shop looks at in the first tubes off, with the order's own figures as what to find; none without a programme.
//
// Valid: any plan.
// Source: which checks there are: common practice, no source; the figures are the order's.
func (p *Plan) Checks(c *shop.Capability) []FirstOffCheck {
	if p.Programme == nil {
		return nil
	}
	var out []FirstOffCheck
	for i := range c.Checks {
		k := &c.Checks[i]
		if k.For(p.Order.Tube.Fin.Type) {
			out = append(out, FirstOffCheck{k, p.find(c, k)})
		}
	}
	return out
}

// find says what a check is to find.
func (p *Plan) find(c *shop.Capability, k *shop.Check) message.Message {
	t, g := &p.Order.Tube, p.Programme
	off := message.Of(units.Gap, k.Off)
	switch k.Kind {
	case shop.CountShort:
		return counted(p, k, countShort)
	case shop.CountLong:
		return counted(p, k, countLong)
	case shop.FinODCheck: // never larger: bundles are built to it
		return message.New("find.fin_od", "od", message.Of(units.Diameter, t.FinOD()), "off", off)
	case shop.PlainEnds:
		return message.New("find.plain_ends", "a", message.Of(units.Distance, t.PlainA), "b", message.Of(units.Distance, t.PlainB), "off", off)
	case shop.PullTest:
		pull := message.Amount{Kind: units.Pull, SI: PullPerOD * float64(t.OD)}
		if p.Order.TubeMetal.Family == material.Stainless {
			return message.New("find.pull_stainless", "pull", pull)
		}
		return message.New("find.pull", "pull", pull)
	case shop.WeldSection:
		return message.New("find.weld_section", "width", message.Least(message.Of(units.Thickness, weldWidth*t.Fin.Strip)), "pull", message.Least(message.Of(units.Work, weldPull)))
	case shop.EndSecurity:
		return message.New("find.end_security", "ends", 2*g.FinnedZones())
	case shop.GrowthCheck:
		return message.New("find.growth", "cut", message.Of(units.Distance, g.CutLength), "whole", message.Of(units.Distance, t.Length+g.TrimA+g.TrimB),
			"grown", message.Of(units.Gap, g.Grown), "off", message.Of(units.Gap, EdgeOff(g.Growth.Scatter, g.Reach)))
	}
	return message.New("find.turn_by_hand")
}

// counted says how many fins are to be found over a length: whole ones, as they are counted.
func counted(p *Plan, k *shop.Check, over units.Length) message.Message {
	fins := float64(p.Order.Tube.Fin.Count) * float64(over)
	return message.New("find.count", "fins", message.Amount{Kind: units.Count, SI: fins}, "off", message.Amount{Kind: units.Factor, SI: k.Fins}, "over", along(over))
}

// FinnedZones returns how many zones of a tube are finned; each has two ends to be secured.
//
// Valid: any programme.
// Source: counting.
func (p *Programme) FinnedZones() (n int) {
	for _, z := range p.Zones {
		if z.Kind == Finned {
			n++
		}
	}
	return n
}
