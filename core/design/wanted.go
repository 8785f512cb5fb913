package design

import (
	"math"

	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// closes is how far flow, outlet and duty may lie apart before they contradict one another [-].
const closes = 0.01

// Asked is what the bank does beside what is asked of it.
type Asked struct {
	Figure string // which it is found by
	Kind   units.Kind
	Found  float64
	Absent message.Message // why nothing is found
	Wanted rating.Optional
	Over   rating.Optional // found over wanted, less one [-]; of a temperature it would mean nothing
	State  figure.State
}

// pairs compares, where anything is asked for. clean is the bank without dirt.
func pairs(in *field.Input, t, clean *rating.Thermal, r *Result) []Asked {
	var list []Asked
	add := func(id string, found float64, wanted rating.Optional) {
		f, there := r.Find(id)
		if !there {
			return
		}
		p := Asked{Figure: id, Kind: f.Kind, Found: found, Absent: f.Absent, Wanted: wanted, State: figure.Plain}
		if wanted.Stated && f.Absent.None() {
			p.State = f.State
			if f.Kind != units.Temp {
				p.Over = rating.Optional{SI: found/wanted.SI - 1, Stated: true}
			}
		}
		list = append(list, p)
	}
	stated := func(si float64) rating.Optional { return rating.Optional{SI: si, Stated: si > 0} }
	add("duty", math.Abs(t.Duty.Heat), stated(in.Bank.DutyWanted))
	if clean != nil {
		add("duty_clean", math.Abs(clean.Duty.Heat), stated(in.Bank.DutyWanted))
	}
	if in.Job.Retube {
		add("ua", UA(t), stated(in.Job.OldUA))
	}
	if in.Process.Fluid != rating.Steam {
		add("process_out", t.Duty.ProcessOut, in.Process.Out)
	}
	add("air_drop", t.UsedDrop.Answer.Total, stated(in.Bank.DropAllowed))
	if t.InsideLoss != nil {
		add("inside_loss", t.InsideLoss.Total, stated(in.Process.DropAllowed))
	}
	return list
}

// cleaned rates the bank without its dirt, where a duty is wanted of one that has some.
func cleaned(in *field.Input, h *Heat) *rating.Thermal {
	if !h.Absent.None() || in.Bank.DutyWanted == 0 || in.Process.Fouling+in.Air.Fouling == 0 {
		return nil
	}
	t, hindered := in.Clean(&h.Thermal)
	if hindered != nil {
		return nil
	}
	return &t
}

// wanted lists what the wishes add to the duty: the bank without dirt, its surplus, and what followed of flow, outlet and duty.
func (b *builder) wanted(t *rating.Thermal) []figure.Figure {
	in := &b.in.Input
	var list []figure.Figure
	want := in.Bank.DutyWanted
	over := func(id string, heat float64) figure.Figure {
		return fig(id, units.Percent, heat/want-1, "", "surplus", arg("Q", units.Duty, heat), arg("Q_w", units.Duty, want))
	}
	if want > 0 {
		list = append(list, over("surplus", math.Abs(t.Duty.Heat)))
	}
	if b.clean != nil {
		list = append(list, b.dutyOf("duty_clean", b.clean))
		if want > 0 {
			list = append(list, over("surplus_clean", math.Abs(b.clean.Duty.Heat)))
		}
	}
	if in.Process.Fluid == rating.Steam {
		return list
	}
	return append(list, b.closing()...)
}

// dutyOf is the duty of the bank with something about it changed.
func (b *builder) dutyOf(id string, t *rating.Thermal) figure.Figure {
	capacity := t.Flow.FaceMassVelocity * t.Bank.FaceArea() * t.Gas.HeatCapacity
	return fig(id, units.Duty, math.Abs(t.Duty.Heat), figure.WholeBank, "duty", arg("C_air", units.Factor, capacity),
		arg("P", units.Factor, t.Duty.Effectiveness), arg("T_p", units.Temp, float64(b.in.Process.In)), arg("T_a", units.Temp, float64(b.in.Air.In)))
}

// closing is the flow, and what followed from it.
func (b *builder) closing() []figure.Figure {
	in := &b.in.Input
	flow := fig("inside_flow", units.MassRate, in.Process.Flow, figure.WholeBank, "flow_given", arg("M_given", units.MassRate, in.Process.Flow))
	if in.Process.Third == rating.NoThird {
		return []figure.Figure{flow}
	}
	inlet, out, duty := float64(in.Process.In), in.Process.Out.SI, in.Bank.DutyWanted
	cp, err := in.MeanHeat(out)
	if err != nil {
		panic(err) // it was asked before
	}
	m, c := arg("M", units.MassRate, in.Process.Flow), arg("c_i", units.SpecificHeat, cp)
	p, w, q := arg("T_p", units.Temp, inlet), arg("T_w", units.Temp, out), arg("Q_w", units.Duty, duty)
	switch in.Process.Third {
	case rating.ThirdFlow:
		return []figure.Figure{fig("inside_flow", units.MassRate, in.Process.Flow, figure.WholeBank, "flow_wanted", q, c, p, w)}
	case rating.ThirdDuty:
		return []figure.Figure{flow, fig("wanted_duty", units.Duty, duty, figure.WholeBank, "duty_wanted", m, c, p, w)}
	}
	formula := "out_cooled"
	if out > inlet {
		formula = "out_warmed"
	}
	return []figure.Figure{flow, fig("wanted_out", units.Temp, out, "", formula, p, q, m, c)}
}

// closingNotices say where flow, outlet and duty contradict one another.
func closingNotices(in *field.Input) []Notice {
	gap, ok := in.Gap()
	if !ok || math.Abs(gap) <= closes {
		return nil
	}
	duty := in.Bank.DutyWanted * (1 + gap)
	return []Notice{{State: figure.No, Field: "inside_out", Figure: "process_out", Message: message.New("notice.contradiction",
		"has", message.Amount{Kind: units.Duty, SI: duty}, "wish", message.Amount{Kind: units.Duty, SI: in.Bank.DutyWanted}, "by", percent(math.Abs(gap)))}}
}
