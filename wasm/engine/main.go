//go:build js && wasm

// Command engine answers the page's calls in a web worker.
package main

import (
	"syscall/js"

	"finwright/wasm/bridge"
)

func main() {
	call := js.FuncOf(func(_ js.Value, args []js.Value) any {
		return string(bridge.Call(args[0].String(), []byte(args[1].String())))
	})
	js.Global().Set("finwright", map[string]any{"call": call})
	select {}
}
