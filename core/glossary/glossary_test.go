package glossary

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"finwright/core/airside"
	"finwright/core/convention"
	"finwright/core/drawing/svg"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Every label that the page has leads to a term: entries, figures, correlations, fin types, rules, what a search, an
// enquiry and the papers ask for, and all of a shop's tables. Each leads to one alone.
func TestEveryLabelHasItsTerm(t *testing.T) {
	if len(Terms) < 80 {
		t.Errorf("%d terms", len(Terms))
	}
	labels := map[string][]string{}
	for _, f := range field.Fields {
		labels[OfField] = append(labels[OfField], f.ID)
	}
	for _, m := range airside.FilmMethods {
		labels[OfMethod] = append(labels[OfMethod], m.ID)
	}
	for _, m := range airside.DropMethods {
		labels[OfMethod] = append(labels[OfMethod], m.ID)
	}
	for _, f := range tube.Fixings {
		labels[OfType] = append(labels[OfType], string(f.Type))
	}
	for _, key := range message.English().Keys() {
		for beginning, kind := range map[string]string{"figure.": OfFigure, "inside.": OfMethod} {
			if id, ok := strings.CutPrefix(key, beginning); ok {
				labels[kind] = append(labels[kind], id)
			}
		}
		for _, beginning := range []string{"shop.rule.", "paper.ask.", "search.measure.", "search.must.", "enquiry.field.", "field."} {
			if strings.HasPrefix(key, beginning) {
				labels[OfText] = append(labels[OfText], key)
			}
		}
	}
	for _, q := range convention.Quantities {
		labels[OfText] = append(labels[OfText], "convention."+q.ID)
	}
	full := shop.House()
	for _, p := range full.Places() {
		labels[OfShop] = append(labels[OfShop], p.Path)
	}
	for _, table := range (report.Writer{Texts: message.English(), System: units.SI}).ShopTables(full).Tables {
		labels[OfShop] = append(labels[OfShop], table.ID)
	}
	keys := map[string]bool{"": true}
	for _, path := range labels[OfShop] {
		steps := strings.Split(path, "/")
		for i, step := range steps {
			keys[step] = true
			for j := range steps[:i] {
				keys[steps[j]+"/"+step] = true
			}
		}
	}
	for kind, ids := range labels {
		if len(ids) < 8 {
			t.Errorf("%d labels of kind %s", len(ids), kind)
		}
		for _, id := range ids {
			if _, ok := Of(kind, id); !ok {
				t.Errorf("%s %s leads to no term", kind, id)
			}
		}
	}
	taken := map[string]string{}
	for _, term := range Terms {
		for kind, ids := range map[string][]string{OfField: term.Fields, OfFigure: term.Figures, OfMethod: term.Methods, OfSymbol: term.Symbols, OfShop: term.Shop, OfText: term.Texts} {
			for _, id := range ids {
				if other := taken[kind+id]; other != "" {
					t.Errorf("%s %s leads to %s and %s", kind, id, other, term.ID)
				}
				taken[kind+id] = term.ID
				there := kind == OfSymbol || kind == OfMethod || slices.Contains(labels[kind], id)
				if !there && (kind == OfShop && !keys[id] || kind == OfText && !message.English().Has(id) || kind == OfField || kind == OfFigure) {
					t.Errorf("%s: there is no %s %s", term.ID, kind, id)
				}
			}
		}
	}
}

// Each term is told in a sentence or two, leads on to terms that there are, and is drawn where it says so.
func TestTermsAreWhole(t *testing.T) {
	w := report.Writer{Texts: message.English(), System: units.SI}
	sentences := regexp.MustCompile(`[.:;](\s|$)`)
	for i, shown := range Show(w) {
		term := &Terms[i]
		if n := len(sentences.FindAllString(shown.Is, -1)); n < 1 || n > 5 || len(shown.Is) > 300 {
			t.Errorf("%s: %d sentences, %d bytes", term.ID, n, len(shown.Is))
		}
		for _, other := range term.See {
			if _, ok := Find(other); !ok || other == term.ID {
				t.Errorf("%s leads on to %s", term.ID, other)
			}
		}
		for _, l := range term.Letters {
			if _, ok := Find(l.Term); !ok && l.Term != "" {
				t.Errorf("%s: letter %s stands for %s", term.ID, l.Letter, l.Term)
			}
		}
		scene, ok := term.Draw(w.Texts, w.System)
		if ok != (term.Picture != "") {
			t.Errorf("%s: drawn %t, pictured %q", term.ID, ok, term.Picture)
		}
		if ok && !strings.Contains(svg.Write(scene, svg.Style{}), "<path") {
			t.Errorf("%s: nothing is drawn", term.ID)
		}
	}
	if _, ok := Of("nothing", "fin_height"); ok {
		t.Error("a label of no kind has a term")
	}
}
