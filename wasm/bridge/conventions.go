package bridge

import (
	"errors"

	"finwright/core/convention"
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/report"
)

type conventionsArgs struct {
	Document document.Document `json:"document"`
	Shop     string            `json:"shop,omitempty"`     // a capability file; empty: the one that ships
	Quantity string            `json:"quantity,omitempty"` // of convention.Quantities
	Text     string            `json:"text,omitempty"`     // as it is printed, with its unit; empty: nothing is asked yet
}

// conventions says by which conventions a figure that somebody printed comes out.
func conventions(a conventionsArgs) (report.ShownConventions, error) {
	if err := document.Check(a.Document); err != nil {
		return report.ShownConventions{}, err
	}
	w := writer(a.Document)
	out := w.Conventions()
	q, ok := convention.Find(a.Quantity)
	if !ok || a.Text == "" {
		return out, nil
	}
	in, err := design.Read(a.Document)
	d := &convention.Design{Input: &in.Input}
	if err == nil {
		if c, fault := openShop(a.Shop); fault == nil {
			in.MadeBy(&c)
		}
		if q.Rated() {
			var h design.Heat
			if h, err = design.Rate(in); err == nil && !h.Absent.None() {
				out.Wrong = w.Texts.Render(h.Absent, w.System)
				return out, nil
			}
			d.Thermal = &h.Thermal
		}
	}
	var wrong design.FieldErrors
	if errors.As(err, &wrong) {
		out.Wrong = w.Texts.Render(wrong[0].Message, w.System)
		return out, nil
	}
	if err != nil {
		return out, err
	}
	w.Readings(&out, q, a.Text, d)
	return out, nil
}
