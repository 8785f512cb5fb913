package making

import (
	"math"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Layer is one layer of tubes in a crate.
type Layer struct {
	Tubes int
	First units.Length // centre of the first tube, from the left side
	Level units.Length // of the centres, above the floor
}

// Packing is how an order is crated, lifted and loaded.
type Packing struct {
	Layers    []Layer // of a full crate
	Pitch     units.Length
	Separator units.Length // between layers; 0 where they nest
	PerCrate  int
	Room      int // tubes that the crate holds by its size
	Holds     int // by its size and its mass
	Crates    int
	Fuller    int // crates that hold PerCrate; the others hold one less
	Length    units.Length
	One       units.Mass // of a tube at the heavy side of its tolerances
	Net       units.Mass // of the heaviest crate, as Gross
	Gross     units.Mass
	Order     units.Mass // gross
	Trucks    int
	PerTruck  int             // crates
	OnBed     int             // crates that stand on a truck's bed; 0 where the bed is not stated
	NoTruck   message.Message // why none takes a crate
	Lifting   Lifting
	Warnings  []message.Message
}

// Pack fills as few crates as there must be, all alike to one tube: sizes in [m], masses in [kg]. A crate is made as long as the tube
// with its clearance. The load stands tip on tip, so the pitch is the fin OD.
// Without separators layers nest at sqrt(3)/2 of it and every second one is shifted
// by half a pitch; with them nothing nests.
//
// Valid: tubes > 0.
// Source: common practice from memory and engineering judgement, editable; plane geometry.
func Pack(k *shop.Crate, t *tube.Tube, tubes int) (p Packing, why message.Message) {
	if t.Length+k.Clearance > k.Length*(1+shop.Slack) {
		return p, message.New("shop.why.crate_short", "length", along(t.Length+k.Clearance), "crate", along(k.Length))
	}
	layers := fill(k, t.FinOD())
	one := float64(t.HeaviestWeight())
	layers = carried(k, layers, units.MassPerLength(one/float64(t.Length)))
	limit := float64(k.Heaviest())
	most := int(math.Floor(limit/(one*(1+k.Tare)) + shop.Slack))
	room := 0
	for _, l := range layers {
		room += l.Tubes
	}
	switch {
	case room == 0:
		return p, message.New("shop.why.crate_small", "fin", message.Of(units.Diameter, t.FinOD()))
	case most <= 0: // also where the crane lifts less than its tackle
		return p, message.New("shop.why.crate_heavy", "mass", message.Of(units.Weight, one*(1+k.Tare)), "limit", message.Of(units.Weight, limit))
	}
	p = Packing{Pitch: t.FinOD(), Separator: k.Separator, Room: room, Length: t.Length + k.Clearance, One: units.Mass(one)}
	holds := min(room, most)
	p.Holds = holds
	p.Crates = (tubes + holds - 1) / holds
	p.PerCrate = (tubes + p.Crates - 1) / p.Crates
	p.Fuller = tubes - p.Crates*(p.PerCrate-1)
	p.Layers = keep(layers, p.PerCrate)
	p.Net = units.Mass(one * float64(p.PerCrate))
	p.Gross = p.Net * units.Mass(1+k.Tare)
	p.Order = units.Mass(one * float64(tubes) * (1 + k.Tare))
	p.load(k)
	p.Lifting = lift(k, t, p.Length, p.Gross)
	if k.LayerLoad == 0 && len(p.Layers) > 1 {
		p.Warnings = append(p.Warnings, message.New("shop.why.layers_unjudged"))
	}
	if min(t.PlainA, t.PlainB) < leastSaddle {
		p.Warnings = append(p.Warnings, message.New("shop.why.saddle", "end", along(min(t.PlainA, t.PlainB)), "least", message.Least(along(leastSaddle))))
	}
	return p, message.Message{}
}

// load counts the trucks: each takes what it bears and what stands on its bed.
//
// Source: division; a crate's walls: engineering judgement.
func (p *Packing) load(k *shop.Crate) {
	perTruck := max(1, int(math.Floor(float64(k.Payload/p.Gross)+shop.Slack)))
	if bed := k.Bed; bed.Length > 0 {
		beside := func(room, one units.Length) int { return int(math.Floor(float64(room/one) + shop.Slack)) }
		if p.OnBed = beside(bed.Length, p.Length) * beside(bed.Width, k.Width+2*crateWall) * bed.Stack; p.OnBed == 0 {
			p.NoTruck = message.New("shop.why.no_truck", "length", along(p.Length), "width", along(k.Width+2*crateWall), "bed_length", along(bed.Length), "bed_width", along(bed.Width))
			return
		}
		perTruck = min(perTruck, p.OnBed)
	}
	p.Trucks, p.PerTruck = (p.Crates+perTruck-1)/perTruck, perTruck
}

const crateWall = 45 * units.Millimetre

// carried cuts layers down to those that the tubes of the lowest carry, of a mass per length [kg/m].
func carried(k *shop.Crate, layers []Layer, one units.MassPerLength) []Layer {
	if k.LayerLoad == 0 {
		return layers
	}
	above := 0
	for i := 1; i < len(layers); i++ {
		above += layers[i].Tubes
		if units.MassPerLength(above)*one > k.LayerLoad*units.MassPerLength(layers[0].Tubes)*(1+shop.Slack) {
			return layers[:i]
		}
	}
	return layers
}

// leastSaddle is the plain end that a saddle needs.
//
// Source: engineering judgement.
const leastSaddle = 25 * units.Millimetre

// fill returns the layers that the crate's section holds.
func fill(k *shop.Crate, df units.Length) []Layer {
	nests := k.Separator == 0
	step := df + k.Separator
	if nests {
		step = df * units.Length(math.Sqrt(3)/2)
	}
	across := int(math.Floor(float64(k.Width/df) + shop.Slack))
	spare := k.Width - units.Length(across)*df
	layers := make([]Layer, 0, 1+int(max(0, k.Height-df)/step))
	for level := df / 2; level+df/2 <= k.Height*(1+shop.Slack); level += step {
		l := Layer{Tubes: across, First: df / 2, Level: level}
		if nests && len(layers)%2 == 1 {
			l.First = df
			if spare < df/2*(1-shop.Slack) {
				l.Tubes--
			}
		}
		if l.Tubes <= 0 {
			break
		}
		layers = append(layers, l)
	}
	return layers
}

// keep cuts layers down to those that n tubes fill, from the floor up.
func keep(layers []Layer, n int) []Layer {
	for i := range layers {
		layers[i].Tubes = min(layers[i].Tubes, n)
		if n -= layers[i].Tubes; n == 0 {
			return layers[:i+1]
		}
	}
	return layers
}

func along(l units.Length) message.Amount { return message.Of(units.Distance, l) }
