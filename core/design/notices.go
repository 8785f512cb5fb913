package design

import (
	"math"
	"slices"

	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/shop/making"
	"finwright/core/shop/verdict"
	"finwright/core/units"
)

// Thresholds of remarks. Engineering judgement: they warn and never block.
const (
	GoodEfficiency = 0.80   // of the fin; below it a fifth of the fin and more is idle
	narrowestGap   = 0.0010 // m, below it dirt bridges the fins
)

// Idle reports whether so much of a fin is idle that it is remarked on.
func Idle(efficiency float64) bool { return units.Above(GoodEfficiency, efficiency) }

// notices remarks on a design that can be evaluated.
func notices(in *field.Input, s *rating.Surface, judged []verdict.Verdict) []Notice {
	return slices.Concat(orderNotices(in), formNotices(in, judged), surfaceNotices(in, s))
}

// formNotices remarks on the tube, whatever it is to do.
func formNotices(in *field.Input, judged []verdict.Verdict) (out []Notice) {
	t := &in.Tube
	add := func(state figure.State, field, fig, key string, pairs ...any) {
		out = append(out, Notice{State: state, Field: field, Figure: fig, Message: message.New(key, pairs...)})
	}
	quantity := func(k units.Kind, si float64) message.Amount { return message.Amount{Kind: k, SI: si} }
	switch in.FinMetal.Family.Suits(t.Fin.Type.Fixing().Forming) {
	case material.Unsuitable:
		add(figure.No, "fin_metal", "strip_width", "notice.metal_unsuitable", "metal", in.FinMetal.Name(), "type", message.Key("choice.fin_type."+string(t.Fin.Type)))
	case material.Special:
		add(figure.Watch, "fin_metal", "strip_width", "notice.metal_special", "metal", in.FinMetal.Name(), "type", message.Key("choice.fin_type."+string(t.Fin.Type)))
	}
	for _, v := range judged {
		if v.State == figure.Watch {
			out = append(out, Notice{State: v.State, Field: v.Rule.Field, Figure: v.Rule.Figure, Message: v.Why})
		}
	}
	if gap := float64(t.Gap()); units.Above(narrowestGap, gap) {
		add(figure.Watch, "fin_pitch", "gap", "notice.narrow_gap",
			"gap", quantity(units.Gap, gap), "limit", quantity(units.Gap, narrowestGap))
	}
	return out
}

// surfaceNotices remarks on the surface at work.
func surfaceNotices(in *field.Input, s *rating.Surface) (out []Notice) {
	add := func(state figure.State, field, fig, key string, pairs ...any) {
		out = append(out, Notice{State: state, Field: field, Figure: fig, Message: message.New(key, pairs...)})
	}
	quantity := func(k units.Kind, si float64) message.Amount { return message.Amount{Kind: k, SI: si} }
	if Idle(s.Fin.Efficiency) {
		add(figure.Watch, "fin_height", "fin_efficiency", "notice.poor_eta",
			"eta", quantity(units.Factor, s.Fin.Efficiency), "limit", quantity(units.Factor, GoodEfficiency))
	}
	if _, inRange := in.FinMetal.ConductivityAt(s.FinAt); !inRange {
		low, high := in.FinMetal.Conductivity.Range()
		add(figure.Outside, "metal_temperature", "conductivity", "notice.conductivity_range",
			"metal", in.FinMetal.Name(), "low", quantity(units.Temp, float64(low)), "high", quantity(units.Temp, float64(high)))
	}
	return out
}

// holdNotices say what is held of the stream inside where that is not stated: what the bank does.
func holdNotices(in *field.Input, t *rating.Thermal) []Notice {
	if in.Process.Fluid == rating.Steam {
		return nil
	}
	say := func(key, name string, amount message.Amount) []Notice {
		return []Notice{{State: figure.Plain, Field: "hold_process", Message: message.New(key, name, amount)}}
	}
	switch hold := in.Holds.Process; {
	case hold == rating.HoldEnds && !in.Process.Out.Stated:
		return say("notice.hold_outlet", "outlet", celsius(t.Duty.ProcessOut))
	case hold == rating.HoldDuty && in.Bank.DutyWanted == 0:
		return say("notice.hold_duty", "duty", message.Amount{Kind: units.Duty, SI: math.Abs(t.Duty.Heat)})
	}
	return nil
}

// judgeShape holds the fin against what its metal bears in the shop; nothing is judged without one. Making says the same of it.
func judgeShape(in *field.Input) []verdict.Verdict {
	if in.Shop == nil {
		return nil
	}
	return verdict.JudgeShape(in.Shop, making.OrderOf(in, nil))
}

// test says what the state of a figure is held against, and that it is good if nothing else is remarked of it.
func test(f *figure.Figure, in *field.Input, h Heat, judged []verdict.Verdict) {
	at := func(key string, k units.Kind, limit float64) {
		f.Tests = message.New(key, "limit", message.Amount{Kind: k, SI: limit})
	}
	good := true
	switch f.ID {
	case "fin_efficiency":
		at("tests.least", f.Kind, GoodEfficiency)
	case "gap":
		at("tests.least", f.Kind, narrowestGap)
	case "conductivity":
		f.Tests = message.New("tests.table")
	case "strip_width":
		f.Tests = message.New("tests.forming")
	case "film", "inside_film":
		f.Tests = message.New("tests.range")
	case "air_drop":
		f.Tests = message.New("tests.range")
		if allowed := in.Bank.DropAllowed; allowed > 0 {
			at("tests.drop", f.Kind, allowed)
		}
	case "ua":
		if good = in.Job.Retube && in.Job.OldUA > 0; good {
			at("tests.least", f.Kind, in.Job.OldUA)
		}
	case "fin_od":
		if good = in.Job.Retube && in.Job.FinMost > 0; good {
			at("tests.most", f.Kind, float64(in.Job.FinMost))
		}
	case "duty":
		if good = in.Bank.DutyWanted > 0; good {
			at("tests.least", f.Kind, in.Bank.DutyWanted)
		}
	case "inside_velocity":
		good, f.Tests = false, message.New("tests.usual")
	case "inside_loss":
		if good = in.Process.DropAllowed > 0; good {
			at("tests.most", f.Kind, in.Process.DropAllowed)
		}
	case "outlet_pressure":
		good, f.Tests = false, message.New("tests.outlet")
	case "boiling_ratio":
		good = false
		at("tests.least", f.Kind, boilingMargin)
	case "hottest_tip":
		if good = in.FinMetal.Limit.Known(); good {
			f.Tests = message.New("tests.limit", "limit", celsius(in.FinMetal.Limit.SI), "source", message.Key(in.FinMetal.Limit.Key))
			if f.State == figure.Plain && in.FinMetal.Limit.Status == material.FromMemory {
				f.State = figure.Kept
			}
		}
	default:
		good = false
		for _, v := range judged {
			if v.Rule.Figure == f.ID && v.Measure != nil {
				good = true
				at("tests.shop", v.Measure.Kind, v.Measure.Limit)
			}
		}
	}
	if good && f.State == figure.Plain && f.Absent.None() {
		f.State = figure.Good
	}
}

// mark sets f's state from the notices that name it.
func mark(f *figure.Figure, notices []Notice) {
	for _, n := range notices {
		if n.Figure != f.ID {
			continue
		}
		if n.State.Graver(f.State) {
			f.State = n.State
		}
		f.Why = append(f.Why, n.Message)
	}
}
