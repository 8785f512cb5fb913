package material

import (
	"strings"

	"finwright/core/message"
	"finwright/core/units"
)

// Property names one thing the user says of a metal.
type Property string

// Properties.
const (
	NameProperty         Property = "name"
	ConductivityProperty Property = "conductivity"
	DensityProperty      Property = "density"
	ExpansionProperty    Property = "expansion"
)

// Fault is a field that cannot be accepted, and why.
type Fault struct {
	Property Property
	Why      message.Message
}

// longestName is how many letters of a name the page and the papers have room for.
const longestName = 40

// bounds hold every metal, with room: they catch a wrong unit, not a rare alloy.
// Source: engineering judgement.
var bounds = map[Property]struct {
	kind      units.Kind
	low, high float64
}{
	ConductivityProperty: {units.Conduct, 1, 500},
	DensityProperty:      {units.Dense, 1000, 23000},
	ExpansionProperty:    {units.Expand, 1e-6, 40e-6},
}

// NewOwn returns a metal described by the user, with constant properties between
// -50 and 600 degrees C, or every fault in the description.
func NewOwn(name string, k units.Conductivity, rho units.Density, alpha units.Expansion) (Metal, []Fault) {
	var faults []Fault
	name = strings.TrimSpace(name)
	if letters := len([]rune(name)); letters == 0 || letters > longestName {
		faults = append(faults, Fault{NameProperty, message.New("metal.fault.name", "longest", longestName)})
	}
	check := func(f Property, v float64) {
		if b := bounds[f]; !(v >= b.low && v <= b.high) {
			faults = append(faults, Fault{f, message.New("metal.fault.range",
				"low", message.Least{Kind: b.kind, SI: b.low},
				"high", message.Most{Kind: b.kind, SI: b.high})})
		}
	}
	check(ConductivityProperty, float64(k))
	check(DensityProperty, float64(rho))
	check(ExpansionProperty, float64(alpha))
	if faults != nil {
		return Metal{}, faults
	}
	return Metal{
		ID: Own, Family: OtherMetal, typedName: name,
		Density:      Value{float64(rho), user},
		Conductivity: constant(float64(k)),
		Expansion:    constant(float64(alpha)),
	}, nil
}

func constant(v float64) Curve {
	return Curve{[]Point{{-50, v}, {600, v}}, user}
}
