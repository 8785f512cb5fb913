package search

import (
	"testing"

	"finwright/core/document"
	"finwright/core/shop"
)

// Streams of one temperature carry nothing: there is no price of nothing, and no number that is none.
func TestNothingCarriedHasNoPrice(t *testing.T) {
	c := shop.House()
	d := with(document.New(), "inside_in", "30 °C")
	p := Problem{Axes: []Axis{{Field: "rows", Texts: []string{"2", "4"}}}, Outside: true, Wanted: []Measure{Price}}
	for _, wanted := range []Measure{Price, PerKilowatt} {
		p.Wanted = []Measure{wanted}
		s, err := New(d, p, &c)
		if err != nil {
			t.Fatal(err)
		}
		part := s.Chunk(0, s.Count(), Hurdle{})
		for _, f := range part.Best {
			if wanted == PerKilowatt || f.Values.Known(perKilowatt) || f.Values.SI[duty] != 0 {
				t.Errorf("%+v", f)
			}
		}
		if wanted == Price && part.Passed != 2 || wanted == PerKilowatt && part.Cuts[unknown]+part.Cuts[unrated] != 2 {
			t.Errorf("%s: %d pass, cut by %v", wanted, part.Passed, part.Counts())
		}
	}
}
