package search

import (
	"slices"
	"testing"

	"finwright/core/document"
	"finwright/core/shop"
)

// A length that may be the most is tried, though no step comes to it.
func TestTheMostLengthIsTried(t *testing.T) {
	c := shop.House()
	lengths := func(most string) []string {
		p := Problem{Axes: []Axis{{Field: "tube_length", Low: "5 m", High: "7 m", Step: "0.8 m"}}, Must: map[string]string{}, Wanted: []Measure{Price}}
		if most != "" {
			p.Must["tube_length"] = most
		}
		s, err := New(document.New(), p, &c)
		if err != nil {
			t.Fatal(err)
		}
		var out []string
		for place := range s.Count() {
			out = append(out, s.Texts(place)[0])
		}
		return out
	}
	if got := lengths("6 m"); !slices.Equal(got, []string{"5 m", "5.8 m", "6 m", "6.6 m"}) {
		t.Error(got)
	}
	for _, most := range []string{"", "5.8 m", "9 m", "4 m"} {
		if got := lengths(most); len(got) != 3 {
			t.Errorf("%s: %v", most, got)
		}
	}
}
