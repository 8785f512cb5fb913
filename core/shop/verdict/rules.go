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

// judgeType asks whether the line makes the fin type. The change offered is the
// first of the line's types that refuses nothing else of the order, if there is one.
func judgeType(p *pair) Verdict {
	if p.m != nil {
		return Verdict{State: figure.Good}
	}
	v := Verdict{State: figure.No, Why: message.New("shop.why.type", "line", p.l.Name, "type", message.Key("choice.fin_type."+string(p.o.Tube.Fin.Type)))}
	for i := range p.l.Types {
		change := Setting{Field: "fin_type", Choice: string(p.l.Types[i].Type)}
		o := With(*p.o, change)
		other := &pair{p.c, p.l, &p.l.Types[i], &o}
		if !slices.ContainsFunc(typeRules, func(r rule) bool { return r.judge(other).State == figure.No }) {
			v.Change = []Setting{change}
			break
		}
	}
	return v
}

func judgeOD(p *pair) Verdict {
	return between("tube_od", units.Diameter, p.o.Tube.OD, p.l.TubeOD)
}

// judgeSize asks whether tooling for the tube's diameter is in stock; if not, it
// can be made, so that is a watch.
func judgeSize(p *pair) Verdict {
	od := p.o.Tube.OD
	if len(p.l.Sizes) == 0 {
		return unknown("shop.why.no_sizes")
	}
	nearest := slices.MinFunc(p.l.Sizes, func(a, b units.Length) int {
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

func judgeLength(p *pair) Verdict {
	return between("tube_length", units.Distance, p.o.Tube.Length, p.l.TubeLength)
}

// judgeWidth holds the strip's width to what the line's guides take. Height
// and width go together for every type.
func judgeWidth(p *pair) Verdict {
	if !p.o.Tube.Fin.Type.Wound() {
		return unknown("shop.why.not_wound")
	}
	w := p.o.Tube.StripWidth()
	v := between("fin_height", units.Width, w, p.l.StripWidth)
	if v.Change != nil {
		h := p.o.Tube.Fin.Height + units.Length(v.Measure.Limit) - w
		if v.Measure.Limit < float64(w) {
			h = roundDown(h)
		} else {
			h = roundUp(h)
		}
		v.Change = []Setting{{Field: "fin_height", Kind: units.Height, SI: float64(h)}}
		if h <= 0 {
			v.Change = nil
		}
	}
	return v
}

func judgeHeight(p *pair) Verdict {
	t := &p.o.Tube
	return between("fin_height", units.Height, t.Fin.Height, p.m.HeightOn(t.OD))
}

func judgeCount(p *pair) Verdict {
	t := &p.o.Tube
	return between("fin_pitch", units.FinCount, t.Fin.Count, p.m.CountOn(t.OD))
}

func judgeStrip(p *pair) Verdict {
	return between("strip_thickness", units.Thickness, p.o.Tube.Fin.Strip, p.m.Strip)
}

func judgeTubeMetal(p *pair) Verdict {
	return listed("tube_metal", p.o.TubeMetal, p.m.TubeMetals, material.TubeMetal)
}

func judgeFinMetal(p *pair) Verdict {
	return listed("fin_metal", p.o.FinMetal, p.m.FinMetals, material.FinMetal)
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
		if other.Kind == metal.Kind {
			far /= 1000
		}
		if far < least {
			v.Change, least = []Setting{{Field: field, Choice: id}}, far
		}
	}
	return v
}
