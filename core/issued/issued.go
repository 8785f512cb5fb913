// Package issued writes papers that went out as files and reads them again, so that one prints the same in another browser. A file holds the paper with
// all that it was made of: it is the house's own, and no copy for a customer.
package issued

import (
	"encoding/json"
	"hash/fnv"
	"strconv"
	"strings"

	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/paper"
	"finwright/core/shop"
	"finwright/core/strict"
)

// Version is that of the file. The design and the shop in it have their own, and are lifted as any others.
const Version = 1

// Longest file that is read [bytes].
const Longest = 8 << 20

// Record is a paper as it was issued.
type Record struct {
	Item    string // in hand
	Name    string
	Time    string // as 2026-11-27T08:30:00.000Z
	Mark    string
	Program string
	Answers map[string]string
	Each    []map[string]string // what each item answered, of a paper of several; nil: it is of one
	Job     document.Job        // its design, or all of its items
	Shop    string              // the file of the shop
	Paper   paper.Paper
}

// file is what is written.
type file struct {
	Format  string              `json:"format"`
	Version int                 `json:"version"`
	Seal    string              `json:"seal"` // over all else: it tells damage, and is no proof against somebody who means to alter it
	Item    string              `json:"item"`
	Name    string              `json:"name"`
	Time    string              `json:"time"`
	Mark    string              `json:"mark"`
	Program string              `json:"program"`
	Answers map[string]string   `json:"answers"`
	Each    []map[string]string `json:"each,omitempty"`
	Design  json.RawMessage     `json:"design"` // an envelope
	Shop    json.RawMessage     `json:"shop"`   // a capability file
	Paper   paper.Paper         `json:"paper"`
}

// sealed is the seal of a file.
func (f file) sealed() (string, error) {
	f.Seal = ""
	text, err := json.Marshal(f)
	h := fnv.New64a()
	_, _ = h.Write(text) // a hash takes all
	return strconv.FormatUint(h.Sum64(), 16), err
}

// Save writes a record.
func Save(r Record) ([]byte, error) {
	if err := document.CheckJob(r.Job); err != nil {
		return nil, err
	}
	design, err := document.SaveJob(r.Job)
	if err != nil {
		return nil, err
	}
	f := file{document.PaperFormat, Version, "", r.Item, r.Name, r.Time, r.Mark, r.Program, r.Answers, r.Each, design, json.RawMessage(r.Shop), r.Paper}
	if f.Seal, err = f.sealed(); err != nil {
		return nil, err
	}
	return json.Marshal(f)
}

// Open reads a record. Errors are *document.OpenError, or what keeps the shop in it from being read.
func Open(text []byte) (Record, error) {
	var head struct {
		Format  string `json:"format"`
		Version int    `json:"version"`
	}
	switch err := strict.Unmarshal(text, &head); {
	case len(text) > Longest:
		return Record{}, refuse("issued.long", "most", Longest>>20)
	case err != nil || head.Format != document.PaperFormat || head.Version < 1:
		return Record{}, refuse("issued.none")
	case head.Version > Version:
		return Record{}, refuse("open.newer", "version", head.Version, "known", Version)
	}
	var f file
	if strict.Decode(text, &f) != nil || !whole(&f) {
		return Record{}, refuse("issued.damaged")
	}
	if seal, err := f.sealed(); err != nil || seal != f.Seal {
		return Record{}, refuse("issued.altered")
	}
	return f.record()
}

// record reads the design and the shop of a file, and holds its fingerprint against them.
func (f *file) record() (Record, error) {
	design, err := document.OpenFile(f.Design)
	if err != nil {
		return Record{}, err
	}
	c, faults := shop.Open(f.Shop)
	if faults != nil {
		return Record{}, refuse("issued.shop", "why", faults[0].Why)
	}
	r := Record{f.Item, f.Name, f.Time, f.Mark, f.Program, f.Answers, f.Each, design.Job, string(f.Shop), f.Paper}
	if f.Each != nil && len(f.Each) != len(design.Job.Items) || f.Each == nil && len(design.Job.Items) != 1 {
		return Record{}, refuse("issued.damaged")
	}
	was, ok := paper.ReadMark(f.Mark)
	if !ok {
		return Record{}, refuse("issued.damaged")
	}
	now := paper.MarkOf(document.FingerprintOf(design.Job.Designs()), c.Fingerprint(), f.Program)
	if !current(f.Design, document.Version) {
		now.Design = was.Design // what was lifted says more than it did
	}
	if !current(f.Shop, shop.Version) {
		now.Shop = was.Shop
	}
	if len(was.Differs(now)) > 0 {
		return Record{}, refuse("issued.differs", "mark", f.Mark, "found", now.String())
	}
	return r, nil
}

// current reports whether an envelope is of a version.
func current(text []byte, version int) bool {
	var head struct {
		Version int `json:"version"`
	}
	return json.Unmarshal(text, &head) == nil && head.Version == version
}

// whole reports whether a file can be laid out: each block has what its form asks for, and no drawing more than we draw.
func whole(f *file) bool {
	p := &f.Paper
	if !p.Kind.Known() || f.Answers == nil || p.Head == nil || p.Blocks == nil {
		return false
	}
	for i := range p.Blocks {
		if b := &p.Blocks[i]; !b.Whole() || b.Drawing != nil && b.Drawing.SVG != "" && !Drawn(b.Drawing.SVG) {
			return false
		}
	}
	return !strings.ContainsAny(f.Mark+f.Time+f.Item, "<>\"\\")
}

func refuse(key string, pairs ...any) error {
	return &document.OpenError{Message: message.New(key, pairs...)}
}
