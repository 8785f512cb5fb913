package design

import (
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// Followed is an amount that nobody entered and that a change of entries took along.
type Followed struct {
	Name     message.Key
	Kind     units.Kind
	Was, Now float64 // [SI]
}

// Follow lists what followed when a document was changed into another: of the amounts of rating.Room those that moved, but not
// what was entered itself. Nothing is said where either cannot be read.
func Follow(was, now document.Document) []Followed {
	before, err := Read(was)
	if err != nil {
		return nil
	}
	after, err := Read(now)
	if err != nil {
		return nil
	}
	a, known := before.Room()
	b, also := after.Room()
	if !known || !also {
		return nil
	}
	var list []Followed
	for _, one := range []struct {
		name  message.Key
		entry string // that states it itself
		kind  units.Kind
		of    func(*rating.Room) float64
	}{
		{"figure.face_area", "", units.SurfacePerTube, func(r *rating.Room) float64 { return r.Face }},
		{"field.tube_pitch", "tube_pitch", units.Diameter, func(r *rating.Room) float64 { return r.Pitch }},
		{"field.tip_clearance", "tip_clearance", units.Height, func(r *rating.Room) float64 { return r.Clearance }},
		{"figure.bank_depth", "", units.Distance, func(r *rating.Room) float64 { return r.Depth }},
		{"followed.gas", "", units.MassRate, func(r *rating.Room) float64 { return r.Gas }},
	} {
		if was.Text(one.entry) == now.Text(one.entry) && one.of(&a) != one.of(&b) {
			list = append(list, Followed{one.name, one.kind, one.of(&a), one.of(&b)})
		}
	}
	return list
}
