// Package workings runs what the page prints: the expression of every figure, with the numbers that stand beside it, by a
// reader and by functions that share no code with those that made the figure.
package workings

import (
	"cmp"
	"fmt"
	"math"
	"math/big"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"finwright/core/airside"
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
	"finwright/testdata/cases"
)

// made is one design in all its sections.
type made struct {
	in     field.Input
	res    design.Result
	making design.Production
}

func build(d document.Document) (*made, error) {
	in, err := design.Read(d)
	if err != nil {
		return nil, err
	}
	house := shopFor(&in)
	in.MadeBy(&house)
	h, err := design.Rate(in)
	if err != nil {
		return nil, err
	}
	m := made{in: in, res: design.Evaluate(in, h)}
	m.res.AddField(&in)
	m.making = design.Make(in, m.res.Heat)
	if s := m.making.Plan.Strip(); s != nil && in.Job.Quantity%4 == 1 { // strip for it is on hand
		for _, tubes := range []units.Length{4.3, 1.8} {
			house.Buying.StripOnHand = append(house.Buying.StripOnHand, shop.StripOnHand{Metal: in.FinMetal.ID, Width: s.Slit, Thickness: s.Thickness, Mass: s.Mass(tubes * s.PerTube()), Worth: 2 + units.MoneyPerMass(tubes)})
		}
		m.making = design.Make(in, m.res.Heat)
	}
	m.res.AddMaking(&m.making)
	return &m, nil
}

// shopFor returns the shop that makes a design: by the quantity the one that ships, one that buys and charges otherwise, or one that has
// tubes of its size on hand and a price quoted for more of them.
func shopFor(in *field.Input) shop.Capability {
	c, t := shop.House(), &in.Tube
	switch q := in.Job.Quantity; q % 4 {
	case 2:
		c.Buying.Tubes, c.Buying.Offcuts, c.Buying.Spoilt = shop.StockLengths, 0.3, shop.ShopBears
		c.Rates.Overhead, c.Rates.Freight, c.Rates.Least = 0.1, 0.05, 4000
		c.Crate.Bed, c.Foot.By = shop.Bed{}, tube.FewerFins
	case 3:
		quote := shop.Quote{Metal: in.TubeMetal.ID, Way: shop.CutToLength, OD: t.OD, Wall: t.Wall, Length: 2 * t.Length, Price: 2.75, Per: units.CostPerRun, Dated: shop.Undated}
		if q%8 == 3 {
			quote.Price, quote.Per = 22.5, units.CostEach
		}
		c.Buying.Quotes = []shop.Quote{quote}
		c.Buying.OnHand = []shop.TubesOnHand{{Metal: in.TubeMetal.ID, OD: t.OD, Wall: t.Wall, Length: 1.3 * t.Length, Pieces: 7, Heat: "4711", Worth: 11}}
	}
	return c
}

// Tolerances [-]: of a figure, and of one whose way to it cancels or ends early.
const (
	tight = 1e-6
	loose = 1e-4
)

// loosely lists by figure what is held to the wider tolerance, and why.
var loosely = map[string]string{
	"velocity_allowed": "the bank is settled to 1e-3 K at each trial",
}

// rounding is what the terms of a difference lose [-].
const rounding = 1e-13

// listed are the figures whose working is no expression to run, each with its reason.
var listed = map[string]string{
	"growth":         "a statement of the shop: its guess, or what least squares find in its measured tubes, which core/shop tests",
	"growth_scatter": "as growth",
	"water_dew":      "an equation solved for its temperature, which core/fluid holds to IAPWS",
}

// tally counts what was run, by what each formula prints.
type tally struct {
	sync.Mutex
	run, listed int
	formulas    map[string]int
}

// try runs every working of a design.
func (n *tally) try(t testing.TB, name string, d *made) {
	for _, g := range d.res.Groups {
		for i := range g.Figures {
			f := &g.Figures[i]
			if !f.Absent.None() {
				continue
			}
			if n.count(f); listed[f.ID] != "" {
				continue
			}
			if err := d.check(f); err != nil {
				t.Errorf("%s: %s: %s = %s: %v", name, f.ID, f.Law().Result, f.Law().Expression, err)
			}
		}
	}
}

func (n *tally) count(f *figure.Figure) {
	n.Lock()
	defer n.Unlock()
	n.formulas[f.Law().Expression]++
	if listed[f.ID] != "" {
		n.listed++
		return
	}
	n.run++
}

// check runs one working, and the arguments that are explained by others or taken back from the figure.
func (d *made) check(f *figure.Figure) error {
	law := f.Law()
	numbers := map[string]float64{}
	for _, a := range f.Args {
		numbers[a.Symbol] = a.SI
	}
	bits := uint(128)
	if z, ok := numbers["z_e"]; ok {
		bits += uint(6 * z) // products in the brackets agree in their first 2 z/ln 2 bits
	}
	got, err := evaluate(law.Expression, bits, numbers, d.functions(f))
	if err != nil {
		return err
	}
	tolerance := tight
	if loosely[f.ID] != "" {
		tolerance = loose
	}
	terms := 0.0
	for _, a := range f.Args {
		if a.Kind == f.Kind {
			terms = max(terms, math.Abs(a.SI))
		}
	}
	if !near(got, f.SI, tolerance, rounding*max(terms, 0.01)) {
		return fmt.Errorf("the expression gives %.9g, the figure is %.9g; %v", got, f.SI, numbers)
	}
	for _, a := range f.Args {
		if err := d.explained(f, a, numbers); err != nil {
			return err
		}
	}
	return nil
}

func near(got, want, relative, absolute float64) bool {
	return math.Abs(got-want) <= max(relative*math.Abs(want), absolute)
}

// explained runs an argument whose name is an expression, and finds those anew which the code takes back from the figure:
// without that the working would agree with itself alone.
func (d *made) explained(f *figure.Figure, a figure.Arg, numbers map[string]float64) error {
	want, known := math.NaN(), false
	if name, _, _ := strings.Cut(message.English().Text("symbol."+a.Symbol), ","); strings.ContainsAny(name, "√^") {
		var err error
		if want, err = evaluate(name, 64, numbers, nil); err != nil {
			return fmt.Errorf("%s: %w", name, err)
		}
		known = true
	} else if anew, ok := takenBack[f.ID+" "+a.Symbol]; ok {
		want, known = anew(d, numbers), true
	}
	if known && !near(a.SI, want, tight, 1e-12) {
		return fmt.Errorf("%s is %.9g, found anew %.9g", a.Symbol, a.SI, want)
	}
	return nil
}

// functions are what the expression of f may call.
func (d *made) functions(f *figure.Figure) map[string]function {
	one := func(of func(float64) float64) function {
		return func(args []*big.Float) (*big.Float, error) { return big.NewFloat(of(plain(args[0]))), nil }
	}
	choose := func(sign int) function {
		return func(args []*big.Float) (*big.Float, error) {
			return slices.MinFunc(args, func(a, b *big.Float) int { return sign * a.Cmp(b) }), nil
		}
	}
	return map[string]function{
		"exp": one(math.Exp), "ln": one(math.Log), "arctan": one(math.Atan), "sin": one(math.Sin), "cos": one(math.Cos), "round": one(math.Round), "min": choose(1), "max": choose(-1),
		"I_0": besselI(0), "I_1": besselI(3), "K_0": besselK(0), "K_1": besselK(1),
		"I_{1/3}": besselI(1), "I_{2/3}": besselI(2), "I_{−1/3}": besselI(-1), "I_{−2/3}": besselI(-2),
		"march_rolled": march(rolled, f.ID), "march_uniform": march(even, f.ID), "march_linear": march(straight, f.ID),
		"rows": rows, "table": d.table, "fewest": d.fewest, "trial": d.trial, "stock": d.stock, "layers": d.layers,
		"lowest":  d.extreme(f.Kind, func(a, b float64) float64 { return min(a, b) }),
		"highest": d.extreme(f.Kind, func(a, b float64) float64 { return max(a, b) }),
	}
}

// Of the examples, in every section, every figure is what its working says.
func TestExamplesWork(t *testing.T) {
	n := tally{formulas: map[string]int{}}
	for _, c := range cases.List() {
		d, err := build(c.Document())
		if err != nil {
			t.Fatal(err)
		}
		n.try(t, c.ID, d)
	}
	t.Logf("%d workings run, %d listed", n.run, n.listed)
}

// What the page shows is what was run: the same symbols with the same numbers, to the digits that it prints.
func TestPageShowsWhatIsRun(t *testing.T) {
	d, err := build(cases.First())
	if err != nil {
		t.Fatal(err)
	}
	w := report.Writer{Texts: message.English(), System: units.SI}
	for _, g := range d.res.Groups {
		for _, f := range g.Figures {
			shown := w.Working(f)
			for i, where := range shown.Where {
				printed, err := strconv.ParseFloat(where.SI, 64)
				if a := f.Args[i]; err != nil || where.Symbol != a.Symbol || !near(printed, a.SI, 5.1e-6, 0) {
					t.Errorf("%s: %s is printed as %q, is %.9g", f.ID, a.Symbol, where.SI, a.SI)
				}
			}
		}
	}
}

// The check can fail: a figure that is off by 1e-5, or an expression with an error in it, is told.
func TestCheckTells(t *testing.T) {
	d, err := build(cases.First())
	if err != nil {
		t.Fatal(err)
	}
	for _, g := range d.res.Groups {
		for _, f := range g.Figures {
			if !f.Absent.None() || listed[f.ID] != "" || f.SI == 0 {
				continue
			}
			off := f
			off.SI *= 1 + 1e-5
			law := f.Law()
			law.Expression = "2 (" + law.Expression + ")"
			twice := f
			twice.Stated = &law
			for what, wrong := range map[string]figure.Figure{"a figure off by 1e-5": off, "a doubled expression": twice} {
				if d.check(&wrong) == nil {
					t.Errorf("%s: %s passes", f.ID, what)
				}
			}
		}
	}
}

// Of random designs too.
func TestRandomDesignsWork(t *testing.T) {
	n := tally{formulas: map[string]int{}}
	proof.Proof{Share: 8, Full: 200, Seed: 25}.Run(t, func(c *proof.Case) {
		for {
			doc := draw(c.Rand)
			if d, err := build(doc); err == nil {
				n.try(c, fmt.Sprint(changed(doc)), d)
				return
			}
		}
	})
	t.Logf("%d workings of %d expressions run, %d listed", n.run, len(n.formulas), n.listed)
	if !proof.Long() {
		return
	}
	met := func(id string, f figure.Formula) {
		if n.formulas[f.Expression] == 0 {
			t.Errorf("no design shows %s", id)
		}
	}
	for id, f := range figure.Formulas {
		met(id, f)
	}
	for _, m := range airside.FilmMethods {
		met(m.ID, m.Formula)
	}
	for _, m := range airside.DropMethods {
		met(m.ID, m.Formula)
	}
}

// changed are the entries that differ from the house's.
func changed(d document.Document) []string {
	var out []string
	for id, f := range document.New().Fields {
		if now := d.Fields[id].Text; now != f.Text {
			out = append(out, id+" "+now)
		}
	}
	slices.SortFunc(out, cmp.Compare)
	return out
}
