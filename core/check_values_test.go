package core

import (
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// The shop that ships is invented, and so are its customers: nothing that is shown as an example may be the figure of a shop that
// there is. The list below is what tests hold the arithmetic against that is one shop's own; it stays in tests.

// checkValue is a figure that belongs to one shop.
type checkValue struct {
	what  string
	texts []string // the same in each form in which it is met
	kind  units.Kind
}

// Source: common practice, no source; the worked coil, speeds and times are hand calculations.
var checkValues = []checkValue{
	{"coil's outside diameter", []string{"36 in"}, units.Distance},
	{"coil's core", []string{"12 in"}, units.Distance},
	{"coil's width", []string{"16 in", "30 in"}, units.Distance},
	{"coil's strip", []string{"1649 m"}, units.Distance},
	{"coil's mass", []string{"1200 lb", "32.1 kg"}, units.Weight},
	{"bundle's opening", []string{"15.5 in", "13 in"}, units.Distance},
	{"tools", []string{"9/16 in", "1 1/8 in"}, units.Distance},
	{"mill lengths", []string{"20 ft", "40 ft", "50 ft", "60 ft"}, units.Distance},
	{"strip speed", []string{"4 m/s", "13 ft/s", "79.8 m/min"}, units.Running},
	{"tube feed", []string{"2.54 m/min"}, units.Running},
	{"spindle", []string{"1000 rpm"}, units.Spin},
	{"time of a tube", []string{"2.32 min"}, units.Time},
	{"pull on a sector", []string{"54.9 N"}, units.Pull},
}

// checkMargins are shares, which are many: they are held only where a margin stands.
var checkMargins = []float64{0.18, 0.153}

// A check value is met if a figure lies within this share of it: the digits to which such figures are told.
const alike = 0.004

// Figures that are met and stay, each with its reason. Standard tube diameters, walls and gauges, fin heights and strip thicknesses
// are not on the list in the first place; nor are metals, and the rules of the trade that are shown with their status.
var exempt = map[string]string{
	"help.face_velocity: 4 m/s": "the usual range of air coolers, a gas and not strip, shown as from memory",
	"3-heat-recovery: 4 m/s":    "the velocity of a gas at the face, not of strip",
}

// A number with a unit, or a range of which the unit stands at its end.
var (
	quantity = regexp.MustCompile(`(\d+ \d+/\d+|\d+/\d+|\d{1,3}(?:[,\x{202f}]\d{3})+|\d+(?:\.\d+)?)\s?(mm|cm|m/s|m/min|m|ft/s|ft/min|ft|in|lb|kg|rpm|min|lbf|N|['"])(?:[^\pL/·²³]|$)`)
	leading  = regexp.MustCompile(`(\d+(?:\.\d+)?)(?:,| to| x| ×| and| or)+ $`)
)

// met returns the check values that a text has.
func met(text string) (out []string) {
	for _, at := range quantity.FindAllStringSubmatchIndex(text, -1) {
		unit := text[at[4]:at[5]]
		numbers := []string{text[at[2]:at[3]]}
		if before := leading.FindStringSubmatch(text[:at[2]]); before != nil {
			numbers = append(numbers, before[1])
		}
		for _, number := range numbers {
			for _, c := range checkValues {
				got, err := units.Parse(c.kind, strings.NewReplacer(",", "", "\u202f", "").Replace(number)+" "+unit, units.SI)
				if err != nil {
					continue
				}
				for _, want := range c.texts {
					if p, err := units.Parse(c.kind, want, units.SI); err != nil {
						panic(want)
					} else if math.Abs(got.SI-p.SI) <= alike*p.SI {
						out = append(out, number+" "+unit)
					}
				}
			}
		}
	}
	return slices.Compact(out)
}

// The scanner itself finds each value, in its own unit and in another.
func TestCheckValuesAreFound(t *testing.T) {
	for _, c := range checkValues {
		for _, text := range c.texts {
			if met("a figure such as "+text+", say") == nil {
				t.Errorf("%s: %s is not found", c.what, text)
			}
		}
	}
	for _, text := range []string{"6096 mm", "6.1 m", "18.3 m", "914 mm", "544 kg", "15.5 x 13 in", "20' 6 in", "14.29 mm", "240 m/min", "6,096 mm"} {
		if met(text) == nil {
			t.Errorf("%s is not found", text)
		}
	}
	for _, text := range []string{"25.4 mm", "5/8 in", "14 BWG", "10 fpi", "0.016 in", "12 in³", "4 m²"} {
		if got := met(text); got != nil {
			t.Errorf("%s is taken for %v", text, got)
		}
	}
}

// Neither the shop that ships nor an example on the page holds a figure of a shop that there is, in any unit.
func TestShippedFiguresAreInvented(t *testing.T) {
	stays := maps.Clone(exempt)
	held := func(place, text string) {
		for _, value := range met(text) {
			at := place + ": " + value
			if exempt[at] == "" {
				t.Errorf("%s holds the check value %s: %s", place, value, text)
			}
			delete(stays, at)
		}
	}
	raw, err := os.ReadFile("shop/house.json")
	if err != nil {
		t.Fatal(err)
	}
	var house any
	if err := json.Unmarshal(raw, &house); err != nil {
		t.Fatal(err)
	}
	leaves(house, "", func(path, text string) {
		held(path, text)
		if strings.HasSuffix(path, "/margin") {
			p, err := units.Parse(units.Percent, text, units.SI)
			for _, m := range checkMargins {
				if err != nil || math.Abs(p.SI-m) <= alike*m {
					t.Errorf("%s holds the check value %s", path, text)
				}
			}
		}
	})
	english := message.English()
	for _, key := range english.Keys() {
		held(key, english.Text(key))
	}
	page, err := os.ReadFile("../site/index.html")
	if err != nil {
		t.Fatal(err)
	}
	held("index.html", string(page))
	for _, f := range field.Fields {
		held("field "+f.ID, f.House)
	}
	for _, c := range cases.List() {
		texts(c.Document(), func(text string) { held(c.ID, text) })
	}
	for at := range stays {
		t.Errorf("%s is exempt, and not there", at)
	}
}

// texts calls f with every entry of a design.
func texts(d document.Document, f func(string)) {
	for _, e := range d.Fields {
		f(e.Text)
	}
	for _, s := range d.Spans {
		f(s.Centre.Text)
		f(s.Width.Text)
	}
}

// leaves calls f with every text of a JSON value, by its path.
func leaves(v any, path string, f func(path, text string)) {
	switch v := v.(type) {
	case string:
		f(strings.TrimPrefix(path, "/"), v)
	case []any:
		for i, inner := range v {
			leaves(inner, fmt.Sprintf("%s/%d", path, i), f)
		}
	case map[string]any:
		for key, inner := range v {
			leaves(inner, path+"/"+key, f)
		}
	}
}
