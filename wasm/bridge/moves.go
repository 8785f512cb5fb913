package bridge

import (
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/report"
)

type movesArgs struct {
	Document document.Document `json:"document"`
	Figure   string            `json:"figure"`
	Shop     string            `json:"shop,omitempty"` // a capability file; empty: the one that ships
}

type movedBy struct {
	Moves []report.ShownMove `json:"moves"`
}

// moves says which entries do most to a figure.
func moves(a movesArgs) (movedBy, error) {
	if err := document.Check(a.Document); err != nil {
		return movedBy{}, err
	}
	c, fault := openShop(a.Shop)
	made := &c
	if fault != nil {
		made = nil
	}
	list, kind := design.Moves(a.Document, made, a.Figure)
	return movedBy{writer(a.Document).Moves(list, kind)}, nil
}
