package design

import (
	"runtime"
	"testing"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/shop/verdict"
)

// forRow reads the house's design for the house's shop.
func forRow(t testing.TB) (document.Document, field.Input) {
	t.Helper()
	d := document.New()
	in, err := Read(d)
	if err != nil {
		t.Fatal(err)
	}
	c := shop.House()
	in.MadeBy(&c)
	return d, in
}

// A list of designs leaves nothing behind, however long it is.
func TestRowsLeaveNothingBehind(t *testing.T) {
	_, in := forRow(t)
	kept := func(rows int) uint64 {
		for range rows {
			if _, err := RowOf(in); err != nil {
				t.Fatal(err)
			}
		}
		var m runtime.MemStats
		runtime.GC()
		runtime.ReadMemStats(&m)
		return m.HeapAlloc
	}
	if before, after := kept(10), kept(500); after > before+64<<10 {
		t.Errorf("%d bytes are kept of 500 rows", after-before)
	}
}

// BenchmarkRow is one design of a list of many, and its parts: to read it, to rate the bank, to judge it on a line and to
// plan it.
func BenchmarkRow(b *testing.B) {
	d, in := forRow(b)
	h, err := Rate(in)
	if err != nil {
		b.Fatal(err)
	}
	order, line := making.OrderOf(&in, h.hottest()), &in.Shop.Lines[0]
	for _, part := range []struct {
		name string
		do   func()
	}{
		{"whole", func() {
			read, err := Read(d)
			if err != nil {
				b.Fatal(err)
			}
			read.MadeBy(in.Shop)
			if _, err := RowOf(read); err != nil {
				b.Fatal(err)
			}
		}},
		{"read", func() { _, _ = Read(d) }},
		{"rate", func() { rating.RateBriefly(&in.Input) }},
		{"judge", func() { verdict.Judge(in.Shop, line, order) }},
		{"make", func() { making.PlanOf(in.Shop, line, order, nil) }},
	} {
		b.Run(part.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				part.do()
			}
		})
	}
}
