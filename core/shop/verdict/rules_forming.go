package verdict

import (
	"math"

	"finwright/core/bond"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/tube"
	"finwright/core/units"
)

// judgeTool looks for rolls that fit height, strip and pitch. Missing rolls can
// be made, so that is a watch; the change is to the nearest set in stock.
//
// Source: common practice, no source: each height, thickness and pitch has its own tooling.
func judgeTool(j *job) Verdict {
	f := &j.o.Tube.Fin
	v := Verdict{State: figure.Watch, Why: message.New("shop.why.no_tool")}
	least := math.Inf(1)
	for _, t := range j.m.Tools {
		var change []Setting
		far := 0.0
		if off := abs(f.Height - t.Height); off > j.c.Placing.ToolHeight*(1+shop.Slack) {
			change = append(change, Setting{Field: "fin_height", Kind: units.Height, SI: float64(t.Height)})
			far += float64(off / t.Height)
		}
		if off := abs(f.Strip - t.Strip); off > j.c.Placing.ToolStrip*(1+shop.Slack) {
			change = append(change, Setting{Field: "strip_thickness", Kind: units.Thickness, SI: float64(t.Strip)})
			far += float64(off / t.Strip)
		}
		if n := between("fin_pitch", units.FinCount, f.Count, t.Count); n.Change != nil {
			change = append(change, n.Change...)
			far -= n.Measure.Margin
		}
		if change == nil {
			return Verdict{State: figure.Good}
		}
		if far < least {
			v.Change, least = change, far
		}
	}
	return v
}

// JudgeForming holds a fin against what its metal bears in a shop, on whichever line: the
// verdicts of the rules "stretch" and "tip", without their changes.
func JudgeForming(c *shop.Capability, o *making.Order) (stretch, tip Verdict) {
	j := &job{c: c, o: o}
	if !o.Tube.Fin.Type.Wound() {
		v := unknown("shop.why.not_wound")
		return v, v
	}
	stretch, tip = judgeStretch(j), judgeTip(j)
	stretch.Change, tip.Change = nil, nil
	return stretch, tip
}

// judgeStretch compares Df/d with the greatest usual for the fin metal. Rolling
// is compression, so passing it is a watch.
//
// Source: engineering judgement from common combinations of height and diameter, editable.
func judgeStretch(j *job) Verdict {
	f, ok := j.c.FormingOf(j.o.FinMetal.Kind)
	if !ok {
		return unknown("shop.why.no_forming", "metal", j.o.FinMetal.Name())
	}
	t := &j.o.Tube
	v := atMost(units.Factor, t.Stretch(), f.Stretch)
	if v.State == figure.No {
		v.State = figure.Watch
		v.Why = message.New("shop.why.stretch", "stretch", message.Of(units.Factor, t.Stretch()), "limit", message.Of(units.Factor, f.Stretch), "metal", j.o.FinMetal.Name())
		if h := roundDown(t.OD * units.Length(f.Stretch-1) / 2); h > 0 {
			v.Change = []Setting{{Field: "fin_height", Kind: units.Height, SI: float64(h)}}
		}
	}
	return v
}

// judgeTip compares the fin's tip with the thinnest that the metal bears.
//
// Source: engineering judgement, editable.
func judgeTip(j *job) Verdict {
	f, ok := j.c.FormingOf(j.o.FinMetal.Kind)
	if !ok {
		return unknown("shop.why.no_forming", "metal", j.o.FinMetal.Name())
	}
	t := &j.o.Tube
	v := atLeast(units.Thickness, t.TipThickness(), f.Tip)
	switch {
	case v.State == figure.Good:
	case t.TipThickness() >= (f.Tip-tipMargin)*(1-shop.Slack):
		v.State = figure.Good
	default:
		v.State = figure.Watch
		v.Why = message.New("shop.why.tip", "tip", message.Of(units.Thickness, t.TipThickness()), "limit", message.Of(units.Thickness, f.Tip), "metal", j.o.FinMetal.Name())
		if j.m != nil {
			v.Change = thickerTip(j, f.Tip-tipMargin)
		}
	}
	return v
}

// tipMargin is half of the last digit that is shown of a tip: one that reads as the limit passes.
const tipMargin = 0.5e-6 // m

// thickerTip takes thicker strip if the line has it, else a lower fin. A tip
// that was measured cannot be changed.
func thickerTip(j *job, tip units.Length) []Setting {
	t := &j.o.Tube
	strip := tip
	switch t.Profile() {
	case tube.Linear:
		return nil
	case tube.Rolled:
		strip = tip * t.FinOD() / t.OD
	}
	if strip = roundUp(strip); strip <= j.m.Strip.High*(1+shop.Slack) {
		return []Setting{{Field: "strip_thickness", Kind: units.Thickness, SI: float64(strip)}}
	}
	h := roundDown(t.OD * (t.Fin.Strip/tip - 1) / 2)
	if t.Profile() != tube.Rolled || h <= 0 {
		return nil
	}
	return []Setting{{Field: "fin_height", Kind: units.Height, SI: float64(h)}}
}

// expansionAt is where expansions are compared if no temperature is stated.
const expansionAt = units.Temperature(100)

// judgeExpansion compares the expansions of fin and tube: of a welded fin by
// their mismatch, of one that tension holds by the temperature at which it loosens.
//
// Source: welded: within 20 %, agreed industry standard for HF-welded fins, 1990;
// wound: bond.Winding, an order of magnitude.
func judgeExpansion(j *job) Verdict {
	var v Verdict
	switch typ := j.o.Tube.Fin.Type; {
	case typ == tube.Welded:
		v = j.mismatch(j.o.FinMetal)
	case bond.HeldByTension(typ):
		v = j.loosening(j.o.FinMetal)
	default:
		return unknown("shop.why.keyed")
	}
	if v.State != figure.Watch {
		return v
	}
	best := v.Measure.Margin
	for _, id := range j.m.FinMetals {
		metal, _ := material.FinMetal(id)
		other := j.loosening
		if j.o.Tube.Fin.Type == tube.Welded {
			other = j.mismatch
		}
		w := other(metal)
		margin := math.Inf(1)
		if w.Measure != nil {
			margin = w.Measure.Margin
		}
		if w.State == figure.Good && margin > best {
			v.Change, best = []Setting{{Field: "fin_metal", Choice: id}}, margin
		}
	}
	return v
}

func (j *job) expansions(fin material.Metal) (finMean, tubeMean float64) {
	at := expansionAt
	if j.o.Hottest != nil {
		at = *j.o.Hottest
	}
	f, _ := fin.ExpansionTo(at)
	t, _ := j.o.TubeMetal.ExpansionTo(at)
	return float64(f), float64(t)
}

func (j *job) mismatch(fin material.Metal) Verdict {
	f, t := j.expansions(fin)
	v := atMost(units.Percent, math.Abs(f-t)/t, j.c.Placing.Mismatch)
	if v.State == figure.No {
		v.State = figure.Watch
		v.Why = message.New("shop.why.mismatch", "value", message.Of(units.Percent, v.Measure.Value), "limit", message.Of(units.Percent, v.Measure.Limit))
	}
	return v
}

func (j *job) loosening(fin material.Metal) Verdict {
	f, t := j.expansions(fin)
	loss, ok := bond.Winding{OD: float64(j.o.Tube.OD), Strain: j.c.Placing.Strain, FinExpansion: f, TubeExpansion: t}.LossTemperature()
	switch {
	case !ok:
		return Verdict{State: figure.Good, Why: message.New("shop.why.tightens")}
	case j.o.Hottest == nil:
		return unknown("shop.why.no_hottest", "loss", message.Of(units.Temp, loss))
	}
	hottest := float64(*j.o.Hottest)
	v := Verdict{State: figure.Good, Measure: &Measure{units.Temp, hottest, loss, (loss - hottest) / (loss - 20)}}
	if hottest > loss {
		v.State = figure.Watch
		v.Why = message.New("shop.why.loosens", "hottest", message.Of(units.Temp, hottest), "loss", message.Of(units.Temp, loss))
	}
	return v
}
