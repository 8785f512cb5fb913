//go:build js && wasm

// Command canvas paints a drawing's artwork in a frame of its own. It takes no input.
//
// It paints once for each animation frame that it is given: the script around it
// (site/js/frame.js) gives one for each scene and each change of size.
package main

import "github.com/hajimehoshi/ebiten/v2"

func main() {
	ebiten.SetScreenClearedEveryFrame(false)
	c := newCanvas()
	listen(c)
	if err := ebiten.RunGame(c); err != nil {
		panic(err)
	}
}
