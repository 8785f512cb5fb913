//go:build js && wasm

package main

import (
	"image/color"

	"finwright/core/drawing/ink"

	"github.com/hajimehoshi/ebiten/v2"
)

// canvas holds the last scene, and the mesh and corners whose memory each painting uses again.
type canvas struct {
	art     ink.Artwork
	screen  ink.Screen
	mesh    ink.Mesh
	corners []ebiten.Vertex
	white   *ebiten.Image
}

func newCanvas() *canvas {
	c := &canvas{white: ebiten.NewImage(3, 3)}
	c.white.Fill(color.White)
	return c
}

// Layout asks for one pixel of the image to a pixel of the screen.
func (c *canvas) LayoutF(width, height float64) (float64, float64) {
	c.screen.Ratio = ebiten.Monitor().DeviceScaleFactor()
	c.screen.Width, c.screen.Height = width*c.screen.Ratio, height*c.screen.Ratio
	return c.screen.Width, c.screen.Height
}

// Layout is not called, since LayoutF is there.
func (c *canvas) Layout(width, height int) (int, int) { return width, height }

func (c *canvas) Update() error { return nil }

// Draw paints everything anew.
func (c *canvas) Draw(image *ebiten.Image) {
	paper := c.screen.Theme[ink.PaperTone]
	image.Fill(color.RGBA{byte(paper[0] * 255), byte(paper[1] * 255), byte(paper[2] * 255), 255})
	c.mesh.Paint(c.art, c.screen)
	for i := range c.mesh.Batches {
		corners, triangles := c.mesh.Batch(i)
		c.corners = c.corners[:0]
		for _, q := range corners {
			c.corners = append(c.corners, ebiten.Vertex{
				DstX: q.X, DstY: q.Y, SrcX: 1.5, SrcY: 1.5,
				ColorR: q.RGBA[0], ColorG: q.RGBA[1], ColorB: q.RGBA[2], ColorA: q.RGBA[3],
			})
		}
		image.DrawTriangles(c.corners, triangles, c.white, nil)
	}
	tell("painted")
}
