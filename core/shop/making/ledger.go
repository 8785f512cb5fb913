package making

import "finwright/core/units"

// Ledger is where the strip of an order goes [m]:
//
//	bought + drawn = on good + scrap + remainder + returned
type Ledger struct {
	Coils     int // with those on hand
	Hand      int // of them on hand
	Bought    units.Length
	Drawn     units.Length // coils on hand
	OnGood    units.Length // tubes that ship
	RunDown   units.Length // of tubes that ship
	FirstOff  units.Length
	Rejected  units.Length
	CoilEnds  units.Length
	Joints    units.Length
	Stranded  units.Length
	CutBack   units.Length // so that a joint comes far enough off the ends and supports of its tube
	Left      units.Length // on the last coil, scrap
	Remainder units.Length // on the last coil, back to stock
	Returned  units.Length // on the last coil, one of those on hand
	Jointed   int          // joints made
	Cut       int          // coils that are cut back
	Changes   int          // coils put on after the first
}

// Scrap returns all strip [m] that neither ships nor goes back to stock.
//
// Valid: a ledger of Account.
// Source: addition.
func (l *Ledger) Scrap() units.Length {
	return l.RunDown + l.FirstOff + l.Rejected + l.CoilEnds + l.Joints + l.Stranded + l.CutBack + l.Left
}

// Paid returns the strip [m] that is bought for the order, less what goes back to stock.
//
// Valid: a ledger of Account.
// Source: subtraction.
func (l *Ledger) Paid() units.Length { return l.Bought - l.Remainder }

// Used returns the strip [m] that the order takes, on hand and bought.
//
// Valid: a ledger of Account.
// Source: addition.
func (l *Ledger) Used() units.Length { return l.Paid() + l.Drawn - l.Returned }

// ToBuy returns how many coils are bought.
//
// Valid: a ledger of Account.
// Source: subtraction.
func (l *Ledger) ToBuy() int { return l.Coils - l.Hand }

// JointsPerTube returns the mean number of joints on a tube [-].
//
// Valid: tubes made > 0.
// Source: definition.
func (l *Ledger) JointsPerTube(made int) float64 { return float64(l.Jointed) / float64(made) }

// Account says where the strip [m] goes when first-off, good and rejected tubes are wound one after the other. A coil that cannot
// serve the next tube within the joint rule is taken off, its rest is stranded, and winding starts again with a fresh one.
//
// Valid: Possible, one tube or more.
// Source: arithmetic.
func (w *Winding) Account() Ledger {
	var l Ledger
	l.OnGood, l.RunDown = w.Strip.Kept*units.Length(w.Good), w.Strip.Lost*units.Length(w.Good)
	l.FirstOff, l.Rejected = w.Strip.PerTube()*units.Length(w.FirstOff), w.Strip.PerTube()*units.Length(w.Rejected)
	left := w.Made()
	own, again := w.runs(left)
	for i := range own {
		tubes := min(left, own[i].tubes)
		left -= tubes
		l.add(&own[i], tubes, 1, left == 0)
	}
	if left > 0 {
		whole := (left - 1) / again.tubes
		l.add(&again, again.tubes, whole, false)
		l.add(&again, left-whole*again.tubes, 1, true)
	}
	l.Changes = l.Coils - 1
	l.Bought = w.Coil.Length * units.Length(l.ToBuy())
	return l
}

// add adds so many like runs of so many tubes each. The last coil of an order is not wound to its end.
func (l *Ledger) add(r *run, tubes, times int, last bool) {
	w, n := r.w, units.Length(times)
	joined, rest := r.joined(tubes), r.left(tubes)
	cut, lost := r.cuts(tubes)
	ends := units.Length(joined + 1)
	switch {
	case last && r.first+joined < len(w.Hand):
		l.Returned, ends = rest+w.Losses.CoilEnd, ends-1
	case last && w.Spent:
		l.Left, ends = rest+w.Losses.CoilEnd, ends-1
	case last:
		l.Remainder, ends = rest+w.Losses.CoilEnd, ends-1
	case r.cut:
		cut, lost = cut+1, lost+rest
	default:
		l.Stranded += n * rest
	}
	l.Coils += times * (joined + 1)
	hand := r.hand(tubes)
	for i := range hand {
		l.Drawn += w.Hand[r.first+i].Length
	}
	l.Hand += hand
	l.CoilEnds += n * (w.Losses.CoilStart*units.Length(joined+1) + w.Losses.CoilEnd*ends)
	l.Joints += n * w.Losses.Joint * units.Length(joined)
	l.Jointed += times * joined
	l.Cut += times * cut
	l.CutBack += n * lost
}
