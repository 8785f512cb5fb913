package lesson

import (
	core "finwright/core/figure"
	"finwright/core/message"
	"finwright/core/units"
)

// quote is a tube with three faults, to be made and priced.
var quote = Exercise{
	ID: "quote", Section: "making",
	Args: []any{"quantity", 200, "surface", message.Least(amount(units.SurfacePerMetre, leastSurface))},
	Start: []Entry{
		{"quantity", "200"}, {"fin_type", "embedded"}, {"fin_height", "20 mm"}, {"tube_wall", "14 BWG"}, {"plain_end_b", "2 mm"}, {"least_wall", "0.083 in"},
	},
	Free: []string{"fin_height", "tube_wall", "plain_end_b"},
	Guess: Guess{Words: []string{"one", "two", "three", "four"}, Truth: func(start *Reading) (float64, []any) {
		n := refusing(start)
		return float64(n - 1), []any{"count", n}
	}},
	Tests: []Test{
		{
			ID:    "made",
			Holds: func(c *Case) bool { return refusing(c.Now) == 0 && len(c.Now.Made.Verdicts) > 0 },
			Found: func(c *Case) message.Message {
				for _, v := range c.Now.Made.Verdicts {
					if v.State == core.No {
						return message.New("making.rule", "rule", message.Key("shop.rule."+v.Rule.ID), "why", v.Why)
					}
				}
				return message.Message{}
			},
		}, {
			ID:    "surface",
			Holds: func(c *Case) bool { return c.Now.number("total_area") >= leastSurface },
			Found: func(c *Case) message.Message { return found(units.SurfacePerMetre, c.Now.number("total_area")) },
		},
	},
	Asked:    Asked{units.Cost, figureOf("price_tube")},
	Solution: []Entry{{"fin_height", "5/8 in"}, {"tube_wall", "12 BWG"}, {"plain_end_b", "1 1/2 in"}},
	Workings: []string{"price_tube", "price", "cost_total"},
}

// leastSurface is what the customer asks for [m2/m].
const leastSurface = 1.69

// refusing is how many rules of the line refuse a tube.
func refusing(r *Reading) (n int) {
	for _, v := range r.Made.Verdicts {
		if v.State == core.No {
			n++
		}
	}
	return n
}
