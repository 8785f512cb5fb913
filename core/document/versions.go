package document

import (
	"finwright/core/field"
	"finwright/core/units"
)

// Version is the version of the designs that are written now.
const Version = field.Version

// migrations lift a raw design from version i+1 to i+2.
var migrations = migrationsTo(Version)

// migrationsTo lists the lifts up to a version. Those to the first versions hold lists of their own; from version 6 on one fills
// what the rows of the fields say. A version in which something changed its meaning besides adds a lift to the list.
func migrationsTo(version int) []func(raw map[string]any) {
	lifts := []func(raw map[string]any){addHeat, addMaking, addAnswers, addHolds}
	for to := len(lifts) + 2; to <= version; to++ {
		lifts = append(lifts, func(raw map[string]any) { fill(raw, addedBy(to)) })
	}
	return lifts
}

// addedBy lists the fields that a version added, as their rows say.
func addedBy(version int) (list []frozen) {
	for i := range field.Fields {
		if f := &field.Fields[i]; f.Since == version {
			list = append(list, frozen{f.ID, f.Before})
		}
	}
	return list
}

// frozen is a field that a version added, and what the designs before it are taken to say there: the house's value of that
// time, which later ones leave alone.
type frozen struct{ field, text string }

// fill gives a raw design the fields of a list that it has not.
func fill(raw map[string]any, list []frozen) {
	fields, ok := raw["fields"].(map[string]any)
	if !ok {
		return
	}
	for _, f := range list {
		if fields[f.field] == nil {
			fields[f.field] = map[string]any{"text": f.text, "origin": string(House)}
		}
	}
}

// addHeat gives a design of version 1 the fields of the heat calculation.
func addHeat(raw map[string]any) { fill(raw, heatFields) }

// heatFields came with version 2. The film coefficient was the user's own figure before, and stays so.
var heatFields = []frozen{
	{"film_source", "given"},
	{"gas", "air"},
	{"own_gas_density", "0.6 kg/m³"},
	{"own_gas_heat", "1100 J/kg·K"},
	{"own_gas_viscosity", "0.03 mPa·s"},
	{"own_gas_conductivity", "0.045 W/m·K"},
	{"air_in", "30 °C"},
	{"air_humidity", "50 %"},
	{"altitude", "0 m"},
	{"face_velocity", "3 m/s"},
	{"fouling_outside", "0 m²K/W"},
	{"fan_efficiency", "65 %"},
	{"layout", "staggered"},
	{"tip_clearance", "1/4 in"},
	{"tube_pitch", ""},
	{"row_pitch", ""},
	{"rows", "4"},
	{"tubes_per_row", "30"},
	{"passes", "2"},
	{"duty_wanted", ""},
	{"drop_allowed", ""},
	{"inside_fluid", "water"},
	{"own_fluid_density", "850 kg/m³"},
	{"own_fluid_heat", "2100 J/kg·K"},
	{"own_fluid_viscosity", "5 mPa·s"},
	{"own_fluid_conductivity", "0.13 W/m·K"},
	{"inside_in", "90 °C"},
	{"inside_flow", "15 kg/s"},
	{"inside_pressure", "1000 kPa"},
	{"fouling_inside", "0.00018 m²K/W"},
	{"bond_resistance", ""},
	{"start_up", ""},
	{"upset", ""},
	{"house_limit", ""},
}

// addMaking gives a design of version 2 the fields of making, all of them empty: the shop's own figures hold.
func addMaking(raw map[string]any) { fill(raw, makingFields) }

var makingFields = []frozen{
	{"line", ""},
	{"least_wall", ""},
	{"position_tolerance", ""},
	{"joints_allowed", ""},
	{"margin", ""},
}

// addAnswers gives a design of version 3 the fields that say what an answer rests on.
func addAnswers(raw map[string]any) {
	fill(raw, answerFields)
	nameGas(raw)
}

// lightest [kg/m3] is what an own fluid was taken to be a liquid from: till version 3 none said what it is.
const lightest = 100

// nameGas says of an own fluid that is as light as one that it is a gas.
func nameGas(raw map[string]any) {
	fields, _ := raw["fields"].(map[string]any)
	density, _ := fields["own_fluid_density"].(map[string]any)
	text, _ := density["text"].(string)
	system, _ := raw["units"].(string)
	if p, err := units.Parse(units.Dense, text, units.System(system)); err == nil && p.SI < lightest {
		fields["own_fluid_phase"] = map[string]any{"text": "gas", "origin": string(House)}
	}
}

var answerFields = []frozen{
	{"tube_metal_limit", ""},
	{"steam_by", "temperature"},
	{"film_method", "rule"},
	{"drop_method", "rule"},
	{"own_fluid_phase", "liquid"},
	{"own_fluid_pressure", ""},
	{"own_fluid_vapour", ""},
	{"inside_drop_allowed", ""},
	{"inside_out", ""},
	{"glycol_share", "35 %"},
	{"own_fluid_points", "1"},
	{"own_fluid_at", "60 °C"},
	{"own_fluid_at_2", "100 °C"},
	{"own_fluid_density_2", "826 kg/m³"},
	{"own_fluid_heat_2", "2260 J/kg·K"},
	{"own_fluid_viscosity_2", "2.1 mPa·s"},
	{"own_fluid_conductivity_2", "0.127 W/m·K"},
	{"own_fluid_at_3", "140 °C"},
	{"own_fluid_density_3", "802 kg/m³"},
	{"own_fluid_heat_3", "2420 J/kg·K"},
	{"own_fluid_viscosity_3", "1.2 mPa·s"},
	{"own_fluid_conductivity_3", "0.124 W/m·K"},
	{"own_fluid_pour", ""},
	{"velocity_basis", "actual"},
	{"draught", "forced"},
	{"fan_entry", "0 %"},
	{"fan_area", ""},
	{"coldest_air", ""},
	{"fan_bears", ""},
	{"flue_by", "shares"},
	{"flue_basis", "wet"},
	{"share_co2", "8.3 %"},
	{"share_h2o", "16.2 %"},
	{"share_o2", "3.1 %"},
	{"share_n2", "72.4 %"},
	{"share_so2", ""},
	{"flue_water", ""},
	{"fuel_carbon", "74.3 %"},
	{"fuel_hydrogen", "23.9 %"},
	{"fuel_oxygen", "0.6 %"},
	{"fuel_nitrogen", "1.2 %"},
	{"fuel_sulphur", ""},
	{"burnt_by", "excess"},
	{"excess_air", "16 %"},
	{"oxygen_left", "2.8 %"},
	{"burning_air_water", "0.9 %"},
	{"to_trioxide", "2.5 %"},
	{"air_start_up", ""},
	{"air_upset", ""},
	{"flow_lost", "untold"},
	{"air_summer", ""},
	{"air_winter", ""},
	{"turndown", ""},
	{"job_kind", "new"},
	{"old_ua", ""},
	{"fin_od_most", ""},
	{"bundles", "1"},
	{"frame_share", "40 %"},
	{"hold_space", "entered"},
	{"hold_air", "velocity"},
}

// addHolds gives a design of version 4 the fields of what it holds and of the bank that stands.
func addHolds(raw map[string]any) { fill(raw, holdFields) }

var holdFields = []frozen{
	{"hold_process", "inlet"},
	{"old_pitch", ""},
	{"old_tubes", ""},
	{"old_length", ""},
}
