package document

import (
	"encoding/json"
	"errors"
	"slices"

	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/strict"
	"finwright/core/units"
)

// Format marks, with the version, everything that is saved: files, the browser's
// own copy, examples and links.
const Format = "finwright-design"

// maxDesigns bounds what one file may hold.
const maxDesigns = 500

// Envelope is what a file holds.
type Envelope struct {
	Format  string     `json:"format"`
	Version int        `json:"version"`
	Designs []Document `json:"designs"`
}

// File is what was read of an envelope: its designs, and which of them was in hand. Only the browser's own copy says
// so; else it is the first.
type File struct {
	Designs []Document
	Hand    int
}

// Save writes designs as an envelope.
func Save(designs []Document) ([]byte, error) {
	return json.MarshalIndent(Envelope{Format, Version, designs}, "", " ")
}

// Open reads an envelope: an older version is lifted step by step, then the
// whole is checked strictly. A field that a design of this version lacks, or
// one that it should not have, is an error and not a guess.
func Open(text []byte) ([]Document, error) {
	f, err := OpenFile(text)
	return f.Designs, err
}

// OpenFile is Open for one who wants to know which design was in hand.
func OpenFile(text []byte) (File, error) { return open(text, Version, migrations) }

func open(text []byte, version int, steps []func(map[string]any)) (File, error) {
	var raw struct {
		Hand    int               `json:"hand"`
		Format  string            `json:"format"`
		Version int               `json:"version"`
		Designs []json.RawMessage `json:"designs"`
	}
	err := strict.Unmarshal(text, &raw)
	var other *json.UnmarshalTypeError
	switch {
	case errors.As(err, &other):
		return File{}, refuse("open.not_design")
	case err != nil:
		return File{}, refuse("open.not_json", "what", whatIs(text))
	}
	switch {
	case raw.Format == shop.Format:
		return File{}, refuse("open.is_shop")
	case raw.Format != Format || raw.Version < 1:
		return File{}, refuse("open.not_design")
	case raw.Version > version:
		return File{}, refuse("open.newer", "version", raw.Version, "known", version)
	case len(raw.Designs) == 0 || len(raw.Designs) > maxDesigns:
		return File{}, refuse("open.count", "count", len(raw.Designs), "most", maxDesigns)
	}
	out := File{Designs: make([]Document, 0, len(raw.Designs))}
	if raw.Hand > 0 && raw.Hand < len(raw.Designs) {
		out.Hand = raw.Hand
	}
	for _, design := range raw.Designs {
		if raw.Version < version {
			var err error
			if design, err = lift(design, steps[raw.Version-1:version-1]); err != nil {
				return File{}, damaged("built")
			}
		}
		d, err := whole(design)
		if err != nil {
			return File{}, err
		}
		out.Designs = append(out.Designs, d)
	}
	return out, nil
}

func lift(design []byte, steps []func(map[string]any)) ([]byte, error) {
	var raw map[string]any
	if err := json.Unmarshal(design, &raw); err != nil {
		return nil, err
	}
	for _, step := range steps {
		step(raw)
	}
	return json.Marshal(raw)
}

func whole(text []byte) (Document, error) {
	var d Document
	if err := strict.Decode(text, &d); err != nil {
		return d, damaged("built")
	}
	return d, Check(d)
}

// Check reports whether d has every field, no other, and nothing outsized.
func Check(d Document) error {
	switch {
	case d.Units != units.SI && d.Units != units.US:
		return damaged("units")
	case len(d.Spans) > maxSpans:
		return damaged("spans", "most", maxSpans)
	case len(d.Title) > maxText:
		return damaged("long", "label", message.Key("page.design_title"), "most", maxText)
	}
	for id := range d.Fields {
		if _, ok := field.Find(id); !ok {
			return damaged("unknown", "name", cut(id))
		}
	}
	for i := range field.Fields {
		f := &field.Fields[i]
		label := message.Key(f.Label())
		entry, ok := d.Fields[f.ID]
		if !ok {
			return damaged("missing", "label", label)
		}
		if err := checkField(entry, label); err != nil {
			return err
		}
	}
	for _, s := range d.Spans {
		for _, f := range []Entry{s.Centre, s.Width} {
			if err := checkField(f, "page.bare_span"); err != nil {
				return err
			}
		}
	}
	return nil
}

func checkField(f Entry, label message.Key) error {
	switch {
	case len(f.Text) > maxText:
		return damaged("long", "label", label, "most", maxText)
	case !slices.Contains(Origins, f.Origin):
		return damaged("origin", "label", label)
	}
	return nil
}
