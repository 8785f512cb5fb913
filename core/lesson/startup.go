package lesson

import (
	core "finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop/verdict"
	"finwright/core/units"
)

// startUp is a joint that lets go, one that does not, and the wall that this costs.
var startUp = Exercise{
	ID: "start_up", Section: "making",
	Args: []any{"start", amount(units.Temp, 230), "normal", amount(units.Temp, 110), "least", amount(units.Wall, 0.0021082)},
	Start: []Entry{
		{"inside_in", "110 °C"},
		{"inside_pressure", "2000 kPa"},
		{"start_up", "230 °C"},
		{"air_start_up", "20 °C"},
		{"upset", "110 °C"},
		{"flow_lost", "excluded"},
		{"least_wall", "0.083 in"},
	},
	Free: []string{"fin_type", "tube_wall", "groove_depth"},
	Guess: Guess{Words: []string{"tension", "grip", "foot"}, Truth: func(start *Reading) (float64, []any) {
		place := 0.0
		if g := start.With(Entry{"fin_type", "embedded"}).In.Tube.Fin.Type; g.Grooved() && !g.Fixing().Tension {
			place = 1
		}
		return place, []any{"loss", amount(units.Temp, start.number("bond_loss")), "case", amount(units.Temp, start.number("tested_start_up"))}
	}},
	Tests: []Test{
		{
			ID: "bears",
			Holds: func(c *Case) bool {
				p, judged := c.Now.Result.Part("heat")
				return judged && p.State != core.No && c.Now.number("tested_start_up") > 0
			},
			Found: func(c *Case) message.Message {
				p, _ := c.Now.Result.Part("heat")
				return p.Notice.Message
			},
		}, {
			ID:    "grips",
			Holds: func(c *Case) bool { return c.Now.In.Tube.Fin.Type.Grooved() && c.Now.In.Tube.Fin.Groove > 0.2e-3 },
		}, {
			ID: "wall",
			Holds: func(c *Case) bool {
				v, judged := rule(c.Now, "wall_left")
				return judged && v.State == core.Good
			},
			Found: func(c *Case) message.Message {
				v, _ := rule(c.Now, "wall_left")
				return v.Why
			},
		},
	},
	Asked: Asked{units.Wall, func(c *Case) (float64, bool) {
		if v, judged := rule(c.Now, "wall_left"); judged && v.Measure != nil {
			return v.Measure.Value, true
		}
		return 0, false
	}},
	Solution: []Entry{{"fin_type", "embedded"}, {"tube_wall", "12 BWG"}},
	Workings: []string{"tested_start_up", "hottest_root"},
}

// rule is the verdict of a rule of the line on a tube.
func rule(r *Reading, id string) (v verdict.Verdict, judged bool) {
	for _, v := range r.Made.Verdicts {
		if v.Rule.ID == id {
			return v, true
		}
	}
	return v, false
}
