package dxf

import (
	"fmt"
	"math"
	"strings"

	"finwright/core/drawing/ink"
)

// Dimension draws the distance of two places along x or, where upright, along y: a thing of its own that other programs know, with
// the block in which it is drawn. Its line passes through at; letters are of a height. An empty text is the number itself.
func (d *Drawing) Dimension(a, b, at ink.Point, upright bool, height float64, text string) {
	d.dims++
	name := fmt.Sprintf("*D%d", d.dims)
	from, to, turned := ink.At(a.X, at.Y), ink.At(b.X, at.Y), 0.0
	if upright {
		from, to, turned = ink.At(at.X, a.Y), ink.At(at.X, b.Y), 90
	}
	if text == "" {
		text = number(ink.Distance(from, to))
	}
	middle := ink.Between(from, to, 0.5)
	if upright {
		middle.X -= height * 0.8
	} else {
		middle.Y += height * 0.8
	}
	d.reach(a, b, from, to, middle)

	put(&d.blocks, 0, "BLOCK", 8, "0", 2, name, 70, 1)
	point(&d.blocks, 10, ink.Point{})
	put(&d.blocks, 3, name)
	extension(&d.blocks, a, from, height)
	extension(&d.blocks, b, to, height)
	line(&d.blocks, Dims, from, to)
	arrow(&d.blocks, to, from, height)
	arrow(&d.blocks, from, to, height)
	put(&d.blocks, 0, "TEXT", 8, Dims)
	point(&d.blocks, 10, middle)
	put(&d.blocks, 40, height, 1, plain(text), 50, turned, 7, "STANDARD", 72, 1)
	point(&d.blocks, 11, middle)
	put(&d.blocks, 73, 2)
	put(&d.blocks, 0, "ENDBLK", 8, "0")

	put(&d.entities, 0, "DIMENSION", 8, Dims, 2, name, 3, "STANDARD")
	point(&d.entities, 10, to)
	point(&d.entities, 11, middle)
	put(&d.entities, 70, 0, 1, plain(text))
	point(&d.entities, 13, a)
	point(&d.entities, 14, b)
	put(&d.entities, 50, turned)
}

// number prints a length to a thousandth of a millimetre.
func number(mm float64) string {
	text := fmt.Sprintf("%.3f", mm)
	return strings.TrimRight(strings.TrimRight(text, "0"), ".")
}

// extension draws the line from near a place to just past the dimension's line.
func extension(out *strings.Builder, from, to ink.Point, height float64) {
	length := ink.Distance(from, to)
	if length < height/4 {
		return
	}
	line(out, Dims, ink.Between(from, to, height/4/length), ink.Between(from, to, 1+height/3/length))
}

// arrow draws a head at tip, which points away from a place.
func arrow(out *strings.Builder, from, tip ink.Point, height float64) {
	length := ink.Distance(from, tip)
	if length == 0 {
		return
	}
	size := math.Min(height*0.8, length/3)
	x, y := (tip.X-from.X)/length, (tip.Y-from.Y)/length
	back := ink.At(tip.X-x*size, tip.Y-y*size)
	one, other := ink.At(back.X-y*size/6, back.Y+x*size/6), ink.At(back.X+y*size/6, back.Y-x*size/6)
	put(out, 0, "SOLID", 8, Dims)
	point(out, 10, tip)
	point(out, 11, one)
	point(out, 12, other)
	point(out, 13, other)
}
