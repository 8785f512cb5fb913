package bridge

import (
	"encoding/xml"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/paper"
	"finwright/core/report"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// thing is an entity as a reader finds it: what it is, on which layer, its numbers and texts by code, and the corners that follow it.
type thing struct {
	is, layer string
	values    map[int]string
	corners   []ink.Point
	block     string // that it stands in
}

func (e thing) number(code int) float64 {
	x, err := strconv.ParseFloat(e.values[code], 64)
	if err != nil {
		return math.NaN()
	}
	return x
}

func (e thing) at(code int) ink.Point { return ink.At(e.number(code), e.number(code+10)) }

// readDXF reads a file by the rules of the format alone: pairs of lines, a code and a value.
func readDXF(t *testing.T, text string) (things []thing, layers []string) {
	t.Helper()
	lines := strings.Split(strings.TrimSuffix(text, "\r\n"), "\r\n")
	if len(lines)%2 != 0 {
		t.Fatalf("%d lines", len(lines))
	}
	var now *thing
	block, section := "", ""
	for i := 0; i < len(lines); i += 2 {
		code, err := strconv.Atoi(strings.TrimSpace(lines[i]))
		if err != nil {
			t.Fatalf("line %d: %q is no code", i+1, lines[i])
		}
		value := lines[i+1]
		if code != 0 {
			if now != nil {
				now.values[code] = value
			}
			continue
		}
		if now != nil {
			now.layer = now.values[8]
			switch now.is {
			case "SECTION":
				section = now.values[2]
			case "BLOCK":
				block = now.values[2]
			case "ENDBLK":
				block = ""
			case "LAYER":
				layers = append(layers, now.values[2])
			case "VERTEX":
				last := &things[len(things)-1]
				last.corners = append(last.corners, now.at(10))
			case "SEQEND", "ENDSEC", "TABLE", "ENDTAB":
			default:
				if section == "ENTITIES" || block != "" {
					now.block = block
					things = append(things, *now)
				}
			}
		}
		now = &thing{is: value, values: map[int]string{}}
	}
	if now == nil || now.is != "EOF" {
		t.Error("the file does not end")
	}
	return things, layers
}

// A drawing for other programs is read by one that is not what wrote it: outlines are closed, all lengths are true, every thing is on a
// layer that there is, and each dimension has its block and says what it measures.
func TestExchangeIsTrue(t *testing.T) {
	for _, c := range cases.List() {
		args := map[string]any{"document": c.Document(), "kind": paper.Datasheet, "format": "dxf", "units": units.US, "answers": map[string]string{}, "day": "2026-11-28", "program": "1", "beside": []any{}, "names": []string{}}
		var got drawingOut
		if e := ask(t, "paper_draw", args, &got); e != "" {
			t.Fatal(e)
		}
		for _, r := range got.Text {
			if r > 126 {
				t.Fatalf("%s: a letter %q that not every reader has", c.ID, r)
			}
		}
		in, _, err := rated(c.Document(), report.Section{}, "")
		if err != nil {
			t.Fatal(err)
		}
		things, layers := readDXF(t, got.Text)
		crated := 0
		var diameters []float64
		long, area, finned := 0.0, 0.0, 0.0
		dims := 0
		blocks := map[string]int{}
		for _, e := range things {
			if !slices.Contains(layers, e.layer) {
				t.Errorf("%s: %s on no layer %q", c.ID, e.is, e.layer)
			}
			blocks[e.block]++
			switch e.is {
			case "CIRCLE":
				diameters = append(diameters, 2*e.number(40))
				if e.layer == "CRATE" {
					crated++
				}
			case "POLYLINE":
				if e.values[70] != "1" || len(e.corners) < 3 {
					t.Errorf("%s: an outline of %d corners is open", c.ID, len(e.corners))
				}
				lo, hi := e.corners[0].X, e.corners[0].X
				for _, p := range e.corners {
					lo, hi = min(lo, p.X), max(hi, p.X)
				}
				switch {
				case e.layer == "TUBE":
					long = max(long, hi-lo)
				case e.layer == "FIN" && len(e.corners) == 4 && hi-lo > 100:
					finned += hi - lo
				case e.layer == "FIN":
					area += math.Abs(ink.Area(e.corners))
				}
			case "DIMENSION":
				dims++
				measured := math.Abs(e.at(13).X - e.at(14).X)
				if e.values[50] == "90" {
					measured = math.Abs(e.at(13).Y - e.at(14).Y)
				}
				said, err := strconv.ParseFloat(strings.TrimPrefix(e.values[1], "%%c"), 64)
				if err != nil || math.Abs(said-measured) > 0.006 {
					t.Errorf("%s: a dimension of %g says %q", c.ID, measured, e.values[1])
				}
				if !strings.HasPrefix(e.values[2], "*D") {
					t.Errorf("%s: a dimension in block %q", c.ID, e.values[2])
				}
			}
		}
		packing := paperOf(t, c.Document(), paper.Packing, nil).Paper
		if per := pairOf(t, packing, "per_crate"); crated != 2*per {
			t.Errorf("%s: %d circles in a crate of %d tubes", c.ID, crated, per)
		}
		tube := &in.Tube
		for _, want := range []units.Length{tube.OD, tube.FinOD(), tube.InsideOD()} {
			if !slices.ContainsFunc(diameters, func(d float64) bool { return math.Abs(d-want.Millimetres()) < 1e-5 }) {
				t.Errorf("%s: no circle of %g mm", c.ID, want.Millimetres())
			}
		}
		if math.Abs(long-tube.Length.Millimetres()) > 1e-5 || math.Abs(finned-tube.FinnedLength().Millimetres()) > 1e-5 {
			t.Errorf("%s: %g mm long, finned %g mm", c.ID, long, finned)
		}
		// Four turns of strip in section: of a footed one its blade and foot, of others the blade.
		blade := float64(tube.Fin.Height) * float64(tube.MeanThickness()) * 1e6
		if area < 4*blade*0.9 || area > 4*(blade+tube.Fin.Strip.Millimetres()*tube.Pitch().Millimetres()*2.2)*1.1 {
			t.Errorf("%s: %g mm2 of fin in section, a blade has %g", c.ID, area, blade)
		}
		if dims < 10 || blocks["*D1"] < 4 {
			t.Errorf("%s: %d dimensions, the first of %d things", c.ID, dims, blocks["*D1"])
		}
		if !strings.Contains(got.Text, "Not for pressure design.") || !strings.HasSuffix(got.Name, ".dxf") {
			t.Errorf("%s: %s does not say what it is not for", c.ID, got.Name)
		}
	}
	var picture drawingOut
	args := map[string]any{"document": cases.First(), "kind": paper.Datasheet, "format": "svg", "units": "si", "answers": map[string]string{}, "day": "2026-11-28", "program": "1", "beside": []any{}, "names": []string{}}
	if e := ask(t, "paper_draw", args, &picture); e != "" || xml.Unmarshal([]byte(picture.Text), new(struct{})) != nil || !strings.Contains(picture.Text, "Not for pressure design.") {
		t.Errorf("a picture that is none: %s", e)
	}
	var none drawingOut
	if e := ask(t, "paper_draw", map[string]any{"document": saying(cases.First(), "tube_od", "wide"), "kind": paper.Datasheet, "format": "dxf", "units": "si", "answers": map[string]string{}, "day": "2026-11-28", "program": "1", "beside": []any{}, "names": []string{}}, &none); e == "" {
		t.Error("a tube that cannot be measured is drawn")
	}
}

// pairOf is the number that a paper says of a figure.
func pairOf(t *testing.T, p paper.Paper, figure string) int {
	t.Helper()
	for _, b := range p.Blocks {
		for _, one := range b.Pairs {
			if one.Figure != figure {
				continue
			}
			n, err := strconv.Atoi(one.Value)
			if err != nil {
				t.Fatalf("%s is %q", figure, one.Value)
			}
			return n
		}
	}
	t.Fatalf("%s does not say %s", p.Title, figure)
	return 0
}
