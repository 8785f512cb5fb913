package document

import (
	"encoding/json"
	"fmt"
	"slices"

	"finwright/core/strict"
	"finwright/core/units"
)

// Format and Version mark everything that is saved: files, the browser's own
// copy, examples and links.
const (
	Format  = "finwright-design"
	Version = 3
)

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

// migrations lift a raw design from version i+1 to i+2. Add one with each new version.
var migrations = []func(raw map[string]any){addHeat, addMaking}

// addHeat gives a design of version 1 the fields of the heat calculation. Its
// film coefficient was always the user's own figure, and stays so.
func addHeat(raw map[string]any) {
	if fields := fill(raw, "heat"); fields != nil {
		fields["film_source"] = map[string]any{"text": "given", "origin": string(House)}
	}
}

// addMaking gives a design of version 2 the fields of making, all of them empty: the shop's own figures hold.
func addMaking(raw map[string]any) { fill(raw, "making") }

// fill gives a raw design the house's fields of a section where it has none, and returns all fields.
func fill(raw map[string]any, section string) map[string]any {
	fields, ok := raw["fields"].(map[string]any)
	if !ok {
		return nil
	}
	for _, s := range Specs {
		if Section(s.Group) == section && fields[s.ID] == nil {
			fields[s.ID] = map[string]any{"text": s.House, "origin": string(House)}
		}
	}
	return fields
}

// OpenError says why a text is not a design file; the key is a message key.
type OpenError struct {
	Key    string
	Detail string
}

func (e *OpenError) Error() string { return "document: " + e.Key + ": " + e.Detail }

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
	if err := strict.Unmarshal(text, &raw); err != nil {
		return File{}, &OpenError{"open.not_json", err.Error()}
	}
	switch {
	case raw.Format != Format:
		return File{}, &OpenError{"open.not_design", raw.Format}
	case raw.Version > version:
		return File{}, &OpenError{"open.newer", fmt.Sprint(raw.Version)}
	case raw.Version < 1:
		return File{}, &OpenError{"open.not_design", fmt.Sprint(raw.Version)}
	case len(raw.Designs) == 0 || len(raw.Designs) > maxDesigns:
		return File{}, &OpenError{"open.count", fmt.Sprint(len(raw.Designs))}
	}
	out := File{Designs: make([]Document, 0, len(raw.Designs))}
	if raw.Hand > 0 && raw.Hand < len(raw.Designs) {
		out.Hand = raw.Hand
	}
	for _, design := range raw.Designs {
		if raw.Version < version {
			var err error
			if design, err = lift(design, steps[raw.Version-1:version-1]); err != nil {
				return File{}, &OpenError{"open.shape", err.Error()}
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
		return d, &OpenError{"open.shape", err.Error()}
	}
	return d, Check(d)
}

// Check reports whether d has every field, no other, and nothing outsized.
func Check(d Document) error {
	bad := func(what string) error { return &OpenError{"open.shape", what} }
	if d.Units != units.SI && d.Units != units.US {
		return bad("units")
	}
	if len(d.Spans) > maxSpans {
		return bad("spans")
	}
	if len(d.Title) > maxText {
		return bad("title")
	}
	fields := map[string]Field{}
	for id, f := range d.Fields {
		if _, ok := Find(id); !ok {
			return bad(id)
		}
		fields[id] = f
	}
	for _, s := range Specs {
		if _, ok := fields[s.ID]; !ok {
			return bad(s.ID)
		}
	}
	for i, s := range d.Spans {
		fields[fmt.Sprintf("span %d centre", i+1)] = s.Centre
		fields[fmt.Sprintf("span %d width", i+1)] = s.Width
	}
	for id, f := range fields {
		if len(f.Text) > maxText || !slices.Contains(Origins, f.Origin) {
			return bad(id)
		}
	}
	return nil
}
