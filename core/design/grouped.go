package design

import (
	"cmp"
	"math"
	"slices"

	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/tube"
	"finwright/core/units"
)

// Work is what an order has in common with others of a list: all of it in SI, money in the shop's currency.
type Work struct {
	Line   string  `json:"line"`
	Type   string  `json:"type"`
	OD     float64 `json:"od"`     // [m]
	Height float64 `json:"height"` // [m]
	Strip  float64 `json:"strip"`  // [m] thick
	Count  float64 `json:"count"`  // fins [1/m]
	SetUp  float64 `json:"set_up"` // setting up and the first check, on the line [s]
	Worth  float64 `json:"worth"`  // what that comes to in the price [money]
	Hours  float64 `json:"hours"`  // one after the other [s]
	Coil   float64 `json:"coil"`   // strip that is bought on a coil [m]; 0: none is bought
	Crate  Crate   `json:"crate"`
	Gate   int     `json:"gate"`  // days until its work may begin
	After  int     `json:"after"` // days at suppliers after finning
	Queue  bool    `json:"queue"` // a day can be promised
}

// Crate is the crate that the tubes of an order take: those of another with the same stand in it as well.
type Crate struct {
	FinOD  float64 `json:"fin_od"` // of the tubes, tip on tip [m]
	Length float64 `json:"length"` // [m]
	Holds  int     `json:"holds"`  // tubes, by its size and its mass
	Tubes  int     `json:"tubes"`
	Worth  float64 `json:"worth"` // what one comes to in the price [money]
}

// of is how many crates tubes take.
func (k *Crate) of(tubes int) int { return (tubes + k.Holds - 1) / k.Holds }

// workOf is what a plan has in common with others; ok is false of what has no price.
func workOf(p *making.Plan, line string, c *shop.Capability, today shop.Day) (w Work, ok bool) {
	if p.Cost == nil || p.Time == nil || p.Ledger == nil {
		return w, false
	}
	s := making.SetupOf(p.Order)
	w = Work{
		Line: line, Type: string(s.Type), OD: float64(s.OD), Height: float64(s.Height), Strip: float64(s.Strip), Count: float64(s.Count),
		SetUp: float64(p.Time.OnLine.Of(making.SettingUp) + p.Time.OnLine.Of(making.Checking)), Worth: float64(p.SettingUp(c)),
		Hours: float64(p.Time.WorkHours(c.Crew.Efficiency)),
	}
	if k := p.Packing; k != nil {
		w.Crate = Crate{FinOD: float64(k.Pitch), Length: float64(k.Length), Holds: k.Holds, Tubes: p.Order.Quantity, Worth: float64(p.ACrate(c))}
	}
	if p.Ledger.ToBuy() > 0 {
		w.Coil = float64(p.Winding.Coil.Length)
	}
	if promise, why := p.Promise(c, today); why.None() {
		w.Gate, w.After, w.Queue = int(promise.In-promise.Ordered), promise.After, true
	}
	return w, true
}

// alikeSetUp orders set-ups by what takes longest to change, so that none is changed more often than it must be, and is 0 for those that are one.
//
// Source: a change takes the time of the deepest thing that differs (making.ChangeTime), and a deeper one takes no less.
func alikeSetUp(a, b *Work) int {
	return cmp.Or(cmp.Compare(a.Line, b.Line), cmp.Compare(a.Type, b.Type), cmp.Compare(a.OD, b.OD), cmp.Compare(a.Height, b.Height), cmp.Compare(a.Strip, b.Strip), cmp.Compare(a.Count, b.Count))
}

func (w *Work) setup() making.Setup {
	return making.Setup{Type: tube.FinType(w.Type), OD: units.Length(w.OD), Height: units.Length(w.Height), Strip: units.Length(w.Strip), Count: units.PerLength(w.Count)}
}

// Batch is orders that are made one after the other without a change of the line.
type Batch struct {
	Work
	Orders []int          // their places in the list
	Change units.Duration // of the line from the batch before, as far as it is known
	Saved  float64        // set-ups that are not made twice [money]
}

// SharedStrip is strip of one metal, width and gauge, bought for all orders together.
type SharedStrip struct {
	Bought
	Together int // coils: what one leaves on its last coil another begins with
}

// Grouped is a list of orders made together.
type Grouped struct {
	Batches  []Batch
	SetUps   units.Duration // of each order by itself
	Changes  units.Duration // in the batches' order, the first as it is by itself
	Crates   int            // of each order by itself
	Shared   int            // of all, where orders alike in length and fin outside diameter share theirs
	Alone    float64        // the orders' prices [money]
	Saved    float64        // of them, set-ups and crates [money]
	Adds     []float64      // what each order adds to the price of all [money]; 0: nothing is known of it
	Strips   []SharedStrip
	Trucks   int
	Ready    shop.Day // of all; 0: none can be promised
	Unknown  int      // orders of which no day can be promised
	Governs  int      // the order that is waited for longest
	Hours    units.Duration
	Together int // orders
}

// Group says how a list of orders is made together. The tallies without work are left out, and so are refused ones.
//
// A batch pays for one set-up, its dearest; each other one's is saved. Strip is bought as if wound from one coil to the next, so that coils are as few as the
// strip that all use, which each order's account leaves after its scrap.
func Group(list []Tally, c *shop.Capability, today shop.Day) Grouped {
	g := Grouped{Adds: make([]float64, len(list)), Governs: -1}
	var order []int
	for i := range list {
		if list[i].Work != nil && !list[i].Refused {
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int { return alikeSetUp(list[a].Work, list[b].Work) })
	trucks, after, gate := 0.0, 0, 0
	byLine := map[string]units.Duration{}
	for _, i := range order {
		w := list[i].Work
		if n := len(g.Batches); n == 0 || alikeSetUp(&g.Batches[n-1].Work, w) != 0 {
			b := Batch{Work: *w, Change: units.Duration(w.SetUp)}
			if n > 0 && g.Batches[n-1].Line == w.Line {
				b.Change = change(c, &g.Batches[n-1].Work, w)
			}
			g.Batches = append(g.Batches, b)
			g.Changes += b.Change
		}
		b := &g.Batches[len(g.Batches)-1]
		b.Orders = append(b.Orders, i)
		g.SetUps += units.Duration(w.SetUp)
		byLine[w.Line] += units.Duration(w.Hours)
		trucks += list[i].Trucks
		g.Alone += list[i].Price
		after = max(after, w.After)
		if !w.Queue {
			g.Unknown++
		} else if w.Gate > gate || g.Governs < 0 {
			gate, g.Governs = w.Gate, i
		}
	}
	g.Together, g.Trucks = len(order), int(math.Ceil(trucks-shop.Slack))
	for i := range g.Batches {
		g.Batches[i].share(list, g.Adds)
		g.Saved += g.Batches[i].Saved
	}
	g.crates(list, order)
	g.strips(list, order)
	saved := g.SetUps - g.Changes
	for _, hours := range byLine {
		g.Hours = max(g.Hours, hours)
	}
	g.Hours = max(0, g.Hours-max(0, saved)/units.Duration(max(1, len(byLine))))
	if g.Unknown == 0 && len(order) > 0 {
		cal := &c.Calendar
		days := math.Ceil(float64(g.Hours)/(float64(cal.Shifts)*float64(c.Crew.Shift)) - shop.Slack)
		if days <= mostDays {
			turn := cal.Working(today+shop.Day(gate), cal.Queue)
			g.Ready = cal.Working(cal.Working(turn, max(1, int(days))-1)+shop.Day(after), 0)
		}
	}
	return g
}

// mostDays bounds the work that a day is promised for.
const mostDays = 2500

// change is how long the line takes from one batch to the next.
func change(c *shop.Capability, from, to *Work) units.Duration {
	i := slices.IndexFunc(c.Lines, func(l shop.Line) bool { return l.Name == to.Line })
	if i < 0 {
		return units.Duration(to.SetUp)
	}
	return making.ChangeTime(&c.Lines[i].ChangeOver, from.setup(), to.setup())
}

// share says what each order of a batch adds to the price of all: its own price, without the set-up that the batch has even if it does not come.
func (b *Batch) share(list []Tally, adds []float64) {
	dearest, next := -1, 0.0
	for _, i := range b.Orders {
		if dearest < 0 || list[i].Work.Worth > list[dearest].Work.Worth {
			dearest = i
		}
	}
	for _, i := range b.Orders {
		if i != dearest {
			next = max(next, list[i].Work.Worth)
			b.Saved += list[i].Work.Worth
			adds[i] = list[i].Price - list[i].Work.Worth
		}
	}
	adds[dearest] = list[dearest].Price - next // without it the next dearest is paid
}

// crates packs orders together whose tubes are as long and as high over their fins, and of which a crate takes as many: by size and mass they may
// stand in any one. What an order adds is less by the crates that it finds room in. An order whose price does not rest on its crates packs alone.
func (g *Grouped) crates(list []Tally, order []int) {
	var all []Crate // tubes of all orders that share
	in := make([]int, len(list))
	for _, i := range order {
		k := &list[i].Work.Crate
		if k.Holds == 0 {
			continue
		}
		own := k.of(k.Tubes)
		g.Crates, g.Shared = g.Crates+own, g.Shared+own
		if k.Worth == 0 {
			continue
		}
		at := slices.IndexFunc(all, func(o Crate) bool {
			return o.Holds == k.Holds && alikeSize(o.FinOD, k.FinOD) && alikeSize(o.Length, k.Length)
		})
		if at < 0 {
			all = append(all, *k)
			in[i] = len(all)
			continue
		}
		o := &all[at]
		saved := own - (o.of(o.Tubes+k.Tubes) - o.of(o.Tubes))
		o.Tubes, in[i] = o.Tubes+k.Tubes, at+1
		g.Shared, g.Saved = g.Shared-saved, g.Saved+float64(saved)*k.Worth
	}
	for _, i := range order {
		if at := in[i]; at > 0 {
			k, o := &list[i].Work.Crate, &all[at-1]
			g.Adds[i] -= float64(k.of(k.Tubes)-(o.of(o.Tubes)-o.of(o.Tubes-k.Tubes))) * k.Worth
		}
	}
}

// strips buys strip for all orders together.
func (g *Grouped) strips(list []Tally, order []int) {
	coil := []float64{}
	for _, i := range order {
		t := &list[i]
		if t.Strip == nil {
			continue
		}
		at := slices.IndexFunc(g.Strips, func(s SharedStrip) bool {
			return s.Metal == t.Strip.Metal && alikeSize(s.Width, t.Strip.Width) && alikeSize(s.Thickness, t.Strip.Thickness)
		})
		if at < 0 {
			at = len(g.Strips)
			g.Strips, coil = append(g.Strips, SharedStrip{Bought: Bought{Metal: t.Strip.Metal, Width: t.Strip.Width, Thickness: t.Strip.Thickness}}), append(coil, 0)
		}
		s := &g.Strips[at]
		s.Length, s.Mass, s.Coils = s.Length+t.Strip.Length, s.Mass+t.Strip.Mass, s.Coils+t.Strip.Coils
		coil[at] = max(coil[at], t.Work.Coil)
	}
	for i := range g.Strips {
		s := &g.Strips[i]
		s.Together = s.Coils
		if coil[i] > 0 {
			s.Together = min(s.Coils, int(math.Ceil(s.Length/coil[i]-shop.Slack)))
		}
	}
}
