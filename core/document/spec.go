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
var Groups = []string{"job", "tube", "fin", "lengths", "film", "air", "bank", "inside", "cases", "making"}

// Section returns the section of the page that a group of fields belongs to; empty for those that count everywhere.
func Section(group string) string {
	switch group {
	case "air", "bank", "inside", "cases":
		return "heat"
	case "making":
		return "making"
	}
	return ""
}

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

	{ID: "film_source", Group: "film", Choices: []string{"computed", "given"}, House: "computed"},
	{ID: "film_coefficient", Group: "film", Kind: units.Film, House: "50 W/m²K"},
	{ID: "metal_temperature", Group: "film", Kind: units.Temp, House: "100 °C"},
	{ID: "gas", Group: "air", Choices: []string{"air", "own"}, House: "air"},
	{ID: "own_gas_density", Group: "air", Kind: units.Dense, House: "0.6 kg/m³"},
	{ID: "own_gas_heat", Group: "air", Kind: units.SpecificHeat, House: "1100 J/kg·K"},
	{ID: "own_gas_viscosity", Group: "air", Kind: units.Viscous, House: "0.03 mPa·s"},
	{ID: "own_gas_conductivity", Group: "air", Kind: units.Conduct, House: "0.045 W/m·K"},
	{ID: "air_in", Group: "air", Kind: units.Temp, House: "30 °C"},
	{ID: "air_humidity", Group: "air", Kind: units.Percent, House: "50 %"},
	{ID: "altitude", Group: "air", Kind: units.Run, House: "0 m"},
	{ID: "face_velocity", Group: "air", Kind: units.Velocity, House: "3 m/s"},
	{ID: "fouling_outside", Group: "air", Kind: units.Resist, House: "0 m²K/W"},
	{ID: "fan_efficiency", Group: "air", Kind: units.Percent, House: "65 %"},

	{ID: "layout", Group: "bank", Choices: []string{"staggered", "in_line"}, House: "staggered"},
	{ID: "tip_clearance", Group: "bank", Kind: units.Height, House: "1/4 in"},
	{ID: "tube_pitch", Group: "bank", Kind: units.Diameter, Optional: true},
	{ID: "row_pitch", Group: "bank", Kind: units.Diameter, Optional: true},
	{ID: "rows", Group: "bank", Kind: units.Count, House: "4"},
	{ID: "tubes_per_row", Group: "bank", Kind: units.Count, House: "30"},
	{ID: "passes", Group: "bank", Kind: units.Count, House: "2"},
	{ID: "duty_wanted", Group: "bank", Kind: units.Duty, Optional: true},
	{ID: "drop_allowed", Group: "bank", Kind: units.Drop, Optional: true},

	{ID: "inside_fluid", Group: "inside", Choices: []string{"water", "steam", "own"}, House: "water"},
	{ID: "own_fluid_density", Group: "inside", Kind: units.Dense, House: "850 kg/m³"},
	{ID: "own_fluid_heat", Group: "inside", Kind: units.SpecificHeat, House: "2100 J/kg·K"},
	{ID: "own_fluid_viscosity", Group: "inside", Kind: units.Viscous, House: "5 mPa·s"},
	{ID: "own_fluid_conductivity", Group: "inside", Kind: units.Conduct, House: "0.13 W/m·K"},
	{ID: "inside_in", Group: "inside", Kind: units.Temp, House: "90 °C"},
	{ID: "inside_flow", Group: "inside", Kind: units.MassRate, House: "15 kg/s"},
	{ID: "inside_pressure", Group: "inside", Kind: units.Pressure, House: "1000 kPa"},
	{ID: "fouling_inside", Group: "inside", Kind: units.Resist, House: "0.00018 m²K/W"},
	{ID: "bond_resistance", Group: "inside", Kind: units.Resist, Optional: true},

	{ID: "start_up", Group: "cases", Kind: units.Temp, Optional: true},
	{ID: "upset", Group: "cases", Kind: units.Temp, Optional: true},
	{ID: "house_limit", Group: "cases", Kind: units.Temp, Optional: true},

	{ID: "line", Group: "making", Optional: true}, // a line of the capability file by its name; empty: the one that suits best
	{ID: "least_wall", Group: "making", Kind: units.Wall, Optional: true},
	{ID: "position_tolerance", Group: "making", Kind: units.Distance, Optional: true},
	{ID: "joints_allowed", Group: "making", Kind: units.Count, Optional: true},
	{ID: "margin", Group: "making", Kind: units.Percent, Optional: true},
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
	out := make([]string, len(tube.FinTypes()))
	for i, t := range tube.FinTypes() {
		out[i] = string(t)
	}
	return out
}
