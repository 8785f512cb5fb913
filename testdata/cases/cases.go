// Package cases holds whole designs as saved design files: the page's examples
// and the fixtures of tests. The shop, its customers and their orders are invented.
package cases

import (
	"embed"
	"slices"
	"strings"

	"finwright/core/document"
)

//go:embed *.json
var files embed.FS

// Case is one example, named as a menu does.
type Case struct {
	ID    string
	Title string
}

// List returns the examples in the order of their file names.
func List() []Case {
	var list []Case
	for _, id := range ids() {
		list = append(list, Case{id, open(id).Title})
	}
	return list
}

// First is what an empty browser opens with.
func First() document.Document { return open(ids()[0]) }

// Find returns the design of an example.
func Find(id string) (document.Document, bool) {
	if !slices.Contains(ids(), id) {
		return document.Document{}, false
	}
	return open(id), true
}

// Document opens the example.
func (c Case) Document() document.Document { return open(c.ID) }

func open(id string) document.Document {
	designs, err := document.Open(read(id))
	if err != nil {
		panic("cases: " + id + ": " + err.Error())
	}
	return designs[0]
}

func read(id string) []byte {
	text, err := files.ReadFile(id + ".json")
	if err != nil {
		panic(err)
	}
	return text
}

func ids() []string {
	entries, err := files.ReadDir(".")
	if err != nil {
		panic(err)
	}
	var ids []string
	for _, e := range entries {
		ids = append(ids, strings.TrimSuffix(e.Name(), ".json"))
	}
	return ids
}
