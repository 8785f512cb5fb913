//go:build js && wasm

// Command canvas paints a drawing.Scene in a frame of its own. It paints when a
// message brings something new, and takes no input.
package main

import (
	"github.com/hajimehoshi/ebiten/v2"
)

func main() {
	ebiten.SetFPSMode(ebiten.FPSModeVsyncOffMinimum)
	ebiten.SetScreenClearedEveryFrame(false)
	c := newCanvas()
	listen(c)
	if err := ebiten.RunGame(c); err != nil {
		panic(err)
	}
}
