package report

import (
	"strings"

	"finwright/core/design"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// FigureLine says a figure as one line of plain text that stands by itself: what it refers to, how it is judged, and at which tube it was
// found, with the streams or the order where it hangs on these. It is empty where there is no such figure.
func (w Writer) FigureLine(id string, in *field.Input, res *design.Result) string {
	if id == LineFigure {
		line := w.line(res)
		line.Label, line.Value = line.Value, ""
		return w.figureLine(line, w.at(in, "making"))
	}
	for _, g := range res.Groups {
		for _, f := range g.Figures {
			if f.ID != id {
				continue
			}
			where := w.at(in, g.Section)
			if film, ok := res.Find("film"); ok && film.Absent.None() && g.ID == "efficiency" {
				where += w.say(message.New("line.film", "film", message.Amount{Kind: film.Kind, SI: film.SI}))
			}
			return w.figureLine(w.Figure(f), where)
		}
	}
	return ""
}

func (w Writer) figureLine(f ShownFigure, where string) string {
	with := func(what, more string) string {
		if more == "" {
			return what
		}
		return w.say(message.New("line.with", "what", what, "more", more))
	}
	what := with(f.Label, f.Basis) + " " + units.Text{Value: f.Value + f.Absent, Unit: f.Unit}.String()
	what = with(with(strings.TrimSpace(what), f.Beside), f.Mark)
	return w.say(message.New("line.at", "what", what, "where", where))
}

// SentenceLine says a finding of a section, as it was printed, with the tube that it was found of.
func (w Writer) SentenceLine(text string, in *field.Input, section string) string {
	return w.say(message.New("line.found", "what", strings.Join(strings.Fields(text), " "), "where", w.at(in, section)))
}

// at says where a section's figures were found.
func (w Writer) at(in *field.Input, section string) string {
	t := &in.Tube
	amount := func(k units.Kind, si float64) string { return w.Texts.Numbers.Entry(k, si, w.System) }
	out := w.say(message.New("line.tube", "od", amount(units.Diameter, float64(t.OD)), "wall", amount(units.Wall, float64(t.Wall)),
		"height", amount(units.Height, float64(t.Fin.Height)), "strip", amount(units.Thickness, float64(t.Fin.Strip)), "count", amount(units.FinCount, float64(t.Fin.Count))))
	switch section {
	case "heat":
		p := &in.Process
		out += w.say(message.New("line.gas", "gas", message.Key("choice.gas."+string(in.Air.Kind)), "velocity", amount(units.Velocity, in.Air.Velocity), "temperature", amount(units.Temp, float64(in.Air.In))))
		key := "line.stream"
		if p.Fluid == rating.Steam {
			key = "line.steam"
		}
		out += w.say(message.New(key, "fluid", message.Key("choice.inside_fluid."+string(p.Fluid)), "flow", amount(units.MassRate, p.Flow), "temperature", amount(units.Temp, float64(p.In))))
		out += w.say(message.New("line.bank", "rows", in.Bank.Rows, "tubes", in.Bank.TubesPerRow))
	case "making":
		out += w.say(message.New("line.order", "count", in.Job.Quantity, "length", amount(units.Distance, float64(t.Length))))
	}
	return out
}
