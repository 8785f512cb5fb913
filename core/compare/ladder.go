package compare

import (
	"cmp"
	"slices"
	"strconv"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/material"
	"finwright/core/numeric"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Ladders lists the entries that are stepped over standard values, in the order of the form.
var Ladders = []string{"tube_metal", "tube_od", "tube_wall", "fin_type", "fin_metal", "fin_height", "strip_thickness", "fin_pitch", "rows"}

// From which number to which counts [fins/in], walls [gauge] and rows are stepped.
//
// Source: common practice, no source.
const (
	fewestFins, mostFins     = 7, 12
	heaviestWall, lightest   = 10, 18
	fewestRows, mostRowsDeep = 2, 8
)

// MostRungs is how many stand in a ladder at most, beside the design that it is of.
const MostRungs = 11

// Rungs are a design with one of its entries at each standard value: what the shop has tools for where that is a size of tube, fin or strip,
// whatever it has of the rest. What the design has already is left out.
func Rungs(d document.Document, id string, c *shop.Capability) []document.Document {
	f := field.Must(id)
	var out []document.Document
	for _, text := range steps(d, f, c) {
		at := copied(d, d)
		if at.Fields[id] = (document.Entry{Text: text, Origin: document.Assumed}); !alike(f, at, d) && len(out) < MostRungs {
			out = append(out, at)
		}
	}
	return out
}

// steps are the texts of the standard values of a field.
func steps(d document.Document, f *field.Field, c *shop.Capability) []string {
	switch f.ID {
	case "fin_pitch":
		return numbered(fewestFins, mostFins, " fpi")
	case "tube_wall":
		return numbered(heaviestWall, lightest, " BWG")
	case "rows":
		return numbered(fewestRows, mostRowsDeep, "")
	case "tube_od", "fin_height", "strip_thickness":
		return inStock(d, f, c)
	}
	return slices.DeleteFunc(slices.Clone(f.Choices()), func(choice string) bool { return choice == material.Own })
}

func numbered(from, to int, unit string) []string {
	var out []string
	for n := from; n <= to; n++ {
		out = append(out, strconv.Itoa(n)+unit)
	}
	return out
}

// inStock are the sizes for which some line of the shop has tools: of heights and strip those for the design's type of fin.
func inStock(d document.Document, f *field.Field, c *shop.Capability) []string {
	if c == nil {
		return nil
	}
	var sizes []units.Length
	for i := range c.Lines {
		l := &c.Lines[i]
		if f.ID == "tube_od" {
			sizes = append(sizes, l.Sizes...)
			continue
		}
		for _, p := range l.Types {
			if p.Type != tube.FinType(d.Text("fin_type")) {
				continue
			}
			for _, tool := range p.Tools {
				if f.ID == "fin_height" {
					sizes = append(sizes, tool.Height)
				} else {
					sizes = append(sizes, tool.Strip)
				}
			}
		}
	}
	var out []string
	for _, size := range numeric.Sorted(sizes, func(a, b *units.Length) int { return cmp.Compare(*a, *b) }) {
		if text := units.Echo(f.Kind, float64(size), d.Units); !slices.Contains(out, text) {
			out = append(out, text)
		}
	}
	return out
}
