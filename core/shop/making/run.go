package making

import (
	"math"
	"sort"

	"finwright/core/shop"
	"finwright/core/units"
)

// run is some tubes wound one after the other, from a coil that is begun between two tubes to the next that is.
type run struct {
	w     *Winding
	first int            // the coil that it begins with: one of those on hand, or behind them one that is bought
	tubes int            // that it serves
	ends  []units.Length // of strip wound, where each coil is joined on; of one that begins with a bought coil and joins anywhere none are listed
	cut   bool           // the last coil is cut back to the end of a tube, since a joint in the next has no place
}

// mostJoints bounds the joints of a run whose places are looked for: then a coil is begun between two tubes.
const mostJoints = 1000

// coil returns the length [m] of the n-th coil: those on hand come first.
func (w *Winding) coil(n int) units.Length {
	if n < len(w.Hand) {
		return w.Hand[n].Length
	}
	return w.Coil.Length
}

// usable returns what the n-th coil gives [m], joined on within a tube or not.
func (w *Winding) usable(n int, joined bool) units.Length {
	length := w.coil(n) - w.Losses.CoilStart - w.Losses.CoilEnd
	if joined {
		length -= w.Losses.Joint
	}
	return length
}

// runs returns how so many tubes are wound: the runs that begin with a coil on hand, and the one by which the others are wound, one
// like the other.
func (w *Winding) runs(tubes int) (own []run, again run) {
	for n := 0; n < len(w.Hand) && tubes > 0; {
		r := w.begin(n, tubes)
		own = append(own, r)
		n, tubes = n+r.joined(r.tubes)+1, tubes-r.tubes
	}
	if w.Placed {
		return own, w.begin(len(w.Hand), max(1, tubes))
	}
	return own, run{w: w, first: len(w.Hand), tubes: w.served(max(1, tubes))}
}

// begin winds at most so many tubes from the n-th coil on and joins one coil to the other as the joint rule lets it. Where the end
// of a coil has no place for a joint it is cut back to one. A tube that cannot be had so is begun with a fresh coil: then the run ends.
//
// Source: own derivation.
func (w *Winding) begin(n, most int) run {
	per := w.Strip.PerTube()
	r := run{w: w, first: n, ends: make([]units.Length, 0, int(min(float64(per*units.Length(most)/w.Fresh()), mostJoints)))}
	end := w.usable(n, false)
	var from units.Length // where the coil in work was joined on
	for in, joints := 0, 0; ; {
		whole := int(math.Floor(min(float64(end/per)*(1+roundOff)+shop.Slack, float64(most))))
		if whole >= most {
			r.tubes = most
			return r
		}
		if whole > in {
			in, joints = whole, 0
		}
		begun := units.Length(whole) * per
		at := begun + w.place(end-begun)
		next := w.usable(n+len(r.ends)+1, true)
		switch {
		case w.Placed && at <= max(begun, from)+per*shop.Slack:
			r.tubes, r.cut = whole, end-begun > per*shop.Slack
			return r
		case joints == w.Joints, joints > 0 && at-from < w.Apart*(1-shop.Slack), next <= 0, len(r.ends) == mostJoints:
			r.tubes = whole
			return r
		}
		r.ends, from, joints = append(r.ends, at), at, joints+1
		end = at + next
	}
}

// place returns the last place [m] in a tube's strip at which a coil may end, up to where it does; 0 is before the tube.
func (w *Winding) place(end units.Length) units.Length {
	if !w.Placed {
		return end
	}
	var at units.Length
	for _, p := range w.Places {
		if p.From <= end {
			at = min(end, p.To)
		}
	}
	return at
}

// joined returns how many coils are joined on in so many of its tubes.
func (r *run) joined(tubes int) int {
	if !r.w.Placed && r.first >= len(r.w.Hand) {
		return r.w.joined(tubes)
	}
	need := r.w.Strip.PerTube() * units.Length(tubes)
	return sort.Search(len(r.ends), func(k int) bool { return r.ends[k] >= need*(1-shop.Slack) })
}

// end returns how much strip [m] of the run is wound when its k-th coil ends, if it is not cut back.
func (r *run) end(k int) units.Length {
	switch {
	case k == 0:
		return r.w.usable(r.first, false)
	case k > len(r.ends):
		return r.w.Usable() + r.w.Fresh()*units.Length(k)
	}
	return r.ends[k-1] + r.w.usable(r.first+k, true)
}

// left returns the strip on the coil in work after so many of its tubes.
func (r *run) left(tubes int) units.Length {
	return r.end(r.joined(tubes)) - r.w.Strip.PerTube()*units.Length(tubes)
}

// cuts returns how many coils are cut back in so many of its tubes, and the strip [m] that is lost by it.
func (r *run) cuts(tubes int) (n int, lost units.Length) {
	for k := range min(r.joined(tubes), len(r.ends)) {
		if by := r.end(k) - r.ends[k]; by > r.w.Strip.PerTube()*shop.Slack {
			n, lost = n+1, lost+by
		}
	}
	return n, lost
}

// hand returns how many coils on hand are used in so many of its tubes.
func (r *run) hand(tubes int) int {
	return max(0, min(len(r.w.Hand)-r.first, r.joined(tubes)+1))
}
