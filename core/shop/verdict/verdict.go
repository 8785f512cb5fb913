// Package verdict judges whether a line can make a tube: a verdict of each rule, and the
// nearest change that makes it good.
package verdict

import (
	"math"

	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// Verdict is what one rule says of an order on a line: good, watch or no, or
// none where it has nothing to hold the order against; Why then says what is missing.
type Verdict struct {
	Rule    string // its name is the text "shop.rule.<rule>"
	State   figure.State
	Measure *Measure // nil where the rule is not about a number
	Why     message.Message
	Change  []Setting // the nearest change that makes this rule good, nil if there is none
}

// Measure is a number beside the limit that it is nearest to or has passed.
type Measure struct {
	Kind   units.Kind
	Value  float64 // SI
	Limit  float64 // SI
	Margin float64 // [-] distance inside the limit as a share of it, negative outside
}

// pair is an order and the line that it is held against, as the rules see it.
type pair struct {
	c *shop.Capability
	l *shop.Line
	m *shop.Practice // nil if the line does not make the type
	o *making.Order
}

// rule holds an order against one limit.
type rule struct {
	id    string
	judge func(*pair) Verdict
}

// Judge holds an order against every rule of a line.
func Judge(c *shop.Capability, l *shop.Line, o *making.Order) []Verdict {
	m, _ := l.Practice(o.Tube.Fin.Type)
	p := &pair{c, l, m, o}
	list := lineRules
	if m != nil {
		list = append(list[:len(list):len(list)], typeRules...)
	}
	out := make([]Verdict, 0, len(list))
	for _, r := range list {
		v := r.judge(p)
		v.Rule = r.id
		out = append(out, v)
	}
	return out
}

// Worst returns the gravest state among verdicts.
func Worst(list []Verdict) figure.State {
	worst := figure.Good
	for _, v := range list {
		if v.State == figure.No || v.State == figure.Watch && worst == figure.Good {
			worst = v.State
		}
	}
	return worst
}

// Choose returns the line that suits an order best: one that makes the fin type,
// of which alone most rules can be judged, then the fewest refusals, then the fewest
// watches, then the order of the file. Valid: at least one line.
func Choose(c *shop.Capability, o *making.Order) *shop.Line {
	best, least := 0, math.MaxInt
	for i := range c.Lines {
		bad := 0
		for _, v := range Judge(c, &c.Lines[i], o) {
			switch {
			case v.State == figure.No && v.Rule == "fin_type":
				bad += 1e6
			case v.State == figure.No:
				bad += 1e3
			case v.State == figure.Watch:
				bad++
			}
		}
		if bad < least {
			best, least = i, bad
		}
	}
	return &c.Lines[best]
}

// lineRules need only the line; the others need its way of making the fin type.
var lineRules = []rule{
	{"fin_type", judgeType},
	{"tube_od", judgeOD},
	{"tube_size", judgeSize},
	{"tube_length", judgeLength},
	{"strip_width", judgeWidth},
	{"crate", judgeCrate},
}

var typeRules = []rule{
	{"tube_metal", judgeTubeMetal},
	{"wall", judgeWall},
	{"wall_left", judgeWallLeft},
	{"fin_height", judgeHeight},
	{"fin_count", judgeCount},
	{"strip", judgeStrip},
	{"fin_metal", judgeFinMetal},
	{"tool", judgeTool},
	{"stretch", judgeStretch},
	{"tip", judgeTip},
	{"expansion", judgeExpansion},
	{"span_place", judgePlace},
	{"span_width", judgeSpans},
	{"plain_end_b", judgeEnd},
	{"growth", judgeGrowth},
	{"position", judgePosition},
	{"stock", judgeStock},
	{"coil", judgeCoil},
	{"spares", judgeSpares},
}

// atMost holds a value to a high limit, atLeast to a low one. Both answer No when it is passed.
func atMost[T ~float64](k units.Kind, value, limit T) Verdict {
	margin := float64(1 - value/limit)
	return measured(k, float64(value), float64(limit), margin)
}

func atLeast[T ~float64](k units.Kind, value, limit T) Verdict {
	margin := float64(value/limit - 1)
	return measured(k, float64(value), float64(limit), margin)
}

func measured(k units.Kind, value, limit, margin float64) Verdict {
	v := Verdict{State: figure.Good, Measure: &Measure{k, value, limit, margin}}
	if margin < -shop.Slack {
		v.State = figure.No
	}
	return v
}

// between holds a field to a range; the change is to the bound passed.
func between[T ~float64](field string, k units.Kind, value T, r shop.Range[T]) Verdict {
	v := atMost(k, value, r.High)
	if low := atLeast(k, value, r.Low); r.Low > 0 && low.Measure.Margin < v.Measure.Margin {
		v = low
	}
	if v.State == figure.No {
		v.Why = message.New("shop.why.range", "value", message.Of(k, value), "low", message.Of(k, r.Low), "high", message.Of(k, r.High))
		v.Change = []Setting{{Field: field, Kind: k, SI: v.Measure.Limit}}
	}
	return v
}

// unknown is the verdict of a rule that has nothing to hold the order against.
func unknown(key string, pairs ...any) Verdict {
	return Verdict{State: figure.Plain, Why: message.New(key, pairs...)}
}

// grid is the step to which a proposed size is rounded, on the safe side.
const grid = 1e-5 // m

func roundDown(l units.Length) units.Length {
	return units.Length(math.Floor(float64(l)/grid+shop.Slack)) * grid
}

func roundUp(l units.Length) units.Length {
	return units.Length(math.Ceil(float64(l)/grid-shop.Slack)) * grid
}
