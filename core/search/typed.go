package search

import "strings"

// Marks of an axis as it is typed: values part by the one, a row of values has the other between its ends, and its step behind.
const (
	parts = ";"
	upTo  = ".."
)

// Said returns what may vary as it is typed: "8 fpi; 10 fpi", or "8 fpi .. 12 fpi; 1 fpi" from one to another in steps.
func (a *Axis) Said() string {
	if a.Step != "" {
		return a.Low + " " + upTo + " " + a.High + parts + " " + a.Step
	}
	return strings.Join(a.Texts, parts+" ")
}

// AxisOf reads one as it is typed. What its values are is told when the problem is read.
func AxisOf(field, typed string) Axis {
	a := Axis{Field: field}
	if low, rest, row := strings.Cut(typed, upTo); row {
		high, step, _ := strings.Cut(rest, parts)
		a.Low, a.High, a.Step = strings.TrimSpace(low), strings.TrimSpace(high), strings.TrimSpace(step)
		if a.Step == "" {
			a.Step = typed // is no step, and told so
		}
		return a
	}
	for _, text := range strings.Split(typed, parts) {
		if text = strings.TrimSpace(text); text != "" {
			a.Texts = append(a.Texts, text)
		}
	}
	return a
}
