package design

import (
	"reflect"
	"slices"
	"sync/atomic"
	"testing"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/proof"
	"finwright/core/units"
)

// fitting is a text that a field may hold, or one that none of many fits.
func fitting(c *proof.Case, f *field.Field) string {
	texts := []string{"2 mm", "0.4 mm", "10 fpi", "25.4 mm", "6 m", "80 mm", "3", "80 C", "20 C", "500 kW", "4 bar(g)", "2 kg/s", "3 m3/h", "450", "1.5", "5 m/s", "20 %", "2026-11-02", "words"}
	c.Rand.Shuffle(len(texts), func(i, j int) { texts[i], texts[j] = texts[j], texts[i] })
	at := slices.IndexFunc(texts, func(text string) bool {
		p, err := units.Parse(f.KindOf(text), text, units.SI)
		return err == nil && f.Within(p.SI)
	})
	return texts[max(at, 0)]
}

// Whatever a design says otherwise than its base, what is read of it is what is read of it whole: entries of the examples, of their own field or
// emptied, are laid over a new document and over the examples.
func TestReadOverBaseIsReadWhole(t *testing.T) {
	var valid atomic.Int64
	count := proof.Proof{Share: 400, Full: 40000, Seed: 91}.Run(t, func(c *proof.Case) {
		base := document.New()
		x := document.Differences{Fields: map[string]document.Entry{}}
		for range 1 + c.Rand.IntN(8) {
			f := &field.Fields[c.Rand.IntN(len(field.Fields))]
			text := ""
			switch {
			case f.Choice != nil:
				choices := f.Choices()
				text = choices[c.Rand.IntN(len(choices))]
			case c.Rand.IntN(9) > 0:
				text = fitting(c, f)
			}
			to := x.Fields
			if c.Rand.IntN(3) == 0 {
				to = base.Fields
			}
			to[f.ID] = document.Entry{Text: text, Origin: document.Customer}
		}
		b := ReadBase(base)
		got, gotErr := b.Read(x)
		want, wantErr := Read(base.With(x))
		if wantErr == nil {
			valid.Add(1)
		}
		if (gotErr == nil) != (wantErr == nil) || wantErr == nil && !reflect.DeepEqual(got, want) {
			c.Fatalf("%v over %v is read as %+v (%v), want %+v (%v)", x.Fields, base.Fields, got, gotErr, want, wantErr)
		}
	})
	if n := int(valid.Load()); n < count/10 {
		t.Errorf("only %d of %d could be read", n, count)
	}
	over := ReadBase(document.New())
	if _, ok := over.read(document.Differences{Fields: map[string]document.Entry{
		"quantity": {Text: "40"}, "tube_od": {Text: "1 in"}, "fin_type": {Text: "embedded"}, "fin_pitch": {Text: "11 fpi"}, "tube_length": {Text: "6 m"}, "wall_basis": {Text: "minimum"},
	}}); !ok {
		t.Error("an ordinary item is not read by what it says alone")
	}
}
