package report

import (
	"slices"
	"strings"

	"finwright/core/drawing/svg"
	"finwright/core/message"
	"finwright/core/paper"
	"finwright/core/shop"
	"finwright/core/shop/floor"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// Sizes of its drawings [CSS px].
const (
	wholeWide = 900
	crateWide = 340
)

// traveller goes with the tubes through the shop: what is wound, how, in which steps, what is looked at and who signed. Of a design
// that nobody may make it says why, and nothing else.
func (p *papering) traveller() {
	if why := p.unmakeable(); why != nil {
		p.Caution(why...)
		return
	}
	m, t := p.Made, &travelling{papering: p, cautions: p.floorCautions(p.Made)}
	p.Code(strings.TrimSpace(p.Mark.String() + " " + p.itemName()))
	p.Caution(p.t("paper.check_revision"))
	p.Pairs(slices.Concat(p.answered("order", "due", "drawing_revision", "marking"), p.entries("quantity"), p.figures("tubes_made"), []paper.Pair{{Label: p.t("paper.line"), Value: m.Line.Name}})...)
	p.Text(p.tubeLine())
	t.heed("")

	p.Heading(p.t("paper.part.tubes"))
	p.Pairs(slices.Concat(p.answered("tube_standard", "tube_heats"), p.entries("tube_metal", "tube_od", "tube_wall", "wall_basis"), p.figures("mill_length", "mill_tubes", "tubes_to_send", "tubes_drawn", "cut_length"))...)
	t.heed("tubes", "cutting")
	p.Blanks(p.t("paper.blank.heats"), p.t("paper.blank.count_in"), p.t("paper.blank.received"))

	p.Heading(p.t("paper.part.strip"))
	p.Pairs(slices.Concat(p.entries("fin_metal", "strip_thickness"), p.figures("slit_width", "strip_bought", "strip_bought_mass", "coils", "coil_length", "strip_wound"), p.answered("coil_numbers"))...)
	t.heed("buy", "coil")
	p.Blanks(p.t("paper.blank.coils"), p.t("paper.blank.temper"))

	p.Heading(p.t("paper.part.set_up"))
	p.Pairs(t.setting()...)
	t.heed("speeds")
	p.Blanks(p.t("paper.blank.tooling"), p.t("paper.blank.tension"), p.t("paper.blank.set_by"))

	t.programme()
	t.firstOff()
	t.work()
	t.closing()
}

// travelling is a traveller in the making: each caution stands where its work is, and one that has no such place at the head.
type travelling struct {
	*papering
	cautions []ShownCaution
}

// heed adds the cautions that stand at a part of the work.
func (p *travelling) heed(places ...string) {
	var said []string
	for _, c := range p.cautions {
		if slices.Contains(places, c.At) {
			if c.Head != "" {
				said = append(said, c.Head)
			}
			said = append(said, c.Texts...)
		}
	}
	p.Caution(said...)
}

// unmakeable says why nothing is made by a design: it is refused, its figures are not of its entries, or it has no price.
func (p *papering) unmakeable() []string {
	switch {
	case p.Stale:
		return []string{p.t("paper.no_steps"), p.t("paper.across.stale")}
	case p.refused():
		return []string{p.t("paper.no_steps"), p.whyRefused()}
	case p.Made == nil:
		return []string{p.t("paper.no_steps"), p.Texts.Text("making.not_judged_here")}
	case p.Made.Plan.Cost == nil || p.Made.Plan.Programme == nil || p.Made.Plan.Winding == nil:
		return []string{p.t("paper.no_steps"), p.say(p.Made.Why(making.TheCost))}
	}
	return nil
}

// setting is what the line is set to.
func (p *travelling) setting() []paper.Pair {
	m := p.Made
	k := m.Plan.Practice
	yes := func(on bool) string {
		if on {
			return p.Texts.Text("making.yes")
		}
		return p.Texts.Text("making.no")
	}
	g := m.Plan.Programme.Growth
	growth := p.figures("growth", "growth_scatter", "grown", "strip_back")
	if len(growth) > 0 {
		growth[0].Note = p.say(g.Note)
	}
	w := m.Plan.Winding
	rule := message.New("paper.joints", "count", w.Joints, "apart", message.Of(units.Distance, k.Joints.Apart))
	switch w.Joints {
	case 0:
		rule = message.New("paper.no_joints")
	case 1:
		rule = message.New("paper.one_of_joints")
	}
	return slices.Concat(p.entries("fin_type", "fin_height", "fin_pitch"), p.figures("fin_od", "pitch", "spindle", "feed", "strip_run_speed", "set_up_time", "tube_time"), p.entries("end_security", "groove_depth"),
		[]paper.Pair{{Label: p.t("paper.oil"), Value: yes(k.Oiler)}, {Label: p.t("paper.joints_rule"), Value: p.say(rule)}}, growth)
}

// programme is where the head starts and stops, from end A.
func (p *travelling) programme() {
	m := p.Made
	p.Heading(p.t("paper.part.programme"))
	p.Text(p.t("paper.datum"))
	if s, ok := p.whole(m, wholeWide); ok {
		p.Draw(svg.Write(s, svg.Style{}), p.t("paper.not_for_pressure"))
	}
	place := func(l units.Length) string { return p.print(units.Distance, float64(l)) }
	var rows [][]string
	for _, z := range m.Plan.Programme.Zones {
		if z.Finished.Length() <= 0 {
			continue
		}
		turns := ""
		if z.Kind == making.Finned {
			turns = p.number(units.Count, z.Turns)
		}
		rows = append(rows, []string{p.Texts.Text("shop.zone." + string(z.Kind)), place(z.Cut.From), place(z.Cut.To), place(z.Finished.From), place(z.Finished.To), turns})
	}
	p.Table(p.t("paper.programme"), p.columns("zone", "cut_from:n", "cut_to:n", "finished_from:n", "finished_to:n", "turns:n"), rows)
	p.Table(p.t("paper.joints_record"), p.columns("tube:o", "joints_at:o", "tube:o", "joints_at:o", "tube:o", "joints_at:o"), make6(3))
}

// make6 are empty rows of six cells.
func make6(n int) [][]string {
	rows := make([][]string, n)
	for i := range rows {
		rows[i] = make([]string, 6)
	}
	return rows
}

// firstOff is what is looked at before the run is released.
func (p *travelling) firstOff() {
	p.Heading(p.t("paper.part.first_off"))
	var rows [][]string
	for _, c := range p.Made.Plan.Checks(p.Made.Shop) {
		kind := string(c.Check.Kind)
		rows = append(rows, []string{p.Texts.Text("check." + kind), p.say(c.Find), p.t("paper.by." + kind), p.t("paper.often.first"), "", "", ""})
	}
	p.Table(p.t("paper.checks"), p.columns("check", "find", "instrument", "often", "tube_1:o", "tube_2:o", "sign:o"), rows)
	p.heed("checks")
	p.Hold(p.t("paper.hold.first_off"))
}

// work is the steps, in the order of the work, with a line to sign at each test.
func (p *travelling) work() {
	m := p.Made
	p.Heading(p.t("paper.part.work"))
	var rows [][]string
	add := func(name, who, tubes, time, note string) {
		rows = append(rows, []string{whole(10 * (len(rows) + 1)), name, who, tubes, time, "", "", note})
	}
	steps := func(when shop.StepTime) (holds []string) {
		for i := range m.Plan.Steps {
			s := &m.Plan.Steps[i]
			if s.Step.When != when {
				continue
			}
			who, time := p.Texts.Text("shop.choice."+string(s.Step.Who)), p.print(units.Time, float64(s.Time))
			var note []string
			if s.SubLet() {
				time = p.say(message.New("paper.away", "days", s.Step.Lead))
			}
			if s.Asked {
				note = append(note, p.Texts.Text("making.step.asked"))
			}
			for _, id := range s.Cautions {
				note = append(note, p.Texts.Text("caution."+id))
			}
			add(s.Step.Name, who, whole(s.Tubes), time, strings.Join(note, " "))
			if proves(s.Step.Kind) {
				holds = append(holds, s.Step.Name)
			}
		}
		return holds
	}
	crew := p.Texts.Text("shop.choice." + string(shop.ByCrew))
	made := p.value("tubes_made")
	add(p.t("paper.step.bare"), crew, made, "", p.say(message.New("paper.step.bare_note", "length", p.value("cut_length"))))
	before := steps(shop.BeforeFinning)
	add(p.t("paper.step.set_up"), crew, "", p.value("set_up_time"), "")
	add(p.t("paper.step.first_off"), crew, whole(m.Plan.Winding.FirstOff), "", p.t("paper.step.first_off_note"))
	add(p.t("paper.step.finning"), crew, made, p.say(message.New("paper.each", "each", p.value("tube_time"), "all", p.value("line_hours"))), p.t("paper.step.finning_note"))
	add(p.t("paper.step.saw"), crew, p.entry0("quantity"), p.value("saw_hours"), p.say(message.New("paper.trims", "a", message.Of(units.Distance, m.Plan.Programme.TrimA), "b", message.Of(units.Distance, m.Plan.Programme.TrimB))))
	after := steps(shop.AfterFinning)
	add(p.t("paper.step.pack"), crew, p.entry0("quantity"), "", "")
	p.Table(p.t("paper.steps"), p.columns("step:n", "work", "who", "tubes:n", "standard", "actual:o", "sign:o", "heed"), rows)
	p.heed("steps", "packing")
	for _, name := range append(append(before, after...), p.lines("hold_points")...) {
		p.Hold(p.say(message.New("paper.hold.step", "step", name)))
	}
	if at := p.answer("test_pressure"); at != "" {
		p.Text(p.say(message.New("paper.test_pressure", "at", at)))
	}
}

// entry0 is what an entry says, by its ID.
func (p *papering) entry0(id string) string {
	list := p.entries(id)
	if len(list) == 0 {
		return ""
	}
	return list[0].Value
}

// proves reports whether a step looks at tubes or vouches for them.
func proves(k shop.StepKind) bool {
	return slices.Contains([]shop.StepKind{shop.Identify, shop.GaugeBore, shop.EddyCurrent, shop.PressureTest, shop.Certificate, shop.Inspect}, k)
}

// closing is how the tubes are packed and lifted, what is counted, and what went wrong.
func (p *travelling) closing() {
	p.Heading(p.t("paper.part.crate"))
	if s, ok := p.crate(p.Made, crateWide); ok {
		p.Draw(svg.Write(s, svg.Style{}), "")
	}
	p.Pairs(p.figures(lifted...)...)
	p.Text(p.t("paper.lifting"))
	p.Heading(p.t("paper.part.counts"))
	p.Blanks(p.t("paper.blank.good"), p.t("paper.blank.scrap"), p.t("paper.blank.rework"), p.t("paper.blank.rejected"))
	p.toMeasure()
	p.Heading(p.t("paper.part.nonconforming"))
	p.Blanks(p.t("paper.blank.what"), p.t("paper.blank.how_many"), p.t("paper.blank.decided"), p.t("paper.blank.signed"))
}

// toMeasure is where the floor writes what the record of it asks for, of as many tubes as anything is learned of.
func (p *travelling) toMeasure() {
	columns := []paper.Column{{Label: p.t("paper.column.tube"), Open: true}}
	for _, c := range floor.Columns {
		columns = append(columns, paper.Column{Label: p.t("floor." + c.ID), Open: true})
	}
	rows := make([][]string, floor.Least)
	for i := range rows {
		rows[i] = make([]string, len(columns))
	}
	p.Table(p.say(message.New("floor.measure", "tubes", floor.Least)), columns, rows)
}

// lifted are the figures by which a crate is packed, moved and stood.
var lifted = []string{"crates", "per_crate", "layers", "crate_length", "tube_heaviest", "crate_mass", "order_gross", "bearers", "bearer_spacing", "balance_point", "sling_from", "sling_to", "sling_leg", "leg_load", "trucks"}

// released is the whole promise of a plan, nil where there is none.
func (p *papering) released() *making.Promise {
	promise, why := p.Made.Plan.Promise(p.Made.Shop, p.Made.Day)
	if !why.None() || promise.Ordered == 0 {
		return nil
	}
	return &promise
}
