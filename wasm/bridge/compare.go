package bridge

import (
	"fmt"
	"slices"

	"finwright/core/compare"
	"finwright/core/document"
	"finwright/core/report"
)

// mostCompared designs stand side by side.
const mostCompared = 12

type compareArgs struct {
	Designs []document.Document `json:"designs"`
	Names   []string            `json:"names"` // of the designs, in their order; empty: by what they say otherwise
	Base    int                 `json:"base"`  // which of them the others stand against
	Held    compare.Held        `json:"held"`
	Money   bool                `json:"money,omitempty"`  // what is told of it too
	Ladder  string              `json:"ladder,omitempty"` // the entry of the one design that is stepped over standard values; empty: none
	Shop    string              `json:"shop,omitempty"`   // a capability file; empty: the one that ships
}

// sideBySide compares designs, in the units of the base.
func sideBySide(a compareArgs) (report.Comparison, error) {
	if n := len(a.Designs); n == 0 || n > mostCompared || len(a.Names) != n || a.Base < 0 || a.Base >= n || !slices.Contains(compare.Helds, a.Held) || a.Ladder != "" && (n > 1 || !slices.Contains(compare.Ladders, a.Ladder)) {
		return report.Comparison{}, fmt.Errorf("bridge: %d designs, %d names, base %d, held %q, ladder %q", n, len(a.Names), a.Base, a.Held, a.Ladder)
	}
	for _, d := range a.Designs {
		if err := document.Check(d); err != nil {
			return report.Comparison{}, err
		}
	}
	c, err := openShop(a.Shop)
	if err != nil {
		return report.Comparison{}, err
	}
	if a.Ladder != "" {
		a.Designs = append(a.Designs, compare.Rungs(a.Designs[0], a.Ladder, &c)...)
		a.Names = make([]string, len(a.Designs))
	}
	t := compare.Of(a.Designs, a.Base, a.Held, a.Ladder, &c)
	w := writer(a.Designs[a.Base])
	w.Currency = c.Currency
	return w.Comparison(&t, a.Names, a.Money), nil
}
