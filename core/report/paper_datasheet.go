package report

import (
	"slices"
	"strings"

	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/paper"
)

// datasheet is a design on one page: what it is, what it does, what it must not pass.
func (p *papering) datasheet() {
	p.refusal()
	p.tubeDrawing(900, 300)
	part := func(id string, list ...paper.Pair) {
		if len(list) > 0 {
			p.Heading(p.t("paper.part." + id))
			p.Pairs(list...)
		}
	}
	part("tube", slices.Concat(p.answered("tube_standard"), p.entries("tube_metal", "tube_od", "tube_wall", "wall_basis"), p.leastWall())...)
	part("fin", slices.Concat(p.entries("fin_type", "fin_metal", "fin_height", "strip_thickness", "fin_pitch", "fin_profile", "groove_depth", "foot_lap", "sleeve_thickness"), p.figures("fin_od", "root_od", "gap", "tip_thickness"))...)
	part("length", slices.Concat(p.entries("tube_length", "plain_end_a", "plain_end_b"), p.spansSaid(), p.figures("finned_length"), p.entries("support_spacing", "end_security"))...)
	part("surface", slices.Concat(p.figures("bare_area", "total_area", "area_ratio", "inside_area", "tube_surface", "fin_efficiency", "surface_efficiency"), p.entries("root_basis"))...)
	part("mass", p.figures("tube_mass", "fin_mass", "metre_mass", "tube_weight", "tube_heaviest")...)
	part("streams", slices.Concat(p.entries("gas", "air_in", "face_velocity", "altitude", "air_humidity", "fouling_outside", "inside_fluid", "glycol_share", "inside_in"),
		p.figures("inside_flow"), p.entries("inside_pressure", "fouling_inside", "rows", "tubes_per_row", "passes", "layout"))...)
	part("heat", slices.Concat(p.duties(), p.figures("air_out", "process_out", "film"), p.method(), p.figures("inside_film"), p.entries("bond_resistance"), p.figures("u_bare", "u_total", "air_drop", "inside_loss", "inside_velocity"))...)
	p.cases()
	part("metal", p.metal()...)
	part("tolerances", append(p.entries("position_tolerance", "joints_allowed"), p.found()...)...)
	part("tests", p.testsSaid()...)
	p.Text(p.t("paper.calculated"))
}

// leastWall is the least wall that was stated, and by whom.
func (p *papering) leastWall() []paper.Pair {
	list := p.entries("least_wall")
	for i := range list {
		list[i].Note = p.Texts.Text("origin." + string(p.Document.Fields["least_wall"].Origin))
	}
	if list == nil {
		list = []paper.Pair{{Label: p.Texts.Text(field.Must("least_wall").Label()), Value: p.t("paper.least_wall_unstated")}}
	}
	return list
}

// duties are what is wanted, what is found and by how much that is more.
func (p *papering) duties() []paper.Pair {
	var out []paper.Pair
	for _, one := range p.pairs(p.Result) {
		if one.Wanted == "" {
			continue
		}
		note := p.say(message.New("paper.wanted", "wanted", one.Wanted))
		if one.Over != "" {
			note = p.say(message.New("paper.wanted_over", "wanted", one.Wanted, "over", one.Over))
		}
		out = append(out, paper.Pair{Label: one.Label, Value: one.Found, Note: strings.Join(present(note, one.Mark), "; "), Figure: one.ID})
	}
	if !slices.ContainsFunc(p.pairs(p.Result), func(a ShownAsked) bool { return a.ID == "duty" && a.Wanted != "" }) {
		out = append(p.figures("duty"), out...)
	}
	return out
}

// method names the correlations in use, with what the others in range say.
func (p *papering) method() []paper.Pair {
	methods := p.methods(p.Result.Heat)
	if len(methods) == 0 {
		return nil
	}
	list := []paper.Pair{{Label: p.t("paper.methods_used"), Value: methodsUsed(methods)}}
	if low, high := p.value("film_low"), p.value("film_high"); low != "" {
		list[0].Note = p.say(message.New("paper.spread", "low", low, "high", high))
	}
	return list
}

// cases is the table of the states of the plant, where more than one is told.
func (p *papering) cases() {
	c := p.Cases(*p.In, p.Result.Heat)
	if c == nil || len(c.Rows) < 2 {
		return
	}
	columns := []paper.Column{
		{Label: p.t("paper.column.case")},
		{Label: p.Texts.Text("figure.duty") + ", " + c.Duty, Number: true},
		{Label: p.Texts.Text("figure.hottest_root") + ", " + c.Metal, Number: true},
		{Label: p.t("paper.column.differs")},
	}
	var rows [][]string
	for _, r := range c.Rows {
		if r.Duty != "" { // of one that is not stated there is nothing to tell
			rows = append(rows, []string{r.Label, r.Duty, r.Hottest, r.Differs})
		}
	}
	p.Table(p.t("paper.part.cases"), columns, rows)
}

// metal is each case's temperature beside its limit.
func (p *papering) metal() []paper.Pair {
	var out []paper.Pair
	for _, id := range []string{"tested_normal", "tested_start_up", "tested_upset", "tested_flow_lost", "hottest_root"} {
		f, ok := p.Result.Find(id)
		if !ok {
			continue
		}
		shown := p.Figure(f)
		one := p.pair(shown)
		one.Note = strings.Join(present(shown.Tests, shown.Mark), " ")
		out = append(out, one)
	}
	return out
}

// found is what the first tubes off are held to.
func (p *papering) found() []paper.Pair {
	var out []paper.Pair
	for _, c := range p.checks(p.Made) {
		out = append(out, paper.Pair{Label: c.Name, Value: c.Find})
	}
	return out
}

// testsSaid are the steps that look at the tubes or vouch for them.
func (p *papering) testsSaid() []paper.Pair {
	var out []paper.Pair
	for i := range p.Made.Plan.Steps {
		if s := p.Made.Plan.Steps[i].Step; proves(s.Kind) {
			out = append(out, paper.Pair{Label: p.Texts.Text("shop.choice." + string(s.Kind)), Value: s.Name})
		}
	}
	return out
}
