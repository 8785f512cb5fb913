package bridge

import (
	"finwright/core/design"
	"finwright/core/document"
)

type changedArgs struct {
	Base  document.Document `json:"base"`
	By    []document.Basis  `json:"by"`
	Items []document.Item   `json:"items"`          // of the job that these belong to
	Shop  string            `json:"shop,omitempty"` // a capability file; empty: the one that ships
	Build string            `json:"build"`          // of this program, as the page names it
	Day   string            `json:"day"`            // the page's, as 2026-11-27
}

// otherwise is an item that answers otherwise than it did when it was saved.
type otherwise struct {
	ID    string   `json:"id"`
	Name  string   `json:"name"`
	Why   string   `json:"why"`   // as far as it is known
	Lines []string `json:"lines"` // what is other, and what it was

	Shown document.Shown `json:"shown"` // what it answers now, by the basis, as its only one
}

type compared struct {
	Changed []otherwise    `json:"changed"`
	Basis   document.Basis `json:"basis"`
}

// changed compares what items showed when they were saved with what they answer now.
func changed(a changedArgs) (compared, error) {
	job := document.Job{Base: a.Base, By: a.By, Items: a.Items}
	if err := document.CheckJob(job); err != nil {
		return compared{}, err
	}
	c, err := openShop(a.Shop)
	if err != nil {
		return compared{}, err
	}
	out := compared{[]otherwise{}, basisOf(a.Build, c)}
	for i, item := range job.Items {
		if item.Shown == nil {
			continue
		}
		was := job.By[item.Shown.By]
		if was.Build == out.Basis.Build && was.Shop == out.Basis.Shop {
			continue // an answer hangs on the document, the program and the shop, and on nothing else
		}
		d := job.Design(i)
		row, wrong, err := rowIn(d, &c)
		if err != nil {
			return compared{}, err
		}
		w := writer(d)
		w.Currency = c.Currency
		if lines := w.Changed(was.Figures, item.Shown.Cells, row, wrong); len(lines) > 0 {
			out.Changed = append(out.Changed, otherwise{item.ID, w.ItemName(d), w.Cause(was, out.Basis), lines, shownOn(a.Day, row)})
		}
	}
	return out, nil
}

// shownOn is a row as an item holds it; that of a refused design has no cells.
func shownOn(day string, row design.Row) document.Shown {
	return document.Shown{Day: day, Cells: row.Saved()}
}
