// Package bridge is the engine's face to the page: a table of methods, each
// JSON in and JSON out. It has no build tag, so that plain tests run it.
//
// Two programs are built of it: the first one answers what the page asks for as it opens, the whole one everything. What only Whole
// refers to is not in the first.
package bridge

import (
	"errors"
	"fmt"

	"finwright/core/design"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/strict"
	"finwright/wasm/plots"
)

// method answers one call.
type method interface {
	answer(args []byte) (any, error)
}

// with is a method of the types that the page's scripts know it by (site/js/api.d.ts).
type with[A, R any] func(A) (R, error)

// methods are what the program answers: those of the first one, until Whole adds the others.
var methods = map[string]method{
	"start":   with[startArgs, started](start),
	"edit":    with[editArgs, reply](edit),
	"seen":    with[seenArgs, reply](seen),
	"map":     with[mapArgs, plots.Map](fieldMap),
	"working": with[workingArgs, report.Working](working),
	"moves":   with[movesArgs, movedBy](moves),
	"line":    with[lineArgs, line](inOneLine),
	"save":    with[saveArgs, saved](save),
	"open":    with[openArgs, opened](open),
	"example": with[exampleArgs, reply](example),
	"svg":     with[svgArgs, drawn](picture),

	"card":     with[cardArgs, report.Card](card),
	"filename": with[filenameArgs, named](filename),
	"rows":     with[rowsArgs, listed](rows),
	"changed":  with[changedArgs, compared](changed),
}

// Done hears what share of a call that takes long is done, so that nobody takes it for one that hangs.
var Done = func(share float64) {}

// Call answers method name for JSON args. It always returns JSON, {"data":…}
// or {"error":{"message":…}}, whatever comes in.
func Call(name string, args []byte) (reply []byte) {
	defer func() {
		if r := recover(); r != nil {
			reply = failure(crash{fmt.Errorf("bridge: %s: %v", name, r)})
		}
	}()
	m, ok := methods[name]
	switch {
	case !ok && inPart():
		return failure(errElsewhere)
	case !ok:
		return failure(fmt.Errorf("bridge: no method %q", name))
	}
	data, err := m.answer(args)
	if err != nil {
		return failure(err)
	}
	return encoded("data", data)
}

// answer decodes strictly.
func (f with[A, R]) answer(text []byte) (any, error) {
	var args A
	if err := strict.Decode(text, &args); err != nil {
		return nil, fmt.Errorf("bridge: %w", err)
	}
	return f(args)
}

// errElsewhere sends the page to the whole program.
var errElsewhere = errors.New("bridge: asked of the first program")

// crash is a fault of the engine on what it was asked; other errors say that it was asked for what it does not know.
type crash struct{ error }

// told is an error meant for the user, with what is wrong by field.
type told struct {
	message.Message
	fields   []report.ShopFault
	readings []string // that a number alone may be meant as
}

func (t told) Error() string { return t.Key }

// refusal is what the page gets instead of data.
type refusal struct {
	Message string             `json:"message"`          // for the user
	Key     string             `json:"key"`              // of the message
	Fields  []report.ShopFault `json:"fields,omitempty"` // what is wrong where

	Readings []string `json:"readings,omitempty"` // of what was typed: one of them is meant, and nothing was taken

	Elsewhere bool `json:"elsewhere,omitempty"` // the whole program answers it
}

func failure(err error) []byte {
	text := message.New("error.not_known", "detail", err.Error())
	if errors.As(err, &crash{}) {
		text.Key = "error.fault"
	}
	var t told
	if errors.As(err, &t) {
		text = t.Message
	} else if errors.As(err, &design.FieldErrors{}) {
		text = message.New("error.entries")
	}
	return encoded("error", refusal{texts().Render(text, "si"), text.Key, t.fields, t.readings, errors.Is(err, errElsewhere)})
}
