package document

import (
	"finwright/core/material"
	"finwright/core/tube"
	"finwright/core/units"
)

// Spec describes one field of the document: how it is read and what it starts as.
type Spec struct {
	ID       string
	Group    string
	Kind     units.Kind // of a number; empty for choices and free text
	Choices  []string   // texts "choice.<id>.<choice>", or "metal.<choice>"
	Optional bool       // may be left empty
	House    string     // what a new document holds
}

// Number reports whether the field holds a quantity.
func (s Spec) Number() bool { return s.Kind != "" }

// ChoiceKey returns the message key of one of the field's choices.
func (s Spec) ChoiceKey(choice string) string {
	if s.ID == "tube_metal" || s.ID == "fin_metal" {
		if choice != material.Own {
			return "metal." + choice
		}
		return "choice.own"
	}
	return "choice." + s.ID + "." + choice
}

// Groups lists the groups of fields in the order of the form.
var Groups = []string{"job", "tube", "fin", "lengths", "conditions"}

// Specs lists every field in the order of the form.
var Specs = []Spec{
	{ID: "quantity", Group: "job", Kind: units.Count, House: "1"},
	{ID: "supply", Group: "job", Choices: []string{"ours", "free_issue"}, House: "ours"},
	{ID: "spares", Group: "job", Kind: units.Count, House: "0"},

	{ID: "tube_metal", Group: "tube", Choices: append(ids(material.TubeMetals), material.Own), House: "cs"},
	{ID: "own_tube_name", Group: "tube", House: "Alloy 1"},
	{ID: "own_tube_conductivity", Group: "tube", Kind: units.Conduct, House: "50 W/m·K"},
	{ID: "own_tube_density", Group: "tube", Kind: units.Dense, House: "7850 kg/m³"},
	{ID: "own_tube_expansion", Group: "tube", Kind: units.Expand, House: "12 µm/m·K"},
	{ID: "tube_od", Group: "tube", Kind: units.Diameter, House: "1 in"},
	{ID: "tube_wall", Group: "tube", Kind: units.Wall, House: "14 BWG"},
	{ID: "wall_basis", Group: "tube", Choices: []string{string(tube.AverageWall), string(tube.MinimumWall)}, House: string(tube.AverageWall)},

	{ID: "fin_type", Group: "fin", Choices: finTypes(), House: string(tube.Footed)},
	{ID: "fin_metal", Group: "fin", Choices: append(ids(material.FinMetals), material.Own), House: "al1060"},
	{ID: "own_fin_name", Group: "fin", House: "Alloy 2"},
	{ID: "own_fin_conductivity", Group: "fin", Kind: units.Conduct, House: "200 W/m·K"},
	{ID: "own_fin_density", Group: "fin", Kind: units.Dense, House: "2700 kg/m³"},
	{ID: "own_fin_expansion", Group: "fin", Kind: units.Expand, House: "23 µm/m·K"},
	{ID: "fin_height", Group: "fin", Kind: units.Height, House: "5/8 in"},
	{ID: "strip_thickness", Group: "fin", Kind: units.Thickness, House: "0.4 mm"},
	{ID: "fin_pitch", Group: "fin", Kind: units.FinCount, House: "10 fpi"},
	{ID: "fin_profile", Group: "fin", Choices: []string{string(tube.AsMade), string(tube.Rolled), string(tube.Uniform), string(tube.Linear)}, House: string(tube.AsMade)},
	{ID: "tip_thickness", Group: "fin", Kind: units.Thickness, House: "0.2 mm"},
	{ID: "groove_depth", Group: "fin", Kind: units.Height, House: "0.25 mm"},
	{ID: "foot_lap", Group: "fin", Kind: units.Height, Optional: true},
	{ID: "sleeve_thickness", Group: "fin", Kind: units.Height, House: "0.5 mm"},
	{ID: "root_basis", Group: "fin", Choices: []string{string(tube.FromTube), string(tube.FromFoot)}, House: string(tube.FromTube)},

	{ID: "tube_length", Group: "lengths", Kind: units.Distance, House: "20 ft"},
	{ID: "plain_end_a", Group: "lengths", Kind: units.Distance, House: "1 1/2 in"},
	{ID: "plain_end_b", Group: "lengths", Kind: units.Distance, House: "1 1/2 in"},

	{ID: "film_coefficient", Group: "conditions", Kind: units.Film, House: "50 W/m²K"},
	{ID: "metal_temperature", Group: "conditions", Kind: units.Temp, House: "100 °C"},
}

var byID = index(Specs)

func index(specs []Spec) map[string]Spec {
	m := make(map[string]Spec, len(specs))
	for _, s := range specs {
		m[s.ID] = s
	}
	return m
}

// Find returns the spec of a field.
func Find(id string) (Spec, bool) { s, ok := byID[id]; return s, ok }

func ids(metals []material.Metal) []string {
	out := make([]string, len(metals))
	for i, m := range metals {
		out[i] = m.ID
	}
	return out
}

func finTypes() []string {
	out := make([]string, len(tube.FinTypes))
	for i, t := range tube.FinTypes {
		out[i] = string(t)
	}
	return out
}
