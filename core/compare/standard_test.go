package compare

import (
	"slices"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/shop"
	"finwright/core/units"
)

// The standard values of each entry stand in order, with the design's own among them in the words in which it was typed.
func TestStandardValues(t *testing.T) {
	c := shop.House()
	for name, want := range map[string]struct {
		id, own, texts string
		at             int
	}{
		"a count as it was typed":   {"fin_pitch", "393.7 /m", "7 fpi|8 fpi|9 fpi|393.7 /m|11 fpi|12 fpi", 3},
		"one between":               {"fin_pitch", "9.5 fpi", "7 fpi|8 fpi|9 fpi|9.5 fpi|10 fpi|11 fpi|12 fpi", 3},
		"walls, the lightest first": {"tube_wall", "2.77 mm", "18 BWG|17 BWG|16 BWG|15 BWG|14 BWG|13 BWG|2.77 mm|11 BWG|10 BWG", 6},
		"rows":                      {"rows", "4", "2|3|4|5|6|7|8", 2},
	} {
		texts, at := Standard(with(document.New(), want.id, want.own), want.id, &c)
		if got := strings.Join(texts, "|"); got != want.texts || at != want.at {
			t.Errorf("%s: %s, at %d", name, got, at)
		}
	}
	for _, id := range Ladders {
		d := document.New()
		texts, at := Standard(d, id, &c)
		if len(texts) < 2 || at < 0 || texts[at] != d.Text(id) || !slices.Equal(texts, slices.Compact(slices.Clone(texts))) {
			t.Errorf("%s: %v, at %d", id, texts, at)
		}
	}
	if texts, at := Standard(with(document.New(), "fin_pitch", "many"), "fin_pitch", &c); len(texts) > 0 || at >= 0 {
		t.Errorf("of what cannot be read: %v, at %d", texts, at)
	}
	us := document.New()
	us.Units = units.US
	if texts, at := Standard(us, "strip_thickness", nil); len(texts) != 1 || at != 0 {
		t.Errorf("without a shop: %v, at %d", texts, at)
	}
	if texts, at := Standard(us, "fin_height", nil); strings.Join(texts, "|") != "1/4 in|3/8 in|1/2 in|5/8 in" || at != 3 {
		t.Errorf("heights without a shop: %v, at %d", texts, at)
	}
	wide := with(document.New(), "tube_od", "1.5 in", "fin_height", "10 mm")
	if texts, at := Standard(wide, "fin_height", nil); strings.Join(texts, "|") != "6.35 mm|9.525 mm|10 mm|12.7 mm|15.875 mm|19.05 mm" || at != 2 {
		t.Errorf("heights on a wide tube: %v, at %d", texts, at)
	}
}
