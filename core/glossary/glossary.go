// Package glossary says what the words of the page mean: terms in a sentence or two, and to which of them each label belongs.
package glossary

import (
	"slices"
	"strconv"
	"strings"

	"finwright/core/drawing/finned"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/shop/verdict"
	"finwright/core/tube"
	"finwright/core/units"
)

// Term is one of them, with the texts "term.<id>", its name, and "term.<id>.is". Its group has the text "term.group.<group>".
type Term struct {
	ID      string
	Group   string
	Picture string   // Dimensions, or the fin type whose root is shown; empty: none helps
	See     []string // terms beside it

	// Labels that lead to it: entries, figures, correlations, symbols of workings, keys of the shop's file (see OfShop), and other texts of
	// the page by their key. A fin type has the term of its own name.
	Fields, Figures, Methods, Symbols, Shop, Texts []string

	Letters []Letter // of a symbol that is made of them, with the texts "term.letter.<letter>"
}

// Letter is one letter of a symbol, and the term that it stands for; empty: it is told in its text alone.
type Letter struct{ Letter, Term string }

// Dimensions is the picture of a whole tube with its dimensions.
const Dimensions = "dimensions"

// Find returns the term of an ID.
func Find(id string) (t *Term, ok bool) {
	return find(func(t *Term) bool { return t.ID == id })
}

// Kinds of labels.
const (
	OfField  = "field"
	OfFigure = "figure"
	OfMethod = "method"
	OfType   = "type"
	OfSymbol = "symbol"
	OfShop   = "shop" // by its path in the shop's file
	OfText   = "text" // by its key
	Itself   = "term"
)

// Of returns the term that a label of a kind leads to.
func Of(kind, id string) (t *Term, ok bool) {
	switch kind {
	case OfShop:
		return ofPath(id)
	case OfText:
		return ofText(id)
	}
	return claimed(kind, id)
}

// claimed returns the term that has a label among its own.
func claimed(kind, id string) (t *Term, ok bool) {
	return find(func(t *Term) bool {
		switch kind {
		case OfField:
			return slices.Contains(t.Fields, id)
		case OfFigure:
			return slices.Contains(t.Figures, id)
		case OfMethod:
			return slices.Contains(t.Methods, id)
		case OfType:
			return t.Group == "type" && t.ID == id
		case OfSymbol:
			return slices.Contains(t.Symbols, id)
		case OfShop:
			return slices.Contains(t.Shop, id)
		case OfText:
			return slices.Contains(t.Texts, id)
		case Itself:
			return t.ID == id
		}
		return false
	})
}

// ofPath goes up a path of the shop's file to the first step that a term has, alone or with the step above: what is said of a thing has the
// thing's term where it has none of its own.
func ofPath(path string) (t *Term, ok bool) {
	var keys []string
	for step := range strings.SplitSeq(path, "/") {
		if _, err := strconv.Atoi(step); err != nil && step != "*" && !strings.HasPrefix(step, shop.Member) {
			keys = append(keys, step)
		}
	}
	if len(keys) == 0 {
		return claimed(OfShop, "")
	}
	for i := len(keys) - 1; i >= 0; i-- {
		if i > 0 {
			if t, ok = claimed(OfShop, keys[i-1]+"/"+keys[i]); ok {
				return t, true
			}
		}
		if t, ok = claimed(OfShop, keys[i]); ok {
			return t, true
		}
	}
	return nil, false
}

// ofText returns the term of a text. The name of an entry leads where the entry does; so does a rule or a measure that no term has, by what it
// is about.
func ofText(key string) (t *Term, ok bool) {
	if t, ok = claimed(OfText, key); ok {
		return t, true
	}
	if id, is := strings.CutPrefix(key, "field."); is {
		return claimed(OfField, id)
	}
	if id, is := strings.CutPrefix(key, "search.measure."); is {
		return claimed(OfFigure, id)
	}
	id, is := strings.CutPrefix(key, "shop.rule.")
	for _, r := range append(slices.Clone(verdict.LineRules), verdict.TypeRules...) {
		if !is || r.ID != id {
			continue
		}
		if t, ok = claimed(OfFigure, r.Figure); ok {
			return t, true
		}
		return claimed(OfField, r.Field)
	}
	return nil, false
}

// Symbols lists those that lead to a term.
func Symbols() (all []string) {
	for _, t := range Terms {
		all = append(all, t.Symbols...)
	}
	return all
}

func find(is func(*Term) bool) (*Term, bool) {
	for i := range Terms {
		if is(&Terms[i]) {
			return &Terms[i], true
		}
	}
	return nil, false
}

// ShownTerm is a term as the page lists it.
type ShownTerm struct {
	ID      string        `json:"id"`
	Group   string        `json:"group"` // its title
	Name    string        `json:"name"`
	Is      string        `json:"is"`
	Picture bool          `json:"picture"` // there is one
	See     []string      `json:"see"`
	Letters []ShownLetter `json:"letters"`
	Symbols []string      `json:"symbols"` // that lead to it
}

// ShownLetter is one letter of a symbol.
type ShownLetter struct {
	Letter string `json:"letter"`
	Is     string `json:"is"`
	Term   string `json:"term"`
}

// Show shows all terms.
func Show(w report.Writer) []ShownTerm {
	out := make([]ShownTerm, len(Terms))
	for i, t := range Terms {
		out[i] = ShownTerm{
			ID: t.ID, Group: w.Texts.Text("term.group." + t.Group), Name: w.Texts.Text("term." + t.ID), Is: w.Texts.Text("term." + t.ID + ".is"),
			Picture: t.Picture != "", See: list(t.See), Letters: []ShownLetter{}, Symbols: list(t.Symbols),
		}
		for _, l := range t.Letters {
			out[i].Letters = append(out[i].Letters, ShownLetter{l.Letter, w.Texts.Text("term.letter." + l.Letter), l.Term})
		}
	}
	return out
}

func list(ids []string) []string { return append([]string{}, ids...) }

// Size of the picture of dimensions [CSS px].
const (
	pictureWidth  = 560
	pictureHeight = 240
)

// Draw draws a term's picture; ok is false where it has none.
func (t *Term) Draw(texts message.Catalogue, s units.System) (scene sheet.Scene, ok bool) {
	switch t.Picture {
	case "":
		return scene, false
	case Dimensions:
		scene = finned.Compose(Usual(tube.Footed), finned.Options{System: s, WidthPx: pictureWidth, HeightPx: pictureHeight, Text: texts})
		scene.Grips = nil
		return scene, true
	}
	return finned.Root(Usual(tube.FinType(t.Picture))), true
}

// Usual is a tube of 1 in with fins as they are wound, welded or raised on it.
//
// Source: common practice.
func Usual(typ tube.FinType) tube.Tube {
	t := tube.Tube{OD: units.Inch, Wall: 2.5 * units.Millimetre, Length: 6, Fin: tube.Fin{
		Type: typ, Height: 15 * units.Millimetre, Strip: 0.4 * units.Millimetre, Count: 9 / 0.0254,
		Profile: tube.AsMade, Groove: 0.25 * units.Millimetre, Sleeve: 0.5 * units.Millimetre, Root: tube.FromTube,
	}}
	if typ == tube.Welded {
		t.Fin.Strip, t.Fin.Count = units.Millimetre, 6/0.0254
	}
	return t
}
