package bridge

import (
	"encoding/base64"
	"encoding/json"
	"strings"
	"testing"

	"finwright/core/report"
	"finwright/testdata/cases"
)

func suppose(more map[string]any) map[string]any {
	d := cases.First()
	wanted := d.Fields["duty_wanted"]
	wanted.Text = "770 kW"
	d.Fields["duty_wanted"] = wanted
	args := map[string]any{"document": d, "seed": 3}
	for k, v := range more {
		args[k] = v
	}
	return args
}

func drawsOf(t *testing.T, from, count int, more map[string]any) string {
	t.Helper()
	var got struct{ Outcomes string }
	args := suppose(more)
	args["from"], args["count"] = from, count
	if e := ask(t, "sure_draws", args, &got); e != "" {
		t.Fatal(e)
	}
	return got.Outcomes
}

// Draws are the same in whatever parts they are made, and what is told of them hangs on all of them alone.
func TestDrawsInParts(t *testing.T) {
	bytes := func(text string) string {
		b, err := base64.StdEncoding.DecodeString(text)
		if err != nil {
			t.Fatal(err)
		}
		return string(b)
	}
	whole := drawsOf(t, 0, 60, nil)
	a, b := drawsOf(t, 0, 25, nil), drawsOf(t, 25, 35, nil)
	if bytes(whole) != bytes(a)+bytes(b) {
		t.Error("parts are not the whole")
	}
	told := func(outcomes ...string) (got report.ShownSure) {
		if e := ask(t, "sure", suppose(map[string]any{"outcomes": outcomes}), &got); e != "" {
			t.Fatal(e)
		}
		return got
	}
	one, two := told(whole), told(a, b)
	x, _ := json.Marshal(one)
	y, _ := json.Marshal(two)
	if string(x) != string(y) || len(one.Widths) != 6 || one.Meets == "" || !strings.Contains(strings.Join(one.Said, " "), "60 draws") {
		t.Errorf("%s\n%s", x, y)
	}
}

// A limit that cannot be taken says so at its entry, and the house's counts meanwhile.
func TestLimitsAreJudged(t *testing.T) {
	var house, odd report.ShownSure
	if e := ask(t, "sure", suppose(nil), &house); e != "" {
		t.Fatal(e)
	}
	typed := map[string]string{"film": "30", "wall": "-4", "count": "lots", "strip": "900 %", "fouling": "40"}
	if e := ask(t, "sure", suppose(map[string]any{"limits": typed}), &odd); e != "" {
		t.Fatal(e)
	}
	find := func(s report.ShownSure, id string) report.ShownBand {
		for _, b := range s.Bands {
			if b.ID == id {
				return b
			}
		}
		t.Fatal(id)
		return report.ShownBand{}
	}
	for _, id := range []string{"wall", "count", "strip"} {
		was, is := find(house, id), find(odd, id)
		if is.Wrong == "" || is.Limit != typed[id] || is.Low != was.Low || is.High != was.High {
			t.Errorf("%s: %+v, was %+v", id, is, was)
		}
	}
	if was, is := find(house, "film"), find(odd, "film"); is.Wrong != "" || is.Low == was.Low || is.Limit != "30" {
		t.Errorf("%+v, was %+v", is, was)
	}
	if f := find(house, "fouling"); f.High != "" || f.Left != 0 {
		t.Errorf("fouling is off though nobody asked: %+v", f)
	}
	if f := find(odd, "fouling"); f.High == "" || f.Left == 0 {
		t.Errorf("fouling is asked for: %+v", f)
	}
	if b := house.Bands[0]; b.Left != -1 && b.Right != 1 {
		t.Errorf("the first bar is the widest: %+v", b)
	}
}

// A design that cannot be rated says why, and keeps its entries.
func TestSureOfWhatCannotBeRated(t *testing.T) {
	var got report.ShownSure
	d := cases.First()
	f := d.Fields["fin_height"]
	f.Text = "900 m"
	d.Fields["fin_height"] = f
	if e := ask(t, "sure", suppose(map[string]any{"document": d}), &got); e != "" {
		t.Fatal(e)
	}
	if got.Absent == "" || len(got.Bands) != 10 || len(got.Widths) != 0 {
		t.Errorf("%+v", got)
	}
}
