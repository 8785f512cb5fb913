package design

import (
	"strings"

	"finwright/core/document"
	"finwright/core/material"
	"finwright/core/rating"
	"finwright/core/tube"
)

// Used reports whether a field counts for the design as it stands; the others are hidden.
func Used(d document.Document, id string) bool {
	text := func(id string) string { return d.Fields[id].Text }
	typ := tube.FinType(text("fin_type"))
	switch {
	case strings.HasPrefix(id, "own_tube_"):
		return text("tube_metal") == material.Own
	case strings.HasPrefix(id, "own_fin_"):
		return text("fin_metal") == material.Own
	}
	switch {
	case strings.HasPrefix(id, "own_gas_"):
		return text("gas") == "own"
	case strings.HasPrefix(id, "own_fluid_"):
		return text("inside_fluid") == string(rating.OwnFluid)
	}
	switch id {
	case "film_coefficient":
		return text("film_source") == "given"
	case "air_humidity", "altitude":
		return text("gas") == "air"
	case "inside_flow":
		return text("inside_fluid") != string(rating.Steam)
	case "inside_pressure":
		return text("inside_fluid") == string(rating.Water)
	case "spares":
		return text("supply") == "free_issue"
	case "tip_thickness":
		return text("fin_profile") == string(tube.Linear)
	case "groove_depth":
		return typ.Grooved()
	case "foot_lap":
		return typ.Lapped()
	case "sleeve_thickness":
		return !typ.Wound()
	case "root_basis":
		return typ.FootLayers() > 0
	}
	return true
}
