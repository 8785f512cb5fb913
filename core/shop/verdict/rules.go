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
func judgeType(j *job) Verdict {
	if j.m != nil {
		return Verdict{State: figure.Good}
	}
	v := Verdict{State: figure.No, Why: message.New("shop.why.type", "line", j.l.Name, "type", message.Key("choice.fin_type."+string(j.o.Tube.Fin.Type)))}
	for i := range j.l.Types {
		change := Setting{Field: "fin_type", Choice: string(j.l.Types[i].Type)}
		o := With(*j.o, change)
		other := &job{j.c, j.l, &j.l.Types[i], &o}
		if !slices.ContainsFunc(typeRules, func(r rule) bool { return r.judge(other).State == figure.No }) {
			v.Change = []Setting{change}
			break
		}
	}
	return v
}

func judgeOD(j *job) Verdict {
	return between("tube_od", units.Diameter, j.o.Tube.OD, j.l.TubeOD)
}

// judgeSize asks whether tooling for the tube's diameter is in stock; if not, it
// can be made, so that is a watch.
func judgeSize(j *job) Verdict {
	od := j.o.Tube.OD
	if len(j.l.Sizes) == 0 {
		return unknown("shop.why.no_sizes")
	}
	nearest := slices.MinFunc(j.l.Sizes, func(a, b units.Length) int {
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

func judgeLength(j *job) Verdict {
	return between("tube_length", units.Distance, j.o.Tube.Length, j.l.TubeLength)
}

// judgeWidth holds the strip's width to what the line's guides take. Height
// and width go together for every type.
func judgeWidth(j *job) Verdict {
	if !j.o.Tube.Fin.Type.Wound() {
		return unknown("shop.why.not_wound")
	}
	w := j.o.Tube.StripWidth()
	v := between("fin_height", units.Width, w, j.l.StripWidth)
	if v.Change != nil {
		h := j.o.Tube.Fin.Height + units.Length(v.Measure.Limit) - w
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

func judgeHeight(j *job) Verdict {
	t := &j.o.Tube
	return between("fin_height", units.Height, t.Fin.Height, j.m.HeightOn(t.OD))
}

func judgeCount(j *job) Verdict {
	t := &j.o.Tube
	return between("fin_pitch", units.FinCount, t.Fin.Count, j.m.CountOn(t.OD))
}

func judgeStrip(j *job) Verdict {
	return between("strip_thickness", units.Thickness, j.o.Tube.Fin.Strip, j.m.Strip)
}

func judgeTubeMetal(j *job) Verdict {
	return listed("tube_metal", j.o.TubeMetal, j.m.TubeMetals, material.TubeMetal)
}

func judgeFinMetal(j *job) Verdict {
	return listed("fin_metal", j.o.FinMetal, j.m.FinMetals, material.FinMetal)
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
