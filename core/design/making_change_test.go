package design

import (
	"fmt"
	"math"
	"math/rand/v2"
	"sync"
	"testing"

	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/shop/verdict"
	"finwright/core/tube"
	"finwright/core/units"
)

// anyOrder draws a document whose making meets many limits.
func anyOrder(r *rand.Rand) document.Document {
	between := func(unit string, lo, hi float64) string {
		return fmt.Sprintf("%.4g %s", lo*math.Pow(hi/lo, r.Float64()), unit)
	}
	one := func(list ...string) string { return list[r.IntN(len(list))] }
	d := document.New()
	if r.IntN(2) == 0 {
		d.Units = units.US
	}
	set := func(id, text string) { d.Fields[id] = document.Entry{Text: text, Origin: document.House} }
	draw := map[string]func() string{
		"fin_type":        func() string { return string(tube.FinTypes()[r.IntN(len(tube.FinTypes()))]) },
		"fin_metal":       func() string { return material.FinMetals[r.IntN(len(material.FinMetals))].ID },
		"tube_metal":      func() string { return material.TubeMetals[r.IntN(len(material.TubeMetals))].ID },
		"tube_od":         func() string { return between("mm", 10, 90) },
		"tube_wall":       func() string { return between("mm", 0.6, 29) },
		"fin_height":      func() string { return between("mm", 1, 40) },
		"strip_thickness": func() string { return between("mm", 0.1, 2) },
		"fin_pitch":       func() string { return between("fpi", 1, 30) },
		"tube_length":     func() string { return between("mm", 300, 30000) },
		"plain_end_a":     func() string { return between("mm", 1, 500) },
		"plain_end_b":     func() string { return between("mm", 1, 500) },
		"least_wall":      func() string { return between("mm", 0.1, 30) },
		"quantity":        func() string { return fmt.Sprint(1 + r.IntN(5000)) },
		"joints_allowed":  func() string { return fmt.Sprint(r.IntN(3)) },
		"wall_basis":      func() string { return one("minimum", "average") },
		"supply":          func() string { return one("free_issue", "ours") },
		"fin_profile":     func() string { return one("as_made", "uniform", "rolled") },
		"groove_depth":    func() string { return between("mm", 0.1, 1) },
		"position_tolerance": func() string {
			return between("mm", 0.5, 500)
		},
		"line": func() string { return one("Line 1, tension-wound", "Line 2, embedded") },
	}
	for id, text := range draw {
		if r.IntN(4) == 0 {
			set(id, text())
		}
	}
	length, err := units.Parse(units.Distance, d.Fields["tube_length"].Text, d.Units)
	if err != nil {
		panic(err)
	}
	for i, n := 0, r.IntN(5); i < n; i++ {
		at := length.SI * (float64(i+1) + 0.6*(r.Float64()-0.5)) / float64(n+1)
		d.Spans = append(d.Spans, document.Span{
			Centre: document.Entry{Text: fmt.Sprintf("%.0f mm", at*1000), Origin: document.House},
			Width:  document.Entry{Text: between("mm", 2, 400), Origin: document.House},
		})
	}
	return d
}

// anyShop is the shipped one, with a few of its limits and figures moved.
func anyShop(r *rand.Rand) *shop.Capability {
	c := shop.House()
	move := func() float64 { return math.Pow(4, 2*r.Float64()-1) }
	for i := range c.Lines {
		l := &c.Lines[i]
		l.TubeLength.High *= units.Length(move())
		l.StripWidth.High *= units.Length(move())
		l.RunDown *= units.Duration(math.Pow(30, r.Float64()))
		for k := range l.Coils {
			l.Coils[k].Mass *= units.Mass(move() / 8)
		}
		for k := range l.Types {
			m := &l.Types[k]
			m.LeastWall *= units.Length(move())
			m.Height.High *= units.Length(move())
			m.Strip.High *= units.Length(move())
		}
	}
	for i := range c.Forming {
		c.Forming[i].Tip *= units.Length(move())
		c.Forming[i].Stretch = max(1.05, c.Forming[i].Stretch*move())
	}
	c.Placing.LeastBare *= units.Length(move())
	c.Placing.LeastFinned *= units.Length(move())
	c.Cutting.TrimB *= units.Length(r.Float64())
	if r.IntN(2) == 0 {
		c.Buying.Tubes = shop.StockLengths
	}
	return &c
}

// Every change that is offered holds when it is pressed: the document takes it, its entries can be used, the rule is
// good, and nothing is refused that was not. Of those that the rules propose one in five does not.
func TestOfferedChangesHold(t *testing.T) {
	var lock sync.Mutex
	offered, withdrawn := map[string]int{}, 0
	count := proof.Proof{Share: 60, Full: 10000, Seed: 16}.Run(t, func(c *proof.Case) {
		d, capability := anyOrder(c.Rand), anyShop(c.Rand)
		made := func(d document.Document) (Result, Production, bool) {
			in, err := Read(d)
			if err != nil {
				return Result{}, Production{}, false
			}
			in.MadeBy(capability)
			res := evaluate(t, in)
			m := Make(in, res.Heat)
			return res, m, true
		}
		res, m, ok := made(d)
		if !ok {
			return
		}
		proposed := len(changes(m))
		m.TryChanges(d)
		lock.Lock()
		withdrawn += proposed - len(changes(m))
		for _, v := range changes(m) {
			offered[v.Rule.ID]++
		}
		lock.Unlock()
		for _, v := range changes(m) {
			next, err := document.Edit(d, Command(v.Change, d.Units))
			if err != nil {
				c.Fatalf("%s: %v", v.Rule.ID, err)
			}
			res2, m2, ok := made(next)
			if !ok {
				_, err := Read(next)
				c.Fatalf("%s offers %+v, which no entry takes: %v", v.Rule.ID, v.Change, err)
			}
			for _, now := range m2.Verdicts {
				before := find(m.Verdicts, now.Rule.ID)
				if now.State == figure.No && before.State != figure.No {
					c.Errorf("%s offers %+v; then %s refuses", v.Rule.ID, v.Change, now.Rule.ID)
				}
				if now.Rule == v.Rule && now.State != figure.Good {
					c.Errorf("%s offers %+v and is then %s", v.Rule.ID, v.Change, now.State)
				}
			}
			if got, had := refused(res2), refused(res); got > had {
				c.Errorf("%s offers %+v; then %d things are refused beside the line, %d before", v.Rule.ID, v.Change, got, had)
			}
		}
	})
	if withdrawn < count/10 {
		t.Errorf("%d changes withdrawn in %d cases: what is tried?", withdrawn, count)
	}
	if !proof.Long() {
		return
	}
	for _, rule := range []string{"tube_od", "tube_size", "tube_length", "strip_width", "tube_metal", "wall", "wall_left", "fin_height", "fin_count", "strip", "fin_metal", "tool", "stretch", "tip", "span_place", "span_width", "plain_end_b", "stock", "coil", "spares", "fin_type"} {
		if offered[rule] == 0 {
			t.Errorf("%s never offers a change", rule)
		}
	}
	t.Log(offered, withdrawn)
}

func changes(m Production) []verdict.Verdict {
	var out []verdict.Verdict
	for _, v := range m.Verdicts {
		if v.Change != nil {
			out = append(out, v)
		}
	}
	return out
}

func find(list []verdict.Verdict, rule string) verdict.Verdict {
	for _, v := range list {
		if v.Rule.ID == rule {
			return v
		}
	}
	return verdict.Verdict{}
}

// refused counts what is refused without regard to the line.
func refused(r Result) int {
	n := 0
	for _, one := range r.Notices {
		if one.State == figure.No {
			n++
		}
	}
	return n
}
