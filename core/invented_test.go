package core

import (
	"math"
	"slices"
	"strings"
	"testing"

	"finwright/core/airside"
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/drawing/finned"
	"finwright/core/drawing/sheet"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/shop/verdict"
	"finwright/core/tube"
	"finwright/core/units"
)

// What is put into a list is found wherever the list is looked at, by nothing else than
// being in it. Each test of this file invents a part, and takes it out again.

// evaluated returns the default design, changed by pairs of field and text, with all its figures.
func evaluated(t *testing.T, pairs ...string) (document.Document, design.Production, design.Result) {
	t.Helper()
	d := document.New()
	for i := 0; i < len(pairs); i += 2 {
		d.Fields[pairs[i]] = document.Entry{Text: pairs[i+1], Origin: document.Customer}
	}
	house := shop.House()
	in, h, err := design.ReadAndRate(d, &house)
	if err != nil {
		t.Fatal(err)
	}
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
		Compute: func(x *airside.Crossing) airside.Film {
			nu := 2 * (x.Reynolds / 200) * x.Prandtl()
			return airside.Film{Coefficient: nu * x.Conductivity / x.OD, Nusselt: nu, Reynolds: x.Reynolds}
		},
		Args: func(x *airside.Crossing, a airside.Film) []figure.Arg {
			return []figure.Arg{{Symbol: "Re_half", Kind: units.Count, SI: a.Reynolds / 200}, {Symbol: "Pr", Kind: units.Factor, SI: x.Prandtl()}}
		},
		Limits: func(to []figure.Limit, x *airside.Crossing) []figure.Limit {
			return append(to, figure.Limit{Variable: "invented", Kind: units.Count, Value: float64(x.Rows), Low: 1, High: 99})
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

	d, _, result := evaluated(t, "film_method", "invented")
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
	if i := slices.IndexFunc(shown, func(m report.ShownMethod) bool { return m.ID == "invented" }); i < 0 || !shown[i].Used || shown[i].Label != "Invented airside.invented" || shown[i].State != figure.Good {
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
				v.State, v.Why = figure.No, message.New("shop.why.invented", "limit", message.Amount{Kind: units.Distance, SI: 5})
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
	i := slices.IndexFunc(shown, func(v report.ShownVerdict) bool { return v.Rule == "invented" })
	if i < 0 || shown[i].Label != "Invented shop.rule.invented" || shown[i].State != figure.No || shown[i].Change == nil || !strings.Contains(shown[i].Change.Text, "5000 mm") {
		t.Errorf("the rules show %+v", shown)
	}
}

// A fin let into a groove and held by tension besides.
func TestInventedFinType(t *testing.T) {
	listed := tube.Fixings
	defer func() { tube.Fixings = listed }()
	source := material.Source{Key: "bond.source.judged", Status: material.Judgement}
	invented := &tube.Fixing{
		Type: "invented", Tension: true, Contact: tube.GrooveWall, Forming: material.Groove, Section: tube.GrooveSection,
		Bond: material.Value{SI: 7e-6, Source: source}, Limits: tube.Limits{House: material.Value{SI: 333, Source: source}},
		Usual: tube.Usual{Growth: 0.003, StripRatio: 1, LeastWall: 0.002, Spindle: 10},
	}
	tube.Fixings = append(slices.Clone(listed), invented)
	texts := with("choice.fin_type.invented", "when.invented")

	if got, want := fixingFaults(message.English(), invented), []string{"no text choice.fin_type.invented", "no text when.invented"}; !slices.Equal(got, want) {
		t.Errorf("without a text the walk says %q, want %q", got, want)
	}
	if got := fixingFaults(texts, invented); got != nil {
		t.Errorf("with its text the walk says %q", got)
	}
	said := *invented
	*invented = tube.Fixing{Type: "invented", Layers: 1, Contact: "nowhere", Section: "none"}
	got := strings.Join(fixingFaults(texts, invented), "; ")
	for _, want := range []string{"no bond;", "no metal bears forming", "a foot that is not drawn", "no contact: bond: no contact nowhere", "no drawing: finned: no section none"} {
		if !strings.Contains(got, want) {
			t.Errorf("of a type of which nothing is said the walk does not say %q: %s", want, got)
		}
	}
	*invented = said

	d, plan, result := evaluated(t, "fin_type", "invented", "quantity", "20")
	w := report.Writer{Texts: texts, System: units.SI}
	for id, symbols := range map[string]string{"strip_width": "w = h_f + g", "bond_loss": "T_loss = 20 + e_0 / (α_f − α_t)"} {
		f, _ := result.Find(id)
		if work := w.Working(f); work.Symbols != symbols || work.Absent != "" {
			t.Errorf("working of %s: %+v", id, work)
		}
	}
	form := map[string]report.FormField{}
	for _, f := range w.View(d, nil, &result).Fields {
		form[f.ID] = f
	}
	if !form["groove_depth"].Used || form["foot_lap"].Used || form["house_limit"].Auto != "333 °C" || form["bond_resistance"].Auto == "" {
		t.Errorf("the form holds %+v", form)
	}
	if types := field.Must("fin_type"); !slices.Contains(types.Choices(), "invented") || texts.Text(types.ChoiceKey("invented")) != "Invented choice.fin_type.invented" {
		t.Error("the form does not offer the type")
	}
	rules := w.Making(&plan, report.Room{Wide: 900}).Verdicts
	if i := slices.IndexFunc(rules, func(v report.ShownVerdict) bool { return v.Rule == "fin_type" }); i < 0 || rules[i].State != figure.No || !strings.Contains(rules[i].Why, "Invented choice.fin_type.invented") {
		t.Errorf("the rules say %+v", rules)
	}
	tb := tubeOf("invented")
	scene := finned.Compose(tb, finned.Options{System: units.SI, WidthPx: 760, HeightPx: 470, Text: texts})
	if !slices.ContainsFunc(scene.Texts, func(x sheet.Text) bool { return x.ID == "dim-groove_depth" }) {
		t.Error("the drawing has no groove")
	}
	house := shop.House()
	for len(house.Lines[0].Types) < len(listed) { // by then the line makes each type of which something is usual
		var faults []shop.Fault
		if house, faults = house.More("lines/0/types"); faults != nil {
			t.Fatal(faults)
		}
	}
	if way, made := house.Lines[0].Practice("invented"); !made || way.Growth != 0.003 {
		t.Errorf("a line that makes it: %+v", way)
	}
}

func TestInventedMetal(t *testing.T) {
	listed := material.FinMetals
	defer func() { material.FinMetals = listed }()
	invented := listed[0]
	invented.ID = "invented"
	invented.Conductivity.Points = []material.Point{{At: 20, SI: 123}}
	material.FinMetals = append(slices.Clone(listed), invented)
	texts := with("metal.invented")

	d, plan, result := evaluated(t, "fin_metal", "invented")
	w := report.Writer{Texts: texts, System: units.SI}
	k, _ := result.Find("conductivity")
	if work := w.Working(k); k.SI != 123 || work.Absent != "" || !strings.Contains(work.Result, "123") {
		t.Errorf("conductivity %g, working %+v", k.SI, work)
	}
	if metals := field.Must("fin_metal"); !slices.Contains(metals.Choices(), "invented") || texts.Text(metals.ChoiceKey("invented")) != "Invented metal.invented" {
		t.Error("the form does not offer the metal")
	}
	if !w.View(d, nil, &result).Valid {
		t.Error("the view is not valid")
	}
	rules := w.Making(&plan, report.Room{Wide: 900}).Verdicts
	if i := slices.IndexFunc(rules, func(v report.ShownVerdict) bool { return v.Rule == "fin_metal" }); i < 0 || rules[i].State != figure.No || !strings.Contains(rules[i].Why, "Invented metal.invented") || rules[i].Change == nil {
		t.Errorf("the rules say %+v", rules)
	}
}
