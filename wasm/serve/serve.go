//go:build js && wasm

// Package serve answers the page's calls in a web worker.
package serve

import (
	"runtime/debug"
	"syscall/js"

	"finwright/core/message"
	"finwright/wasm/bridge"
)

// garbage is how far the heap may outgrow what is alive [%]. Little is: collecting rarely makes an answer a third faster.
const garbage = 400

// room is how much of the machine the heap takes before it is collected more often [bytes].
const room = 256 << 20

// Forever answers, with what the bridge has by now.
func Forever() {
	debug.SetGCPercent(garbage)
	debug.SetMemoryLimit(room)
	message.Missing = func(what string) { js.Global().Get("console").Call("error", "serve: no text for "+what) }
	bridge.Done = func(share float64) { js.Global().Call("postMessage", map[string]any{"share": share}) }
	call := js.FuncOf(func(_ js.Value, args []js.Value) any {
		return string(bridge.Call(args[0].String(), []byte(args[1].String())))
	})
	speak := js.FuncOf(func(_ js.Value, args []js.Value) any {
		if err := bridge.Speak(args[0].String()); err != nil {
			js.Global().Get("console").Call("error", err.Error())
		}
		return nil
	})
	js.Global().Set("finwright", map[string]any{"call": call, "speak": speak})
	select {}
}
