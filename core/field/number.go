package field

import "finwright/core/rating"

// Numeric is where a number of the input is kept [SI].
type Numeric interface {
	Get(in *Input) float64
	Set(in *Input, si float64)
}

// Real keeps a number as it is.
type Real func(in *Input) *float64

func (at Real) Get(in *Input) float64     { return *at(in) }
func (at Real) Set(in *Input, si float64) { *at(in) = si }

// Whole keeps a count.
type Whole func(in *Input) *int

func (at Whole) Get(in *Input) float64     { return float64(*at(in)) }
func (at Whole) Set(in *Input, si float64) { *at(in) = int(si) }

// Optional keeps a number that need not be stated.
type Optional func(in *Input) *rating.Optional

func (at Optional) Get(in *Input) float64     { return at(in).SI }
func (at Optional) Set(in *Input, si float64) { *at(in) = rating.Optional{SI: si, Stated: true} }
