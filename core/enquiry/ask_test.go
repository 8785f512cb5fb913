package enquiry

import (
	"os"
	"slices"
	"strings"
	"testing"

	"finwright/core/document"
)

// kinds lists what is to be asked of an item, but for what is merely not stated.
func kinds(x *Entry) (out []string) {
	for _, a := range x.Asks() {
		if a.Kind != "missing" || a.Field == "quantity" {
			out = append(out, a.Kind)
		}
	}
	return out
}

// Ten faults of a customer's kind among forty items are found, each at its item, and none at the others.
func TestTenFaultsAmongForty(t *testing.T) {
	content, err := os.ReadFile("../../testdata/enquiry/forty.tsv")
	if err != nil {
		t.Fatal(err)
	}
	e, err := Text(string(content), nil, unheard)
	if err != nil || len(e.Items) != 40 {
		t.Fatal(err, len(e.Items))
	}
	want := map[string]string{
		"T-03": "day", "T-05": "no_unit", "T-07": "gauge", "T-09": "one_of", "T-12": "thousands", "T-15": "over_fins", "T-18": "not_made", "T-22": "finned_longer",
		"T-26": "type_metal", "T-30": "missing",
	}
	for i := range e.Items {
		x := &e.Items[i]
		switch found := kinds(x); {
		case want[x.Mark] == "" && len(found) > 0:
			t.Errorf("%s: %v is asked, and nothing is wrong", x.Mark, found)
		case want[x.Mark] != "" && !slices.Contains(found, want[x.Mark]):
			t.Errorf("%s: %v is asked, want %s", x.Mark, found, want[x.Mark])
		}
	}
}

func TestContradictionsAreFound(t *testing.T) {
	for kind, line := range map[string]string{
		"over_fins":     "10 off 1 in OD tube, fin height 5/8 in, fin OD 60 mm",
		"fin_inside":    "10 off 2 in OD tube, fin OD 40 mm",
		"lengths":       "10 off 6 m overall, finned length 5.5 m, bare ends 75 mm each end",
		"finned_longer": "10 off 6 m overall, finned length 6.5 m",
		"all_bare":      "10 off 500 mm overall, bare ends 300 mm each end",
		"wall_thick":    "10 off 10 mm OD x 6 mm wall",
		"no_gap":        "10 off fins 2 mm thick, 600 fins/m",
		"type_metal":    "10 off L-foot carbon steel fins",
		"too_hot":       "10 off L-foot Al fins, inlet 250 °C",
		"steam":         "steam 10 barg, inlet 120 °C, 10 off",
		"duty":          "duty 5 MW, water 1 kg/s, inlet 90 °C, outlet 80 °C",
		"no_difference": "10 off water inlet 30 °C, air inlet 30 °C",
		"bank":          "100 off tubes, 4 rows, 30 tubes per row",
		"twice":         "10 off 1 in OD 14 BWG wall, wall 2.77 mm",
		"not_made":      "10 off U-tubes",
		"no_such_item":  "10 off as item 9 but 6 m long",
		"unread":        "10 off 1 in OD glubbertube",
	} {
		e, err := Text("Item 1: "+line, nil, unheard)
		if err != nil || len(e.Items) != 1 {
			t.Errorf("%q: %v, %d items", line, err, len(e.Items))
			continue
		}
		if found := kinds(&e.Items[0]); !slices.Contains(found, kind) {
			t.Errorf("%q: %v is asked, want %s", line, found, kind)
		}
	}
	seams, _ := Text("Item 1: 10 off SA-179 ERW tubes 1 in OD", nil, unheard)
	if x, ok := seams.Items[0].Find(Seam); !ok || len(x.Doubts) == 0 {
		t.Errorf("a seamless standard and a welded tube are read as %v", x)
	}
}

func TestDesignFollowsFromWhatWasSaid(t *testing.T) {
	for line, want := range map[string]map[string]string{
		"10 off 1 in OD, fin OD 57.15 mm":                      {"fin_height": "15.875 mm", "quantity": "10", "tube_od": "1 in"},
		"10 off finned length 5.8 m, 6 m overall":              {"plain_end_a": "100 mm", "plain_end_b": "100 mm", "tube_length": "6 m"},
		"10 off finned length 5.8 m, bare ends 75 mm each end": {"tube_length": "5950 mm"},
		"10 off + 2 spares":                                    {"quantity": "12"},
		"10 off steam at 10 barg":                              {"inside_fluid": "steam", "steam_by": "pressure", "inside_pressure": "10 bar(g)"},
		"10 off fin gap 2.1 mm":                                {"fin_pitch": "2.5 mm"},
	} {
		e, _ := Text("Item 1: "+line, nil, unheard)
		d := e.Items[0].Design(document.New())
		for field, text := range want {
			if d.Text(field) != text {
				t.Errorf("%q: %s is %q, want %q", line, field, d.Text(field), text)
			}
		}
		if d.Fields["quantity"].Origin == document.House || !strings.Contains(d.Title, "10 off") {
			t.Errorf("%q: %v, %q", line, d.Fields["quantity"], d.Title)
		}
	}
}

// What is decided for the second reading is read so, and no doubt of its kind is left.
func TestDecisions(t *testing.T) {
	e, _ := Text("Item 1: 10 off tube 1 in OD x 14 BWG, 20 ft long, fins 57 mm", nil, unheard)
	for _, d := range []Decision{
		{Items: []int{0}, Field: "wall_basis", Kind: "basis", Second: true},
		{Items: []int{0}, Field: "tube_length", Kind: "length", Second: true},
		{Items: []int{0}, Field: FinOD, Kind: "height"},
		{Items: []int{0, 7, -1}, Field: "nothing", Kind: "nothing"},
	} {
		e.Decide([]Decision{d})
	}
	x := &e.Items[0]
	if got := said(x, "wall_basis", "tube_length", FinnedLength, FinOD); got != "1 | minimum | - | 20 ft | 57 mm" {
		t.Error(got)
	}
	for _, r := range x.Whole {
		if len(r.Doubts) > 0 {
			t.Errorf("%s is still doubtful: %v", r.Field, r.Doubts)
		}
	}
	wrong := e.Enter([]Edit{{0, "tube_od", "38"}, {0, "tube_wall", "wide"}, {0, "quantity", ""}, {9, "quantity", "1"}, {0, Mark, "X"}}, "si")
	if len(wrong) != 1 || wrong[0].Field != "tube_wall" {
		t.Errorf("%v is wrong", wrong)
	}
	if got := said(x, "tube_od", "quantity"); got != "X | 38 mm | -" {
		t.Error(got)
	}
}
