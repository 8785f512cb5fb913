package bridge

import (
	"finwright/core/document"
	"finwright/core/report"
)

type cardArgs struct {
	Document document.Document `json:"document"`
	Shop     string            `json:"shop,omitempty"` // a capability file; empty: the one that ships
}

// card says the tube of a document in both systems of units.
func card(a cardArgs) (report.Card, error) {
	if err := document.Check(a.Document); err != nil {
		return report.Card{}, err
	}
	in, h, err := rated(a.Document, report.Section{}, a.Shop)
	if err != nil {
		return report.Card{}, err
	}
	return writer(a.Document).Card(in, h), nil
}
