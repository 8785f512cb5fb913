//go:build js && wasm

package main

import (
	"encoding/base64"
	"syscall/js"

	"finwright/core/drawing/ink"
)

var window = js.Global()

// listen lets the page that holds this frame hand over scenes, by calling the
// global take({ink, transform: {k, x, y}, theme: {paper, ink, grey}}). What is absent stays as it was.
func listen(c *canvas) {
	window.Set("take", js.FuncOf(func(_ js.Value, args []js.Value) any {
		c.take(args[0])
		return nil
	}))
	tell("ready")
}

func (c *canvas) take(data js.Value) {
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

// tell sends an event to the element that holds this frame: it is heard before the call returns.
func tell(event string) {
	if frame := window.Get("frameElement"); frame.Truthy() {
		frame.Call("dispatchEvent", window.Get("Event").New(event))
	}
}
