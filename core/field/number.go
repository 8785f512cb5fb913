package field

import "finwright/core/rating"

// IsNumber reports whether the field holds a number.
func (f *Field) IsNumber() bool { return f.Real != nil || f.Whole != nil || f.Optional != nil }

// Get returns the field's number in an input [SI]; nought where it is not stated.
func (f *Field) Get(in *Input) float64 {
	switch {
	case f.Whole != nil:
		return float64(*f.Whole(in))
	case f.Optional != nil:
		return f.Optional(in).SI
	}
	return *f.Real(in)
}

// Set states the field's number in an input [SI].
func (f *Field) Set(in *Input, si float64) {
	switch {
	case f.Whole != nil:
		*f.Whole(in) = int(si)
	case f.Optional != nil:
		*f.Optional(in) = rating.Optional{SI: si, Stated: true}
	default:
		*f.Real(in) = si
	}
}

// Within reports whether a number [SI] lies in the field's range, if it has one.
func (f *Field) Within(si float64) bool {
	return f.Unbounded != "" || si >= f.Low && si <= f.High
}

// Sweeps reports whether a sweep can vary the field: it holds a number that is not whole, and that makes sense by itself.
func (f *Field) Sweeps() bool { return (f.Real != nil || f.Optional != nil) && f.Fixed == "" }
