package document

import (
	"cmp"
	"slices"
	"strconv"

	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/units"
)

// Job is what is asked for and answered at once: a head and items. Their designs are held as differences from one base, so
// that thousands of items that are much alike are small.
type Job struct {
	Head  Head     `json:"head"`
	Base  Document `json:"base"`
	Items []Item   `json:"items"`
	By    []Basis  `json:"by,omitempty"` // what the rows that items showed were found by
}

// Head is what a job says of itself, as typed.
type Head struct {
	Reference string `json:"reference"` // the customer's
	Revision  string `json:"revision"`
	Received  string `json:"received"` // a day as 2026-11-27, or empty
	Due       string `json:"due"`      // the same
}

// Item is one line of a job. How many of it are wanted is the quantity of its design, which Making plans by: an item has
// no second one.
type Item struct {
	ID     string      `json:"id"` // given by whoever makes the item; it stays when all else changes
	Design Differences `json:"design"`
	Kept   []Kept      `json:"kept,omitempty"`
	Shown  *Shown      `json:"shown,omitempty"` // what it answered; none of an item that was never in hand since it was changed
}

// Kept is an alternative that an item holds beside its design.
type Kept struct {
	Name   string      `json:"name"`
	Design Differences `json:"design"`
}

// MostKept alternatives of an item stand side by side with it.
const MostKept = 5

// Limits on what a job holds, against floods.
const (
	maxItems = 20_000
	maxID    = 32 // bytes
)

// JobOf makes a job of designs, the first of which is its base. The items are named by their places.
func JobOf(designs []Document) Job {
	job := Job{Items: make([]Item, len(designs))}
	for i, d := range designs {
		if i == 0 {
			job.Base = d
		}
		job.Items[i] = Item{ID: strconv.Itoa(i + 1), Design: d.From(job.Base)}
	}
	return job
}

// Design is the design of item i, whole.
func (j Job) Design(i int) Document { return j.Base.With(j.Items[i].Design) }

// Designs are those of all items.
func (j Job) Designs() []Document {
	out := make([]Document, len(j.Items))
	for i := range j.Items {
		out[i] = j.Design(i)
	}
	return out
}

// Find returns the place of an item, or -1.
func (j Job) Find(id string) int {
	return slices.IndexFunc(j.Items, func(i Item) bool { return i.ID == id })
}

// CheckJob reports whether all that j holds is whole, of known names, and nothing outsized. It looks at no more of an
// item than its differences.
func CheckJob(j Job) error {
	if len(j.Items) == 0 || len(j.Items) > maxItems {
		return refuse("open.count", "count", len(j.Items), "most", maxItems)
	}
	if err := checkHead(j.Head); err != nil {
		return err
	}
	if err := Check(j.Base); err != nil {
		return err
	}
	if len(j.By) > maxBases {
		return damaged("items")
	}
	seen := make(map[string]bool, len(j.Items))
	for _, item := range j.Items {
		if !isID(item.ID) || seen[item.ID] || len(item.Kept) > MostKept {
			return damaged("items")
		}
		seen[item.ID] = true
		if err := cmp.Or(checkDifferences(item.Design), checkShown(item.Shown, j.By)); err != nil {
			return err
		}
		for _, k := range item.Kept {
			if err := cmp.Or(checkText(k.Name, "page.design_title"), checkDifferences(k.Design)); err != nil {
				return err
			}
		}
	}
	return nil
}

func checkHead(h Head) error {
	for _, day := range []string{h.Received, h.Due} {
		if day != "" && !isDate(day) {
			return damaged("day")
		}
	}
	return cmp.Or(checkText(h.Reference, "page.reference"), checkText(h.Revision, "page.revision"))
}

func checkDifferences(x Differences) error {
	var d Document
	d.Units = units.SI
	if err := checkFrame(d.With(Differences{Title: x.Title, Mark: x.Mark, Units: x.Units, Spans: x.Spans})); err != nil {
		return err
	}
	for id, entry := range x.Fields {
		f, ok := field.Find(id)
		if !ok {
			return damaged("unknown", "name", cut(id))
		}
		if err := checkField(entry, message.Key(f.Label())); err != nil {
			return err
		}
	}
	return nil
}

// isID: letters, digits and dashes, since an item is found by it in the browser's store and in the page.
func isID(id string) bool {
	for _, r := range id {
		if (r < '0' || r > '9') && (r < 'a' || r > 'z') && (r < 'A' || r > 'Z') && r != '-' {
			return false
		}
	}
	return id != "" && len(id) <= maxID
}
