package quotes

import (
	"cmp"
	"slices"
	"strconv"

	"finwright/core/field"
	"finwright/core/numeric"
)

// Change is an item that is not in two revisions as it is in the other. Before or After is nil of one that was added or taken out.
type Change struct {
	Mark          string // of the later one, where it is there
	Before, After *Quote
	Cells         []Difference // of one that is in both: what it says otherwise
}

// Repriced reports whether an item that says the same has another price.
func (c *Change) Repriced() bool { return c.Before != nil && c.After != nil && len(c.Cells) == 0 }

// Compare lists what two revisions say otherwise, in the order of the later one, then what was taken out.
func Compare(before, after *Record) (out []Change) {
	pairs := pair(before, after)
	taken := make([]bool, len(before.Quotes))
	for i := range after.Quotes {
		q := &after.Quotes[i]
		at := pairs[i]
		if at < 0 {
			out = append(out, Change{Mark: q.Mark, After: q})
			continue
		}
		taken[at] = true
		c := Change{Mark: q.Mark, Before: &before.Quotes[at], After: q}
		c.Cells = cells(item{&before.Quoted, before.Units, c.Before}, item{&after.Quoted, after.Units, q})
		if len(c.Cells) > 0 || !samePrice(c.Before.Price, q.Price) {
			out = append(out, c)
		}
	}
	for i := range before.Quotes {
		if !taken[i] {
			out = append(out, Change{Mark: before.Quotes[i].Mark, Before: &before.Quotes[i]})
		}
	}
	return out
}

// samePrice is whether two prices are one to the hundredth.
func samePrice(a, b *float64) bool {
	if a == nil || b == nil {
		return a == b
	}
	return *a-*b < 0.005 && *b-*a < 0.005
}

// cells lists what two items say otherwise, the item's name first.
func cells(a, b item) (out []Difference) {
	if a.Mark != b.Mark {
		out = append(out, Difference{"mark", a.Mark, b.Mark})
	}
	for i := range field.Fields {
		f := &field.Fields[i]
		_, one := a.Entries[f.ID]
		_, other := b.Entries[f.ID]
		if !one && !other && !OfTube(f) || !f.Used(a.text) && !f.Used(b.text) {
			continue
		}
		if x, y := a.text(f.ID), b.text(f.ID); !theSame(f, x, y, a.units, b.units) {
			out = append(out, Difference{f.ID, x, y})
		}
	}
	if !slices.Equal(a.Bare, b.Bare) {
		out = append(out, Difference{})
	}
	return out
}

// pair finds of each item of the later revision the one of the earlier that it was, or -1. The customer's names tell; items that he only
// counts shift when one comes or goes, so there the tube tells first.
func pair(before, after *Record) []int {
	out := make([]int, len(after.Quotes))
	for i := range out {
		out[i] = -1
	}
	taken := make([]bool, len(before.Quotes))
	byMark, byTube := places(before.Quotes, func(q *Quote) string { return q.Mark }), places(before.Quotes, before.key)
	take := func(list map[string][]int, key func(*Quote) string) {
		for i := range after.Quotes {
			if out[i] >= 0 {
				continue
			}
			k := key(&after.Quotes[i])
			for at, old := range list[k] {
				if !taken[old] {
					out[i], taken[old] = old, true
					list[k] = list[k][at+1:]
					break
				}
			}
		}
	}
	mark := func(q *Quote) string { return q.Mark }
	both := places(before.Quotes, func(q *Quote) string { return q.Mark + "\x00" + before.key(q) })
	take(both, func(q *Quote) string { return q.Mark + "\x00" + after.key(q) })
	if counted(before.Quotes) && counted(after.Quotes) {
		take(byTube, after.key)
		take(byMark, mark)
	} else {
		take(byMark, mark)
		take(byTube, after.key)
	}
	return out
}

// places are those of quotes by a key.
func places(list []Quote, key func(*Quote) string) map[string][]int {
	out := map[string][]int{}
	for i := range list {
		k := key(&list[i])
		out[k] = append(out[k], i)
	}
	return out
}

// counted reports whether items are called by their places.
func counted(list []Quote) bool {
	for i := range list {
		if list[i].Mark != strconv.Itoa(i+1) {
			return false
		}
	}
	return true
}

// key tells tubes apart by what they say, each number to six digits.
func (r *Record) key(q *Quote) string {
	x := item{&r.Quoted, r.Units, q}
	var out []byte
	for i := range field.Fields {
		f := &field.Fields[i]
		if !OfTube(f) || !f.Used(x.text) {
			continue
		}
		text := x.text(f.ID)
		if si, ok := said(f, text, r.Units); ok {
			text = strconv.FormatFloat(si, 'g', 6, 64)
		}
		out = append(append(out, text...), 0)
	}
	for _, b := range q.Bare {
		out = append(append(append(append(out, b.Centre...), 0), b.Width...), 0)
	}
	return string(out)
}

// Latest orders records: enquiries by what was written last of each, of one the latest revision first.
func Latest(list []Summary) []Summary {
	last := map[string]string{}
	for i := range list {
		last[list[i].Of] = max(last[list[i].Of], list[i].Time)
	}
	return numeric.Sorted(list, func(a, b *Summary) int {
		switch one, other := last[a.Of], last[b.Of]; {
		case one != other:
			return cmp.Compare(other, one)
		case a.Of != b.Of:
			return cmp.Compare(a.Of, b.Of)
		}
		return cmp.Compare(b.Time, a.Time)
	})
}
