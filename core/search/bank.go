package search

import "finwright/core/design"

// enterBank holds what is known of a design before it is rated, the quickest first.
func (w *walker) enterBank() (cut int) {
	in, s := &w.in, w.s
	if in.Bank.Passes > in.Bank.Rows && len(design.Check(in, design.OfPasses)) > 0 || !w.fits() {
		return impossible
	}
	in.Job.Quantity = design.BankTubes(in)
	w.values = Values{}
	wide := float64(in.Bank.TubesPerRow) * float64(in.TubePitch())
	for _, m := range [...]struct {
		at int
		si float64
	}{
		{length, float64(in.Tube.Length)},
		{width, wide},
		{face, wide * float64(in.Tube.FinnedLength())},
		{tubes, float64(in.Job.Quantity)},
	} {
		if cut := w.hold(ofBank, m.at, m.si); cut != none {
			return cut
		}
		w.values.Set(m.at, m.si)
	}
	if s.asks(mass) {
		_, _, dry := design.Bundle(in)
		if cut := w.hold(ofBank, mass, dry); cut != none {
			return cut
		}
		w.values.Set(mass, dry)
	}
	j, cut := w.judge()
	if cut != none {
		return cut
	}
	best := w.values
	if cut := w.foresee(&best); cut != none {
		return cut
	}
	if cut := w.plan(j, &best); cut != none {
		return cut
	}
	return w.compare(&best)
}

// fits reports whether ends and spans leave fins on the tube, which hangs on its length alone.
func (w *walker) fits() bool {
	at := 0
	if last := len(w.at) - 1; last >= 0 && w.s.axes[last].ID == lengthField {
		at = w.at[last]
	}
	if w.fit[at] == 0 {
		w.fit[at] = 1
		if len(design.Check(&w.in, design.OfLengths)) > 0 {
			w.fit[at] = -1
		}
	}
	return w.fit[at] > 0
}

// judge holds the line to its verdict, as far as that does not hang on how hot the tube gets; it returns none where no line is asked.
func (w *walker) judge() (j *judged, cut int) {
	s := w.s
	if s.must.line == "" && !s.plans {
		return nil, none
	}
	j = w.bench.line(&w.in)
	if s.must.line != "" && (j.refused || s.must.line == Clear && j.sole && j.watched) {
		return j, w.refuse(ofBank, byLine)
	}
	return j, none
}

// plan holds price and promise, which take the longest of all that is known before a design is rated, where the line hangs on no
// temperature.
func (w *walker) plan(j *judged, best *Values) (cut int) {
	s, in := w.s, &w.in
	if !s.plans || !j.sole {
		return none
	}
	p := w.bench.plan(in, j, s.needed)
	if cut := w.known(price, p.price, p.priced); cut != none {
		return cut
	}
	if !p.priced {
		if cut := w.known(perKilowatt, 0, false); cut != none {
			return cut
		}
	} else {
		best.Set(price, p.price)
		if heat := best.SI[duty]; heat > 0 {
			best.Set(perKilowatt, p.price/(heat*float64(in.Job.Bundles)/1000))
			if cut := w.hold(ofBank, perKilowatt, best.SI[perKilowatt]); cut != none {
				return cut
			}
		}
	}
	return w.known(ready, p.day, p.promised)
}

// known takes a number that may be unknown, which then holds no bound and is none that is wanted.
func (w *walker) known(at int, si float64, is bool) (cut int) {
	switch {
	case is:
		w.values.Set(at, si)
		return w.hold(ofBank, at, si)
	case w.s.must.states(at):
		return w.refuse(ofBank, at)
	case w.s.asks(at):
		return w.refuse(ofBank, unknown)
	}
	return none
}

// asks reports whether a measure must hold or is wanted.
func (s *Search) asks(at int) bool { return s.asked>>at&1 == 1 }

// lastDigits is by what share a sum may come out otherwise in another order [-].
const lastDigits = 1e-13

// foresee holds what the bank does at best, where anything is known of that.
func (w *walker) foresee(best *Values) (cut int) {
	if !w.scoped {
		return none
	}
	if w.reach.FacePower > 0 {
		power := w.reach.FacePower * best.SI[face]
		if cut := w.hold(ofBank, fanPower, power); cut != none {
			return cut
		}
		best.Set(fanPower, power)
	}
	if !w.s.heats {
		return none
	}
	ua, heat := w.reach.Transfer(&w.in.Input)
	if cut := w.hold(ofBank, transfer, ua); cut != none {
		return cut
	}
	best.Set(duty, heat)
	return w.hold(ofBank, duty, heat)
}

// compare holds what a design is at best to the hurdle.
func (w *walker) compare(best *Values) (cut int) {
	if w.s.loose != 0 {
		missed := 0.0
		for _, m := range w.missed {
			missed += m
		}
		best.Set(miss, missed*(1-lastDigits))
	}
	if w.hurdle.outdoes(w.s.atBest(best), w.place) {
		return outdone
	}
	return none
}
