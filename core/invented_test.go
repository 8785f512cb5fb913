package core

import (
	"math"
	"slices"
	"strings"
	"testing"

	"finwright/core/airside"
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/shop/verdict"
	"finwright/core/units"
)

// What is put into a list is found wherever the list is looked at, by nothing else than
// being in it. Each test of this file invents a part, and takes it out again.

// evaluated returns the default design, changed by pairs of field and text, with all its figures.
func evaluated(t *testing.T, pairs ...string) (document.Document, design.Making, design.Result) {
	t.Helper()
	d := document.New()
	for i := 0; i < len(pairs); i += 2 {
		d.Fields[pairs[i]] = document.Field{Text: pairs[i+1], Origin: document.Customer}
	}
	in, h, err := design.ReadAndRate(d)
	if err != nil {
		t.Fatal(err)
	}
	house := shop.House()
	in.Shop = &house
	result := design.Evaluate(in, h)
	plan := design.Make(in, result.Heat)
	result.AddMaking(&plan)
	return d, plan, result
}

// with returns the catalogue with texts of the given keys.
func with(keys ...string) message.Catalogue {
	texts := map[string]string{}
	for _, key := range keys {
		texts[key] = "Invented " + key
	}
	return message.English().With(texts)
}

func TestInventedMethod(t *testing.T) {
	listed := airside.FilmMethods
	defer func() { airside.FilmMethods = listed }()
	invented := airside.Method[airside.Film]{
		ID:      "invented",
		Formula: figure.Formula{Result: "Nu", Expression: "2 Re_half Pr", Source: "source.invented", Valid: "valid.invented"},
		Compute: func(b airside.Bank, f airside.Flow) airside.Film {
			re := f.FaceMassVelocity / b.FreeRatio() * b.OD / f.Viscosity
			nu := 2 * (re / 200) * f.Prandtl()
			return airside.Film{Coefficient: nu * f.Conductivity / b.OD, Nusselt: nu, Reynolds: re}
		},
		Args: func(_ airside.Bank, f airside.Flow, a airside.Film) []figure.Arg {
			return []figure.Arg{{Symbol: "Re_half", Kind: units.Count, SI: a.Reynolds / 200}, {Symbol: "Pr", Kind: units.Factor, SI: f.Prandtl()}}
		},
		Limits: func(to []figure.Limit, b airside.Bank, _ airside.Flow) []figure.Limit {
			return append(to, figure.Limit{Variable: "invented", Kind: units.Count, Value: float64(b.Rows), Low: 1, High: 99})
		},
	}
	airside.FilmMethods = append([]airside.Method[airside.Film]{invented}, listed...)

	b, f := bank(t)
	want := []string{
		"no text airside.invented", "no text source.invented", "no text valid.invented", "no text limit.invented", "no text symbol.Re_half",
	}
	if got := methodFaults(message.English(), invented, b, f); !slices.Equal(got, want) {
		t.Errorf("without texts the walk says %q, want %q", got, want)
	}
	texts := with("airside.invented", "source.invented", "valid.invented", "limit.invented", "symbol.Re_half")
	if got := methodFaults(texts, invented, b, f); got != nil {
		t.Errorf("with texts the walk says %q", got)
	}

	d, _, result := evaluated(t)
	nusselt, _ := result.Find("nusselt")
	film, _ := result.Find("film")
	var re, pr float64
	for _, a := range nusselt.Args {
		switch a.Symbol {
		case "Re_half":
			re = a.SI
		case "Pr":
			pr = a.SI
		}
	}
	if math.Abs(nusselt.SI/(2*re*pr)-1) > 1e-12 || math.Abs(film.SI*film.Args[2].SI/(film.Args[0].SI*film.Args[1].SI)-1) > 1e-12 {
		t.Errorf("figures: Nu %g of %v, film %g of %v", nusselt.SI, nusselt.Args, film.SI, film.Args)
	}
	w := report.Writer{Texts: texts, System: units.SI}
	work := w.Working(nusselt)
	if work.Symbols != "Nu = 2 Re_half Pr" || !strings.HasPrefix(work.Numbers, "Nu = 2 ") || work.Source != "Invented source.invented" || work.Valid != "Invented valid.invented" || len(work.Where) != 2 {
		t.Errorf("working %+v", work)
	}
	shown := w.View(d, nil, &result).Methods
	if i := slices.IndexFunc(shown, func(m report.Method) bool { return m.ID == "invented" }); i < 0 || !shown[i].Used || shown[i].Label != "Invented airside.invented" || shown[i].State != figure.Good {
		t.Errorf("the list of correlations shows %+v", shown)
	}
}

func TestInventedRule(t *testing.T) {
	listed := verdict.LineRules
	defer func() { verdict.LineRules = listed }()
	// No tube of more than five metres.
	invented := &verdict.Rule{
		ID: "invented", Field: "tube_length", Figure: "cut_length", Changes: []string{"tube_length"},
		Judge: func(p *verdict.Pair) verdict.Verdict {
			v := verdict.Verdict{State: figure.Good, Measure: &verdict.Measure{Kind: units.Distance, Value: float64(p.Order.Tube.Length), Limit: 5}}
			if v.Measure.Margin = 1 - v.Measure.Value/5; v.Measure.Margin < 0 {
				v.State, v.Why = figure.No, message.New("shop.why.invented", "limit", message.Quantity{Kind: units.Distance, SI: 5})
				v.Change = []verdict.Setting{{Field: "tube_length", Kind: units.Distance, SI: 5}}
			}
			return v
		},
	}
	verdict.LineRules = append(slices.Clone(listed), invented)
	texts := with("shop.rule.invented", "shop.why.invented")

	d, plan, result := evaluated(t, "tube_length", "6 m")
	if got, want := ruleFaults(message.English(), invented, ids(result)), "no text shop.rule.invented"; len(got) < 2 || got[0] != want || !strings.Contains(got[1], "shop.why.invented") {
		t.Errorf("without texts the walk says %q", got)
	}
	if got := ruleFaults(texts, invented, ids(result)); got != nil {
		t.Errorf("with texts the walk says %q", got)
	}
	wrong := *invented
	wrong.Field, wrong.Figure, wrong.Changes = "nowhere", "nothing", []string{"no_such"}
	if got := strings.Join(ruleFaults(texts, &wrong, ids(result)), "; "); !strings.HasPrefix(got, "no field nowhere; no field no_such; no figure nothing; no setting of no_such") {
		t.Errorf("of a rule that leads nowhere the walk says %s", got)
	}

	cut, _ := result.Find("cut_length")
	if cut.State != figure.No || len(cut.Why) == 0 {
		t.Errorf("the figure is %s: %v", cut.State, cut.Why)
	}
	w := report.Writer{Texts: texts, System: units.SI}
	if work := w.Working(cut); !slices.ContainsFunc(work.Remarks, func(s string) bool { return strings.Contains(s, "Invented shop.why.invented") }) {
		t.Errorf("its working remarks %q", work.Remarks)
	}
	if i := slices.IndexFunc(w.View(d, nil, &result).Fields, func(f report.FormField) bool {
		return f.ID == "tube_length" && strings.Contains(f.Watch, "Invented shop.rule.invented")
	}); i < 0 {
		t.Error("the form does not remark on the field")
	}
	plan.TryChanges(d)
	shown := w.Making(&plan, report.Room{Wide: 900}).Verdicts
	i := slices.IndexFunc(shown, func(v report.Verdict) bool { return v.Rule == "invented" })
	if i < 0 || shown[i].Label != "Invented shop.rule.invented" || shown[i].State != figure.No || shown[i].Change == nil || !strings.Contains(shown[i].Change.Text, "5000 mm") {
		t.Errorf("the rules show %+v", shown)
	}
}
