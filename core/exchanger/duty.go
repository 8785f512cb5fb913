package exchanger

import "math"

// Stream is a fluid that enters the bank.
type Stream struct {
	In       float64 // [C]
	Capacity float64 // [W/K] mass flow times heat capacity; math.Inf(1) for a process fluid that condenses or boils
}

// Duty is what a bank does.
type Duty struct {
	Heat          float64 // [W] from the process to the air; negative if it goes the other way
	AirOut        float64 // [C] mean
	ProcessOut    float64 // [C] mixed
	TransferUnits float64 // [-] UA/Cair
	Ratio         float64 // [-] Cair/Cprocess
	Effectiveness float64 // [-] of the air: its rise over the difference of inlet temperatures
	Spent         bool    // a stream leaves as hot as the other enters, to rounding: Counterflow and Factor then say nothing
	Counterflow   float64 // [K] logarithmic mean difference in counterflow
	Factor        float64 // [-] F, by which the arrangement's mean difference is lower
	MeanProcess   float64 // [C] of the stream inside, over all of the bank
	MeanAir       float64 // [C] of the air about the tubes, over all of the bank
	Hottest       Corner  // metal
	Coldest       Corner  // metal
	HottestRoot   Corner
}

// local are the temperatures at one place of a row [C]. Wall and root are means round the tube and over the fins there.
type local struct {
	process float64
	airIn   float64
	airOut  float64
	wall    float64 // inside surface of the tube
	root    float64 // root of the fin, outside the bond
}

// Corner is where a metal temperature is extreme.
type Corner struct {
	Celsius float64
	Row     int     // from 0 at the air inlet
	Place   float64 // [-] along the tube
	AtRoot  bool    // at the fin's root, else at the wall inside
	Process float64 // [C] of the stream inside there
	Air     float64 // [C] of the air there, mean over the row's depth
	Share   float64 // [-] of the difference between the two that lies before the metal
}

// Parts of the difference between the inlets [-] below which a stream that leaves has none left: what a mesh can tell, and a number.
const (
	spent = 1e-15
	least = 1e-300
)

// Rate returns the duty [W] of a bank with the overall coefficient u between air
// and process streams, and its temperatures [C]. Metal temperatures use the mean coefficient in every row.
//
// Valid: air capacity positive and finite, process capacity positive.
// Source: exact row-by-row solution, see respond.
func (b Bank) Rate(u Overall, air, process Stream) Duty {
	return b.rate(u, air, process, nil)
}

// Balance is the part of a Duty for which a search asks many times.
type Balance struct {
	Heat        float64 // [W]
	MeanProcess float64 // [C]
}

// Balance returns what Rate finds with the coefficient u [W/(m2 K)] on the bare area: heat [W] and mean temperature [C].
//
// Valid: as Rate.
// Source: as Rate.
func (b Bank) Balance(u float64, air, process Stream) Balance {
	w := workspaces.Get().(*workspace)
	defer workspaces.Put(w)
	r := b.respond(w, u*b.BareArea()/air.Capacity, air.Capacity/process.Capacity)
	return Balance{Heat: air.Capacity * r.air * (process.In - air.In), MeanProcess: (1-r.within)*air.In + r.within*process.In}
}

// rate shows each place of each row on its way to whom it concerns.
func (b Bank) rate(u Overall, air, process Stream, show func(row, place int, t local)) Duty {
	if !(air.Capacity > 0) || math.IsInf(air.Capacity, 1) || !(process.Capacity > 0) {
		panic("exchanger: capacities must be positive, the air's finite")
	}
	ntu := u.OnBare * b.BareArea() / air.Capacity
	ratio := air.Capacity / process.Capacity
	w := workspaces.Get().(*workspace)
	defer workspaces.Put(w)
	r := b.respond(w, ntu, ratio)
	b.follow(w, &r)
	celsius := func(part float64) float64 { return (1-part)*air.In + part*process.In }

	d := Duty{
		Heat:          air.Capacity * r.air * (process.In - air.In),
		AirOut:        celsius(r.air),
		ProcessOut:    celsius(r.process),
		TransferUnits: ntu,
		Ratio:         ratio,
		Effectiveness: r.air,
	}
	if d.Spent = r.process < spent && !r.exact || r.airLeft < least; !d.Spent {
		mean := LogMean(r.airLeft, r.process)
		d.Counterflow = mean * math.Abs(process.In-air.In)
		d.Factor = r.air / (ntu * mean)
	}

	d.MeanProcess = celsius(r.within)
	d.MeanAir = d.MeanProcess - d.Heat/(u.OnBare*b.BareArea())

	perRow := ntu / float64(b.Rows)
	toMean := -math.Expm1(-perRow) / perRow // mean difference over that where the air enters
	toWall, toRoot := u.shareUpTo(InsideFouling), u.shareUpTo(Joint)
	hottest, coldest, hottestRoot := extreme{celsius: math.Inf(-1)}, extreme{celsius: math.Inf(1)}, extreme{celsius: math.Inf(-1)}
	for k, row := range r.rows {
		for i := range r.places {
			drop := toMean * (row.Process[i] - row.AirIn[i])
			wall, root := celsius(row.Process[i]-toWall*drop), celsius(row.Process[i]-toRoot*drop)
			if show != nil {
				show(k, i, local{celsius(row.Process[i]), celsius(row.AirIn[i]), celsius(row.AirOut[i]), wall, root})
			}
			if root > hottestRoot.celsius {
				hottestRoot = extreme{root, k, i, true}
			}
			for _, at := range [...]extreme{{wall, k, i, false}, {root, k, i, true}} {
				if at.celsius > hottest.celsius {
					hottest = at
				}
				if at.celsius < coldest.celsius {
					coldest = at
				}
			}
		}
	}
	corner := func(e extreme) Corner {
		row, share := &r.rows[e.row], toWall
		if e.atRoot {
			share = toRoot
		}
		drop := toMean * (row.Process[e.place] - row.AirIn[e.place])
		return Corner{e.celsius, e.row, r.places[e.place], e.atRoot, celsius(row.Process[e.place]), celsius(row.Process[e.place] - drop), share}
	}
	d.Hottest, d.Coldest, d.HottestRoot = corner(hottest), corner(coldest), corner(hottestRoot)
	return d
}

// extreme is where a corner is, of which the rest is asked once.
type extreme struct {
	celsius    float64
	row, place int
	atRoot     bool
}
