package core

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"finwright/core/airside"
	"finwright/core/bond"
	"finwright/core/design"
	"finwright/core/drawing/finned"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/fluid"
	"finwright/core/internal/sample"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/shop/verdict"
	"finwright/core/tube"
	"finwright/core/units"
)

// A part is complete when all that is said of it is there, chosen or not. The tests of
// this file walk the lists of parts and name what is missing.

// attempt says that there is no such thing where try fails or panics.
func attempt(what string, try func() bool) (faults []string) {
	defer func() {
		if problem := recover(); problem != nil {
			faults = []string{fmt.Sprint("no ", what, ": ", problem)}
		}
	}()
	if !try() {
		return []string{"no " + what}
	}
	return nil
}

// bank is a common bank in a stream, for methods to be asked about.
func bank(t *testing.T) (airside.Bank, airside.Flow) {
	t.Helper()
	air, err := fluid.DryAir(313.15, fluid.StandardPressure)
	if err != nil {
		t.Fatal(err)
	}
	return airside.Bank{
		OD: 0.0254, FinOD: 0.05715, FinPitch: 0.00254, RootThickness: 0.4e-3, MeanThickness: 0.3e-3, AreaRatio: 21.3,
		TransversePitch: 0.0635, RowPitch: 0.055, Rows: 4, TubesPerRow: 10,
	}, airside.Flow{Properties: air, FaceMassVelocity: 3.4, WallPrandtl: 0.71, TemperatureRatio: 0.95}
}

// methodFaults says what a correlation lacks.
func methodFaults[A airside.Answer](texts message.Catalogue, m airside.Method[A], b airside.Bank, f airside.Flow) []string {
	faults := textFaults(texts, "airside."+m.ID, m.Formula.Source, m.Formula.Valid)
	crossing := airside.Cross(b, f)
	answer, limits := m.Compute(&crossing), m.Limits(nil, &crossing)
	if x := answer.Measure(); !(x > 0) || math.IsInf(x, 1) {
		faults = append(faults, "no answer")
	}
	if len(limits) == 0 {
		faults = append(faults, "no published range")
	}
	for _, l := range limits {
		faults = append(faults, textFaults(texts, "limit."+l.Variable)...)
	}
	return append(faults, formulaFaults(texts, m.Formula, m.Args(&crossing, answer))...)
}

// formulaFaults holds a formula against its arguments: each symbol of the one is in the other.
func formulaFaults(texts message.Catalogue, f figure.Formula, args []figure.Arg) (faults []string) {
	if f.Result == "" || f.Expression == "" {
		faults = append(faults, "no formula")
	}
	symbols := f.Symbols()
	for _, s := range symbols {
		given := slices.ContainsFunc(args, func(a figure.Arg) bool { return a.Symbol == s })
		if function := strings.Contains(f.Expression, s+"("); !given && !function && s != "π" {
			faults = append(faults, "no argument "+s)
		}
	}
	for _, a := range args {
		if !slices.Contains(symbols, a.Symbol) {
			faults = append(faults, "argument "+a.Symbol+" is not in the formula")
		}
		if math.IsNaN(a.SI) || math.IsInf(a.SI, 0) || a.Kind.Unit(units.SI) == "" && a.Kind != units.Factor && a.Kind != units.Count {
			faults = append(faults, "argument "+a.Symbol+" is no number with a unit")
		}
		faults = append(faults, textFaults(texts, "symbol."+a.Symbol)...)
	}
	return faults
}

func textFaults(texts message.Catalogue, keys ...string) (faults []string) {
	for _, key := range keys {
		if !texts.Has(key) {
			faults = append(faults, "no text "+key)
		}
	}
	return faults
}

func TestMethodsAreComplete(t *testing.T) {
	b, f := bank(t)
	for _, m := range airside.FilmMethods {
		for _, fault := range methodFaults(message.English(), m, b, f) {
			t.Errorf("%s: %s", m.ID, fault)
		}
	}
	for _, m := range airside.DropMethods {
		for _, fault := range methodFaults(message.English(), m, b, f) {
			t.Errorf("%s: %s", m.ID, fault)
		}
	}
	still := airside.Still{Properties: f.Properties, FinOD: b.FinOD, Gap: b.Gap(), Expansion: 0.003, Excess: 50}
	_, limits := airside.EdwardsChaddock1963(still)
	faults := formulaFaults(message.English(), airside.StillFormula, still.Args())
	for _, l := range limits {
		faults = append(faults, textFaults(message.English(), "limit."+l.Variable)...)
	}
	for _, fault := range append(faults, textFaults(message.English(), "airside.edwards_chaddock_1963", airside.StillFormula.Source, airside.StillFormula.Valid)...) {
		t.Errorf("edwards_chaddock_1963: %s", fault)
	}
}

// tubeOf is a common tube with fins of one type.
func tubeOf(typ tube.FinType) tube.Tube {
	t := sample.Footed()
	t.Fin.Type, t.Fin.Groove, t.Fin.Sleeve = typ, 0.25*units.Millimetre, 0.5*units.Millimetre
	return t
}

// fixingFaults says what a fin type lacks.
func fixingFaults(texts message.Catalogue, f *tube.Fixing) []string {
	faults := append(textFaults(texts, "choice.fin_type."+string(f.Type)), textFaults(texts, "when."+string(f.Type))...)
	values := map[string]material.Value{"bond": f.Bond, "standard limit": f.Limits.Standard, "house limit": f.Limits.House}
	for _, name := range slices.Sorted(maps.Keys(values)) {
		if v := values[name]; v.Known() {
			faults = append(faults, textFaults(texts, v.Key)...)
		} else if name == "bond" {
			faults = append(faults, "no "+name)
		}
	}
	if !slices.ContainsFunc(material.FinMetals, func(m material.Metal) bool { return m.Family.Suits(f.Forming) == material.Usual }) {
		faults = append(faults, "no metal bears forming "+string(f.Forming))
	}
	t := tubeOf(f.Type)
	if f.Type.Wound() != (t.StripWidth() > 0) || !(t.FinMass() > 0) {
		faults = append(faults, "no width of strip or mass of fin")
	}
	if f.Type.Grooved() && f.Layers > 0 || f.Layers == 0 && f.Knurled || (f.Layers > 0) != (f.Section == tube.FootSection) {
		faults = append(faults, "a foot in a groove, a knurl without a foot or a foot that is not drawn")
	}
	faults = append(faults, attempt("contact", func() bool { return bond.ContactArea(f.Contact, 0.0254, 400, 0.0004, 0.00025) > 0 })...)
	return append(faults, attempt("drawing", func() bool {
		return len(finned.Compose(t, finned.Options{System: units.SI, WidthPx: 760, HeightPx: 470, Text: message.English()}).Shapes) > 1
	})...)
}

func TestFinTypesAreComplete(t *testing.T) {
	for i, f := range tube.Fixings {
		for _, fault := range fixingFaults(message.English(), f) {
			t.Errorf("%s: %s", f.Type, fault)
		}
		if slices.Index(tube.FinTypes(), f.Type) != i {
			t.Errorf("%s is listed twice", f.Type)
		}
	}
}

// ruleFaults says what a rule of the line lacks. figures are those that the page shows of an order.
func ruleFaults(texts message.Catalogue, r *verdict.Rule, figures []string) []string {
	faults := textFaults(texts, "shop.rule."+r.ID)
	fields := append([]string{r.Field}, r.Changes...)
	for _, id := range fields {
		_, known := field.Find(id)
		if span := id == field.SpanCentre.ID || id == field.SpanWidth.ID; !known && !span {
			faults = append(faults, "no field "+id)
		}
	}
	if r.Figure != "" && !slices.Contains(figures, r.Figure) {
		faults = append(faults, "no figure "+r.Figure)
	}
	hot := units.Temperature(300)
	for _, t := range []tube.Tube{sample.Footed(), sample.Supported()} {
		ofTube, ofFin := sample.Metals()
		order := making.Order{Tube: t, TubeMetal: ofTube, FinMetal: ofFin, Quantity: 100, FreeIssue: true, LeastWall: 0.01, Hottest: &hot}
		for _, id := range r.Changes {
			if strings.HasPrefix(id, "span_") && len(t.Spans) == 0 {
				continue
			}
			faults = append(faults, attempt("setting of "+id, func() bool {
				verdict.With(order, verdict.Setting{Field: id, SI: 1})
				return true
			})...)
		}
		house := shop.House()
		for i := range house.Lines {
			l := &house.Lines[i]
			practice, made := l.Practice(t.Fin.Type)
			if !made && slices.Contains(verdict.TypeRules, r) {
				continue
			}
			faults = append(faults, attempt("verdict", func() bool {
				v := r.Judge(&verdict.Pair{Groundwork: &making.Groundwork{Shop: &house, Line: l, Practice: practice, Order: &order}})
				return v.State == figure.Good || texts.Render(v.Why, units.SI) != ""
			})...)
		}
	}
	return faults
}

func TestRulesAreComplete(t *testing.T) {
	_, _, result := evaluated(t)
	for _, r := range slices.Concat(verdict.LineRules, verdict.TypeRules) {
		for _, fault := range ruleFaults(message.English(), r, ids(result)) {
			t.Errorf("%s: %s", r.ID, fault)
		}
	}
}

// ids lists the figures of a result.
func ids(r design.Result) (out []string) {
	for _, g := range r.Groups {
		for _, f := range g.Figures {
			out = append(out, f.ID)
		}
	}
	return out
}
