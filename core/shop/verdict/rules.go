package verdict

import (
	"cmp"
	"math"
	"slices"

	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

var madeRule = &Rule{ID: "fin_type", Field: "fin_type", Changes: []string{"fin_type"}, Judge: judgeType}

// judgeType asks whether the line makes the fin type. The change offered is the
// first of the line's types that refuses nothing else of the order, if there is one.
func judgeType(p *Pair) Verdict {
	if p.Practice != nil {
		return Verdict{State: figure.Good}
	}
	v := Verdict{State: figure.No, Why: message.New("shop.why.type", "line", p.Line.Name, "type", message.Key("choice.fin_type."+string(p.Order.Tube.Fin.Type)))}
	for i := range p.Line.Types {
		change := Setting{Field: "fin_type", Choice: string(p.Line.Types[i].Type)}
		o := With(*p.Order, change)
		other := pair(p.Shop, p.Line, &p.Line.Types[i], &o)
		if !slices.ContainsFunc(TypeRules, func(r *Rule) bool { return r.Judge(other).State == figure.No }) {
			v.Change = []Setting{change}
			break
		}
	}
	return v
}

var odRule = &Rule{ID: "tube_od", Field: "tube_od", Changes: []string{"tube_od"}, Judge: judgeOD}

func judgeOD(p *Pair) Verdict {
	return between("tube_od", units.Diameter, p.Order.Tube.OD, p.Line.TubeOD)
}

var sizeRule = &Rule{ID: "tube_size", Field: "tube_od", Changes: []string{"tube_od"}, Judge: judgeSize}

// judgeSize asks whether tooling for the tube's diameter is in stock; if not, it
// can be made, so that is a watch.
func judgeSize(p *Pair) Verdict {
	od := p.Order.Tube.OD
	if len(p.Line.Sizes) == 0 {
		return unknown("shop.why.no_sizes")
	}
	nearest := slices.MinFunc(p.Line.Sizes, func(a, b units.Length) int {
		return cmp.Compare(abs(a-od), abs(b-od))
	})
	if abs(nearest-od) <= od*shop.Slack {
		return Verdict{State: figure.Good}
	}
	return Verdict{
		State: figure.Watch, Why: message.New("shop.why.size", "od", message.Of(units.Diameter, od), "nearest", message.Of(units.Diameter, nearest)),
		Change: []Setting{{Field: "tube_od", Kind: units.Diameter, SI: float64(nearest)}},
	}
}

func abs[T ~float64](x T) T { return max(x, -x) }

var lengthRule = &Rule{ID: "tube_length", Field: "tube_length", Changes: []string{"tube_length"}, Judge: judgeLength}

func judgeLength(p *Pair) Verdict {
	return between("tube_length", units.Distance, p.Order.Tube.Length, p.Line.TubeLength)
}

var widthRule = &Rule{ID: "strip_width", Field: "fin_height", Figure: "slit_width", Changes: []string{"fin_height"}, Judge: judgeWidth}

// judgeWidth holds the strip's width to what the line's guides take. Height
// and width go together for every type.
func judgeWidth(p *Pair) Verdict {
	if !p.Order.Tube.Fin.Type.Wound() {
		return moot("shop.why.not_wound")
	}
	w := p.Order.Tube.StripWidth()
	v := between("fin_height", units.Width, w, p.Line.StripWidth)
	if v.Change != nil {
		h := p.Order.Tube.Fin.Height + units.Length(v.Measure.Limit) - w
		if v.Measure.Limit < float64(w) {
			h = heightAtMost(p, h)
		} else {
			h = units.Length(math.Ceil(float64(h/heightStep)-shop.Slack)) * heightStep
		}
		v.Change = []Setting{{Field: "fin_height", Kind: units.Height, SI: float64(h)}}
		if h <= 0 {
			v.Change = nil
		}
	}
	return v
}

var heightRule = &Rule{ID: "fin_height", Field: "fin_height", Changes: []string{"fin_height"}, Judge: judgeHeight}

func judgeHeight(p *Pair) Verdict {
	t := &p.Order.Tube
	usual := p.Practice.HeightOn(t.OD)
	v := between("fin_height", units.Height, t.Fin.Height, usual)
	if v.Change != nil && t.Fin.Height > usual.High {
		if h := heightAtMost(p, usual.High); h >= usual.Low {
			v.Change[0].SI = float64(h)
		}
	}
	return v
}

var countRule = &Rule{ID: "fin_count", Field: "fin_pitch", Changes: []string{"fin_pitch"}, Judge: judgeCount}

func judgeCount(p *Pair) Verdict {
	t := &p.Order.Tube
	return between("fin_pitch", units.FinCount, t.Fin.Count, p.Practice.CountOn(t.OD))
}

var stripRule = &Rule{ID: "strip", Field: "strip_thickness", Changes: []string{"strip_thickness"}, Judge: judgeStrip}

func judgeStrip(p *Pair) Verdict {
	return between("strip_thickness", units.Thickness, p.Order.Tube.Fin.Strip, p.Practice.Strip)
}

var tubeMetalRule = &Rule{ID: "tube_metal", Field: "tube_metal", Changes: []string{"tube_metal"}, Judge: judgeTubeMetal}

func judgeTubeMetal(p *Pair) Verdict {
	return listed("tube_metal", p.Order.TubeMetal, p.Practice.TubeMetals, material.TubeMetal)
}

var finMetalRule = &Rule{ID: "fin_metal", Field: "fin_metal", Changes: []string{"fin_metal"}, Judge: judgeFinMetal}

func judgeFinMetal(p *Pair) Verdict {
	return listed("fin_metal", p.Order.FinMetal, p.Practice.FinMetals, material.FinMetal)
}

// listed asks whether a metal is among those that the line works. Of a user's
// own nothing is known, so that is a watch. The nearest is of the same family if
// there is one, else nearest in conductivity.
func listed(field string, metal material.Metal, list []string, find func(string) (material.Metal, bool)) Verdict {
	if slices.Contains(list, metal.ID) {
		return Verdict{State: figure.Good}
	}
	v := Verdict{State: figure.No, Why: message.New("shop.why.metal", "metal", metal.Name())}
	if metal.ID == material.Own {
		v = Verdict{State: figure.Watch, Why: message.New("shop.why.own_metal", "metal", metal.Name())}
	}
	k, _ := metal.ConductivityAt(20)
	least := math.Inf(1)
	for _, id := range list {
		other, _ := find(id)
		ko, _ := other.ConductivityAt(20)
		far := math.Abs(math.Log(float64(ko / k)))
		if other.Family == metal.Family {
			far /= 1000
		}
		if far < least {
			v.Change, least = []Setting{{Field: field, Choice: id}}, far
		}
	}
	return v
}
