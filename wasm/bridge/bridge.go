// Package bridge is the engine's face to the page: a table of methods, each
// JSON in and JSON out. It has no build tag, so that plain tests run it.
package bridge

import (
	"encoding/json"
	"errors"
	"fmt"

	"finwright/core/design"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/strict"
)

// method answers one call.
type method func(args []byte) (any, error)

var methods = map[string]method{
	"start":   with(start),
	"edit":    with(edit),
	"map":     with(fieldMap),
	"working": with(working),
	"save":    with(save),
	"open":    with(open),
	"example": with(example),
	"svg":     with(svg),

	"filename": with(filename),

	"shop":      with(shopForm),
	"shop_edit": with(editShop),
}

// Call answers method name for JSON args. It always returns JSON, {"data":…}
// or {"error":{"message":…}}, whatever comes in.
func Call(name string, args []byte) (reply []byte) {
	defer func() {
		if r := recover(); r != nil {
			reply = failure(crash{fmt.Errorf("bridge: %s: %v", name, r)})
		}
	}()
	m, ok := methods[name]
	if !ok {
		return failure(fmt.Errorf("bridge: no method %q", name))
	}
	data, err := m(args)
	if err != nil {
		return failure(err)
	}
	reply, err = json.Marshal(struct {
		Data any `json:"data"`
	}{data})
	if err != nil {
		return failure(crash{err})
	}
	return reply
}

// with decodes strictly.
func with[A any](f func(A) (any, error)) method {
	return func(text []byte) (any, error) {
		var args A
		if err := strict.Decode(text, &args); err != nil {
			return nil, fmt.Errorf("bridge: %w", err)
		}
		return f(args)
	}
}

// crash is a fault of the engine on what it was asked; other errors say that it was asked for what it does not know.
type crash struct{ error }

// told is an error meant for the user, with what is wrong by field.
type told struct {
	message.Message
	fields []report.ShopFault
}

func (t told) Error() string { return t.Key }

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
	reply, err := json.Marshal(map[string]any{"error": map[string]any{"message": texts().Render(text, "si"), "key": text.Key, "fields": t.fields}})
	if err != nil {
		panic(err) // texts always marshal
	}
	return reply
}
