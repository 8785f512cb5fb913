package bridge

import (
	"errors"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/report"
)

type rowsArgs struct {
	Documents []document.Document `json:"documents"`
	Shop      string              `json:"shop,omitempty"` // a capability file; empty: the one that ships
}

// listed is a row of each document, in their order.
type listed struct {
	Rows []report.ShownRow `json:"rows"`
}

// rows says of each of many designs what decides, without drawing, curves or working.
func rows(a rowsArgs) (listed, error) {
	c, err := openShop(a.Shop)
	if err != nil {
		return listed{}, err
	}
	out := listed{make([]report.ShownRow, len(a.Documents))}
	for i, d := range a.Documents {
		if err := document.Check(d); err != nil {
			return listed{}, err
		}
		w := writer(d)
		w.Currency = c.Currency
		in, err := design.Read(d)
		if err == nil {
			in.Shop = &c
			var row design.Row
			if row, err = design.RowOf(in); err == nil {
				out.Rows[i] = w.Row(row)
				continue
			}
		}
		var wrong design.FieldErrors
		if !errors.As(err, &wrong) {
			return listed{}, err
		}
		out.Rows[i] = w.RefusedRow(wrong)
	}
	return out, nil
}
