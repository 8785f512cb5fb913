package material

import (
	"strings"

	"finwright/core/message"
	"finwright/core/units"
)

// Field names one thing the user says of a metal.
type Field string

// Fields.
const (
	NameField         Field = "name"
	ConductivityField Field = "conductivity"
	DensityField      Field = "density"
	ExpansionField    Field = "expansion"
)

// Fault is a field that cannot be accepted, and why.
type Fault struct {
	Field Field
	Why   message.Message
}

// longestName is how many letters of a name the page and the papers have room for.
const longestName = 40

// bounds hold every metal, with room: they catch a wrong unit, not a rare alloy.
// Source: engineering judgement.
var bounds = map[Field]struct {
	kind      units.Kind
	low, high float64
}{
	ConductivityField: {units.Conduct, 1, 500},
	DensityField:      {units.Dense, 1000, 23000},
	ExpansionField:    {units.Expand, 1e-6, 40e-6},
}

// NewOwn returns a metal described by the user, with constant properties between
// -50 and 600 degrees C, or every fault in the description.
func NewOwn(name string, k units.Conductivity, rho units.Density, alpha units.Expansion) (Metal, []Fault) {
	var faults []Fault
	name = strings.TrimSpace(name)
	if letters := len([]rune(name)); letters == 0 || letters > longestName {
		faults = append(faults, Fault{NameField, message.New("metal.fault.name", "longest", longestName)})
	}
	check := func(f Field, v float64) {
		if b := bounds[f]; !(v >= b.low && v <= b.high) {
			faults = append(faults, Fault{f, message.New("metal.fault.range",
				"low", message.Quantity{Kind: b.kind, SI: b.low},
				"high", message.Quantity{Kind: b.kind, SI: b.high})})
		}
	}
	check(ConductivityField, float64(k))
	check(DensityField, float64(rho))
	check(ExpansionField, float64(alpha))
	if faults != nil {
		return Metal{}, faults
	}
	return Metal{
		ID: Own, Kind: OtherMetal, typedName: name,
		Density:      Value{float64(rho), user},
		Conductivity: constant(float64(k)),
		Expansion:    constant(float64(alpha)),
	}, nil
}

func constant(v float64) Curve {
	return Curve{[]Point{{-50, v}, {600, v}}, user}
}
