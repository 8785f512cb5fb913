// Package material holds the metals of tubes and fins, each property with its
// source and how well it is known, and takes a user's own metal.
package material

import (
	"finwright/core/message"
	"finwright/core/units"
)

// Metal is a tube or fin metal.
type Metal struct {
	ID           string
	Family       Family
	Density      Value      // [kg/m3]
	Conductivity Curve      // [W/(m K)] over temperature
	Expansion    Curve      // [1/K] mean from 20 degrees C up to the temperature
	Elongation   ValueRange // [-] A50 of soft strip, where known
	Yield        Value      // [Pa] where known
	Limit        Value      // [degrees C] of the fin's tip, where a practice gives one
	typedName    string
}

// Own is the ID of a metal that the user describes.
const Own = "own"

// Name returns the metal's display name.
func (m Metal) Name() message.Message {
	if m.ID == Own {
		return message.New("metal.own", "name", m.typedName)
	}
	return message.New("metal." + m.ID)
}

// ConductivityAt returns the conductivity [W/(m K)] at t; inRange is false where the nearest
// given value had to serve.
//
// Valid: as Curve.At.
// Source: the metal's own, see its Conductivity.
func (m Metal) ConductivityAt(t units.Temperature) (k units.Conductivity, inRange bool) {
	v, ok := m.Conductivity.At(t)
	return units.Conductivity(v), ok
}

// ExpansionTo returns the mean expansion [1/K] from 20 degrees C to t; inRange is false where the
// nearest given value had to serve.
//
// Valid: as Curve.At.
// Source: the metal's own, see its Expansion.
func (m Metal) ExpansionTo(t units.Temperature) (mean units.Expansion, inRange bool) {
	v, ok := m.Expansion.At(t)
	return units.Expansion(v), ok
}

// TubeMetal returns the shipped tube metal with this ID.
func TubeMetal(id string) (Metal, bool) { return find(TubeMetals, id) }

// FinMetal returns the shipped fin metal with this ID.
func FinMetal(id string) (Metal, bool) { return find(FinMetals, id) }

func find(list []Metal, id string) (Metal, bool) {
	for _, m := range list {
		if m.ID == id {
			return m, true
		}
	}
	return Metal{}, false
}
