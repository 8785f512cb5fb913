package report

import (
	"fmt"
	"hash/fnv"
	"maps"
	"slices"
	"testing"

	"finwright/core/airside"
	"finwright/core/design"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/paper"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// methodsMark is of what the methods were on their day.
const methodsMark = "2b5ea10c0774782a"

// Whoever changes a formula, a correlation or a metal changes the day of the methods too, which stands on each paper.
func TestMethodsBearTheirDay(t *testing.T) {
	h := fnv.New64a()
	for _, id := range slices.Sorted(maps.Keys(figure.Formulas)) {
		fmt.Fprintln(h, id, figure.Formulas[id])
	}
	for _, m := range airside.FilmMethods {
		fmt.Fprintln(h, m.ID, m.Formula)
	}
	for _, m := range airside.DropMethods {
		fmt.Fprintln(h, m.ID, m.Formula)
	}
	for _, m := range slices.Concat(material.FinMetals, material.TubeMetals) {
		fmt.Fprintln(h, m)
	}
	if got := fmt.Sprintf("%x", h.Sum64()); got != methodsMark {
		t.Errorf("the methods are not those of %s: give MethodsOf the day of the change, and methodsMark %s", MethodsOf, got)
	}
}

// What the steps of a calculation take from one another stands before them.
func TestStepsStandBehindWhatTheyTake(t *testing.T) {
	in, h, err := design.ReadAndRate(cases.First(), nil)
	if err != nil {
		t.Fatal(err)
	}
	moved := 0
	for _, g := range design.Evaluate(in, h).Groups {
		list := inOrder(g.Figures)
		if len(list) != len(g.Figures) {
			t.Fatalf("%s: %d of %d", g.ID, len(list), len(g.Figures))
		}
		at := map[string]int{}
		for i, f := range list {
			if f.Absent.None() {
				at[f.Law().Result] = i
			}
			if f.ID != g.Figures[i].ID {
				moved++
			}
		}
		for i, f := range list {
			for _, a := range f.Args {
				if from, there := at[a.Symbol]; there && from > i && f.Law().Result != a.Symbol {
					t.Errorf("%s: %s takes %s, which stands behind it", g.ID, f.ID, a.Symbol)
				}
			}
		}
	}
	if moved == 0 {
		t.Error("nothing was moved")
	}
}

// The floor hears of no money, and of all that may hurt.
func TestFloorHearsOfWhatMayHurt(t *testing.T) {
	c := shop.House()
	in, h, err := design.ReadAndRate(cases.First(), &c)
	if err != nil {
		t.Fatal(err)
	}
	res, m := design.Evaluate(in, h), design.Make(in, h)
	res.AddMaking(&m)
	w := Writer{Texts: message.English(), System: units.SI, Currency: c.Currency}
	papers := Papers{Writer: w, Document: cases.First(), In: &in, Result: &res, Made: &m}
	var said []string
	for _, b := range papers.Paper(paper.Traveller).Blocks {
		if b.Form == paper.Caution {
			said = append(said, b.Lines...)
		}
	}
	for _, one := range m.Plan.Cautions() {
		if !slices.Contains(said, w.Texts.Text("caution."+one.ID)) {
			t.Errorf("the traveller does not say %s", one.ID)
		}
	}
}

// Each property that a calculation takes says whence it is.
func TestPropertiesNameTheirSource(t *testing.T) {
	c := shop.House()
	for _, one := range cases.List() {
		in, h, err := design.ReadAndRate(one.Document(), &c)
		if err != nil {
			t.Fatal(err)
		}
		res := design.Evaluate(in, h)
		p := papering{Papers: &Papers{Writer: Writer{Texts: message.English(), System: units.SI}, Document: one.Document(), In: &in, Result: &res}}
		rows := p.properties()
		if len(rows) != 5 {
			t.Errorf("%s: %d properties", one.ID, len(rows))
		}
		for _, row := range rows {
			if row[3] == "" {
				t.Errorf("%s: %s is from nowhere", one.ID, row[0])
			}
		}
	}
	for _, kind := range []rating.GasKind{rating.MoistAir, rating.DryAir, rating.FlueGas, rating.OwnGas} {
		if !message.English().Has("paper.gas_source." + string(kind)) {
			t.Errorf("no source of %s", kind)
		}
	}
}
