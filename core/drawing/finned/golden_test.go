package finned

import (
	"encoding/json"
	"flag"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"testing"

	"finwright/core/drawing/svg"
	"finwright/core/tube"
	"finwright/core/units"
)

var update = flag.Bool("update", false, "rewrite the golden drawings")

var number = regexp.MustCompile(`-?\d+(\.\d+)?([eE][-+]?\d+)?`)

// golden compares a text with the file kept: words exactly, numbers within a tolerance relative to the larger of
// 1 and the number, since machines may round the last digits differently.
func golden(t *testing.T, name, got string, tolerance float64) {
	t.Helper()
	file := filepath.Join("../../../testdata/golden", name)
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	want := string(text)
	if number.ReplaceAllString(got, "#") != number.ReplaceAllString(want, "#") {
		t.Fatalf("%s: the words differ; see what changed with -update and git diff", name)
	}
	a, b := number.FindAllString(got, -1), number.FindAllString(want, -1)
	for i := range a {
		x, _ := strconv.ParseFloat(a[i], 64)
		y, _ := strconv.ParseFloat(b[i], 64)
		if math.Abs(x-y) > tolerance*max(1, math.Abs(y)) {
			t.Fatalf("%s: number %d is %s, kept as %s", name, i, a[i], b[i])
		}
	}
}

func TestGolden(t *testing.T) {
	for name, c := range map[string]struct {
		tube tube.Tube
		o    Options
	}{
		"drawing_footed":       {example(tube.Footed), options(units.SI, 760, 470)},
		"drawing_lapped_phone": {example(tube.KnurledOverlap), options(units.US, 360, 520)},
		"drawing_embedded":     {example(tube.Embedded), options(units.US, 640, 430)},
		"drawing_extruded":     {example(tube.Extruded), options(units.SI, 600, 360)},
		"drawing_warm":         {example(tube.Embedded), warmed(example(tube.Embedded), units.SI, 640, 430)},
		"drawing_welded_pipe":  {sized(tube.Welded, 168.3, 7.1, 19.05, 1.27, 6), options(units.SI, 760, 470)},
	} {
		s := Compose(c.tube, c.o)
		golden(t, name+".svg", svg.Write(s, svg.Style{}), 1.001e-3) // written to the micrometre
		s.Ink = nil                                                 // the picture shows it
		text, err := json.MarshalIndent(s, "", " ")
		if err != nil {
			t.Fatal(err)
		}
		golden(t, name+".json", string(text)+"\n", 1e-9)
	}
}
