package message

import (
	"strings"

	"finwright/core/units"
)

// Unread says why a text was not read as a quantity, and what would be: a number that can be read two ways is shown in both.
func Unread(e *units.ParseError) Message {
	m := New("error."+string(e.Reason), "text", Typed(e.Text), "part", Typed(e.Part), "accepts", Accepts(e.Kind))
	if e.Reason == units.TwoWays {
		m.pairs = append(m.pairs, "point", Typed(strings.Replace(e.Part, ",", ".", 1)), "plain", Typed(strings.Replace(e.Part, ",", "", 1)))
	}
	return m
}

// Accepts names what may be typed for a kind.
func Accepts(k units.Kind) Key { return Key("accepts." + string(k)) }
