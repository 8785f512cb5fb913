package rating

import (
	"errors"

	"finwright/core/fluid"
)

// Hindrance is why a bank cannot be rated, for a caller to put into words.
type Hindrance struct {
	Cause Cause
	Range *fluid.OutOfRange // what GasBeyond and StreamBeyond leave
}

// Cause is what kind of hindrance it is.
type Cause int

// Causes.
const (
	GasBeyond    Cause = iota // the gas, at its inlet or in the bank, has no known properties
	StreamBeyond              // the stream inside has none, or the gas at a wall that is as hot as the stream makes it
	NoCondensing              // the steam is no hotter than the gas
	NotSettled                // no heat was found: nothing known leads here, and a proof looks for it
)

// beyond turns a property asked for out of its range into a hindrance.
func beyond(c Cause, err error) *Hindrance {
	var out *fluid.OutOfRange
	if !errors.As(err, &out) {
		panic(err) // no other error is documented
	}
	return &Hindrance{c, out}
}
