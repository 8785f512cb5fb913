package report

import (
	"math"

	"finwright/core/design"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/units"
)

// ShownMove says what a little more of an entry does to a figure.
type ShownMove struct {
	Field  string `json:"field"`
	Label  string `json:"label"`
	Change string `json:"change"`
	Effect string `json:"effect"`
}

// mostMoves are shown: what comes after does a fraction of the first.
const mostMoves = 6

// Moves writes the largest of what design.Moves lists for a figure of a kind.
func (w Writer) Moves(moves []design.Move, k units.Kind) []ShownMove {
	out := []ShownMove{}
	for _, m := range moves[:min(len(moves), mostMoves)] {
		f := field.Must(m.Field)
		change, key := w.Texts.Numbers.Echo(units.Percent, m.Change, w.System), "moves.share"
		switch {
		case f.Kind == units.Temp:
			change, key = w.degrees(m.Change), "moves.warmer"
		case f.Whole != nil:
			change, key = "", "moves.piece"
		}
		by, effect := w.percent(math.Abs(m.By)), "moves.more"
		if k == units.Temp {
			by = w.degrees(math.Abs(m.By))
		}
		if m.By < 0 {
			effect = "moves.less"
		}
		out = append(out, ShownMove{
			Field: m.Field, Label: w.Texts.Text("field." + m.Field),
			Change: w.say(message.New(key, "by", change)), Effect: w.say(message.New(effect, "by", by)),
		})
	}
	return out
}

func (w Writer) percent(share float64) string {
	return w.Texts.Numbers.Figure(units.Percent, share, w.System).String()
}

// degrees writes a difference of temperatures [K].
func (w Writer) degrees(k float64) string {
	if w.System == units.US {
		return w.say(message.New("moves.fahrenheit", "by", w.Texts.Numbers.Figure(units.Factor, k*9/5, w.System).Value))
	}
	return w.say(message.New("moves.kelvin", "by", w.Texts.Numbers.Figure(units.Factor, k, w.System).Value))
}
