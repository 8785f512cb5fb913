package report

import (
	"math"
	"strings"

	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/paper"
	"finwright/core/rating"
	"finwright/core/units"
)

// note is the calculation: from what, by which formulas, in which order, and how far it holds. Of what it costs it says nothing.
func (p *papering) note() {
	p.refusal()
	p.Heading(p.ask("purpose"))
	if lines := p.lines("purpose"); lines != nil {
		p.Text(lines...)
	} else {
		p.Text(p.t("paper.purpose"))
	}
	p.Text(p.tubeLine())
	p.tubeDrawing(900, 300)
	p.cases()
	p.Table(p.t("paper.part.entries"), p.columns("entry", "value", "whose"), p.allEntries())
	p.Heading(p.t("paper.part.conventions"))
	p.Text(p.t("paper.convention.taper"), p.t("paper.convention.bare"), p.t("paper.convention.strip"), p.t("paper.convention.labels"))
	p.Heading(p.t("paper.part.properties"))
	p.Table("", p.columns("what", "at", "value:n", "source", "state"), p.properties())
	p.formulas()
	p.balance()
	p.alternatives()
	p.Heading(p.t("paper.part.left_out"))
	p.Text(p.t("paper.left_out.radiation"), p.t("paper.left_out.air_in_steam"), p.t("paper.left_out.spreading"), p.t("paper.left_out.constriction"), p.t("paper.left_out.moisture"))
	p.Heading(p.t("paper.part.limits"))
	p.Pairs(p.metal()...)
	p.Heading(p.t("paper.part.conclusion"))
	p.Text(p.Ruling(p.Result).Text)
	p.Text(p.remarks()...)
	p.Text(p.t("paper.calculated"), p.t("paper.not_for_pressure"))
	p.Heading(p.t("paper.part.check"))
	p.Blanks(p.t("paper.blank.checker"), p.t("paper.blank.check_method"), p.t("paper.blank.check_result"), p.t("paper.blank.day"))
}

// allEntries lists what the design says, and who says so; what the house alone decides by is left out.
func (p *papering) allEntries() [][]string {
	var out [][]string
	for i := range field.Fields {
		f := &field.Fields[i]
		text := p.entry(f)
		if text == "" || f.ID == "margin" || f.ID == "line" {
			continue
		}
		whose := p.t("paper.stands_in")
		if e := p.Document.Fields[f.ID]; e.Text != "" {
			whose = p.Texts.Text("origin." + string(e.Origin))
		}
		out = append(out, []string{p.Texts.Text(f.Label()), text, whose})
	}
	for _, s := range p.spansSaid() {
		out = append(out, []string{s.Label, s.Value, ""})
	}
	return out
}

// properties are those of the metals and streams, at what state, and whence.
func (p *papering) properties() [][]string {
	var out [][]string
	h := p.Result.Heat
	metal := func(m material.Metal, at units.Temperature) {
		k, in := m.ConductivityAt(at)
		state := p.Texts.Text("range.in")
		if !in {
			state = p.Texts.Text("range.out")
		}
		source := ""
		if s := m.Conductivity.Source; s.Key != "" {
			source = p.Texts.Text(s.Key)
		}
		out = append(out, []string{p.say(m.Name()) + ", " + p.t("paper.conductivity"), p.print(units.Temp, float64(at)), p.print(units.Conduct, float64(k)), source, state})
	}
	metal(p.In.FinMetal, p.Result.Surface.FinAt)
	if !h.Absent.None() {
		return out
	}
	g := h.Thermal.Gas
	gas := p.Texts.Text("choice.gas." + string(p.In.Air.Kind))
	for _, one := range []struct {
		name string
		kind units.Kind
		si   float64
	}{{"density", units.Dense, g.Density}, {"heat_capacity", units.SpecificHeat, g.HeatCapacity}, {"viscosity", units.Viscous, g.Viscosity}, {"conductivity", units.Conduct, g.Conductivity}} {
		out = append(out, []string{gas + ", " + p.t("paper."+one.name), p.t("paper.mean_state"), p.print(one.kind, one.si), p.t("paper.gas_source." + string(p.In.Air.Kind)), ""})
	}
	return out
}

// formulas are the steps: each by its formula, in symbols and in numbers, after those that it hangs on.
func (p *papering) formulas() {
	p.Heading(p.t("paper.part.steps"))
	p.Text(p.t("paper.steps_note"))
	for _, g := range p.Result.Groups {
		if g.Section == "making" || g.ID == "order" || g.ID == "per_tube" {
			continue
		}
		var rows [][]string
		for _, f := range inOrder(g.Figures) {
			w := p.Working(f)
			if w.Absent != "" {
				rows = append(rows, []string{w.Title, w.Absent, "", "", ""})
				continue
			}
			shown := p.Figure(f)
			rows = append(rows, []string{
				strings.Join(present(w.Title, w.Basis), ", "), w.Symbols, w.Numbers, units.Text{Value: shown.Value, Unit: shown.Unit}.String(),
				strings.Join(present(shown.Mark, w.Valid, w.Source), " · "),
			})
		}
		p.Table(p.Texts.Text("figures."+g.ID), p.columns("figure", "symbols:f", "numbers:f", "result:n", "range"), rows)
	}
}

// inOrder returns figures so that each stands behind those of its group whose results it takes.
func inOrder(list []figure.Figure) []figure.Figure {
	out := make([]figure.Figure, 0, len(list))
	done := make([]bool, len(list))
	result := func(f *figure.Figure) string {
		if !f.Absent.None() || f.Formula == "" && f.Stated == nil {
			return ""
		}
		return f.Law().Result
	}
	var put func(i int)
	put = func(i int) {
		if done[i] {
			return
		}
		done[i] = true
		for _, a := range list[i].Args {
			for j := range list {
				if r := result(&list[j]); r != "" && r == a.Symbol && j != i {
					put(j)
				}
			}
		}
		out = append(out, list[i])
	}
	for i := range list {
		put(i)
	}
	return out
}

// balance holds what the gas takes up against what the stream gives off.
func (p *papering) balance() {
	h := p.Result.Heat
	if !h.Absent.None() {
		return
	}
	t := &h.Thermal
	gas := t.Flow.FaceMassVelocity * t.Bank.FaceArea() * t.Gas.HeatCapacity * (t.Duty.AirOut - float64(p.In.Air.In))
	stream, told := streamHeat(p.In, t)
	p.Heading(p.t("paper.part.balance"))
	list := []paper.Pair{{Label: p.t("paper.heat_gas"), Value: p.print(units.Duty, math.Abs(gas))}}
	if told {
		list = append(list, paper.Pair{Label: p.t("paper.heat_stream"), Value: p.print(units.Duty, math.Abs(stream))},
			paper.Pair{Label: p.t("paper.residual"), Value: p.print(units.Percent, math.Abs(gas-stream)/math.Abs(t.Duty.Heat))})
	}
	p.Pairs(list...)
}

// streamHeat is what the stream inside gives off [W]; told is false where its heat capacity is not known.
func streamHeat(in *field.Input, t *rating.Thermal) (w float64, told bool) {
	if t.Condensed > 0 {
		return t.Condensed * t.Vapour.LatentHeat, true
	}
	cp, err := in.MeanHeat(t.Duty.ProcessOut)
	if err != nil {
		return 0, false
	}
	return in.Process.Flow * cp * (float64(in.Process.In) - t.Duty.ProcessOut), true
}

// alternatives are what each correlation says, in its range or out of it.
func (p *papering) alternatives() {
	var rows [][]string
	for _, m := range p.methods(p.Result.Heat) {
		used := ""
		if m.Used {
			used = p.t("paper.in_use")
		}
		rows = append(rows, []string{m.Of, m.Label, m.Text, m.Mark, strings.Join(present(used, m.Why), "; ")})
	}
	p.Table(p.t("paper.part.alternatives"), p.columns("what", "method", "value:n", "range", "remark"), rows)
	if low, high := p.value("film_low"), p.value("film_high"); low != "" {
		p.Text(p.say(message.New("paper.spread", "low", low, "high", high)))
	}
}
