// Package cases holds whole designs as saved design files: the page's examples
// and the fixtures of tests. The shop, its customers and their orders are invented.
package cases

import (
	_ "embed"

	"finwright/core/document"
)

// Each file by itself: an embedded folder brings a file system and a calendar into the engine.
var (
	//go:embed 1-oil-cooler.json
	oilCooler []byte
	//go:embed 2-gas-cooler.json
	gasCooler []byte
	//go:embed 3-heat-recovery.json
	heatRecovery []byte
)

// Case is one example, named as a menu does.
type Case struct {
	ID    string
	Title string
	text  []byte
}

// List returns the examples in order.
func List() []Case {
	list := []Case{{ID: "1-oil-cooler", text: oilCooler}, {ID: "2-gas-cooler", text: gasCooler}, {ID: "3-heat-recovery", text: heatRecovery}}
	for i, c := range list {
		list[i].Title = c.Document().Title
	}
	return list
}

// First is what an empty browser opens with.
func First() document.Document { return Case{text: oilCooler}.Document() }

// Find returns the design of an example.
func Find(id string) (document.Document, bool) {
	for _, c := range List() {
		if c.ID == id {
			return c.Document(), true
		}
	}
	return document.Document{}, false
}

// Document opens the example.
func (c Case) Document() document.Document {
	designs, err := document.Open(c.text)
	if err != nil {
		panic("cases: " + c.ID + ": " + err.Error())
	}
	return designs[0]
}
