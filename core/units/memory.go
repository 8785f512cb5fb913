package units

import "sync"

// Parse reads text as a quantity of kind k. A bare number is taken in the unit
// that system s shows; a fin count also reads a pitch ("2.54 mm").
func Parse(k Kind, text string, s System) (Parsed, error) {
	r := remember(k, text, s)
	return r.parsed, r.err
}

// A page asks for the same sixty texts with every move of a pointer, so readings
// are remembered. A reading depends on nothing but its text.
type reading struct {
	parsed Parsed
	err    error
	native bool
}

type question struct {
	kind   Kind
	text   string
	system System
}

var memory = struct {
	sync.Mutex
	readings map[question]reading
}{readings: map[question]reading{}}

// most readings are kept; then all are forgotten, which costs one slow answer.
const most = 4096

// longest text that is remembered: longer ones are pasted by mistake.
const longest = 64

func remember(k Kind, text string, s System) reading {
	q := question{k, text, s}
	memory.Lock()
	r, known := memory.readings[q]
	memory.Unlock()
	if known {
		return r
	}
	r.parsed, r.err = parse(k, text, s)
	r.native = writtenIn(k, text, s)
	if len(text) <= longest {
		memory.Lock()
		if len(memory.readings) >= most {
			clear(memory.readings)
		}
		memory.readings[q] = r
		memory.Unlock()
	}
	return r
}
