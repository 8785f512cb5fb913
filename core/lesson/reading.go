package lesson

import (
	"maps"
	"slices"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/shop"
)

// Reading is a document with all that is found of it. Where Err is set, nothing is.
type Reading struct {
	Document document.Document
	In       field.Input
	Heat     design.Heat
	Result   design.Result
	Made     design.Production
	Err      error

	shop *shop.Capability
}

// Read finds all of a document that the shop c is to make.
func Read(d document.Document, c *shop.Capability) *Reading { return read(d, c, design.Make) }

// ReadBriefly is Read without what Making alone tells.
func ReadBriefly(d document.Document, c *shop.Capability) *Reading {
	return read(d, c, design.Brief)
}

// read finds it as far as it is planned.
func read(d document.Document, c *shop.Capability, plan func(field.Input, design.Heat) design.Production) *Reading {
	r := &Reading{Document: d, shop: c}
	if r.In, r.Heat, r.Err = design.ReadAndRate(d, c); r.Err != nil {
		return r
	}
	r.Result = design.Evaluate(r.In, r.Heat)
	r.Made = plan(r.In, r.Heat)
	r.Result.AddMaking(&r.Made)
	return r
}

// With is a reading of the document with other entries, without what Making alone tells.
func (r *Reading) With(entries ...Entry) *Reading {
	d := r.Document
	d.Fields, d.Spans = maps.Clone(d.Fields), slices.Clone(d.Spans)
	put(&d, entries)
	return ReadBriefly(d, r.shop)
}

// Figure returns a figure [SI]; ok is false where there is none.
func (r *Reading) Figure(id string) (si float64, ok bool) {
	if r.Err != nil {
		return 0, false
	}
	f, found := r.Result.Find(id)
	return f.SI, found && f.Absent.None()
}

// number is Figure where one is known to be; zero else, which no test passes.
func (r *Reading) number(id string) float64 {
	si, _ := r.Figure(id)
	return si
}

// figureOf asks for a figure of the trainee's tube.
func figureOf(id string) func(*Case) (float64, bool) {
	return func(c *Case) (float64, bool) { return c.Now.Figure(id) }
}
