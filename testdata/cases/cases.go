// Package cases holds whole designs as saved design files: the page's examples
// and the fixtures of tests. The shop, its customers and their orders are invented.
package cases

import (
	"embed"
	"path"
	"strings"

	"finwright/core/document"
)

//go:embed *.json
var files embed.FS

// Case is one example.
type Case struct {
	ID       string
	Title    string
	Document document.Document
}

var list = load()

func load() []Case {
	names, err := files.ReadDir(".")
	if err != nil {
		panic(err)
	}
	var out []Case
	for _, n := range names {
		text, err := files.ReadFile(n.Name())
		if err != nil {
			panic(err)
		}
		designs, err := document.Open(text)
		if err != nil {
			panic("cases: " + n.Name() + ": " + err.Error())
		}
		out = append(out, Case{strings.TrimSuffix(path.Base(n.Name()), ".json"), designs[0].Title, designs[0]})
	}
	return out
}

// List returns the examples in the order of their file names.
func List() []Case { return list }

// First is what an empty browser opens with.
func First() document.Document { return list[0].Document }

// Find returns the design of an example.
func Find(id string) (document.Document, bool) {
	for _, c := range list {
		if c.ID == id {
			return c.Document, true
		}
	}
	return document.Document{}, false
}
