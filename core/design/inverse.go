package design

import (
	"math"

	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// wishMargin lets pass what prints as the wish: half a unit of the last of four digits.
const wishMargin = 5e-4

// wishNotices holds the bank against the duty wanted and the pressure drop allowed.
func wishNotices(in *field.Input, t *rating.Thermal) []Notice {
	var out []Notice
	say := func(id, field, key string, k units.Kind, has, wish, by float64) {
		out = append(out, Notice{State: figure.No, Field: field, Figure: id, Message: message.New(key,
			"has", message.Amount{Kind: k, SI: has}, "wish", message.Amount{Kind: k, SI: wish}, "by", message.Amount{Kind: units.Percent, SI: by})})
	}
	if want, duty := in.Bank.DutyWanted, math.Abs(t.Duty.Heat); duty < want*(1-wishMargin) {
		say("duty", "duty_wanted", "notice.duty_short", units.Duty, duty, want, 1-duty/want)
	}
	switch allowed, drop := in.Bank.DropAllowed, in.DropJudged(t); {
	case allowed == 0:
	case !t.HasDrop():
		out = append(out, Notice{State: figure.Watch, Field: "drop_allowed", Figure: "air_drop", Message: message.New("notice.drop_not_judged")})
	case drop > allowed*(1+wishMargin):
		key := "notice.drop_over"
		if drop > t.UsedDrop.Answer.Total {
			key = "notice.drop_over_other"
		}
		say("air_drop", "drop_allowed", key, units.Drop, drop, allowed, drop/allowed-1)
	}
	return out
}

// inverse answers the questions that were asked the other way round.
func (b *builder) inverse(t *rating.Thermal) []figure.Figure {
	var list []figure.Figure
	if want := b.in.Bank.DutyWanted; want > 0 {
		n, why, cannot := b.in.TubesFor(want*(1-wishMargin), t)
		f := fig("tubes_wanted", units.Count, float64(n*b.in.Bank.Rows), figure.WholeBank, "tubes_wanted", arg("Q_w", units.Duty, want), arg("N_r", units.Count, float64(b.in.Bank.Rows)))
		f.Absent = b.none(why, cannot)
		list = append(list, f)
	}
	if allowed := b.in.Bank.DropAllowed; allowed > 0 {
		if !t.HasDrop() {
			return append(list, absent("velocity_allowed", units.Velocity, "", "absent.no_drop"))
		}
		velocity := field.Must("face_velocity")
		v, why, cannot := b.in.VelocityFor(allowed, velocity.Low, velocity.High, t)
		f := fig("velocity_allowed", units.Velocity, v, "", "velocity_allowed", arg("Δp_w", units.Drop, allowed))
		f.Side, f.Absent = units.Down, b.none(why, cannot)
		list = append(list, f)
	}
	return list
}

// none says why a question has no answer: as the curve tells it, or, where the curve ends first, why it ends.
func (b *builder) none(why message.Message, cannot *rating.Hindrance) message.Message {
	if cannot == nil {
		return why
	}
	return message.New("absent.curve_ends", "why", hindered(b.in, cannot).Message)
}
