//go:build js && wasm

// Command first answers what the page asks for as it opens, until the engine takes over: it is smaller, and there sooner.
package main

import "finwright/wasm/serve"

func main() { serve.Forever() }
