package report

import (
	"slices"

	"finwright/core/compare"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
)

// alternative is a design that was kept beside an item, as it is offered: named by the item and a letter, since the name that it was kept
// under is the house's.
type alternative struct {
	name, differs, quantity, each, total string
	why                                  string // it has no price
}

// othersPriced prices what is kept beside the design, each as it would be entered: nothing is held and nothing follows.
func (p *papering) othersPriced() []alternative {
	if p.answer("alternatives") != "with_alternatives" || len(p.Kept) == 0 {
		return nil
	}
	t := compare.Of(append([]document.Document{p.Document}, p.Kept...), 0, compare.Nothing, "", p.Shop)
	t.Entries = slices.DeleteFunc(t.Entries, func(id string) bool { return slices.Contains(atHome, id) || field.Must(id).Group == "making" })
	shown := p.Comparison(&t, make([]string, len(t.Columns)), true)
	at := func(id string) int {
		return slices.IndexFunc(shown.Figures, func(l ComparedLine) bool { return l.ID == id })
	}
	each, total := at("price_tube"), at("price")
	c := comparing{p.Writer, &t, true}
	var out []alternative
	for i := 1; i < len(t.Columns); i++ {
		col := &t.Columns[i]
		one := alternative{
			name:     p.say(message.New("paper.alternative", "item", p.itemName(), "letter", string(rune('A'+i-1)))),
			differs:  c.differs(i),
			quantity: p.shownEntry(field.Must("quantity"), col.Document),
		}
		switch {
		case !col.Refused.None():
			one.why = p.t("paper.line.unusable")
		case col.Row.State == figure.No:
			one.why = p.say(message.New("paper.line.refused", "why", Public(col.Row.Why)))
		default:
			one.each, one.total = shown.Figures[each].Cells[i].Value, shown.Figures[total].Cells[i].Value
			if one.total == "" {
				one.why = p.t("paper.line.unpriced")
			}
		}
		out = append(out, one)
	}
	return out
}

// differs says all that column i has otherwise than the base, whatever its length.
func (w comparing) differs(i int) string {
	if said := w.labelled(w.told(i), w.t.Columns[i].Document); said != "" {
		return said
	}
	return w.Texts.Text("compare.as_base")
}
