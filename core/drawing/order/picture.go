// Package order draws what is to be made: a tube over its whole length, work over shifts, tubes in a crate or a bundle,
// and what moves the cost.
package order

import "finwright/core/drawing/sheet"

// picture is a small sheet without grips.
type picture struct{ sheet.Sheet }

// newPicture starts one [mm]; what stands on it may say later how high it is.
func newPicture(width, height float64) *picture {
	return &picture{sheet.Sheet{Scene: sheet.Scene{Width: width, Height: height}}}
}
