package report

import (
	"slices"
	"strings"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/units"
)

// A saved row and today's are the same up to the printed digits; what is above them is told with both values.
func TestChangedTellsWhatIsPrintedOtherwise(t *testing.T) {
	in, err := design.Read(document.New())
	if err != nil {
		t.Fatal(err)
	}
	row, err := design.RowOf(in)
	if err != nil {
		t.Fatal(err)
	}
	w := Writer{Texts: message.English(), System: units.SI}
	var figures []string
	for _, f := range design.RowFigures {
		figures = append(figures, f.ID)
	}
	at := func(id string) int { return slices.Index(figures, id) }
	duty := row.Cells[at("duty")].SI
	for name, c := range map[string]struct {
		change func(cells []*float64) []*float64
		says   []string
	}{
		"nothing":                   {func(c []*float64) []*float64 { return c }, nil},
		"less than a printed digit": {func(c []*float64) []*float64 { *c[at("duty")] = duty * (1 + 9e-6); return c }, nil},
		"a percent":                 {func(c []*float64) []*float64 { *c[at("duty")] = duty * 1.01; return c }, []string{"Duty", "was"}},
		"what was not there":        {func(c []*float64) []*float64 { c[at("duty")] = nil; return c }, []string{"Duty", "had no value"}},
		"what is not there":         {func(c []*float64) []*float64 { x := 42.0; c[at("price")] = &x; return c }, []string{"Price", "was"}},
		"a refusal":                 {func([]*float64) []*float64 { return nil }, []string{"refused"}},
	} {
		lines := w.Changed(figures, c.change(row.Saved()), row, nil)
		if (c.says == nil) != (len(lines) == 0) || len(lines) > 1 {
			t.Errorf("%s: %q", name, lines)
			continue
		}
		for _, word := range c.says {
			if !strings.Contains(lines[0], word) {
				t.Errorf("%s: %q does not say %q", name, lines[0], word)
			}
		}
	}
	// A figure that this program or that one does not know is no difference.
	if lines := w.Changed([]string{"of_old"}, []*float64{new(float64)}, row, nil); lines != nil {
		t.Errorf("an unknown figure: %q", lines)
	}
	wrong := design.FieldErrors{{Field: "tube_od", Message: message.New("error.entries")}}
	if lines := w.Changed(figures, row.Saved(), design.Row{}, wrong); len(lines) != 1 {
		t.Errorf("refused now: %q", lines)
	}
}

func TestCauses(t *testing.T) {
	w := Writer{Texts: message.English(), System: units.SI}
	was := document.Basis{Build: "a", Shop: "x"}
	for want, now := range map[string]document.Basis{
		"program": {Build: "b", Shop: "x"}, "shop": {Build: "a", Shop: "y"}, "program and the shop": {Build: "b", Shop: "y"},
	} {
		if said := w.Cause(was, now); !strings.Contains(said, want) {
			t.Errorf("%q does not say %q", said, want)
		}
	}
	named := document.Basis{Build: "a", Shop: "x", Named: "Theirs"}
	for want, dated := range map[string]string{
		"The shop is another. Prices were those of Theirs; here stand those of Ours.":                "",
		"The shop is another. Prices were those of Theirs, of 2026-10-05; here stand those of Ours.": "2026-10-05",
	} {
		named.Dated = dated
		if said := w.Cause(named, document.Basis{Build: "a", Shop: "y", Named: "Ours"}); said != want {
			t.Errorf("%q, want %q", said, want)
		}
	}
}
