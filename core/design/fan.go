package design

import (
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// fan is what the fan has to do, and the velocity at the face in each state in which it may be stated.
func (b *builder) fan(h Heat) []figure.Figure {
	t, in := &h.Thermal, &b.in.Input
	list := b.faceVelocities(t)
	if !t.HasDrop() {
		return append(list, absent("fan_power", units.Drive, figure.WholeBank, "absent.no_drop"))
	}
	d, fan := t.Draught(in), &in.Air.Fan
	sigma, flux := in.Pitches().FreeRatio(), t.Flow.FaceMassVelocity
	drop := func(symbol string, si float64) figure.Arg { return arg(symbol, units.Drop, si) }
	dense := func(symbol string, si float64) figure.Arg { return arg(symbol, units.Dense, si) }
	if t.UsedDrop.Answer.Entry == 0 { // else the pressure drop of the bank has it already
		list = append(list, fig("fan_bank", units.Drop, d.Bank, figure.WholeBank, "fan_bank", drop("Δp", d.Friction), arg("σ", units.Factor, sigma),
			arg("G", units.MassFlux, flux), dense("ρ_2", d.Outlet), dense("ρ_1", d.Inlet)))
	}
	list = append(list,
		fig("fan_entry_drop", units.Drop, d.Entry, figure.WholeBank, "fan_entry", arg("x_e", units.Percent, fan.Entry), drop("Δp_b", d.Bank)),
		fig("fan_volume", units.AirRate, d.Volume, figure.WholeBank, "fan_volume", arg("G", units.MassFlux, flux), arg("A_face", units.SurfacePerTube, t.Bank.FaceArea()), dense("ρ_d", d.Density)))
	if fan.Area > 0 {
		list = append(list, fig("fan_head", units.Drop, d.Head, figure.WholeBank, "fan_head", dense("ρ_d", d.Density), arg("V_f", units.AirRate, d.Volume), arg("A_fan", units.SurfacePerTube, fan.Area)))
	} else {
		list = append(list, absent("fan_head", units.Drop, figure.WholeBank, "absent.no_fan_area"))
	}
	return append(list,
		fig("fan_pressure", units.Drop, d.Pressure, figure.WholeBank, "fan_pressure", drop("Δp_b", d.Bank), drop("Δp_e", d.Entry), drop("Δp_v", d.Head)),
		fig("fan_power", units.Drive, d.Power, figure.WholeBank, "fan_power", arg("V_f", units.AirRate, d.Volume), drop("Δp_f", d.Pressure), arg("η_fan", units.Factor, fan.Efficiency)),
		b.coldFan(&d))
}

// coldFan is the power of the same volume in the coldest air: pressure goes with density.
func (b *builder) coldFan(d *rating.Draught) figure.Figure {
	switch {
	case !b.in.Air.Fan.Coldest.Stated:
		return absent("fan_power_cold", units.Drive, figure.WholeBank, "absent.no_coldest")
	case !d.Cold.Stated:
		return absent("fan_power_cold", units.Drive, figure.WholeBank, "absent.coldest_unknown")
	}
	return fig("fan_power_cold", units.Drive, d.Power*d.Cold.SI/d.Density, figure.WholeBank, "fan_power_cold",
		arg("W_f", units.Drive, d.Power), arg("ρ_c", units.Dense, d.Cold.SI), arg("ρ_d", units.Dense, d.Density))
}

// faceVelocities print one flow in each state, with its density.
func (b *builder) faceVelocities(t *rating.Thermal) []figure.Figure {
	densities := b.in.FaceDensities()
	flux := t.Flow.FaceMassVelocity
	list := make([]figure.Figure, 0, len(densities))
	for _, basis := range []rating.VelocityBasis{rating.Actual, rating.Standard, rating.Normal} {
		rho := densities[basis]
		list = append(list, fig("face_"+string(basis), units.Velocity, flux/rho, figure.FaceArea, "face_velocity", arg("G", units.MassFlux, flux), arg("ρ_x", units.Dense, rho)))
	}
	return list
}

// fanNotices ask for the temperature that an induced fan bears, and hold it against the gas that it takes.
func fanNotices(in *field.Input, t *rating.Thermal) []Notice {
	fan := &in.Air.Fan
	if !fan.Induced {
		return nil
	}
	say := func(state figure.State, key string, pairs ...any) []Notice {
		pairs = append(pairs, "leaves", celsius(t.Duty.AirOut))
		return []Notice{{State: state, Field: "fan_bears", Figure: "fan_power", Message: message.New(key, pairs...)}}
	}
	switch {
	case !fan.Bears.Stated:
		return say(figure.Watch, "notice.fan_bears_missing")
	case units.Above(t.Duty.AirOut, fan.Bears.SI):
		return say(figure.No, "notice.fan_too_hot", "bears", celsius(fan.Bears.SI))
	}
	return nil
}
