package bridge

import (
	"errors"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/report"
	"finwright/core/shop"
)

type rowsArgs struct {
	Documents []document.Document `json:"documents"`
	Shop      string              `json:"shop,omitempty"`  // a capability file; empty: the one that ships
	Build     string              `json:"build,omitempty"` // of this program, as the page names it
	Day       string              `json:"day,omitempty"`   // the page's, as 2026-11-27
}

// listed is a row of each document, in their order, as it is shown and as an item holds it.
type listed struct {
	Rows  []report.ShownRow `json:"rows"`
	Shown []document.Shown  `json:"shown"` // by the basis, as its only one
	Basis document.Basis    `json:"basis"`
}

// rows says of each of many designs what decides, without drawing, curves or working.
func rows(a rowsArgs) (listed, error) {
	c, err := openShop(a.Shop)
	if err != nil {
		return listed{}, err
	}
	out := listed{make([]report.ShownRow, len(a.Documents)), make([]document.Shown, len(a.Documents)), basisOf(a.Build, c)}
	for i, d := range a.Documents {
		if err := document.Check(d); err != nil {
			return listed{}, err
		}
		w := writer(d)
		w.Currency = c.Currency
		row, wrong, err := rowIn(d, &c)
		if err != nil {
			return listed{}, err
		}
		out.Shown[i] = shownOn(a.Day, row)
		if wrong != nil {
			out.Rows[i] = w.RefusedRow(wrong)
			continue
		}
		out.Rows[i] = w.Row(row)
	}
	return out, nil
}

// rowIn reads a document and makes its row on the line of a shop, or says what is wrong with its entries.
func rowIn(d document.Document, c *shop.Capability) (design.Row, design.FieldErrors, error) {
	in, err := design.Read(d)
	var row design.Row
	if err == nil {
		in.MadeBy(c)
		row, err = design.RowOf(in)
	}
	var wrong design.FieldErrors
	if errors.As(err, &wrong) {
		return row, wrong, nil
	}
	return row, nil, err
}

// basisOf is what rows of this program and a shop are found by.
func basisOf(build string, c shop.Capability) document.Basis {
	b := document.Basis{Build: build, Shop: c.Fingerprint(), Named: c.Name, Dated: c.PricesOf(), Figures: make([]string, len(design.RowFigures))}
	for i, f := range design.RowFigures {
		b.Figures[i] = f.ID
	}
	return b
}
