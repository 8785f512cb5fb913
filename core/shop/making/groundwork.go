package making

import (
	"slices"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// Groundwork is what the rules and the plan of an order on a line both ask for, each worked out once, when it is first asked for.
type Groundwork struct {
	Shop     *shop.Capability
	Line     *shop.Line
	Practice *shop.Practice // nil if the line does not make the type
	Order    *Order
	Now      *Setup // of the line; nil where nothing is known: then a change of diameter is charged

	speeds     *Speeds
	programme  *Programme
	impossible bool // to lay out a programme
	coils      []CoilOption
	used       *CoilOption
	packing    *Packing
	unpacked   message.Message
}

// GroundworkOf lays what an order on a line asks for.
func GroundworkOf(c *shop.Capability, l *shop.Line, o *Order) *Groundwork {
	m, _ := l.Practice(o.Tube.Fin.Type)
	return &Groundwork{Shop: c, Line: l, Practice: m, Order: o}
}

// Laid is GroundworkOf with all of it worked out that plans at several prices have in common.
func Laid(c *shop.Capability, l *shop.Line, o *Order) *Groundwork {
	g := GroundworkOf(c, l, o)
	g.Packing()
	if g.Practice == nil {
		return g
	}
	if _, ok := g.Programme(); ok {
		g.Coils()
	}
	return g
}

// Speeds returns how fast the order runs on the line, which makes its type.
func (g *Groundwork) Speeds() *Speeds {
	if g.speeds == nil {
		s := SpeedsOf(g.Shop, g.Line, g.Practice, g.Order)
		g.speeds = &s
	}
	return g.speeds
}

// Programme returns how a tube is cut and wound on the line, which makes its type; ok is false where its zones cannot be.
func (g *Groundwork) Programme() (programme *Programme, ok bool) {
	if g.programme == nil && !g.impossible {
		made, ok := ProgrammeOf(g.Shop, g.Practice, g.Speeds(), g.Order)
		g.programme, g.impossible = &made, !ok
	}
	return g.programme, !g.impossible
}

// Packing returns how the order is crated, and why it cannot be where it is nil.
func (g *Groundwork) Packing() (*Packing, message.Message) {
	if g.packing == nil && g.unpacked.None() {
		packing, why := Pack(&g.Shop.Crate, &g.Order.Tube, max(1, g.Order.Quantity))
		if g.unpacked = why; why.None() {
			g.packing = &packing
		}
	}
	return g.packing, g.unpacked
}

// SetUp returns the time [s] to set the line for the order.
//
// Valid: any.
// Source: ChangeTime.
func (g *Groundwork) SetUp() units.Duration {
	if g.Now == nil {
		return g.Line.ChangeOver.OD
	}
	return ChangeTime(&g.Line.ChangeOver, *g.Now, SetupOf(g.Order))
}

// Coils returns the order wound from every coil that the line takes, in its order, and the one in use, nil where no coil serves. Their
// times are those on the line.
//
// Valid: a programme.
// Source: as PlanOf.
func (g *Groundwork) Coils() (all []CoilOption, used *CoilOption) {
	if g.coils != nil {
		return g.coils, g.used
	}
	g.coils = make([]CoilOption, len(g.Line.Coils))
	perTube := TimeTube(g.Line, g.programme, shop.SecuringWay(g.Order.Asked.Security))
	perTube.Preheat = g.Practice.Weld.PreheatOf(g.Order.TubeMetal.ID).Time
	setUp := g.SetUp()
	for i := range g.coils {
		option := &g.coils[i]
		option.Winding = g.winding(&g.Line.Coils[i], setUp)
		if option.Possible = option.Winding.Possible(); !option.Possible {
			continue
		}
		option.Ledger = option.Winding.takeHand()
		option.Time = TimeOrder(g.Shop, g.Line, &option.Winding, perTube, setUp, &option.Ledger, 0, 0)
	}
	g.choose()
	return g.coils, g.used
}

// choose takes the coil that the shop does.
func (g *Groundwork) choose() {
	g.used = nil
	for i := range g.coils {
		option := &g.coils[i]
		if option.Possible && (g.used == nil || g.Shop.Buying.Coils == shop.CheaperCoil && g.coilCost(option) < g.coilCost(g.used)*(1-roundOff)) {
			g.used = option
		}
	}
}

// At returns the groundwork of the same order at other prices: c differs from the shop in nothing else. Nothing of a plan that is made on it is
// found in g.
//
// Valid: before a plan is made on g.
// Source: what is laid out, wound and packed does not hang on prices; which coil is taken may.
func (g *Groundwork) At(c *shop.Capability) Groundwork {
	other := *g
	if other.Shop = c; g.coils != nil {
		other.coils = slices.Clone(g.coils)
		other.choose()
	}
	return other
}

// Longest returns the winding from the coil that gives one tube the most strip.
//
// Valid: a programme.
// Source: Winding.Capacity of each coil.
func (g *Groundwork) Longest() *Winding {
	all, _ := g.Coils()
	best := &all[0].Winding
	for i := range all[1:] {
		if w := &all[i+1].Winding; w.Capacity() > best.Capacity() {
			best = w
		}
	}
	return best
}

// spoilt returns the tubes of the order that do not ship: first-off ones only where the line is set anew.
func (g *Groundwork) spoilt(setUp units.Duration) (firstOff, rejected int) {
	firstOff, rejected = Expected(g.Shop, g.Line, g.Order.Quantity)
	if setUp == 0 {
		firstOff = 0
	}
	return firstOff, rejected
}

// winding returns the order's winding from one form of coil.
func (g *Groundwork) winding(k *shop.Coil, setUp units.Duration) Winding {
	t := &g.Order.Tube
	strip := StripOf(t, g.Practice, g.programme)
	turns := units.Length(float64(strip.Kept) / float64(g.programme.Finned()))
	firstOff, rejected := g.spoilt(setUp)
	w := Winding{
		Strip: strip, Coil: FillCoil(k, strip.Slit, strip.Thickness, strip.Density), Losses: g.Shop.Losses,
		Joints: JointsAllowed(&g.Practice.Joints, t.Length), Apart: g.Practice.Joints.Apart * turns,
		Good: g.Order.Quantity, FirstOff: firstOff, Rejected: rejected, Spent: g.Shop.Buying.StripLeft == shop.StripIsScrap,
		Hand: g.coilsOnHand(k, &strip), Restart: g.Practice.Weld.Restart,
	}
	if clear := g.Practice.Joints.Clear; clear > 0 {
		w.Places, w.Placed = g.programme.JointPlaces(strip.PerTube(), t.Pitch(), clear), true
		w.Placed = w.Possible() // else its strip does not last, and joints stand as they come
	}
	return w
}

// coilCost is what an order costs that hangs on its coil: strip less what its scrap fetches, and the line's time. Without a price
// of the strip, time decides.
func (g *Groundwork) coilCost(k *CoilOption) units.Money {
	price, _ := stripPrice(g.Shop.Rates.FinMetals, g.Order.FinMetal.ID)
	s := &k.Winding.Strip
	paid := float64(s.Mass(k.Ledger.Paid()))
	return k.Winding.HandWorth(&k.Ledger) + units.Money((paid-float64(s.Mass(k.Ledger.Scrap()))*price.Scrap)*float64(price.Price)+paid*float64(price.Surcharge)) +
		units.Money(float64(k.Time.Productive())*crewed(g.Shop))
}
