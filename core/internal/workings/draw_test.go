package workings

import (
	"fmt"
	"maps"
	"math"
	"math/rand/v2"

	"finwright/core/airside"
	"finwright/core/document"
	"finwright/core/material"
	"finwright/core/tube"
	"finwright/testdata/cases"
)

// draw returns a design as a shop might be asked for: an example or the house's own, of any fin, metal, stream and bank.
func draw(r *rand.Rand) document.Document {
	d := document.New()
	if i := r.IntN(6); i < len(cases.List()) {
		d = cases.List()[i].Document()
		d.Fields = maps.Clone(d.Fields)
	}
	set := func(field, text string) { d.Fields[field] = document.Entry{Text: text, Origin: document.Customer} }
	between := func(low, high float64) float64 { return low * math.Pow(high/low, r.Float64()) }
	number := func(field string, low, high float64, unit string) {
		set(field, fmt.Sprintf("%.4g %s", between(low, high), unit))
	}
	whole := func(field string, low, high float64) { set(field, fmt.Sprint(math.Round(between(low, high)))) }
	one := func(in int) bool { return r.IntN(in) == 0 }

	types := tube.FinTypes()
	set("fin_type", string(types[r.IntN(len(types))]))
	if one(2) {
		set("fin_profile", string([]tube.Profile{tube.Rolled, tube.Uniform, tube.Linear}[r.IntN(3)]))
		number("tip_thickness", 0.1, 0.25, "mm")
	}
	if one(3) {
		set("root_basis", string(tube.FromFoot))
	}
	if one(3) {
		number("foot_lap", 0.5, 3, "mm")
	}
	number("tube_od", 15, 60, "mm")
	number("tube_wall", 1.2, 3, "mm")
	if one(3) {
		set("wall_basis", string(tube.MinimumWall))
	}
	number("fin_height", 5, 18, "mm")
	number("strip_thickness", 0.3, 1.2, "mm")
	number("fin_pitch", 100, 430, "/m")
	set("fin_metal", append(ids(material.FinMetals), material.Own)[r.IntN(len(material.FinMetals)+1)])
	set("tube_metal", append(ids(material.TubeMetals), material.Own)[r.IntN(len(material.TubeMetals)+1)])
	number("metal_temperature", 20, 400, "°C")
	number("tube_length", 1.5, 14, "m")
	whole("quantity", 1, 4000)
	if one(2) {
		set("supply", "free_issue")
		whole("spares", 1, 200)
	}
	if one(3) {
		d.Spans = []document.Span{{Centre: document.Entry{Text: "700 mm"}, Width: document.Entry{Text: "60 mm"}}}
	}

	if one(4) {
		set("film_source", "given")
		number("film_coefficient", 10, 300, "W/m²K")
	}
	number("face_velocity", 0.5, 8, "m/s")
	number("air_in", 5, 60, "°C")
	whole("rows", 1, 10)
	whole("tubes_per_row", 2, 120)
	if one(2) {
		set("passes", "1")
	}
	if one(4) {
		set("layout", "in_line")
	}
	if one(3) {
		number("row_pitch", 40, 150, "mm")
	}
	if one(3) {
		number("tube_pitch", 45, 150, "mm")
	}
	switch r.IntN(5) {
	case 0:
		set("gas", "own")
	case 1:
		set("gas", "flue")
		set("share_so2", []string{"", "0 %", "0.08 %"}[r.IntN(3)])
		set("flue_by", []string{"shares", "fuel"}[r.IntN(2)])
		number("air_in", 150, 700, "°C")
		number("air_upset", 150, 900, "°C")
		set("flow_lost", []string{"untold", "possible", "excluded"}[r.IntN(3)])
	case 2:
		set("gas", "dry_air")
	}
	if one(2) {
		set("film_method", airside.FilmMethods[r.IntN(len(airside.FilmMethods))].ID)
		set("drop_method", airside.DropMethods[r.IntN(len(airside.DropMethods))].ID)
	}
	number("inside_flow", 2, 200, "kg/s")
	switch r.IntN(4) {
	case 0:
		set("inside_fluid", "own")
		number("inside_in", 70, 250, "°C")
		number("own_fluid_pressure", 100, 9000, "kPa")
		number("own_fluid_vapour", 1, 9000, "kPa")
		set("own_fluid_points", []string{"1", "2", "3"}[r.IntN(3)])
		if one(2) {
			set("own_fluid_phase", "gas")
			number("own_fluid_density", 1, 60, "kg/m³")
			number("inside_flow", 0.2, 30, "kg/s")
		}
	case 1:
		set("inside_fluid", "steam")
		number("inside_in", 105, 200, "°C")
	case 2:
		set("inside_fluid", []string{"ethylene_glycol", "propylene_glycol"}[r.IntN(2)])
		number("glycol_share", 10, 60, "%")
		number("inside_in", 65, 99, "°C")
	default:
		set("inside_fluid", "water")
		set("inside_pressure", "2500 kPa")
		number("inside_in", 70, 200, "°C")
	}
	if one(2) {
		number("start_up", 60, 250, "°C")
		number("upset", 10, 300, "°C")
	}
	if one(3) {
		number("duty_wanted", 20, 3000, "kW")
	}
	switch r.IntN(6) {
	case 0:
		set("inside_out", "64 °C")
	case 1:
		set("inside_out", "64 °C")
		set("inside_flow", "")
		number("duty_wanted", 20, 3000, "kW")
	}
	if one(3) {
		number("drop_allowed", 30, 500, "Pa")
	}
	set("velocity_basis", []string{"actual", "standard", "normal"}[r.IntN(3)])
	if one(2) {
		set("draught", "induced")
		number("fan_area", 2, 60, "m²")
		set("coldest_air", "-20 °C")
	}
	return d
}

func ids(list []material.Metal) []string {
	out := make([]string, 0, len(list))
	for _, m := range list {
		out = append(out, m.ID)
	}
	return out
}
