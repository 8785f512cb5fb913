package design

import (
	"errors"
	"fmt"

	"finwright/core/document"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// Read turns a document into an Input. On any wrong entry it returns
// FieldErrors that name all of them.
func Read(d document.Document) (Input, error) {
	r := reader{doc: d}
	var in Input
	in.Job = Job{
		Quantity:  int(r.number("quantity")),
		FreeIssue: r.choice("supply") == "free_issue",
		Spares:    int(r.number("spares")),
	}
	in.TubeMetal = r.metal("tube", material.TubeMetal)
	in.FinMetal = r.metal("fin", material.FinMetal)
	in.Tube = tube.Tube{
		OD:      units.Length(r.number("tube_od")),
		Wall:    units.Length(r.number("tube_wall")),
		Basis:   tube.WallBasis(r.choice("wall_basis")),
		Length:  units.Length(r.number("tube_length")),
		PlainA:  units.Length(r.number("plain_end_a")),
		PlainB:  units.Length(r.number("plain_end_b")),
		Density: units.Density(in.TubeMetal.Density.SI),
		Fin: tube.Fin{
			Type:     tube.FinType(r.choice("fin_type")),
			Height:   units.Length(r.number("fin_height")),
			Strip:    units.Length(r.number("strip_thickness")),
			Count:    units.PerLength(r.number("fin_pitch")),
			Profile:  tube.Profile(r.choice("fin_profile")),
			TipGiven: units.Length(r.number("tip_thickness")),
			Groove:   units.Length(r.number("groove_depth")),
			Lap:      units.Length(r.number("foot_lap")),
			Sleeve:   units.Length(r.number("sleeve_thickness")),
			Root:     tube.RootBasis(r.choice("root_basis")),
			Density:  units.Density(in.FinMetal.Density.SI),
		},
	}
	in.Air, in.Bank = r.air(), r.bank()
	in.Process, in.Limits = r.process(in.Tube.Fin.Type), r.limits()
	in.Wish = r.wish()
	for i, s := range d.Spans {
		in.Tube.Spans = append(in.Tube.Spans, tube.Span{
			Centre: units.Length(r.span(spanCentre, i, s.Centre.Text)),
			Width:  units.Length(r.span(spanWidth, i, s.Width.Text)),
		})
	}
	if len(r.errs) == 0 {
		checkTogether(&in, &r.errs)
	}
	if len(r.errs) > 0 {
		return in, r.errs
	}
	return in, nil
}

// reader reads fields one by one and gathers what is wrong. Unused fields are read as
// nought or the house's choice: a wrong text in a hidden field must not block the design.
type reader struct {
	doc  document.Document
	errs FieldErrors
}

func (r *reader) choice(id string) string {
	spec, _ := document.Find(id)
	text := r.doc.Fields[id].Text
	if !Used(r.doc, id) {
		return spec.House
	}
	for _, c := range spec.Choices {
		if c == text {
			return text
		}
	}
	r.errs.add(id, "error.choice", "label", message.Key("field."+id))
	return ""
}

func (r *reader) number(id string) float64 {
	spec, _ := document.Find(id)
	text := r.doc.Fields[id].Text
	if !Used(r.doc, id) || (spec.Optional && r.empty(id)) {
		return 0
	}
	return r.parse(id, id, spec.Kind, text)
}

func (r *reader) span(id string, i int, text string) float64 {
	return r.parse(id, fmt.Sprintf("%s_%d", id, i+1), units.Distance, text)
}

// metal reads the metal of side "tube" or "fin", the user's own included.
func (r *reader) metal(side string, find func(string) (material.Metal, bool)) material.Metal {
	id := r.choice(side + "_metal")
	if id != material.Own {
		m, _ := find(id) // an unknown id is already an error of the choice
		return m
	}
	own := "own_" + side + "_"
	before := len(r.errs)
	k, rho, alpha := r.number(own+"conductivity"), r.number(own+"density"), r.number(own+"expansion")
	if len(r.errs) > before {
		return material.Metal{}
	}
	m, faults := material.NewOwn(r.doc.Fields[own+"name"].Text, units.Conductivity(k), units.Density(rho), units.Expansion(alpha))
	for _, f := range faults {
		r.errs = append(r.errs, FieldError{own + string(f.Field), f.Why})
	}
	return m
}

// parse reads text and holds it to the limits of id; field is where an error shows.
func (r *reader) parse(id, field string, k units.Kind, text string) float64 {
	p, err := units.Parse(k, text, r.doc.Units)
	var bad *units.ParseError
	if errors.As(err, &bad) {
		r.errs = append(r.errs, FieldError{field, message.Unread(bad)})
		return 0
	}
	lim, bounded := limits[id]
	if !bounded {
		return p.SI
	}
	if p.SI < lim.low || p.SI > lim.high {
		r.errs.add(field, "error.range", "value", message.Quantity{Kind: k, SI: p.SI},
			"low", message.Quantity{Kind: k, SI: lim.low}, "high", message.Quantity{Kind: k, SI: lim.high})
		return 0
	}
	return p.SI
}
