package shop

import (
	"bytes"
	"encoding/json"
	"errors"
	"slices"

	"finwright/core/message"
	"finwright/core/strict"
	"finwright/core/units"
)

// Fault is one thing wrong in a capability file. Path leads to it from the
// top, as in "lines/0/types/1/spindle".
type Fault struct {
	Path   string
	Of     string // of an entry that is refused: where what is wrong stands
	Why    message.Message
	System units.System // in which the value was typed; empty: no matter
}

// Leaf is one value of a capability file, for a page to show and edit. Its
// label is the text "shop.field.<Key>".
type Leaf struct {
	Path    string
	Key     string
	Kind    units.Kind // of a quantity; empty for names, Count for whole numbers
	YesNo   bool       // it is "true" or "false"
	Text    string     // as typed
	Missing bool       // it is not there and could be: a value that may be left out, or of another item of a list
}

// Open reads a capability file strictly and returns every fault in it.
func Open(text []byte) (Capability, []Fault) {
	var c Capability
	if len(text) > longestFile {
		return c, []Fault{{Why: message.New("shop.file.long", "most", longestFile>>10)}}
	}
	var tree map[string]any
	switch err := strict.Unmarshal(text, &tree); {
	case errors.Is(err, strict.ErrDeep):
		return c, []Fault{{Why: message.New("shop.file.deep", "most", strict.Depth)}}
	case err != nil:
		return c, []Fault{{Why: message.New("shop.file.not_json")}}
	}
	if tree["format"] != Format {
		return c, []Fault{{Path: "format", Why: message.New("shop.file.format", "format", Format)}}
	}
	from, ok := lift(tree)
	if !ok {
		return c, []Fault{{Path: "version", Why: message.New("shop.file.version", "version", Version)}}
	}
	r := reader{}
	r.read(tree, "", &c, "format", "version")
	if r.faults == nil {
		r.faults = check(&c)
	}
	c.tree, c.from = tree, from
	return c, r.faults
}

// Save writes the file back as it was typed, keys in alphabetical order.
func (c Capability) Save() []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", " ")
	if err := e.Encode(c.file()); err != nil {
		panic("shop: " + err.Error())
	}
	return b.Bytes()
}

// file is the tree that the capability was read from.
func (c Capability) file() map[string]any {
	if c.tree == nil {
		c, _ = Open(houseFile)
	}
	return c.tree
}

// Contents lists every value, in the order of the structs, and the paths of the lists that hold nothing.
func (c Capability) Contents() (leaves []Leaf, emptyLists []string) {
	r := reader{lists: true}
	r.read(c.file(), "", &Capability{}, "format", "version")
	slices.Sort(r.empty)
	return r.leaves, r.empty
}

// Places lists every value that there is or could be, in the order of the structs: of a list of values the one behind its last,
// of a list of objects that holds none those of its first.
func (c Capability) Places() []Leaf {
	r := reader{lists: true, offers: true}
	r.read(c.file(), "", &Capability{}, "format", "version")
	return r.leaves
}
