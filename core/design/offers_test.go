package design

import (
	"math"
	"math/rand/v2"
	"slices"
	"sync"
	"testing"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/core/units"
)

// remarkedOn evaluates a document for a shop, nil: nobody, with what its remarks offer.
func remarkedOn(d document.Document, c *shop.Capability) (Result, Production, error) {
	in, h, err := ReadAndRate(d, c)
	if err != nil {
		return Result{}, Production{}, err
	}
	res, m := Evaluate(in, h), Unmade(in, h)
	if c != nil {
		m = Brief(in, h)
		res.AddMaking(&m)
	}
	res.TryRemarks(&m, d)
	return res, m, nil
}

// enteredBy is a design with texts entered by the shop, and entries that the customer fixed.
func enteredBy(t *testing.T, pairs []string, fixed ...string) document.Document {
	t.Helper()
	d := document.New()
	setIn(t, &d, append([]string{"start_up", "90 °C", "upset", "95 °C"}, pairs...)...)
	for id, e := range d.Fields {
		e.Origin = document.House
		if slices.Contains(fixed, id) {
			e.Origin = document.Customer
		}
		d.Fields[id] = e
	}
	return d
}

// fields are those that the offered changes of a result enter, in the order in which they are offered.
func fields(r Result) []string {
	var out []string
	for _, n := range r.Notices {
		if n.Offer != nil {
			out = append(out, n.Offer.Settings[0].Field)
		}
	}
	return out
}

// Of a retube a press puts what stands into the bank: the pitch, the tubes, the length, and all of them where several differ.
func TestARetubeTakesWhatStands(t *testing.T) {
	stands := []string{"job_kind", "retube", "old_pitch", "65 mm", "old_tubes", "120", "old_length", "18 ft", "tube_pitch", "65 mm"}
	for name, c := range map[string]struct{ pairs, want []string }{
		"as it stands":            {nil, nil},
		"pitch":                   {[]string{"tube_pitch", ""}, []string{"tube_pitch"}},
		"tubes":                   {[]string{"tubes_per_row", "28", "quantity", "112"}, []string{"tubes_per_row"}},
		"length":                  {[]string{"tube_length", "6 m"}, []string{"tube_length"}},
		"pitch, length":           {[]string{"tube_pitch", "64 mm", "tube_length", "6 m"}, []string{"tube_pitch", "tube_length"}},
		"no whole tubes in a row": {[]string{"old_tubes", "121"}, nil},
	} {
		d := enteredBy(t, append(slices.Clone(stands), c.pairs...))
		r, _, err := remarkedOn(d, nil)
		if err != nil {
			t.Fatal(err)
		}
		var found []string
		for _, n := range standing(r) {
			if n.Offer == nil {
				continue
			}
			found = found[:0]
			for _, s := range n.Offer.Settings {
				found = append(found, s.Field)
			}
		}
		if !slices.Equal(found, c.want) {
			t.Errorf("%s: %v is offered, want %v", name, found, c.want)
		}
	}
}

// A remark offers first what the customer did not fix, and says so where there is nothing else.
func TestRemarksLeaveWhatTheCustomerFixed(t *testing.T) {
	for name, c := range map[string]struct {
		pairs, fixed, want []string
		asks               bool // the first
	}{
		"order, nothing fixed":    {[]string{"quantity", "240"}, nil, []string{"quantity"}, false},
		"order, quantity fixed":   {[]string{"quantity", "240"}, []string{"quantity"}, []string{"bundles"}, false},
		"order, bundles too":      {[]string{"quantity", "240"}, []string{"quantity", "bundles"}, []string{"tubes_per_row"}, false},
		"order, no whole bundles": {[]string{"quantity", "241"}, []string{"quantity"}, []string{"quantity"}, true},
		"duty, nothing fixed":     {[]string{"duty_wanted", "1300 kW"}, nil, []string{"tubes_per_row", "rows"}, false},
		"duty, tubes fixed":       {[]string{"duty_wanted", "1300 kW"}, []string{"tubes_per_row"}, []string{"rows", "tubes_per_row"}, false},
		"duty, rows fixed":        {[]string{"duty_wanted", "1300 kW"}, []string{"rows"}, []string{"tubes_per_row", "rows"}, false},
		"duty, both fixed":        {[]string{"duty_wanted", "1300 kW"}, []string{"tubes_per_row", "rows"}, []string{"tubes_per_row", "rows"}, true},
		"method":                  {[]string{"face_velocity", "1.3 m/s"}, nil, []string{"film_method", "drop_method"}, false},
		"method, fixed":           {[]string{"face_velocity", "1.3 m/s"}, []string{"film_method"}, []string{"film_method", "drop_method"}, true},
	} {
		house := shop.House()
		r, _, err := remarkedOn(enteredBy(t, c.pairs, c.fixed...), &house)
		if err != nil {
			t.Fatal(err)
		}
		if got := fields(r); !slices.Equal(got, c.want) {
			t.Errorf("%s: offers %v, want %v", name, got, c.want)
			continue
		}
		i := slices.IndexFunc(r.Notices, func(n Notice) bool { return n.Offer != nil })
		if r.Notices[i].Offer.Fixed != c.asks {
			t.Errorf("%s: the first is fixed: %v", name, r.Notices[i].Offer.Fixed)
		}
	}
}

// Nothing is offered by a remark while surface or heat refuse the tube and would still: the temperature, or a drop that more
// rows only raise.
func TestNoRemarkOffersWhileTheRefusalStays(t *testing.T) {
	house := shop.House()
	for name, pairs := range map[string][]string{
		"temperature, order":  {"upset", "230 °C", "quantity", "240"},
		"temperature, duty":   {"upset", "230 °C", "duty_wanted", "1300 kW"},
		"temperature, method": {"upset", "230 °C", "face_velocity", "1.3 m/s"},
		"metal":               {"fin_metal", "cs1010", "quantity", "240"},
	} {
		d := enteredBy(t, pairs)
		for _, c := range []*shop.Capability{&house, nil} {
			r, _, err := remarkedOn(d, c)
			if err != nil {
				t.Fatal(err)
			}
			if got := fields(r); len(got) > 0 {
				t.Errorf("%s: offers %v", name, got)
			}
			if slices.ContainsFunc(r.Notices, func(n Notice) bool { return n.State == figure.Plain }) {
				t.Errorf("%s: a remark stands for a change that is not offered", name)
			}
		}
	}
	r, _, err := remarkedOn(enteredBy(t, []string{"duty_wanted", "1300 kW", "drop_allowed", "120 Pa"}), &house)
	if err != nil {
		t.Fatal(err)
	}
	if got := fields(r); !slices.Equal(got, []string{"tubes_per_row"}) {
		t.Errorf("where more rows take too much drop, %v are offered", got)
	}
}

// What a remark offers holds when it is pressed, comes to the duty and price that it says, is of whole numbers and choices, and
// leads the one verdict where that is of the same remark.
func TestOfferedRemarksHold(t *testing.T) {
	var lock sync.Mutex
	offered := map[string]int{}
	house := shop.House()
	proof.Proof{Share: 40, Full: 3000, Seed: 31}.Run(t, func(c *proof.Case) {
		d := anyRemarked(c.Rand)
		made := &house
		if c.Rand.IntN(4) == 0 {
			made = nil
		}
		r, m, err := remarkedOn(d, made)
		if err != nil {
			return
		}
		if v := r.Verdict(); v.Notice.Change != nil {
			i := slices.IndexFunc(r.Notices, v.Notice.same)
			if i < 0 || v.Notice.Offer != r.Notices[i].Offer {
				c.Errorf("the verdict offers %+v", v.Notice.Offer)
			}
		}
		for _, n := range r.Notices {
			if n.Offer == nil {
				continue
			}
			o := n.Offer
			lock.Lock()
			offered[o.Settings[0].Field]++
			lock.Unlock()
			for _, s := range o.Settings {
				if f := field.Must(s.Field); s.Choice == "" && (f.Kind != units.Count || s.SI != math.Round(s.SI)) {
					c.Errorf("%s offers %s of %g", n.Message.Key, s.Field, s.SI)
				}
			}
			next, err := document.Edit(d, Command(o.Settings, d.Units))
			if err != nil {
				c.Fatalf("%s: %v", n.Message.Key, err)
			}
			then, m2, err := remarkedOn(next, made)
			if err != nil {
				c.Fatalf("%s offers %+v, which no entry takes: %v", n.Message.Key, o.Settings, err)
			}
			if m.outcome() != o.Before || m2.outcome() != o.After {
				c.Errorf("%s says from %+v to %+v, came from %+v to %+v", n.Message.Key, o.Before, o.After, m.outcome(), m2.outcome())
			}
			if slices.ContainsFunc(then.Notices, n.same) {
				c.Errorf("%s is still said after %+v", n.Message.Key, o.Settings)
			}
			for _, p := range then.Parts {
				if before, _ := r.Part(p.Section); p.State == figure.No && (p.Section != makingPart || before.State != figure.No) {
					c.Errorf("after %+v %s refuses: %s", o.Settings, p.Section, p.Notice.Message.Key)
				}
			}
		}
	})
	if !proof.Long() {
		return
	}
	for _, f := range []string{"quantity", "bundles", "tubes_per_row", "rows", "film_method", "drop_method"} {
		if offered[f] == 0 {
			t.Errorf("%s is never offered", f)
		}
	}
	t.Log(offered)
}

// anyRemarked draws a design that remarks on its order, its duty and its correlations, with entries fixed at random.
func anyRemarked(r *rand.Rand) document.Document {
	d := document.New()
	if r.IntN(2) == 0 {
		d.Units = units.US
	}
	one := func(list ...string) string { return list[r.IntN(len(list))] }
	texts := map[string]string{
		"quantity": one("120", "240", "119", "360", "1", "60"), "duty_wanted": one("", "1000 kW", "1200 kW", "1500 kW", "3000 kW"),
		"face_velocity": one("1 m/s", "1.3 m/s", "3 m/s", "6 m/s"), "drop_allowed": one("", "60 Pa", "120 Pa", "300 Pa"),
		"upset": one("90 °C", "95 °C", "230 °C"), "fin_height": one("12.7 mm", "15.875 mm", "9.5 mm"), "start_up": "95 °C",
		"film_method": one("rule", "briggs_young_1963", "ganguli_1985"), "fin_pitch": one("9 fpi", "10 fpi", "11 fpi"),
	}
	for id, text := range texts {
		if r.IntN(3) > 0 {
			d.Fields[id] = document.Entry{Text: text, Origin: document.House}
		}
	}
	for id, e := range d.Fields {
		if r.IntN(3) == 0 {
			e.Origin = document.Customer
			d.Fields[id] = e
		}
	}
	return d
}
