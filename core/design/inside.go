package design

import (
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// Bounds of the pressure in the tubes. Common practice, no source.
const (
	boilingMargin = 1.10 // [-] of the vapour pressure that a liquid must keep
	gasWatch      = 0.10 // [-] of the absolute inlet pressure that a gas may lose without a remark
	gasMost       = 0.40 // [-] from which the loss is no longer known: the gas speeds up as it goes
)

// inside is how the stream goes through the tubes.
func (b *builder) inside(t *rating.Thermal) []figure.Figure {
	in := &b.in.Input
	if t.InsideLoss == nil {
		return []figure.Figure{{ID: "inside_loss", Kind: units.Loss, State: figure.Plain, Absent: in.NoInsideLoss()}}
	}
	loss := *t.InsideLoss
	velocity := fig("inside_velocity", units.Velocity, loss.Velocity, "", "inside_velocity", arg("M", units.MassRate, in.Process.Flow),
		arg("ρ_i", units.Dense, in.Process.Flow/(loss.Velocity*in.PassSection())), arg("A_pass", units.SurfacePerTube, in.PassSection()))
	usual := in.InsideVelocity()
	if usual.Holds(loss.Velocity) {
		velocity.State = figure.Good
	} else {
		velocity.Why = []message.Message{message.New("notice.usual_velocity", "low", speed(usual.Low), "high", speed(usual.High))}
	}
	drop := fig("inside_loss", units.Loss, loss.Total, "", "inside_loss", arg("Δp_s", units.Loss, loss.Straight), arg("Δp_t", units.Loss, loss.Turns))
	if in.Process.DropAllowed > 0 {
		drop.State = figure.Good // until a notice says otherwise
	}
	list := []figure.Figure{velocity, drop}
	if density, err := in.InletDensity(); err == nil {
		list = append(list, fig("inside_volume", units.VolumeRate, in.Process.Flow/density, figure.WholeBank, "inside_volume",
			arg("M", units.MassRate, in.Process.Flow), arg("ρ_1", units.Dense, density)))
	}
	return append(list, b.leaving(t)...)
}

func speed(v float64) message.Amount { return message.Amount{Kind: units.Velocity, SI: v} }

// leaving is the pressure that is left, against that at which a liquid boils, or as a share of what there was.
func (b *builder) leaving(t *rating.Thermal) []figure.Figure {
	l, why := t.Leaving(&b.in.Input)
	at, margin := figure.Figure{ID: "outlet_pressure", Kind: units.Pressure, State: figure.Plain, Absent: why},
		figure.Figure{ID: "boiling_ratio", Kind: units.Factor, State: figure.Plain, Absent: why}
	if !why.None() {
		return []figure.Figure{at, margin}
	}
	at = fig("outlet_pressure", units.Pressure, l.Pressure, "", "outlet_pressure",
		arg("p_1", units.Pressure, b.in.Process.Pressure.SI), arg("Δp_i", units.Loss, t.InsideLoss.Total))
	at.State = figure.Good
	if margin.Absent = l.NoVapour; l.NoVapour.None() {
		margin = fig("boiling_ratio", units.Factor, l.Pressure/l.Vapour, "", "boiling_ratio", arg("p_2", units.Pressure, l.Pressure), arg("p_v", units.Pressure, l.Vapour))
		margin.State = figure.Good
	}
	return []figure.Figure{at, margin}
}

// insideNotices hold the stream in the tubes against usual velocities, the drop allowed and the pressure that it has.
func insideNotices(in *field.Input, t *rating.Thermal) []Notice {
	if t.InsideLoss == nil {
		if in.Process.Fluid == rating.Steam {
			return freezingNotices(in, t)
		}
		return []Notice{{State: figure.No, Field: "inside_flow", Figure: "inside_loss", Message: in.NoInsideLoss()}}
	}
	var out []Notice
	say := func(state figure.State, field, fig, key string, pairs ...any) {
		out = append(out, Notice{State: state, Field: field, Figure: fig, Message: message.New(key, pairs...)})
	}
	loss, usual := t.InsideLoss, in.InsideVelocity()
	switch v := loss.Velocity; {
	case units.Above(v, usual.Fast):
		say(figure.Watch, "passes", "inside_velocity", "notice.inside_fast", "velocity", speed(v), "most", speed(usual.Fast))
	case units.Above(usual.Slow, v):
		say(figure.Watch, "passes", "inside_velocity", "notice.inside_slow", "velocity", speed(v), "least", speed(usual.Slow))
	}
	if allowed := in.Process.DropAllowed; allowed > 0 && loss.Total > allowed*(1+wishMargin) {
		say(figure.No, "inside_drop_allowed", "inside_loss", "notice.inside_drop_over", "has", message.Amount{Kind: units.Loss, SI: loss.Total},
			"wish", message.Amount{Kind: units.Loss, SI: allowed}, "by", percent(loss.Total/allowed-1))
	}
	return append(append(out, pressureNotices(in, t)...), stateNotices(in, t)...)
}

// stateNotices hold the stream against what is known of it, and against its freezing.
func stateNotices(in *field.Input, t *rating.Thermal) []Notice {
	var out []Notice
	say := func(state figure.State, field, fig, key string, pairs ...any) {
		out = append(out, Notice{State: state, Field: field, Figure: fig, Message: message.New(key, pairs...)})
	}
	if known, low, high := t.OwnKnown(&in.Input); in.Process.Fluid == rating.OwnFluid && !known {
		say(figure.Watch, "own_fluid_points", "inside_film", "notice.own_beyond", "low", celsius(low), "high", celsius(high))
	}
	if t.Laminar(&in.Input) {
		key := "notice.laminar"
		if in.Process.Fluid == rating.OwnFluid && in.Process.Points == 1 {
			key = "notice.laminar_one"
		}
		say(figure.Watch, "passes", "inside_film", key)
		if _, known := in.Freezing(); !known {
			say(figure.Watch, "own_fluid_pour", "coldest_metal", "notice.pour_missing")
		}
	}
	return append(out, freezingNotices(in, t)...)
}

// freezingNotices hold the coldest metal against what it freezes, or what stops on it.
func freezingNotices(in *field.Input, t *rating.Thermal) []Notice {
	at, known := in.Freezing()
	if !known || !units.Above(at, t.Duty.Coldest.Celsius) {
		return nil
	}
	n := Notice{State: figure.No, Field: "inside_in", Figure: "coldest_metal", Message: message.New("notice.freezes", "metal", celsius(t.Duty.Coldest.Celsius), "freezing", celsius(at))}
	if in.Process.Fluid == rating.OwnFluid {
		n.State, n.Message.Key = figure.Watch, "notice.pours_no_more"
	}
	return []Notice{n}
}

func percent(share float64) message.Amount {
	return message.Amount{Kind: units.Percent, SI: share}
}

func pressureNotices(in *field.Input, t *rating.Thermal) []Notice {
	if !in.Process.Pressure.Stated {
		return nil
	}
	l, _ := t.Leaving(&in.Input)
	inlet, lost := in.Process.Pressure.SI, t.InsideLoss.Total/in.Process.Pressure.SI
	bar := func(p float64) message.Amount { return message.Amount{Kind: units.Pressure, SI: p} }
	refuse := func(state figure.State, fig, key string, pairs ...any) []Notice {
		return []Notice{{State: state, Field: "inside_flow", Figure: fig, Message: message.New(key, pairs...)}}
	}
	switch {
	case lost >= 1:
		return refuse(figure.No, "inside_loss", "notice.no_pressure_left", "loss", message.Amount{Kind: units.Loss, SI: t.InsideLoss.Total}, "inlet", bar(inlet))
	case l.NoVapour.None() && units.Above(boilingMargin*l.Vapour, l.Pressure):
		return refuse(figure.No, "outlet_pressure", "notice.flashing", "outlet", bar(l.Pressure), "vapour", bar(l.Vapour), "margin", percent(boilingMargin-1))
	case !in.Process.Gas || in.Process.Fluid != rating.OwnFluid:
	case units.Above(lost, gasMost):
		return refuse(figure.No, "outlet_pressure", "notice.gas_drop_most", "share", percent(lost), "most", percent(gasMost))
	case units.Above(lost, gasWatch):
		return refuse(figure.Watch, "outlet_pressure", "notice.gas_drop_watch", "share", percent(lost), "usual", percent(gasWatch))
	}
	return nil
}
