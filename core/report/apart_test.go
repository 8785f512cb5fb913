package report

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// judgedBase is an example with wishes, in which most is judged that can be.
func judgedBase(c *proof.Case) document.Document {
	list := cases.List()
	d := list[c.Rand.IntN(len(list))].Document()
	wishes := map[string]string{
		"duty_wanted": "1000 kW", "drop_allowed": "120 Pa", "inside_drop_allowed": "30 kPa", "inside_pressure": "600 kPa", "tube_metal_limit": "150 °C",
		"least_wall": "1.5 mm", "start_up": "95 °C", "upset": "100 °C", "quantity": "200", "job": "retube", "old_ua": "20 kW/K", "fin_od_most": "60 mm",
		"draught": "induced", "fan_bears": "80 °C", "fin_type": []string{"footed", "embedded", "overlap_footed", "welded"}[c.Rand.IntN(4)],
		"fin_metal": []string{"al1060", "al1100", "cs1010", "c11000"}[c.Rand.IntN(4)], "inside_fluid": []string{"water", "oil", "own", "steam"}[c.Rand.IntN(4)],
	}
	for id, text := range wishes {
		if _, known := field.Find(id); known && c.Rand.IntN(3) == 0 {
			next, err := document.Edit(d, document.Command{Op: "set", Values: []document.Value{{Field: id, Text: &text}}})
			if err == nil {
				d = next
			}
		}
	}
	return d
}

// spoken is an answer with what it remarks on and how its rules stand, in a text.
type spoken struct {
	res   design.Result
	made  design.Production
	state string
}

func speak(d document.Document, house *shop.Capability) (spoken, bool) {
	in, h, err := design.ReadAndRate(d, house)
	if err != nil {
		return spoken{}, false
	}
	s := spoken{res: design.Evaluate(in, h), made: design.Brief(in, h)}
	s.res.AddMaking(&s.made)
	var said []string
	for _, n := range s.res.Notices {
		said = append(said, fmt.Sprint(n.State, n.Field, n.Message.Key))
	}
	for _, v := range s.made.Verdicts {
		said = append(said, fmt.Sprint(v.Rule.ID, v.State))
	}
	s.state = strings.Join(said, " ")
	return s, true
}

// Wherever a remark or a rule begins to speak as a number is varied, what it holds against one another does not read alike: in the
// remark, at the figure that it marks and in the table of rules, in both systems.
func TestValueAndLimitNeverReadAlike(t *testing.T) {
	house := shop.House()
	var lock sync.Mutex
	met := map[string]int{}
	proof.Proof{Share: 8, Full: 400, Seed: 41}.Run(t, func(c *proof.Case) {
		d := judgedBase(c)
		f := &field.Fields[c.Rand.IntN(len(field.Fields))]
		for !f.IsNumber() || f.Kind == units.Count || !f.Used(d.Text) {
			f = &field.Fields[c.Rand.IntN(len(field.Fields))]
		}
		in, err := design.Read(d)
		if err != nil {
			return
		}
		now := f.Get(&in)
		low, high := max(f.Low, 0.4*now), min(f.High, 2.5*now)
		if now <= 0 {
			low, high = f.Low, min(f.High, 200)
		}
		at := func(si float64) (spoken, bool) {
			d.Fields[f.ID] = document.Entry{Text: units.Plain.Full(f.Kind, si, d.Units) + " " + f.Kind.Unit(d.Units), Origin: document.Customer}
			return speak(d, &house)
		}
		const points = 16
		last, lastOK := at(low)
		for i := 1; i <= points; i++ {
			a, b := low+(high-low)*float64(i-1)/points, low+(high-low)*float64(i)/points
			next, ok := at(b)
			from, fromOK := last, lastOK
			last, lastOK = next, ok
			if !ok || !fromOK || next.state == from.state {
				continue
			}
			for range 34 {
				middle := (a + b) / 2
				s, ok := at(middle)
				switch {
				case !ok:
					return
				case s.state == from.state:
					a, from = middle, s
				default:
					b, next = middle, s
				}
			}
			for _, s := range []spoken{from, next} {
				for _, system := range []units.System{units.SI, units.US} {
					w := Writer{Texts: message.English(), System: system}
					for key := range readsApart(c, w, &s) {
						lock.Lock()
						met[key]++
						lock.Unlock()
					}
				}
			}
		}
	})
	if proof.Long() {
		t.Log(len(met), met)
	}
}

// readsApart fails where a value reads like what it is held against. It returns what would have, by the key of the remark.
func readsApart(t testing.TB, w Writer, s *spoken) map[string]bool {
	would := map[string]bool{}
	var within func(m message.Message, text string)
	within = func(m message.Message, text string) {
		var list []message.Amount
		for _, arg := range m.Args() {
			if inner, ok := arg.(message.Message); ok {
				within(inner, text)
			}
			if a, ok := message.AmountOf(arg); ok {
				list = append(list, a)
			}
		}
		for i, a := range list {
			for _, b := range list[:i] {
				plain := units.Plain.Echo(a.Kind, a.SI, w.System)
				if a.Kind.Unit(w.System) != b.Kind.Unit(w.System) || plain != units.Plain.Echo(b.Kind, b.SI, w.System) || !units.Above(a.SI, b.SI) && !units.Above(b.SI, a.SI) {
					continue
				}
				would[m.Key] = true
				if whole := regexp.MustCompile(`(?:^|[^0-9.])` + regexp.QuoteMeta(strings.ReplaceAll(plain, " ", "  ")) + `(?:$|[^0-9.]|[.](?:$|[^0-9]))`); len(whole.FindAllString(strings.ReplaceAll(text, " ", "  "), -1)) > 1 {
					t.Errorf("%.12g and %.12g read alike: %s", a.SI, b.SI, text)
				}
			}
		}
	}
	for _, n := range s.res.Notices {
		within(n.Message, w.say(n.Message))
	}
	for _, v := range s.made.Verdicts {
		within(v.Why, w.say(v.Why))
	}
	for _, row := range w.verdicts(&s.made) {
		if row.State.Graver(figure.Kept) && row.Value != "" && row.Value == row.Limit {
			t.Errorf("%s is %s at %s beside %s", row.Rule, row.State, row.Value, row.Limit)
		}
	}
	for _, g := range s.res.Groups {
		for _, f := range g.Figures {
			if !f.State.Graver(figure.Kept) || !f.Absent.None() {
				continue
			}
			shown := w.Figure(f)
			for _, limit := range amounts(f.Tests, f.Kind) {
				ordinary := units.Plain.Figure(f.Kind, limit, w.System).Value
				if (units.Above(limit, f.SI) || units.Above(f.SI, limit)) && shown.Value == ordinary {
					t.Errorf("%s is %s at %s, held to %s", f.ID, f.State, shown.Value, ordinary)
				} else if units.Plain.Figure(f.Kind, f.SI, w.System).Value == ordinary {
					would["figure "+f.ID] = true
				}
			}
		}
	}
	return would
}

// By hand: a fin of 0.79996 says so, and not that 0.8 is below 0.8.
func TestEfficiencyJustBelowItsLimit(t *testing.T) {
	house := shop.House()
	low, high := 0.016, 0.025
	at := func(height float64) spoken {
		d := document.New()
		d.Fields["fin_height"] = document.Entry{Text: units.Plain.Full(units.Height, height, units.SI) + " mm", Origin: document.Customer}
		s, ok := speak(d, &house)
		if !ok {
			t.Fatalf("no answer at %g m", height)
		}
		return s
	}
	for range 60 {
		middle := (low + high) / 2
		if f, _ := at(middle).res.Find("fin_efficiency"); f.SI > 0.79996 {
			low = middle
		} else {
			high = middle
		}
	}
	s := at(high)
	w := Writer{Texts: message.English(), System: units.SI}
	f, _ := s.res.Find("fin_efficiency")
	if math.Abs(f.SI-0.79996) > 1e-9 {
		t.Fatalf("efficiency %g", f.SI)
	}
	if shown := w.Figure(f); shown.Value != "0.79996" || shown.State != figure.Watch {
		t.Errorf("%s %s", shown.Value, shown.State)
	}
	if !slices.ContainsFunc(s.res.Notices, func(n design.Notice) bool {
		return strings.HasPrefix(w.say(n.Message), "Fin efficiency 0.79996 is below 0.8:")
	}) {
		t.Error("no remark says 0.79996")
	}
}
