package exchanger

import (
	"math"

	"finwright/core/message"
	"finwright/core/numeric"
)

// LogMean returns the logarithmic mean of two temperature differences [K].
//
//	(a - b)/ln(a/b)
//
// Valid: a > 0, b > 0; equal ones return themselves.
// Source: definition.
func LogMean(a, b float64) float64 {
	x := (a - b) / b
	switch {
	case x == 0:
		return a
	case math.Abs(x) > 0.5:
		return (a - b) / math.Log(a/b)
	}
	return b * x / math.Log1p(x)
}

// most is the largest ntu searched for; no bank is built to a tenth of it.
const most = 500

// Effectiveness returns the air's temperature effectiveness [-], its rise over
// the difference of inlet temperatures, for ntu = UA/Cair [-] and
// ratio = Cair/Cprocess [-].
//
// Valid: ntu > 0, ratio >= 0.
// Source: exact row-by-row solution, see respond.
func (a Arrangement) Effectiveness(ntu, ratio float64) float64 {
	w := workspaces.Get().(*workspace)
	defer workspaces.Put(w)
	return a.respond(w, ntu, ratio).air
}

// TransferUnits returns the ntu = UA/Cair [-] that gives the air a temperature
// effectiveness p [-] at ratio = Cair/Cprocess [-], or why none does.
//
// Valid: p > 0, ratio >= 0.
// Source: Effectiveness, inverted by bracketing.
func (a Arrangement) TransferUnits(p, ratio float64) (ntu float64, absent message.Message) {
	if !(p > 0 && ratio >= 0) {
		panic("exchanger: effectiveness and ratio must be positive")
	}
	short := func(ntu float64) float64 { return a.Effectiveness(ntu, ratio) - p }
	// Counterflow needs the least, so that is where to start; double until enough.
	low := p / LogMean(1, max(1-p, 1e-9)) / 2
	for high := 2 * low; low < most; low, high = high, 2*high {
		high = min(high, most)
		if short(high) < 0 {
			continue
		}
		ntu, err := numeric.Root(short, low, high)
		if err != nil {
			break
		}
		return ntu, message.Message{}
	}
	return 0, message.New("exchanger.unreachable", "rows", a.Rows, "passes", a.Passes)
}

// CorrectionFactor returns F [-], the mean temperature difference of the
// arrangement over that of counterflow, for the air's temperature effectiveness
// p [-] and ratio = Cair/Cprocess [-], or why there is none.
//
//	F = ntu in counterflow / ntu of the arrangement
//
// Valid: p > 0, p < 1, p ratio < 1.
// Source: definition; exact, where charts and fits are off by up to 0.02.
func (a Arrangement) CorrectionFactor(p, ratio float64) (f float64, absent message.Message) {
	if !(p < 1 && p*ratio < 1) {
		return 0, message.New("exchanger.crossed")
	}
	ntu, absent := a.TransferUnits(p, ratio)
	if !absent.None() {
		return 0, absent
	}
	return p / (LogMean(1-p, 1-p*ratio) * ntu), message.Message{}
}
