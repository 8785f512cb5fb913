package lesson

import (
	"errors"
	"math"
	"slices"
	"strings"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/units"
)

// typedWithin is by how much a typed number may be off [-].
const typedWithin = 0.03

// nothing is below what a page shows of any figure that is asked for [SI].
const nothing = 1e-9

// Verdict is what becomes of a try: one line for each thing that was asked.
type Verdict struct {
	Solved bool
	Lines  []Line
}

// Line says whether one thing holds, and what was found instead.
type Line struct {
	Holds       bool
	Text, Found message.Message
}

// Check judges a try on the trainee's tube and the number that was typed, which is in the units of the tube.
func (x *Exercise) Check(c *Case, typed string) Verdict {
	v := Verdict{Solved: true}
	add := func(l Line) {
		v.Lines = append(v.Lines, l)
		v.Solved = v.Solved && l.Holds
	}
	if c.Now.Err != nil {
		add(Line{Text: message.New("lesson.unread")})
		return v
	}
	changed := x.strayed(c)
	others := Line{Holds: len(changed) == 0, Text: message.New("lesson.others")}
	if !others.Holds {
		others.Found = message.New("lesson.strayed", "label", message.Key(changed[0]))
	}
	add(others)
	for _, t := range x.Tests {
		l := Line{Holds: t.Holds(c), Text: x.say("test." + t.ID)}
		if !l.Holds && t.Found != nil {
			l.Found = t.Found(c)
		}
		add(l)
	}
	if x.Asked.Of != nil {
		add(x.judge(c, typed))
	}
	return v
}

// judge holds the typed number to that of the trainee's own tube. How far it is off is said, and not what it should be.
func (x *Exercise) judge(c *Case, typed string) Line {
	l := Line{Text: message.New("lesson.typed", "what", x.say("asked"))}
	want, ok := x.Asked.Of(c)
	p, err := units.Parse(x.Asked.Kind, strings.TrimSpace(typed), c.Now.Document.Units)
	var unread *units.ParseError
	switch {
	case !ok:
		l.Found = message.New("lesson.no_figure")
	case strings.TrimSpace(typed) == "":
		l.Found = message.New("lesson.not_typed")
	case math.Abs(want) < nothing:
		l.Found = message.New("lesson.nothing")
	case errors.As(err, &unread):
		l.Found = message.Unread(unread)
	default:
		off := p.SI/want - 1
		l.Holds = math.Abs(off) <= typedWithin
		if !l.Holds {
			l.Found = message.New(tooMuch(off), "by", message.Amount{Kind: units.Percent, SI: math.Abs(off)})
		}
	}
	return l
}

// tooMuch is the text that tells to which side a number is off.
func tooMuch(off float64) string {
	if off > 0 {
		return "lesson.too_much"
	}
	return "lesson.too_little"
}

// strayed lists the labels of entries that the task does not let change and that say something else than at the start. What an entry says
// is compared as it is read, so that the same in another unit is no change.
func (x *Exercise) strayed(c *Case) (out []string) {
	for i := range field.Fields {
		f := &field.Fields[i]
		was, now := c.Start.Document.Text(f.ID), c.Now.Document.Text(f.ID)
		if was == now || slices.Contains(x.Free, f.ID) || !f.Used(c.Now.Document.Text) {
			continue
		}
		if f.IsNumber() {
			a, errA := units.Parse(f.Kind, was, c.Start.Document.Units)
			b, errB := units.Parse(f.Kind, now, c.Now.Document.Units)
			if errA == nil && errB == nil && near(a.SI, b.SI) {
				continue
			}
		}
		out = append(out, f.Label())
	}
	if !x.FreeSpans && !slices.EqualFunc(c.Start.Document.Spans, c.Now.Document.Spans, sameSpan) {
		out = append(out, "page.bare_span")
	}
	return out
}

func sameSpan(a, b document.Span) bool {
	return a.Centre.Text == b.Centre.Text && a.Width.Text == b.Width.Text
}

// near reports whether two numbers are the same but for the digits that an entry shows.
func near(a, b float64) bool { return math.Abs(a-b) <= 2e-4*math.Max(math.Abs(a), math.Abs(b)) }

// about reports whether a number is another within a share [-].
func about(x, want, share float64) bool { return math.Abs(x-want) <= share*math.Abs(want) }
