package design

import (
	"math"

	"finwright/core/bond"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// bond is where winding tension no longer holds the joint, and how it stands open.
func (b *builder) bond(h Heat) []figure.Figure {
	w, held := b.in.Winding()
	if !held {
		return []figure.Figure{absent("bond_loss", units.Temp, "", "absent.not_tension")}
	}
	strain := arg("e_0", units.Factor, w.Strain)
	expansions := func(celsius float64) (fin, tube figure.Arg) {
		f, _ := b.in.FinMetal.ExpansionTo(units.Temperature(celsius))
		t, _ := b.in.TubeMetal.ExpansionTo(units.Temperature(celsius))
		return arg("α_f", units.Expand, float64(f)), arg("α_t", units.Expand, float64(t))
	}
	list := []figure.Figure{absent("bond_loss", units.Temp, "", "absent.tightens")}
	if loss, opens := w.LossTemperature(); opens && loss > bond.BeyondUse {
		list[0] = absent("bond_loss", units.Temp, "", "shop.why.never_loosens")
	} else if opens {
		f, t := expansions(loss)
		list[0] = fig("bond_loss", units.Temp, loss, "", "bond_loss", strain, f, t)
	}
	j := h.Thermal.Joint
	if j.Gap == 0 {
		return list
	}
	f, t := expansions(j.Root)
	return append(list,
		fig("bond_gap", units.Crack, j.Gap, "", "bond_gap", f, t, arg("T_r", units.Temp, j.Root), strain, b.d()),
		fig("bond_jump", units.Crack, j.Jump, "", "bond_jump", arg("a_c", units.Factor, bond.Accommodation), arg("ρ_g", units.Dense, j.Gas.Density), arg("μ", units.Viscous, j.Gas.Viscosity),
			arg("p_g", units.Pressure, j.Pressure), arg("Pr", units.Factor, j.Gas.Prandtl())),
		fig("bond_open", units.Resist, j.Resistance, figure.BareArea, "bond_open",
			arg("g_b", units.Crack, j.Gap), arg("j_b", units.Crack, j.Jump), arg("k_g", units.Conduct, j.Gas.Conductivity), arg("R_b", units.Resist, w.Metallic)))
}

// closed is U were the joint closed.
func (b *builder) closed(h Heat) []figure.Figure {
	if h.Loosened == nil {
		return nil
	}
	return []figure.Figure{uBare("u_closed", h.Loosened.Closed.Overall)}
}

// otherDuties are those of a bank whose joint is open, were it closed, and with as little and as much winding strain as there
// may be.
func (b *builder) otherDuties(h Heat) []figure.Figure {
	l := h.Loosened
	if l == nil {
		return nil
	}
	return []figure.Figure{b.dutyOf("duty_closed", &l.Closed), b.dutyOf("duty_soft", &l.Soft), b.dutyOf("duty_hard", &l.Hard)}
}

// bondNotices say that a joint is open, and by which case.
func bondNotices(in *field.Input, h *Heat) []Notice {
	j := h.Thermal.Joint
	if j.Gap == 0 {
		return nil
	}
	w, _ := in.Winding()
	loss, opens := w.LossTemperature()
	if !opens {
		loss = j.Root // it closes again where it is hotter
	}
	return []Notice{{
		State: figure.Watch, Field: caseField(in, j.Case), Figure: "bond_loss",
		Message: message.New("notice.bond_open", "loss", celsius(loss), "root", celsius(j.Root), "case", message.Key("case."+string(j.Case))),
	}}
}

// besidesBond is what stands beside the figures that an open joint lowers: the bank with it closed, and beside the duty the band of
// winding strain.
func besidesBond(h *Heat, out map[string][]message.Message) {
	l := h.Loosened
	if l == nil {
		return
	}
	open := message.Key("opened." + string(h.Thermal.Joint.Case))
	u := func(t *rating.Thermal) message.Amount { return message.Amount{Kind: units.Film, SI: t.Overall.OnBare} }
	duty := func(t *rating.Thermal) float64 { return math.Abs(t.Duty.Heat) }
	out["u_bare"] = append(out["u_bare"], message.New("beside.bond_open", "open", open, "closed", u(&l.Closed)))
	out["duty"] = append(out["duty"], message.New("beside.bond_band", "open", open, "closed", message.Amount{Kind: units.Duty, SI: duty(&l.Closed)},
		"strains", message.Span{Kind: units.Duty, Low: duty(&l.Soft), High: duty(&l.Hard)}))
}

// openedIn says of a state of the plant that its joint is open.
func openedIn(t *rating.Thermal) []message.Message {
	if t.Joint.Gap == 0 {
		return nil
	}
	return []message.Message{message.New("opened." + string(t.Joint.Case))}
}
