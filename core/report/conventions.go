package report

import (
	"math"
	"strings"

	"finwright/core/convention"
	"finwright/core/message"
	"finwright/core/units"
)

// ShownConventions are the ways in which a figure that another party printed comes out.
type ShownConventions struct {
	Quantities []NamedFigure  `json:"quantities"` // that can be asked for
	Wrong      string         `json:"wrong"`      // why what was typed cannot be used
	Said       string         `json:"said"`
	Readings   []ShownReading `json:"readings"`
}

// ShownReading is one set of conventions.
type ShownReading struct {
	Fits  bool   `json:"fits"`
	Value string `json:"value"` // that it gives
	By    string `json:"by"`    // what is counted otherwise than this page counts
	Miss  string `json:"miss"`  // by what share the printed figure is off; empty where it fits
}

// Conventions lists what can be asked for.
func (w Writer) Conventions() ShownConventions {
	out := ShownConventions{Readings: []ShownReading{}}
	for _, q := range convention.Quantities {
		out.Quantities = append(out.Quantities, NamedFigure{q.ID, w.Texts.Text("convention." + q.ID)})
	}
	return out
}

// Readings adds how a printed text of a quantity comes out of a design; or says at its entry why it cannot be.
func (w Writer) Readings(out *ShownConventions, q *convention.Quantity, text string, d *convention.Design) {
	p, err := q.ReadPrinted(text, w.System)
	switch {
	case err != nil:
		out.Wrong = w.say(message.Unread(err.(*units.ParseError)))
		return
	case p.SI <= 0:
		out.Wrong = w.Texts.Text("convention.positive")
		return
	}
	readings := q.Read(d, p)
	out.Said = w.say(message.New("convention.none", "text", strings.TrimSpace(text)))
	if readings[0].Fits {
		out.Said = w.say(message.New("convention.fits", "text", strings.TrimSpace(text), "count", len(readings)))
	}
	for _, r := range readings {
		shown := ShownReading{Fits: r.Fits, Value: w.Texts.Numbers.Figure(q.Kind, r.SI, w.System).String(), By: w.by(r.Choices)}
		if !r.Fits {
			shown.Miss = w.missed(r.Miss)
		}
		out.Readings = append(out.Readings, shown)
	}
}

// by says what a reading counts otherwise.
func (w Writer) by(choices []convention.Choice) string {
	if len(choices) == 0 {
		return w.Texts.Text("convention.own")
	}
	all := ""
	for _, c := range choices {
		said := w.say(message.New("convention.unit", "unit", c.Answer))
		if c.Ask != "unit" {
			said = w.Texts.Text("convention." + c.Ask + "." + c.Answer)
		}
		if all != "" {
			said = w.say(message.New("convention.and", "before", all, "then", said))
		}
		all = said
	}
	return all
}

// missed says by what share a printed figure is off.
func (w Writer) missed(share float64) string {
	by := w.percent(math.Abs(share))
	if share < 0 {
		return w.say(message.New("convention.less", "by", by))
	}
	return w.say(message.New("convention.more", "by", by))
}
