package design

import (
	"strings"

	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/fluid"
	"finwright/core/rating"
	"finwright/core/tube"
	"finwright/core/units"
)

func (r *reader) air() rating.Air {
	return rating.Air{
		FilmGiven: r.choice("film_source") == "given",
		Film:      units.FilmCoefficient(r.number("film_coefficient")),
		Metal:     units.Temperature(r.number("metal_temperature")),
		OwnGas:    r.choice("gas") == "own",
		Gas: fluid.Properties{
			Density: r.number("own_gas_density"), HeatCapacity: r.number("own_gas_heat"),
			Viscosity: r.number("own_gas_viscosity"), Conductivity: r.number("own_gas_conductivity"),
		},
		In:            units.Temperature(r.number("air_in")),
		Humidity:      r.number("air_humidity"),
		Altitude:      units.Length(r.number("altitude")),
		Velocity:      r.number("face_velocity"),
		Fouling:       r.number("fouling_outside"),
		FanEfficiency: r.number("fan_efficiency"),
	}
}

func (r *reader) bank() rating.Bank {
	layout := airside.Staggered
	if r.choice("layout") == "in_line" {
		layout = airside.InLine
	}
	return rating.Bank{
		Layout:      layout,
		Clearance:   units.Length(r.number("tip_clearance")),
		TubePitch:   units.Length(r.number("tube_pitch")),
		RowPitch:    units.Length(r.number("row_pitch")),
		Rows:        int(r.number("rows")),
		TubesPerRow: int(r.number("tubes_per_row")),
		Passes:      int(r.number("passes")),
		DutyWanted:  r.number("duty_wanted"),
		DropAllowed: r.number("drop_allowed"),
	}
}

func (r *reader) process(t tube.FinType) rating.Process {
	p := rating.Process{
		Fluid: rating.Fluid(r.choice("inside_fluid")),
		Own: fluid.Properties{
			Density: r.number("own_fluid_density"), HeatCapacity: r.number("own_fluid_heat"),
			Viscosity: r.number("own_fluid_viscosity"), Conductivity: r.number("own_fluid_conductivity"),
		},
		In:       units.Temperature(r.number("inside_in")),
		Flow:     r.number("inside_flow"),
		Pressure: r.number("inside_pressure"),
		Fouling:  r.number("fouling_inside"),
		Bond:     r.number("bond_resistance"),
	}
	if r.empty("bond_resistance") && t != "" {
		p.Bond = t.Fixing().Bond.SI
	}
	return p
}

func (r *reader) limits() Limits {
	l := Limits{Cases: map[exchanger.Case]float64{}}
	for id, c := range map[string]exchanger.Case{"start_up": exchanger.StartUp, "upset": exchanger.Upset} {
		if !r.empty(id) {
			l.Cases[c] = r.number(id)
		}
	}
	if !r.empty("house_limit") {
		house := r.number("house_limit")
		l.House = &house
	}
	if t := r.number("inside_in"); !r.errs.Has("inside_in") {
		l.Cases[exchanger.Normal] = t
	}
	return l
}

func (r *reader) empty(id string) bool { return strings.TrimSpace(r.doc.Fields[id].Text) == "" }
