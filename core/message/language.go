package message

import (
	_ "embed"
	"errors"
	"fmt"
	"maps"
	"strings"
	"sync"

	"finwright/core/units"
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
	english.Do(func() {
		all, err := read(texts)
		if err == nil {
			english.Catalogue, err = saying(all, all)
		}
		if err != nil {
			panic(err) // it is a part of the program
		}
	})
	return english.Catalogue
}

// Load reads another language's file. What it leaves out is said in English; a key that English does not know is an error.
func Load(file string) (Catalogue, error) {
	own, err := read(file)
	if err != nil {
		return Catalogue{}, err
	}
	for key := range own {
		if !English().Has(key) && !strings.HasPrefix(key, pluralKey) {
			return Catalogue{}, fmt.Errorf("message: no text is asked for as %s", key)
		}
	}
	return saying(English().With(own).texts, own)
}

// With returns the catalogue with other texts for some keys.
func (c Catalogue) With(texts map[string]string) Catalogue {
	other := *c.language
	other.texts = maps.Clone(c.texts)
	maps.Copy(other.texts, texts)
	return Catalogue{&other}
}

// read parts a file into keys and texts.
func read(file string) (map[string]string, error) {
	all := make(map[string]string, strings.Count(file, "\n"))
	for line := range strings.Lines(file) {
		key, text, ok := strings.Cut(strings.TrimSuffix(line, "\n"), " ")
		if _, twice := all[key]; !ok || twice {
			return nil, errors.New("message: no text, or a second one, in the line " + line)
		}
		all[key] = text
	}
	return all, nil
}

// Keys of what a language says of itself.
const (
	shortNumber = "language.number.short" // 1234.5 as the language writes it
	longNumber  = "language.number.long"  // 12345.6
	pluralKey   = "language.plural."      // and a category: the rule by which a number is of it
)

// saying reads from all texts of a language how it writes numbers, and from its own how it makes plurals.
func saying(all, own map[string]string) (Catalogue, error) {
	c := Catalogue{&language{texts: all}}
	var ok bool
	if c.Numbers, ok = units.StyleOf(c.texts[shortNumber], c.texts[longNumber]); !ok {
		return c, fmt.Errorf("message: %s %q, %s %q", shortNumber, c.texts[shortNumber], longNumber, c.texts[longNumber])
	}
	for _, category := range categories {
		text, ok := own[pluralKey+category]
		if !ok {
			continue
		}
		r := rule(text)
		if _, readable := r.holds("1"); !readable {
			return c, errors.New("message: no plural rule: " + text)
		}
		c.plurals = append(c.plurals, r)
	}
	return c, nil
}
