package report

import (
	"strings"

	"finwright/core/shop"
	"finwright/core/units"
)

// ShopEntries are texts as the file holds them, which were typed or pasted in the page's language: a choice by its name, a number
// with the decimal sign in use.
func (w Writer) ShopEntries(c shop.Capability, typed []shop.Entered) []shop.Entered {
	places := map[string]shop.Leaf{}
	for _, p := range c.Places() {
		places[shop.Shape(p.Path)] = p
	}
	out := make([]shop.Entered, len(typed))
	for i, one := range typed {
		p, known := places[shop.Shape(one.Path)]
		p.Path = one.Path
		p.YesNo = p.YesNo || strings.Contains(one.Path, "/"+shop.Member)
		text := strings.TrimSpace(one.Text)
		if known && p.Kind != "" {
			text = w.Texts.Numbers.Typed(text)
		} else if known {
			text = w.chosen(p, text)
		}
		out[i] = shop.Entered{Path: one.Path, Text: text}
	}
	return out
}

// chosen returns the choice that a text names, or the text.
func (w Writer) chosen(p shop.Leaf, text string) string {
	for _, c := range w.shopChoices(p) {
		if strings.EqualFold(c.Text, text) || strings.EqualFold(c.ID, text) {
			return c.ID
		}
	}
	return text
}

// trialShare is by how much a number of the shop's file is moved to see what rests on it.
const trialShare = 0.1

// Trials returns what the number at a path of the file would be a tenth less and more, as its file would hold it; nothing of what is no
// number, or nought.
func Trials(c shop.Capability, path string) (less, more string, ok bool) {
	for _, p := range c.Places() {
		if p.Path != path || p.Kind == "" || p.Missing {
			continue
		}
		now, err := units.Parse(p.Kind, p.Text, units.SI)
		if err != nil || now.SI == 0 {
			return "", "", false
		}
		step := trialShare * now.SI
		if p.Kind == units.Count {
			step = max(1, float64(int(step+0.5)))
		}
		text := func(si float64) string { return units.Plain.Full(p.Kind, si, units.SI) + " " + p.Kind.Unit(units.SI) }
		return strings.TrimSpace(text(now.SI - step)), strings.TrimSpace(text(now.SI + step)), true
	}
	return "", "", false
}
