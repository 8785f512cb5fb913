package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"html/template"

	"finwright/core/report"
	"finwright/testdata/cases"
	"finwright/wasm/bridge"
)

// room is the sheet [px] of the first view's drawing: the page fits it into its own.
var room = map[string]any{"width": 680, "height": 352}

// firstView is what the page shows of the first example until the engine answers, in the section that it opens with.
func firstView(l language) (template.JS, error) {
	if l.file != nil {
		if err := bridge.Speak(string(l.file)); err != nil {
			return "", err
		}
	}
	args, err := json.Marshal(map[string]any{"document": cases.First(), "sheet": room, "section": report.Sections[0].ID})
	if err != nil {
		return "", err
	}
	var reply struct {
		Data  struct{ View json.RawMessage }
		Error *struct{ Message string }
	}
	if err := json.Unmarshal(bridge.Call("seen", args), &reply); err != nil {
		return "", err
	}
	if reply.Error != nil {
		return "", fmt.Errorf("the first view: %s", reply.Error.Message)
	}
	var text bytes.Buffer
	json.HTMLEscape(&text, reply.Data.View)
	return template.JS(text.String()), nil
}
