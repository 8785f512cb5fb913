package document

import (
	"hash/fnv"
	"io"
	"slices"
	"strconv"
	"strings"

	"finwright/core/field"
	"finwright/core/units"
)

// Fingerprint tells one design from another: 64 bits, in hexadecimal, of what it says. The same said in another unit is the same
// design; its title, its mark and the units that it is read in are no part of it, and neither is what it does not use. It is no proof
// against somebody who means to make two alike.
func (d Document) Fingerprint() string {
	h := fnv.New64a()
	for i := range field.Fields {
		f := &field.Fields[i]
		if entry, ok := d.Fields[f.ID]; ok && f.Used(d.Text) {
			d.put(h, f, f.ID, entry)
		}
	}
	for i, s := range d.Spans {
		d.put(h, &field.SpanCentre, "centre"+strconv.Itoa(i), s.Centre)
		d.put(h, &field.SpanWidth, "width"+strconv.Itoa(i), s.Width)
	}
	return digits(h.Sum64())
}

// FingerprintOf tells one list of designs from another, in whatever order they stand: of one design it is that design's.
func FingerprintOf(designs []Document) string {
	if len(designs) == 1 {
		return designs[0].Fingerprint()
	}
	each := make([]string, len(designs))
	for i, d := range designs {
		each[i] = d.Fingerprint()
	}
	slices.Sort(each)
	h := fnv.New64a()
	_, _ = io.WriteString(h, strings.Join(each, "\x00"))
	return digits(h.Sum64())
}

// digits are those of a number, as many of any.
func digits(n uint64) string {
	text := strconv.FormatUint(n, 16)
	return strings.Repeat("0", 16-len(text)) + text
}

// put writes an entry as what it means, one that cannot be read as it stands.
func (d Document) put(h io.Writer, f *field.Field, id string, e Entry) {
	text := strings.TrimSpace(e.Text)
	if f.IsNumber() {
		if p, err := units.Parse(f.KindOf(text), text, d.Units); err == nil {
			text = strconv.FormatFloat(p.SI, 'g', 9, 64) // as many digits as a change of units leaves alone
		}
	}
	_, _ = io.WriteString(h, id+"\x00"+text+"\x00"+string(e.Origin)+"\x00") // a hash takes all
}
