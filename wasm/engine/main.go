//go:build js && wasm

// Command engine answers everything that the page asks for.
package main

import (
	"finwright/wasm/bridge"
	"finwright/wasm/serve"
)

func main() {
	bridge.Whole()
	serve.Forever()
}
