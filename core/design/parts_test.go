package design

import (
	"testing"

	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/shop"
)

// judged evaluates a document for the house's shop, with the making.
func judged(t *testing.T, pairs ...string) Result {
	t.Helper()
	d := document.New()
	setIn(t, &d, pairs...)
	c := shop.House()
	in, h, err := ReadAndRate(d, &c)
	if err != nil {
		t.Fatal(err)
	}
	res := Evaluate(in, h)
	m := Brief(in, h)
	res.AddMaking(&m)
	return res
}

func TestOneVerdict(t *testing.T) {
	calm := []string{"start_up", "90 °C", "upset", "95 °C"}
	for name, c := range map[string]struct {
		pairs   []string
		section string
		state   figure.State
		key     string
	}{
		"calm, within a limit from memory": {nil, "heat", figure.Kept, ""},
		"a case not stated":                {[]string{"upset", ""}, "heat", figure.Watch, "limit.not_stated"},
		"refused by its temperature":       {[]string{"upset", "230 °C"}, "heat", figure.No, "limit.above_standard"},
		"refused by the line":              {[]string{"fin_pitch", "14 fpi"}, "making", figure.No, "making.rule"},
		"refused by the surface":           {[]string{"fin_metal", "cs1010"}, "surface", figure.No, "notice.metal_unsuitable"},
		"out of range only":                {[]string{"face_velocity", "0.3 m/s"}, "heat", figure.Outside, "notice.out_of_range"},
		// The usual range of the trade ended at 0.5 mm in the shop alone, and Surface said that all was well.
		"thick strip in a foot": {[]string{"strip_thickness", "0.8 mm"}, "making", figure.No, "making.rule"},
	} {
		res := judged(t, append(append([]string{}, calm...), c.pairs...)...)
		v := res.Verdict()
		if v.Section != c.section || v.State != c.state || v.Notice.Message.Key != c.key {
			t.Errorf("%s: %s %s %s, want %s %s %s", name, v.Section, v.State, v.Notice.Message.Key, c.section, c.state, c.key)
		}
		for _, n := range res.Notices {
			if n.State.Graver(v.State) {
				t.Errorf("%s: %s is graver than the verdict %s", name, n.Message.Key, v.State)
			}
		}
	}
}
