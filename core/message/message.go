// Package message holds every text a person reads, in one catalogue of keys
// with typed arguments. The page and the papers render from it alone; another
// language adds only a file.
package message

import (
	"fmt"
	"sort"
	"strings"

	"finwright/core/units"
)

// Quantity is an argument printed in the reader's units.
type Quantity struct {
	Kind units.Kind
	SI   float64
}

// Message is a key and the arguments that fill its {places}: Quantity, string,
// int, or another key as Key.
type Message struct {
	Key  string
	Args map[string]any
}

// Key is an argument that is itself the key of a text.
type Key string

// New makes a message from a key and name, value pairs.
func New(key string, pairs ...any) Message {
	m := Message{Key: key}
	for i := 0; i+1 < len(pairs); i += 2 {
		if m.Args == nil {
			m.Args = map[string]any{}
		}
		m.Args[pairs[i].(string)] = pairs[i+1]
	}
	return m
}

// None reports whether there is no message.
func (m Message) None() bool { return m.Key == "" }

// Catalogue is one language's texts.
type Catalogue map[string]string

// Text returns the text of key. A key without a text is a programmer's error.
func (c Catalogue) Text(key string) string {
	text, ok := c[key]
	if !ok {
		panic("message: no text for " + key)
	}
	return text
}

// Has reports whether key has a text.
func (c Catalogue) Has(key string) bool { _, ok := c[key]; return ok }

// Render fills m's text in the units of system s.
func (c Catalogue) Render(m Message, s units.System) string {
	if m.None() {
		return ""
	}
	text := c.Text(m.Key)
	for name, arg := range m.Args {
		text = strings.ReplaceAll(text, "{"+name+"}", c.argument(arg, s))
	}
	return text
}

func (c Catalogue) argument(arg any, s units.System) string {
	switch a := arg.(type) {
	case Quantity:
		return units.Echo(a.Kind, a.SI, s)
	case Message:
		return c.Render(a, s)
	case Key:
		return c.Text(string(a))
	case string:
		return a
	case int:
		return fmt.Sprint(a)
	}
	panic(fmt.Sprintf("message: argument of type %T", arg))
}

// Keys returns every key, sorted.
func (c Catalogue) Keys() []string {
	keys := make([]string, 0, len(c))
	for k := range c {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return keys
}
