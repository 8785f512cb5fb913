package design

import (
	"finwright/core/exchanger"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/fluid"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// hottestMoist [C] is as far as moist air is known, with room for a metal that is hotter.
const hottestMoist = 390

// checkGas refuses a gas that is not told so that its properties are known.
func checkGas(in *field.Input, errs *FieldErrors) {
	if in.Air.Kind == rating.MoistAir && float64(in.Air.In) > hottestMoist {
		errs.add("air_in", "error.moist_air_hot", "high", message.Most{Kind: units.Temp, SI: hottestMoist})
	}
	if in.Air.Kind != rating.FlueGas {
		return
	}
	f := &in.Air.Flue
	shares, fault := f.Shares()
	sum := message.Amount{Kind: units.Percent, SI: f.Sum()}
	switch fault {
	case "":
		if shares[fluid.WaterVapour] == 1 { // an own gas says more of steam
			errs.add("share_h2o", "error.flue_shares", "sum", sum)
		}
	case rating.SharesAmiss:
		errs.add("share_n2", "error.flue_shares", "sum", sum)
	case rating.WaterUntold:
		errs.add("flue_water", "error.flue_water")
	case rating.FuelAmiss:
		errs.add("fuel_carbon", "error.flue_fuel", "sum", sum)
	case rating.FuelInert:
		errs.add("fuel_oxygen", "error.flue_inert")
	case rating.OxygenTooRich:
		errs.add("oxygen_left", "error.flue_oxygen")
	}
}

// gasNotices remark on what falls out of the gas, on what is left out of the answer, and on cases that are no worse than normal running.
func gasNotices(in *field.Input, t *rating.Thermal) []Notice {
	var out []Notice
	temperature := func(celsius float64) message.Amount { return message.Amount{Kind: units.Temp, SI: celsius} }
	dew := in.DewPoints()
	if coldest := t.Duty.Coldest.Celsius; dew.Acid.Stated && units.Above(dew.Acid.SI, coldest) {
		out = append(out, Notice{State: figure.Watch, Field: "to_trioxide", Figure: "coldest_metal", Message: message.New("notice.acid", "metal", temperature(coldest), "dew", temperature(dew.Acid.SI))})
	}
	if in.Radiates() {
		out = append(out, Notice{State: figure.Watch, Field: "air_in", Figure: "hottest_root", Message: message.New("notice.radiation", "from", temperature(rating.RadiationFrom))})
	}
	normal := in.Ends()
	for _, e := range []struct {
		field  string
		stated rating.Optional
		normal float64
		of     exchanger.Case
	}{
		{"start_up", in.Beyond.StartUp, normal.Process, exchanger.StartUp},
		{"upset", in.Beyond.Upset, normal.Process, exchanger.Upset},
		{"air_start_up", in.Beyond.GasStartUp, normal.Gas, exchanger.StartUp},
		{"air_upset", in.Beyond.GasUpset, normal.Gas, exchanger.Upset},
	} {
		if e.stated.Stated && units.Above(e.normal, e.stated.SI) {
			out = append(out, Notice{State: figure.Watch, Field: e.field, Figure: "root_" + string(e.of), Message: message.New("notice.case_below",
				"case", message.Key("case."+string(e.of)), "temperature", temperature(e.stated.SI), "normal", temperature(e.normal))})
		}
	}
	return out
}

// heldNotices mark what is known of a metal over temperature where its last point stands in for more: no curve is carried on.
func heldNotices(in *field.Input, h *Heat) []Notice {
	var out []Notice
	held := func(m *material.Metal, c material.Curve, of, field, fig string, at units.Temperature) {
		if low, high := c.Range(); units.Above(float64(low), float64(at)) || units.Above(float64(at), float64(high)) {
			temperature := func(t units.Temperature) message.Amount { return message.Amount{Kind: units.Temp, SI: float64(t)} }
			out = append(out, Notice{State: figure.Outside, Field: field, Figure: fig, Message: message.New("notice.metal_held",
				"property", message.Key("limit."+of), "metal", m.Name(), "low", temperature(low), "high", temperature(high), "at", temperature(at))})
		}
	}
	wall, _ := in.MetalTemperatures(&h.Thermal)
	held(&in.TubeMetal, in.TubeMetal.Conductivity, "conductivity", "metal_temperature", "u_bare", units.Temperature(wall))
	if hottest := h.hottest(); hottest != nil && in.Tube.Fin.Type.Fixing().Tension {
		held(&in.TubeMetal, in.TubeMetal.Expansion, "expansion", "tube_metal", "bond_loss", max(*hottest, expansionFrom))
		held(&in.FinMetal, in.FinMetal.Expansion, "expansion", "fin_metal", "bond_loss", max(*hottest, expansionFrom))
	}
	return out
}

// expansionFrom [C] is where all mean expansions begin; a joint that is colder has not opened.
const expansionFrom = 20

// dewPoints are the figures of what falls out of the gas.
func (b *builder) dewPoints() []figure.Figure {
	dew := b.in.DewPoints()
	water := absent("water_dew", units.Temp, "", "absent.no_water")
	if dew.Water.Stated {
		water = fig("water_dew", units.Temp, dew.Water.SI, "", "water_dew", arg("p_w", units.Pressure, dew.Vapour))
	}
	if b.in.Air.Kind != rating.FlueGas {
		return []figure.Figure{water}
	}
	acid := absent("acid_dew", units.Temp, "", "absent.no_sulphur")
	switch {
	case dew.Untold:
		acid = absent("acid_dew", units.Temp, "", "absent.sulphur_untold")
	case dew.Acid.Stated:
		acid = fig("acid_dew", units.Temp, dew.Acid.SI, "", "acid_dew", arg("p_w", units.Pressure, dew.Vapour), arg("p_s", units.Pressure, dew.Trioxide))
	}
	return []figure.Figure{water, acid}
}
