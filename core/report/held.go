package report

import (
	"strings"

	"finwright/core/design"
	"finwright/core/message"
	"finwright/core/rating"
)

// held says what stands still along a plot of one entry, and between which whole numbers tubes and rows went for it. Over the
// face velocity the bank stays, and of the gas nothing can be held.
func (w Writer) held(in *rating.Input, kept *rating.Kept, varied string, bank bool, c design.Counts) string {
	holds := kept.Holds()
	var what []string
	say := func(key string, pairs ...any) { what = append(what, w.say(message.New(key, pairs...))) }
	if varied != velocityAxis.field {
		say("choice.hold_space." + string(holds.Space))
		say("choice.hold_air." + string(holds.Air))
	}
	if bank && in.Process.Fluid != rating.Steam {
		say("choice.hold_process." + string(holds.Process))
	}
	if len(what) == 0 {
		return ""
	}
	if t := c.Tubes; t.Least < t.Most {
		say("plot.whole_tubes", "least", t.Least, "most", t.Most)
	}
	if r := c.Rows; r.Least < r.Most {
		say("plot.whole_rows", "least", r.Least, "most", r.Most)
	}
	return w.say(message.New("plot.held", "what", strings.Join(what, "; ")))
}
