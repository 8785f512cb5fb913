package shop

import (
	"slices"
	"strconv"

	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/tube"
)

// checker gathers what is wrong with values that are each readable.
type checker []Fault

func (k *checker) unless(ok bool, path, key string) {
	if !ok {
		*k = append(*k, Fault{Path: path, Why: message.New(key)})
	}
}

// check holds a capability's values against one another and against the known names.
func check(c *Capability) []Fault {
	var k checker
	k.unless(len(c.Lines) > 0, "lines", "shop.file.no_line")
	for i := range c.Lines {
		checkLine(&c.Lines[i], "lines/"+strconv.Itoa(i), &k)
	}
	k.unless(slices.Contains(tube.FootRules, c.Foot.By), "foot/cut_by", "shop.file.foot_rule")
	k.unless(c.Crate.Tackle < c.Crate.Crane, "crate/tackle", "shop.file.tackle")
	k.unless(slices.Contains(TubeWays, c.Buying.Tubes), "buying/tubes_bought", "shop.file.tube_way")
	k.unless(slices.Contains(CoilChoices, c.Buying.Coils), "buying/coil_used", "shop.file.coil_choice")
	k.unless(slices.Contains(StripUses, c.Buying.StripLeft), "buying/strip_left", "shop.file.strip_use")
	k.unless(slices.Contains(Bearers, c.Buying.Spoilt), "buying/spoilt", "shop.file.bearer")
	for i, q := range c.Buying.Quotes {
		at := "buying/quotes/" + strconv.Itoa(i)
		_, known := material.TubeMetal(q.Metal)
		k.unless(known, at+"/metal", "shop.file.metal")
		k.unless(slices.Contains(TubeWays, q.Way), at+"/bought", "shop.file.tube_way")
		k.unless(2*q.Wall < q.OD, at+"/wall", "shop.file.quote_wall")
	}
	for i, m := range c.Measured {
		at := "measured/" + strconv.Itoa(i)
		k.unless(slices.Contains(tube.FinTypes(), m.Type), at+"/type", "shop.file.fin_type")
		k.unless(m.Finned <= m.Finished && max(m.Finished-m.Cut, m.Cut-m.Finished) < m.Finned/2, at+"/finished", "shop.file.measured")
	}
	for i := range c.Steps {
		checkStep(&c.Steps[i], "steps/"+strconv.Itoa(i), &k)
	}
	for i, one := range c.Checks {
		at := "checks/" + strconv.Itoa(i)
		k.unless(slices.Contains(CheckKinds, one.Kind), at+"/looked_at", "shop.file.check")
		k.finTypes(one.FinTypes, at)
	}
	for i, q := range c.Buying.Quotes {
		k.dated(q.Dated, "buying/quotes/"+strconv.Itoa(i))
	}
	for i, p := range c.Rates.TubeMetals {
		k.dated(p.Dated, "rates/tube_metals/"+strconv.Itoa(i))
	}
	for i, p := range c.Rates.FinMetals {
		k.dated(p.Dated, "rates/fin_metals/"+strconv.Itoa(i))
	}
	checkCalendar(&c.Calendar, &k)
	for i, h := range c.Buying.OnHand {
		at := "buying/tubes_on_hand/" + strconv.Itoa(i)
		_, known := material.TubeMetal(h.Metal)
		k.unless(known, at+"/metal", "shop.file.metal")
		k.unless(2*h.Wall < h.OD, at+"/wall", "shop.file.quote_wall")
	}
	for i, h := range c.Buying.StripOnHand {
		_, known := material.FinMetal(h.Metal)
		k.unless(known, "buying/strip_on_hand/"+strconv.Itoa(i)+"/metal", "shop.file.metal")
	}
	for i, b := range c.BoughtIn {
		at := "bought_in/" + strconv.Itoa(i)
		k.unless(slices.Contains(tube.FinTypes(), b.Type) && !b.Type.Wound(), at+"/finned_type", "shop.file.bought_in")
		k.dated(b.Dated, at)
	}
	return k
}

// dated holds the day of a price to one that there is, or to none.
func (k *checker) dated(text, at string) {
	_, ok := ParseDay(text)
	k.unless(ok || text == Undated, at+"/dated", "shop.file.dated")
}

func checkCalendar(c *Calendar, k *checker) {
	k.unless(len(c.WorkDays) > 0, "calendar/work_days", "shop.file.no_work_day")
	for i, day := range c.WorkDays {
		k.unless(slices.Contains(WeekDays, day), "calendar/work_days/"+strconv.Itoa(i), "shop.file.week_day")
	}
	for i, day := range c.Holidays {
		_, ok := ParseDay(day)
		k.unless(ok, "calendar/holidays/"+strconv.Itoa(i), "shop.file.day")
	}
	for i, l := range c.TubeLeads {
		at := "calendar/tube_leads/" + strconv.Itoa(i)
		_, known := material.TubeMetal(l.Metal)
		k.unless(known, at+"/metal", "shop.file.metal")
		k.unless(slices.Contains(TubeWays, l.Way), at+"/bought", "shop.file.tube_way")
	}
	for i, l := range c.StripLeads {
		at := "calendar/strip_leads/" + strconv.Itoa(i)
		_, known := material.FinMetal(l.Metal)
		k.unless(known, at+"/metal", "shop.file.metal")
		k.unless(l.Form == Pancake || l.Form == Traverse, at+"/form", "shop.file.coil_form")
	}
}

// finTypes holds a list of fin types to those that there are.
func (k *checker) finTypes(list []string, at string) {
	for i, id := range list {
		k.unless(slices.Contains(tube.FinTypes(), tube.FinType(id)), at+"/fin_types/"+strconv.Itoa(i), "shop.file.any_fin_type")
	}
}

func checkStep(s *Step, at string, k *checker) {
	k.unless(slices.Contains(StepKinds, s.Kind), at+"/kind", "shop.file.step_kind")
	k.unless(slices.Contains(StepTimes, s.When), at+"/when", "shop.file.step_when")
	k.unless(slices.Contains(WhoseTubes, s.Of), at+"/of_tubes", "shop.file.step_tubes")
	k.unless(slices.Contains(DoersOfSteps, s.Who), at+"/who", "shop.file.step_who")
	k.finTypes(s.FinTypes, at)
	for i, id := range s.Families {
		k.unless(slices.Contains(stepFamilies, material.Family(id)), at+"/tube_families/"+strconv.Itoa(i), "shop.file.family")
	}
}

func checkLine(l *Line, at string, k *checker) {
	k.unless(len(l.Coils) > 0, at+"/coils", "shop.file.no_coil")
	for i, coil := range l.Coils {
		p := at + "/coils/" + strconv.Itoa(i)
		k.unless(coil.Form == Pancake || coil.Form == Traverse, p+"/form", "shop.file.coil_form")
		k.unless(coil.ID < coil.OD, p+"/id", "shop.file.coil_id")
		k.unless(coil.Form != Traverse || coil.Width > 0, p+"/width", "shop.file.coil_width")
	}
	for i, s := range l.Securing {
		k.unless(slices.Contains(SecuringWays, s.Way), at+"/securing/"+strconv.Itoa(i)+"/way", "shop.file.securing")
	}
	k.unless(l.Idle < l.Drive, at+"/idle", "shop.file.idle")
	o := l.ChangeOver
	k.unless(o.Type >= o.OD && o.OD >= o.Tooling && o.Tooling >= o.Pitch, at+"/change_over", "shop.file.change_over")
	for i := range l.Types {
		m, p := &l.Types[i], at+"/types/"+strconv.Itoa(i)
		k.unless(m.Type.Wound() && slices.Contains(tube.FinTypes(), m.Type), p+"/type", "shop.file.fin_type")
		for j, d := range m.Demands {
			k.unless(slices.Contains(StripDemands, d), p+"/strip_demands/"+strconv.Itoa(j), "shop.file.demand")
		}
		for j, id := range m.FinMetals {
			_, known := material.FinMetal(id)
			k.unless(known, p+"/fin_metals/"+strconv.Itoa(j), "shop.file.metal")
		}
		for j, id := range m.TubeMetals {
			_, known := material.TubeMetal(id)
			k.unless(known, p+"/tube_metals/"+strconv.Itoa(j), "shop.file.metal")
		}
		for j, e := range m.Weld.Preheat {
			_, known := material.TubeMetal(e.Metal)
			k.unless(known, p+"/weld/preheat/"+strconv.Itoa(j)+"/preheated", "shop.file.metal")
		}
		for j, e := range m.Weld.Edge {
			_, known := material.FinMetal(e.Metal)
			k.unless(known, p+"/weld/edge/"+strconv.Itoa(j)+"/metal", "shop.file.metal")
		}
	}
}
