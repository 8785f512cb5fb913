package figure

import (
	"math"

	"finwright/core/message"
	"finwright/core/units"
)

// Limit is one bound of a correlation's published range beside the value met.
// An open side is infinite.
type Limit struct {
	Variable  string // its text is "limit.<variable>"
	Kind      units.Kind
	Value     float64 // as Kind stores it
	Low, High float64
	Digit     float64 // as Kind stores it: one in the last digit that the source prints of a bound; 0: the bounds are exact
}

// Printed returns the limit with bounds that a source prints to the given digit: what rounds to a bound is not outside it.
func (l Limit) Printed(digit float64) Limit {
	l.Digit = digit
	return l
}

// slack keeps a value typed in inches from passing a bound published in inches.
const slack = 1e-9

// In reports whether the value lies within the bounds, which are included.
func (l Limit) In() bool { return l.Passed() <= slack }

// Passed returns by how much the value lies outside [-], as a share of the bound
// it passed, or of the span where that bound is zero; 0 inside, infinite for no number.
func (l Limit) Passed() float64 {
	if math.IsNaN(l.Value) {
		return math.Inf(1)
	}
	over, bound := l.Value-l.High-l.Digit/2, l.High
	if l.Value < l.Low {
		over, bound = l.Low-l.Digit/2-l.Value, l.Low
	}
	if over <= 0 {
		return 0
	}
	if bound == 0 {
		bound = l.High - l.Low
	}
	if bound == 0 || math.IsInf(bound, 0) {
		bound = 1
	}
	return over / math.Abs(bound)
}

// Nearest returns the value within the bounds that is nearest to the one met.
func (l Limit) Nearest() float64 { return min(max(l.Value, l.Low), l.High) }

// Message says which variable is outside which bounds.
func (l Limit) Message() message.Message {
	quantity := func(x float64) message.Amount { return message.Amount{Kind: l.Kind, SI: x} }
	if l.Variable == "in_line" { // of a choice, numbers would say nothing
		return message.New("limit.in_line")
	}
	variable, value := message.Key("limit."+l.Variable), quantity(l.Value)
	switch {
	case math.IsInf(l.High, 1):
		return message.New("limit.from", "variable", variable, "value", value, "low", quantity(l.Low))
	case math.IsInf(l.Low, -1):
		return message.New("limit.to", "variable", variable, "value", value, "high", quantity(l.High))
	}
	return message.New("limit.between", "variable", variable, "value", value, "low", quantity(l.Low), "high", quantity(l.High))
}

// AllIn reports whether every limit is kept.
func AllIn(limits []Limit) bool {
	for _, l := range limits {
		if !l.In() {
			return false
		}
	}
	return true
}

// Worst returns the largest share by which any limit is passed [-]; 0 if none is.
func Worst(limits []Limit) float64 {
	worst := 0.0
	for _, l := range limits {
		worst = max(worst, l.Passed())
	}
	return worst
}
