package design

import (
	"math"
	"strings"

	"finwright/core/document"
	"finwright/core/exchanger"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// PlantCase is the bank in one state of the plant, of which the text is "plant_case.<id>".
type PlantCase struct {
	ID               string
	Differs          []message.Message // from normal running, and that the joint is open
	Absent           message.Message   // why there are no figures
	Duty             float64           // [W]
	Drop             rating.Optional   // [Pa]; not stated: no method answers
	Coldest, Hottest float64           // [C] metal
}

// PlantCases rates the bank anew in every state that is told: each keeps what it does not name. Nothing is rated where the
// bank in normal running is not.
func PlantCases(in field.Input, h Heat) []PlantCase {
	if !h.Absent.None() {
		return nil
	}
	dirty := in.Process.Fouling > 0 || in.Air.Fouling > 0
	temperature := func(key string, celsius float64) message.Message {
		return message.New(key, "temperature", message.Amount{Kind: units.Temp, SI: celsius})
	}
	normal := plantCase("normal", &h.Thermal)
	list := []PlantCase{normal}
	// rate adds a case, or why there is none.
	rate := func(id string, why string, told bool, change func(in *field.Input, differs func(message.Message))) {
		if !told {
			list = append(list, PlantCase{ID: id, Absent: message.New(why)})
			return
		}
		changed, differs := in, []message.Message{}
		change(&changed, func(m message.Message) { differs = append(differs, m) })
		row := PlantCase{ID: id}
		if t, hindrance := rating.RateBriefly(&changed.Input); hindrance != nil {
			row.Absent = hindered(&changed, hindrance).Message
		} else {
			row = plantCase(id, &t)
		}
		row.Differs = append(differs, row.Differs...)
		list = append(list, row)
	}
	season := func(id string, gas rating.Optional) {
		rate(id, "absent.case_untold", gas.Stated, func(in *field.Input, differs func(message.Message)) {
			in.Air.In = units.Temperature(gas.SI)
			differs(temperature("differs.gas", gas.SI))
		})
	}
	season("summer", in.Limits.Summer)
	season("winter", in.Limits.Winter)
	rate("turndown", "absent.case_untold", in.Limits.Turndown.Stated && in.Process.Fluid != rating.Steam, func(in *field.Input, differs func(message.Message)) {
		in.Process.Flow *= in.Limits.Turndown.SI
		differs(message.New("differs.flow", "share", message.Amount{Kind: units.Percent, SI: in.Limits.Turndown.SI}))
	})
	rate("clean", "absent.no_dirt", dirty, func(in *field.Input, differs func(message.Message)) {
		in.Process.Fouling, in.Air.Fouling = 0, 0
		differs(message.New("differs.clean"))
	})
	fouled := normal // what is stated is the dirt that the bank is rated with
	if fouled.ID = "fouled"; !dirty {
		fouled = PlantCase{ID: fouled.ID, Absent: message.New("absent.no_dirt")}
	}
	list = append(list, fouled)
	for _, c := range []exchanger.Case{exchanger.StartUp, exchanger.Upset} {
		ends, told := h.Case.Ends[c]
		rate(string(c), "absent.case_untold", told, func(in *field.Input, differs func(message.Message)) {
			if gas := units.Temperature(ends.Gas); gas != in.Air.In {
				in.Air.In = gas
				differs(temperature("differs.gas", ends.Gas))
			}
			if process := units.Temperature(ends.Process); process != in.Process.In {
				in.Process.In = process
				differs(temperature("differs.process", ends.Process))
			}
		})
	}
	return list
}

func plantCase(id string, t *rating.Thermal) PlantCase {
	c := PlantCase{ID: id, Duty: math.Abs(t.Duty.Heat), Coldest: t.Duty.Coldest.Celsius, Hottest: t.Duty.Hottest.Celsius}
	c.Differs = openedIn(t)
	if t.HasDrop() {
		c.Drop = rating.Optional{SI: t.UsedDrop.Answer.Total, Stated: true}
	}
	return c
}

// AddCarried adds what Carried remarks on, which is of the bank.
func (r *Result) AddCarried(d document.Document) {
	for _, n := range Carried(d) {
		r.Notices = append(r.Notices, n)
		for i := range r.Parts {
			if p := &r.Parts[i]; p.Section == heatPart && n.State.Graver(p.State) {
				p.State, p.Notice = n.State, n
			}
		}
	}
}

// Carried remarks on cases that were stated for other inlets: the inlet of normal running has been typed anew since, and the
// case, which is the customer's or the house's still, has not. So none of an example's survives unseen.
func Carried(d document.Document) []Notice {
	var out []Notice
	for _, c := range []struct{ field, normal, figure string }{
		{"start_up", "inside_in", "root_start_up"},
		{"upset", "inside_in", "root_upset"},
		{"air_start_up", "air_in", "root_start_up"},
		{"air_upset", "air_in", "root_upset"},
		{"air_summer", "air_in", ""},
		{"air_winter", "air_in", ""},
		{"turndown", "inside_flow", ""},
	} {
		stated, normal := d.Fields[c.field], d.Fields[c.normal]
		if strings.TrimSpace(stated.Text) != "" && stated.Origin != document.Assumed && normal.Origin == document.Assumed {
			out = append(out, Notice{State: figure.Watch, Field: c.field, Figure: c.figure, Message: message.New("notice.carried",
				"case", message.Key("field."+c.field), "normal", message.Key("field."+c.normal))})
		}
	}
	return out
}
