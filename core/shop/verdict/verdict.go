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
// none where it has nothing to hold the order against; Why then says what is missing. Moot is a rule whose object the order has
// not; Asks one that waits for a word of the customer's, which is a watch.
type Verdict struct {
	Rule    *Rule
	State   figure.State
	Moot    bool
	Asks    bool
	Measure *Measure // nil where the rule is not about a number
	Why     message.Message
	Change  []Setting   // the nearest change that makes this rule good, nil if there is none
	Others  [][]Setting // changes of other entries that do so too, farther ones later
}

// Measure is a number beside the limit that it is nearest to or has passed.
type Measure struct {
	Kind   units.Kind
	Value  float64 // SI
	Limit  float64 // SI
	Margin float64 // [-] distance inside the limit as a share of it, negative outside
}

// Pair is an order and the line that it is held against, as the rules see it.
type Pair struct{ *making.Groundwork }

// pair is an order on a line that may make its type.
func pair(c *shop.Capability, l *shop.Line, m *shop.Practice, o *making.Order) *Pair {
	return &Pair{&making.Groundwork{Shop: c, Line: l, Practice: m, Order: o}}
}

// with is the pair with some of its order set otherwise.
func (p *Pair) with(change Setting) *Pair {
	o := With(*p.Order, change)
	return pair(p.Shop, p.Line, p.Practice, &o)
}

// Rule holds an order against one limit. Its file states it, by the function that judges; its
// name is the text "shop.rule.<ID>".
type Rule struct {
	ID      string
	Field   string   // where its matter is entered
	Figure  string   // what shows it; empty: none
	Shape   bool     // of the fin's shape alone: judged without a line, and remarked on with the shape
	Changes []string // the fields that its nearest change may set; none where none of them helps
	Judge   func(*Pair) Verdict
}

// Judge holds an order against every rule of a line.
func Judge(c *shop.Capability, l *shop.Line, o *making.Order) []Verdict {
	return JudgeOn(making.GroundworkOf(c, l, o))
}

// JudgeOn is Judge on a groundwork that a plan may then be made on.
func JudgeOn(g *making.Groundwork) []Verdict {
	c, o, p := g.Shop, g.Order, &Pair{g}
	out := make([]Verdict, 0, len(LineRules)+len(TypeRules))
	_, boughtIn := c.BoughtInFor(&o.Tube)
	for _, r := range LineRules {
		if boughtIn && r != crateRule { // what is bought in finned is no matter of the line
			v := unknown("shop.why.bought_in", "type", message.Key("choice.fin_type."+string(o.Tube.Fin.Type)))
			v.Rule = r
			out = append(out, v)
			continue
		}
		out = append(out, r.hold(p))
	}
	if g.Practice == nil {
		return out
	}
	for _, r := range TypeRules {
		out = append(out, r.hold(p))
	}
	return out
}

func (r *Rule) hold(p *Pair) Verdict {
	v := r.Judge(p)
	v.Rule = r
	return v
}

// JudgeShape holds a fin against what its metal bears in a shop, on whichever line: the
// verdicts of the rules of shape, without their changes.
func JudgeShape(c *shop.Capability, o *making.Order) []Verdict {
	var out []Verdict
	p := pair(c, nil, nil, o)
	for _, r := range TypeRules {
		if !r.Shape {
			continue
		}
		v := moot("shop.why.not_wound")
		v.Rule = r
		if o.Tube.Fin.Type.Wound() {
			v = r.hold(p)
		}
		v.Change = nil
		out = append(out, v)
	}
	return out
}

// Worst returns the gravest state among verdicts.
func Worst(list []Verdict) figure.State {
	worst := figure.Good
	for _, v := range list {
		if v.State.Worsens(worst) {
			worst = v.State
		}
	}
	return worst
}

// Choose returns the line that suits an order best: one that makes the fin type,
// of which alone most rules can be judged, then the fewest refusals, then the fewest
// watches, then the order of the file. It gives the order's groundwork on that line, and what the rules say of it. Valid: at least one line.
func Choose(c *shop.Capability, o *making.Order) (best *making.Groundwork, verdicts []Verdict) {
	lines := make([]*shop.Line, 0, len(c.Lines))
	for i := range c.Lines {
		if _, makes := c.Lines[i].Practice(o.Tube.Fin.Type); makes {
			lines = append(lines, &c.Lines[i])
		}
	}
	if _, boughtIn := c.BoughtInFor(&o.Tube); boughtIn || len(lines) == 0 {
		lines = lines[:0]
		for i := range c.Lines {
			lines = append(lines, &c.Lines[i])
		}
	}
	least := math.MaxInt
	for _, l := range lines { // another one loses, and to judge it takes longer
		g := making.GroundworkOf(c, l, o)
		bad, list := 0, JudgeOn(g)
		for _, v := range list {
			switch {
			case v.State == figure.No && v.Rule == madeRule:
				bad += 1e6
			case v.State == figure.No:
				bad += 1e3
			case v.State == figure.Watch:
				bad++
			}
		}
		if bad < least {
			best, verdicts, least = g, list, bad
		}
	}
	return best, verdicts
}

// LineRules need only the line; the others need its way of making the fin type.
var LineRules = []*Rule{madeRule, odRule, sizeRule, lengthRule, widthRule, crateRule}

// TypeRules lists the others.
var TypeRules = []*Rule{
	tubeMetalRule, wallRule, wallLeftRule, heightRule, countRule, stripRule, finMetalRule, toolRule, stretchRule, tipRule,
	expansionRule, placeRule, spansRule, supportsRule, endRule, grooveEndRule, grooveSpanRule, hardRule, beadOutRule, beadInRule,
	straightRule, roundRule, securityRule, growthRule, positionRule, stockRule, coilRule, jointsRule, sparesRule,
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
	limit, margin := nearer(value, r)
	v := measured(k, float64(value), float64(limit), margin)
	if v.State == figure.No {
		v.Why = message.New("shop.why.range", "value", message.Of(k, value), "low", message.Least(message.Of(k, r.Low)), "high", message.Most(message.Of(k, r.High)))
		v.Change = []Setting{{Field: field, Kind: k, SI: v.Measure.Limit}}
	}
	return v
}

// nearer returns the bound of a range that a value is nearest to or has passed, and its margin [-].
func nearer[T ~float64](value T, r shop.Range[T]) (limit T, margin float64) {
	margin = float64(1 - value/r.High)
	if low := float64(value/r.Low - 1); r.Low > 0 && low < margin {
		return r.Low, low
	}
	return r.High, margin
}

// unknown is the verdict of a rule that has nothing to hold the order against.
func unknown(key string, pairs ...any) Verdict {
	return Verdict{State: figure.Plain, Why: message.New(key, pairs...)}
}

// moot is the verdict of a rule whose object the order has not.
func moot(key string, pairs ...any) Verdict {
	return Verdict{State: figure.Plain, Moot: true, Why: message.New(key, pairs...)}
}

// ask is the verdict of a rule that cannot be held before the customer answers.
func ask(key string, pairs ...any) Verdict {
	return Verdict{State: figure.Watch, Asks: true, Why: message.New(key, pairs...)}
}

// grid is the step to which a proposed size is rounded, on the safe side.
const grid = 1e-5 // m

func roundDown(l units.Length) units.Length {
	return units.Length(math.Floor(float64(l)/grid+shop.Slack)) * grid
}

func roundUp(l units.Length) units.Length {
	return units.Length(math.Ceil(float64(l)/grid-shop.Slack)) * grid
}
