package report

import (
	"strings"

	"finwright/core/design"
	"finwright/core/field"
	"finwright/core/units"
)

// ShownCases is the table of the states of the plant: the units of its columns, and a row a case.
type ShownCases struct {
	Duty  string      `json:"duty"`
	Drop  string      `json:"drop"`
	Metal string      `json:"metal"`
	Rows  []ShownCase `json:"rows"`
}

// ShownCase is the bank in one state of the plant. Where it has no figures, Differs says why.
type ShownCase struct {
	ID      string `json:"id"`
	Label   string `json:"label"`
	Differs string `json:"differs"`
	Duty    string `json:"duty"`
	Drop    string `json:"drop"`
	Coldest string `json:"coldest"`
	Hottest string `json:"hottest"`
}

// Cases renders the bank in every state of the plant that is told; nil where it is not rated.
func (w Writer) Cases(in field.Input, h design.Heat) *ShownCases {
	rated := design.PlantCases(in, h)
	if rated == nil {
		return nil
	}
	unit := func(k units.Kind) string { return w.Texts.Numbers.Figure(k, 1, w.System).Unit }
	out := ShownCases{Duty: unit(units.Duty), Drop: unit(units.Drop), Metal: unit(units.Temp), Rows: make([]ShownCase, 0, len(rated))}
	print := func(k units.Kind, si float64) string { return w.Texts.Numbers.Figure(k, si, w.System).Value }
	for _, c := range rated {
		row := ShownCase{ID: c.ID, Label: w.Texts.Text("plant_case." + c.ID)}
		said := make([]string, 0, len(c.Differs)+1)
		for _, m := range c.Differs {
			said = append(said, w.say(m))
		}
		if !c.Absent.None() {
			said = append(said, w.say(c.Absent))
		} else {
			row.Duty, row.Coldest, row.Hottest = print(units.Duty, c.Duty), print(units.Temp, c.Coldest), print(units.Temp, c.Hottest)
			if c.Drop.Stated {
				row.Drop = print(units.Drop, c.Drop.SI)
			}
		}
		row.Differs = strings.Join(said, ", ")
		out.Rows = append(out.Rows, row)
	}
	return &out
}
