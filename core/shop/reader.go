package shop

import (
	"slices"
	"strconv"
	"strings"

	"finwright/core/message"
	"finwright/core/units"
)

// reader goes through the tree of a JSON text, puts its values where they belong and
// gathers what is wrong. What cannot be read stays zero or empty.
type reader struct {
	lists  bool // the leaves are wanted
	offers bool // and what may be put besides
	ghost  bool // in hand is an item that could begin a list
	faults []Fault
	leaves []Leaf
	empty  []string // paths of the lists that hold nothing
	asked  []string // keys that the objects in hand may have, the innermost last
}

// keyed is what an object of the file is read into: keys asks for each key that it may have.
type keyed interface{ keys(*object) }

type keysOf func(*object)

func (f keysOf) keys(o *object) { f(o) }

// object is one object of the file while its keys are asked for.
type object struct {
	*reader
	values map[string]any
	path   string
}

// read goes through one object, which may have other keys besides, read elsewhere.
func (r *reader) read(node any, path string, into keyed, others ...string) {
	values, ok := node.(map[string]any)
	if !ok {
		r.fault(path, "shop.file.object")
		return
	}
	outer := len(r.asked)
	r.asked = append(append(r.asked, "note"), others...)
	into.keys(&object{r, values, path})
	for key := range values {
		if !slices.Contains(r.asked[outer:], key) {
			r.fault(join(path, key), "shop.file.unknown")
		}
	}
	r.asked = r.asked[:outer]
	(&object{r, values, path}).remark()
}

// deepest is how many steps a path has of what remarks are offered for: to a line's type.
const deepest = 4

// remark reads what somebody noted of an object. One can be put to a group of the file and to what is listed, but for what is small; a part of these
// has one only if it was written there.
func (o *object) remark() {
	path := join(o.path, "note")
	text, ok := o.values["note"].(string)
	steps := strings.Count(o.path, "/") + 1
	last := o.path[strings.LastIndex(o.path, "/")+1:]
	switch listed := last != "" && last[0] <= '9' && steps <= deepest; {
	case ok && tooLong(text, longestRemark):
		o.fault(path, "shop.file.text_long", "most", longestRemark)
	case ok:
		o.leaf(path, "note", "", text)
	case listed || steps == 1:
		o.offer(path, "note", "", false)
	}
}

// has reports whether a key is there that may be missing, or whether it could be put.
func (o *object) has(key string) bool {
	_, ok := o.values[key]
	return ok || o.offers
}

// offer lists a value that is not there and could be.
func (o *object) offer(path, key string, k units.Kind, yesNo bool) {
	if o.offers {
		o.leaves = append(o.leaves, Leaf{Path: path, Key: key, Kind: k, YesNo: yesNo, Missing: true})
	}
}

// next lists the place behind the last value of a list, where another could be put.
func (o *object) next(path, key string, items int, k units.Kind) {
	if !o.ghost {
		o.offer(nth(path, items), key, k, false)
	}
}

// begins lists what an item of a list that holds none would have, but for the lists in it.
func (o *object) begins(path string, item keyed) {
	if o.offers && !o.ghost {
		o.ghost = true
		first := &object{o.reader, nil, nth(path, 0)}
		item.keys(first)
		first.remark()
		o.ghost = false
	}
}

// take returns the value of a key and its path; ok is false if it is missing.
func (o *object) take(key string) (node any, path string, ok bool) {
	o.asked = append(o.asked, key)
	path = join(o.path, key)
	if node, ok = o.values[key]; !ok {
		o.fault(path, "shop.file.missing")
	}
	return node, path, ok
}

// inner reads an object within an object.
func (o *object) inner(key string, into keyed) {
	node, path, ok := o.take(key)
	if !ok && o.offers {
		node, ok = map[string]any{}, true
	}
	if ok {
		o.read(node, path, into)
	}
}

// items returns a list's items and its path, none if there is no list, or a longer one than most.
func (o *object) items(key string, most int) (items []any, path string) {
	node, path, ok := o.take(key)
	if !ok {
		return nil, path
	}
	items, ok = node.([]any)
	switch {
	case !ok:
		o.fault(path, "shop.file.list")
	case len(items) > most:
		o.fault(path, "shop.file.list_long", "items", len(items), "most", most)
		items = nil
	case len(items) == 0:
		o.empty = append(o.empty, path)
	}
	return items, path
}

// list reads a list of objects.
func list[T any, P interface {
	*T
	keyed
}](o *object, key string, to *[]T, most int) {
	items, path := o.items(key, most)
	*to = make([]T, len(items))
	for i, item := range items {
		o.read(item, nth(path, i), P(&(*to)[i]))
	}
	if len(items) == 0 {
		o.begins(path, P(new(T)))
	}
}

func (r *reader) leaf(path, key string, k units.Kind, text string) {
	if r.lists {
		r.leaves = append(r.leaves, Leaf{Path: path, Key: key, Kind: k, Text: text})
	}
}

func (r *reader) fault(path, key string, pairs ...any) {
	r.faults = append(r.faults, Fault{Path: path, Why: message.New(key, pairs...)})
}

func join(path, step string) string {
	if path == "" {
		return step
	}
	return path + "/" + step
}

func nth(path string, i int) string { return join(path, strconv.Itoa(i)) }
