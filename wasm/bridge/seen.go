package bridge

import "finwright/core/document"

// seenArgs asks for what a page shows of a design before its engine lives.
type seenArgs struct {
	Document document.Document `json:"document"`
	Sheet    drawingArea       `json:"sheet"`
	wanted
}

// seen is a glimpse of a design with all its entries, traced on a sheet at which nothing can be pulled, and with the verdict: it
// is not shown early, but keeps its room.
func seen(a seenArgs) (reply, error) {
	if err := document.Check(a.Document); err != nil {
		return reply{}, err
	}
	a.Lists, a.ruled = true, true
	a.Sheet.Hold = nil
	if a.Sheet.Traced == nil {
		a.Sheet.Traced = &tracedOn{K: 1, Ratio: 1}
	}
	out, err := glimpse(document.Document{}, a.Document, a.Sheet, a.wanted)
	if s := out.View.Scene; s != nil {
		s.Grips = nil
	}
	return out, err
}
