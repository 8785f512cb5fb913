package document

import (
	"maps"
	"slices"

	"finwright/core/units"
)

// Differences are what a design says otherwise than another, its base. What is nil is as there. A list of bare spans is
// held whole: a span has no name by which it could be found in another.
type Differences struct {
	Title  *string          `json:"title,omitempty"`
	Mark   *string          `json:"mark,omitempty"`
	Units  *units.System    `json:"units,omitempty"`
	Fields map[string]Entry `json:"fields,omitempty"`
	Spans  *[]Span          `json:"spans,omitempty"`
}

// From returns the differences of d from base. Both have the same fields.
func (d Document) From(base Document) Differences {
	var out Differences
	if d.Title != base.Title {
		out.Title = &d.Title
	}
	if d.Mark != base.Mark {
		out.Mark = &d.Mark
	}
	if d.Units != base.Units {
		out.Units = &d.Units
	}
	for id, f := range d.Fields {
		if f == base.Fields[id] {
			continue
		}
		if out.Fields == nil {
			out.Fields = map[string]Entry{}
		}
		out.Fields[id] = f
	}
	if !slices.Equal(d.Spans, base.Spans) {
		out.Spans = &d.Spans
	}
	return out
}

// With returns the design that differs from d, its base, by x.
func (d Document) With(x Differences) Document {
	d = d.clone()
	if x.Title != nil {
		d.Title = *x.Title
	}
	if x.Mark != nil {
		d.Mark = *x.Mark
	}
	if x.Units != nil {
		d.Units = *x.Units
	}
	maps.Copy(d.Fields, x.Fields)
	if x.Spans != nil {
		d.Spans = slices.Clone(*x.Spans)
	}
	return d
}

// overlay is With for designs of any version, as they stand in a file.
func overlay(base, differences map[string]any) map[string]any {
	out := maps.Clone(base)
	for name, value := range differences {
		fields, ok := value.(map[string]any)
		common, both := base[name].(map[string]any)
		if ok && both {
			value = overlay(common, fields)
		}
		out[name] = value
	}
	return out
}
