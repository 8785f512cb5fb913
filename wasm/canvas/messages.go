//go:build js && wasm

package main

import (
	"encoding/base64"
	"syscall/js"

	"finwright/core/drawing/ink"
)

var (
	window = js.Global()
	origin = window.Get("location").Get("origin").String()
	parent = window.Get("parent")
)

// listen takes scenes from the page that holds this frame, and from no other:
// {type: "scene", id, ink, transform: {k, x, y}, theme: {paper, ink, grey}}. What is absent stays as it was.
func listen(c *canvas) {
	window.Call("addEventListener", "message", js.FuncOf(func(_ js.Value, args []js.Value) any {
		event := args[0]
		if !event.Get("source").Equal(parent) || event.Get("origin").String() != origin {
			return nil
		}
		if data := event.Get("data"); data.Type() == js.TypeObject && data.Get("type").Equal(js.ValueOf("scene")) {
			c.take(data)
		}
		return nil
	}))
	post(map[string]any{"type": "ready"})
}

func (c *canvas) take(data js.Value) {
	c.id = data.Get("id").Int()
	if text := data.Get("ink"); text.Truthy() {
		packed, err := base64.StdEncoding.DecodeString(text.String())
		if err == nil {
			c.art, err = ink.Unpack(packed)
		}
		if err != nil {
			panic(err)
		}
	}
	if t := data.Get("transform"); t.Truthy() {
		c.screen.Transform = ink.Transform{K: t.Get("k").Float(), X: t.Get("x").Float(), Y: t.Get("y").Float()}
	}
	if theme := data.Get("theme"); theme.Truthy() {
		for tone, name := range map[ink.Tone]string{
			ink.PaperTone: "paper", ink.InkTone: "ink", ink.GreyTone: "grey",
		} {
			colour, err := ink.ParseColour(theme.Get(name).String())
			if err != nil {
				panic(err)
			}
			c.screen.Theme[tone] = colour
		}
		c.screen.Theme.Complete()
	}
}

func painted(id int) { post(map[string]any{"type": "painted", "id": id}) }

func post(message map[string]any) { parent.Call("postMessage", message, origin) }
