package document

import (
	"cmp"
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

// PaperFormat marks a paper that was issued, as a file.
const PaperFormat = "finwright-issued"

// itemsSince is the version from which on an envelope holds a job; before, it held a list of whole designs.
const itemsSince = 4

// envelope is what a file holds.
type envelope struct {
	Format  string `json:"format"`
	Version int    `json:"version"`
	Job
}

// File is what was read of an envelope: its job, and which item was in hand. Only the browser's own copy says so; else
// it is the first.
type File struct {
	Job  Job
	Hand int
}

// Save writes designs as the items of a job.
func Save(designs []Document) ([]byte, error) { return SaveJob(JobOf(designs)) }

// SaveJob writes a job as an envelope.
func SaveJob(j Job) ([]byte, error) {
	if len(j.Items) == 1 && len(j.Items[0].Kept) == 0 { // nothing shares its base
		j.Base = j.Design(0)
		j.Items = []Item{j.Items[0]}
		j.Items[0].Design = Differences{}
	}
	return json.MarshalIndent(envelope{Format, Version, j}, "", " ")
}

// Open reads the designs of an envelope: an older version is lifted step by step, then the
// whole is checked strictly. A field that a design of this version lacks, or
// one that it should not have, is an error and not a guess.
func Open(text []byte) ([]Document, error) {
	f, err := OpenFile(text)
	return f.Job.Designs(), err
}

// OpenFile is Open for one who wants the job, and to know which item was in hand.
func OpenFile(text []byte) (File, error) { return open(text, Version, migrations) }

// rawFile is an envelope of any version.
type rawFile struct {
	Format  string `json:"format"`
	Version int    `json:"version"`

	Designs list `json:"designs"` // before itemsSince
	Hand    int  `json:"hand"`    // the place of the one in hand

	Head  json.RawMessage `json:"head"` // from then on
	Base  json.RawMessage `json:"base"`
	Items list            `json:"items"`
	By    json.RawMessage `json:"by"`
	Item  string          `json:"item"` // the ID of the one in hand
}

// list is a list whose elements are read only where they are not too many: millions take longer to take apart than a page waits.
type list struct {
	count int
	texts []json.RawMessage // nil where count is beyond maxItems
}

func (l *list) UnmarshalJSON(text []byte) error {
	if l.count = strict.Count(text); l.count > maxItems {
		return nil
	}
	return json.Unmarshal(text, &l.texts)
}

func open(text []byte, version int, steps []func(map[string]any)) (File, error) {
	var raw rawFile
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
	case raw.Format == PaperFormat:
		return File{}, refuse("open.is_paper")
	case raw.Format != Format || raw.Version < 1:
		return File{}, refuse("open.not_design")
	case raw.Version > version:
		return File{}, refuse("open.newer", "version", raw.Version, "known", version)
	}
	count := raw.Items.count
	if raw.Version < itemsSince {
		count = raw.Designs.count
	}
	if count == 0 || count > maxItems {
		return File{}, refuse("open.count", "count", count, "most", maxItems)
	}
	if raw.Version < itemsSince {
		return openDesigns(raw, steps[raw.Version-1:version-1])
	}
	out, err := openJob(raw, steps[raw.Version-1:version-1])
	if err != nil {
		return File{}, err
	}
	return File{out, max(0, out.Find(raw.Item))}, CheckJob(out)
}

// openDesigns makes a job of a list of whole designs.
func openDesigns(raw rawFile, steps []func(map[string]any)) (File, error) {
	designs := make([]Document, len(raw.Designs.texts))
	for i, text := range raw.Designs.texts {
		text, err := lift(text, steps)
		if err != nil {
			return File{}, damaged("built")
		}
		if designs[i], err = whole(text); err != nil {
			return File{}, err
		}
	}
	out := File{Job: JobOf(designs)}
	if raw.Hand > 0 && raw.Hand < len(designs) {
		out.Hand = raw.Hand
	}
	return out, nil
}

// openJob reads a job. That of an older version is lifted design by design, each of them whole: a step may look at a
// field that an item leaves to its base.
func openJob(raw rawFile, steps []func(map[string]any)) (Job, error) {
	base, err := lift(raw.Base, steps)
	if err != nil {
		return Job{}, damaged("built")
	}
	out := Job{Items: make([]Item, len(raw.Items.texts))}
	if out.Base, err = whole(base); err != nil {
		return Job{}, err
	}
	for _, part := range []struct {
		text json.RawMessage
		into any
	}{{raw.Head, &out.Head}, {raw.By, &out.By}} {
		if part.text != nil && strict.Decode(part.text, part.into) != nil {
			return Job{}, damaged("built")
		}
	}
	for i, text := range raw.Items.texts {
		if len(steps) > 0 {
			if text, err = liftItem(raw.Base, text, out.Base, steps); err != nil {
				return Job{}, err
			}
		}
		if strict.Decode(text, &out.Items[i]) != nil {
			return Job{}, damaged("built")
		}
	}
	return out, nil
}

// liftItem lifts the designs of an item: base is that of its job as it was, lifted the same as it is now.
func liftItem(base, text []byte, lifted Document, steps []func(map[string]any)) ([]byte, error) {
	var from, item map[string]any
	if json.Unmarshal(base, &from) != nil || json.Unmarshal(text, &item) != nil {
		return nil, damaged("built")
	}
	holders := []any{item}
	if kept, ok := item["kept"].([]any); ok {
		holders = append(holders, kept...)
	}
	for _, h := range holders {
		holder, ok := h.(map[string]any)
		differences, held := holder["design"].(map[string]any)
		if !ok || !held {
			return nil, damaged("built")
		}
		design := overlay(from, differences)
		for _, step := range steps {
			step(design)
		}
		again, err := json.Marshal(design)
		if err != nil {
			return nil, damaged("built")
		}
		d, err := whole(again)
		if err != nil {
			return nil, err
		}
		holder["design"] = d.From(lifted)
	}
	return json.Marshal(item)
}

func lift(design []byte, steps []func(map[string]any)) ([]byte, error) {
	if len(steps) == 0 {
		return design, nil
	}
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
	if d.Spans == nil {
		d.Spans = []Span{} // of an item, none means those of its base
	}
	return d, Check(d)
}

// Check reports whether d has every field, no other, and nothing outsized.
func Check(d Document) error {
	if err := checkFrame(d); err != nil {
		return err
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
	return nil
}

// checkFrame checks all but the fields.
func checkFrame(d Document) error {
	switch {
	case d.Units != units.SI && d.Units != units.US:
		return damaged("units")
	case len(d.Spans) > maxSpans:
		return damaged("spans", "most", maxSpans)
	}
	for _, s := range d.Spans {
		for _, f := range []Entry{s.Centre, s.Width} {
			if err := checkField(f, "page.bare_span"); err != nil {
				return err
			}
		}
	}
	return cmp.Or(checkText(d.Title, "page.design_title"), checkText(d.Mark, "page.mark"))
}

func checkText(text string, label message.Key) error {
	if len(text) > maxText {
		return damaged("long", "label", label, "most", maxText)
	}
	return nil
}

func checkField(f Entry, label message.Key) error {
	if !slices.Contains(Origins, f.Origin) {
		return damaged("origin", "label", label)
	}
	return checkText(f.Text, label)
}
