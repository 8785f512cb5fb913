// Package message holds every text a person reads, in one catalogue of keys
// with typed arguments. The page and the papers render from it alone; another
// language adds only a file.
package message

import (
	"sort"
	"strconv"
	"strings"

	"finwright/core/units"
)

// Amount is an argument printed in the reader's units.
type Amount struct {
	Kind units.Kind
	SI   float64
}

// Least and Most are amounts that a reader may type in as the least or the most that does: printed to the side on which it does.
type (
	Least Amount
	Most  Amount
)

// Of makes a quantity of a typed value.
func Of[T ~float64](k units.Kind, x T) Amount { return Amount{Kind: k, SI: float64(x)} }

// Span is an argument from one amount to another, which is printed with its unit once.
type Span struct {
	Kind      units.Kind
	Low, High float64 // SI
}

// Fins is an argument that is a fin count, printed as a reader of either system reads it.
type Fins float64

// Message is a key and the arguments that fill its {places}: Amount, Least, Most, Span, Fins, string,
// int, Typed, another Message, or another key as Key. Amounts of one message that differ are never printed alike.
type Message struct {
	Key   string
	pairs []any // name and value in turn: few, and most messages are never read
}

// Key is an argument that is itself the key of a text.
type Key string

// Typed is an argument that was typed as a number, as the document holds it.
type Typed string

// New makes a message from a key and name, value pairs.
func New(key string, pairs ...any) Message {
	return Message{key, append([]any(nil), pairs...)} // a copy, so that those who call need no heap
}

// Arg returns the argument of a name, nil if there is none.
func (m Message) Arg(name string) any {
	for i := 0; i+1 < len(m.pairs); i += 2 {
		if m.pairs[i] == name {
			return m.pairs[i+1]
		}
	}
	return nil
}

// Args are the arguments.
func (m Message) Args() []any {
	out := make([]any, 0, len(m.pairs)/2)
	for i := 1; i < len(m.pairs); i += 2 {
		out = append(out, m.pairs[i])
	}
	return out
}

// None reports whether there is no message.
func (m Message) None() bool { return m.Key == "" }

// Catalogue is one language: its texts, and how it writes numbers.
type Catalogue struct{ *language }

type language struct {
	Numbers units.Style
	texts   map[string]string
	plurals []rule // of the categories that the language has, but for the last, which takes what they leave
}

// Missing is told of each text that is not there: a key without one, or a place that nothing fills. That is a programmer's
// error, and panics. The program that people use has it noted instead, and shows the key: a bare word is better than no page.
var Missing = func(what string) { panic("message: no text for " + what) }

// Text returns the text of key; the key itself where there is none.
func (c Catalogue) Text(key string) string {
	text, ok := c.texts[key]
	if !ok {
		Missing(key)
		return key
	}
	return text
}

// Has reports whether key has a text.
func (c Catalogue) Has(key string) bool { _, ok := c.texts[key]; return ok }

// Render fills m's text in the units of system s. A place is {name}, or {name|one|more} for the words that go with a
// number, as many as the language has plurals, in CLDR's order; # in them is the number.
func (c Catalogue) Render(m Message, s units.System) string {
	if m.None() {
		return ""
	}
	var out strings.Builder
	rest := c.Text(m.Key)
	for {
		before, after, open := strings.Cut(rest, "{")
		place, tail, closed := strings.Cut(after, "}")
		if !open || !closed {
			break
		}
		out.WriteString(before)
		name, words, choice := strings.Cut(place, "|")
		filled := c.argument(m, name, s)
		if choice {
			filled = strings.ReplaceAll(c.plural(m, name, strings.Split(words, "|"), s), "#", filled)
		}
		out.WriteString(filled)
		rest = tail
	}
	return out.String() + rest
}

// plural chooses among words by the number that fills a place. The last are for "other"; a text that is said in English has
// fewer than a language with more plurals.
func (c Catalogue) plural(m Message, name string, words []string, s units.System) string {
	plain := *c.language
	plain.Numbers = units.Style{}
	number, _, _ := strings.Cut(Catalogue{&plain}.argument(m, name, s), " ")
	for i, r := range c.plurals {
		if holds, _ := r.holds(number); holds && i < len(words)-1 {
			return words[i]
		}
	}
	return words[len(words)-1]
}

// argument prints what fills a place of m.
func (c Catalogue) argument(m Message, name string, s units.System) string {
	switch a := m.Arg(name).(type) {
	case Amount:
		return c.amount(m, a, units.Nearest, s)
	case Least:
		return c.amount(m, Amount(a), units.Up, s)
	case Most:
		return c.amount(m, Amount(a), units.Down, s)
	case Span:
		return c.Render(New("amount.span", "low", c.Numbers.Figure(a.Kind, a.Low, s).Value, "high", c.Numbers.Figure(a.Kind, a.High, s).String()), s)
	case Fins:
		return c.Numbers.FinCount(float64(a), s)
	case Message:
		return c.Render(a, s)
	case Key:
		return c.Text(string(a))
	case Typed:
		return c.Numbers.Typed(string(a))
	case string:
		return a
	case int:
		return strconv.Itoa(a)
	}
	Missing(m.Key + " {" + name + "}")
	return name
}

// amount prints an amount of m beside the others of its unit.
func (c Catalogue) amount(m Message, a Amount, side units.Side, s units.System) string {
	b := units.Beside{Side: side}
	for i := 1; len(m.pairs) > 2 && i < len(m.pairs); i += 2 {
		if other, ok := AmountOf(m.pairs[i]); ok && other.Kind.Unit(s) == a.Kind.Unit(s) {
			b.Others = append(b.Others, other.SI)
		}
	}
	return c.Numbers.SayBeside(a.Kind, a.SI, b, s)
}

// AmountOf returns the amount that an argument is, if it is one.
func AmountOf(arg any) (Amount, bool) {
	switch a := arg.(type) {
	case Amount:
		return a, true
	case Least:
		return Amount(a), true
	case Most:
		return Amount(a), true
	}
	return Amount{}, false
}

// Keys returns every key, sorted.
func (c Catalogue) Keys() []string {
	keys := make([]string, 0, len(c.texts))
	for k := range c.texts {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return keys
}
