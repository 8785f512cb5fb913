package message

import (
	_ "embed"
	"strings"
	"sync"
)

// texts holds a text a line, after its key and one space, in the order of the keys.
//
//go:embed en.txt
var texts string

var english struct {
	sync.Once
	Catalogue
}

// English returns the complete catalogue. It is read when first asked for, so that a program that never asks does not carry it.
func English() Catalogue {
	english.Do(func() { english.Catalogue = mustLoad(texts) })
	return english.Catalogue
}

func mustLoad(texts string) Catalogue {
	c := make(Catalogue, strings.Count(texts, "\n"))
	for line := range strings.Lines(texts) {
		key, text, ok := strings.Cut(strings.TrimSuffix(line, "\n"), " ")
		if !ok || c.Has(key) {
			panic("message: no text, or a second one, in the line " + line)
		}
		c[key] = text
	}
	return c
}
