package verdict

import (
	"math"

	"finwright/core/bond"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

var toolRule = &Rule{ID: "tool", Field: "fin_height", Changes: []string{"fin_height", "strip_thickness", "fin_pitch"}, Judge: judgeTool}

// judgeTool looks for rolls that fit height, strip and pitch. Missing rolls can
// be made, so that is a watch; the change is to the nearest set in stock.
//
// Source: common practice, no source: each height, thickness and pitch has its own tooling.
func judgeTool(p *Pair) Verdict {
	f := &p.Order.Tube.Fin
	if !f.Type.Tapers() {
		return moot("shop.why.no_rolls")
	}
	v := Verdict{State: figure.Watch, Why: message.New("shop.why.no_tool")}
	least := math.Inf(1)
	for _, t := range p.Practice.Tools {
		var change []Setting
		far := 0.0
		if off := abs(f.Height - t.Height); off > p.Shop.Placing.ToolHeight*(1+shop.Slack) {
			change = append(change, Setting{Field: "fin_height", Kind: units.Height, SI: float64(t.Height)})
			far += float64(off / t.Height)
		}
		if off := abs(f.Strip - t.Strip); off > p.Shop.Placing.ToolStrip*(1+shop.Slack) {
			change = append(change, Setting{Field: "strip_thickness", Kind: units.Thickness, SI: float64(t.Strip)})
			far += float64(off / t.Strip)
		}
		if limit, margin := nearer(f.Count, t.Count); margin < -shop.Slack {
			change = append(change, Setting{Field: "fin_pitch", Kind: units.FinCount, SI: float64(limit)})
			far -= margin
		}
		if change == nil {
			return Verdict{State: figure.Good}
		}
		if v.Change != nil && far >= least {
			v.Others = append(v.Others, change)
			continue
		}
		if v.Change != nil {
			v.Others = append(v.Others, v.Change)
		}
		v.Change, least = change, far
	}
	return v
}

var stretchRule = &Rule{ID: "stretch", Field: "fin_height", Figure: "stretch", Shape: true, Changes: []string{"fin_height"}, Judge: judgeStretch}

// judgeStretch compares Df/d with the greatest usual for the fin metal. Rolling
// is compression, so passing it is a watch.
//
// Source: engineering judgement from common combinations of height and diameter, editable.
func judgeStretch(p *Pair) Verdict {
	f, ok := p.Shop.FormingOf(p.Order.FinMetal.Family)
	if !ok {
		return unknown("shop.why.no_forming", "metal", p.Order.FinMetal.Name())
	}
	t := &p.Order.Tube
	v := atMost(units.Factor, t.Stretch(), f.Stretch)
	if v.State == figure.No {
		v.State = figure.Watch
		v.Why = message.New("shop.why.stretch", "stretch", message.Of(units.Factor, t.Stretch()), "limit", message.Of(units.Factor, f.Stretch), "metal", p.Order.FinMetal.Name())
		if h := heightAtMost(p, t.OD*units.Length(f.Stretch-1)/2); h > 0 {
			v.Change = []Setting{{Field: "fin_height", Kind: units.Height, SI: float64(h)}}
		}
	}
	return v
}

var tipRule = &Rule{ID: "tip", Field: "strip_thickness", Figure: "tip_thickness", Shape: true, Changes: []string{"strip_thickness", "fin_height"}, Judge: judgeTip}

// judgeTip compares the fin's tip with the thinnest that the metal bears.
//
// Source: engineering judgement, editable.
func judgeTip(p *Pair) Verdict {
	f, ok := p.Shop.FormingOf(p.Order.FinMetal.Family)
	if !ok {
		return unknown("shop.why.no_forming", "metal", p.Order.FinMetal.Name())
	}
	t := &p.Order.Tube
	v := atLeast(units.Thickness, t.TipThickness(), f.Tip)
	switch {
	case v.State == figure.Good:
	case t.TipThickness() >= (f.Tip-tipMargin)*(1-shop.Slack):
		v.State, v.Measure.Margin = figure.Good, 0 // it reads as the limit
	default:
		v.State = figure.Watch
		v.Why = message.New("shop.why.tip", "tip", message.Of(units.Thickness, t.TipThickness()), "limit", message.Of(units.Thickness, f.Tip), "metal", p.Order.FinMetal.Name())
		if p.Practice != nil {
			v.Change, v.Others = thickerTip(p, f.Tip-tipMargin)
		}
	}
	return v
}

// tipMargin is half of the last digit that is shown of a tip: one that reads as the limit passes.
const tipMargin = 0.5e-6 // m

// thickerTip takes thicker strip if the line has it, else a lower fin, which is the other change where it has. A tip
// that was measured cannot be changed.
func thickerTip(p *Pair, tip units.Length) (change []Setting, others [][]Setting) {
	t := &p.Order.Tube
	strip := tip
	switch t.Profile() {
	case tube.Linear:
		return nil, nil
	case tube.Rolled:
		strip = tip * t.FinOD() / t.OD
	}
	if h := heightAtMost(p, t.OD*(t.Fin.Strip/tip-1)/2); t.Profile() == tube.Rolled && h > 0 {
		change = []Setting{{Field: "fin_height", Kind: units.Height, SI: float64(h)}}
	}
	if strip = stripAtLeast(p, strip); strip > p.Practice.Strip.High*(1+shop.Slack) {
		return change, nil
	}
	if change != nil {
		others = [][]Setting{change}
	}
	return []Setting{{Field: "strip_thickness", Kind: units.Thickness, SI: float64(strip)}}, others
}

// expansionAt is where expansions are compared if no temperature is stated.
const expansionAt = units.Temperature(100)

var expansionRule = &Rule{ID: "expansion", Field: "fin_metal", Changes: []string{"fin_metal"}, Judge: judgeExpansion}

// judgeExpansion compares the expansions of fin and tube: of a welded fin by
// their mismatch, of one that tension holds by the temperature at which it loosens.
//
// Source: welded: within 20 %, agreed industry standard for HF-welded fins, 1990;
// wound: bond.Winding, an order of magnitude.
func judgeExpansion(p *Pair) Verdict {
	compare := p.loosening
	switch held := p.Order.Tube.Fin.Type.Fixing(); {
	case held.Section == tube.WeldSection:
		compare = p.mismatch
	case !held.Tension:
		return moot("shop.why.keyed")
	}
	v := compare(p.Order.FinMetal)
	if v.State != figure.Watch {
		return v
	}
	best := v.Measure.Margin
	for _, id := range p.Practice.FinMetals {
		metal, _ := material.FinMetal(id)
		w := compare(metal)
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

func (p *Pair) expansions(fin material.Metal) (finMean, tubeMean float64) {
	at := expansionAt
	if p.Order.Hottest != nil {
		at = *p.Order.Hottest
	}
	f, _ := fin.ExpansionTo(at)
	t, _ := p.Order.TubeMetal.ExpansionTo(at)
	return float64(f), float64(t)
}

func (p *Pair) mismatch(fin material.Metal) Verdict {
	f, t := p.expansions(fin)
	v := atMost(units.Percent, math.Abs(f-t)/t, p.Shop.Placing.Mismatch)
	if v.State == figure.No {
		v.State = figure.Watch
		v.Why = message.New("shop.why.mismatch", "value", message.Of(units.Percent, v.Measure.Value), "limit", message.Of(units.Percent, v.Measure.Limit))
	}
	return v
}

func (p *Pair) loosening(fin material.Metal) Verdict {
	w := bond.Winding{OD: float64(p.Order.Tube.OD), Strain: p.Shop.Placing.Strain, Fin: &fin, Tube: &p.Order.TubeMetal}
	loss, ok := w.LossTemperature()
	switch {
	case !ok:
		return Verdict{State: figure.Good, Why: message.New("shop.why.tightens")}
	case loss > bond.BeyondUse:
		return Verdict{State: figure.Good, Why: message.New("shop.why.never_loosens")}
	case p.Order.Hottest == nil:
		return unknown("shop.why.no_hottest", "loss", message.Of(units.Temp, loss))
	}
	hottest := float64(*p.Order.Hottest)
	v := Verdict{State: figure.Good, Measure: &Measure{units.Temp, hottest, loss, (loss - hottest) / (loss - 20)}}
	if units.Above(hottest, loss) {
		v.State = figure.Watch
		v.Why = message.New("shop.why.loosens", "hottest", message.Of(units.Temp, hottest), "loss", message.Of(units.Temp, loss))
	}
	return v
}
