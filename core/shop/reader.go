package shop

import (
	"bytes"
	"encoding/json"
	"errors"
	"math"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"finwright/core/message"
	"finwright/core/strict"
	"finwright/core/units"
)

// Fault is one thing wrong in a capability file. Path leads to it from the
// top, as in "lines/0/types/1/spindle".
type Fault struct {
	Path   string
	Why    message.Message
	System units.System // in which the value was typed; empty: no matter
}

// Leaf is one value of a capability file, for a page to show and edit. Its
// label is the text "shop.field.<Key>".
type Leaf struct {
	Path string
	Key  string
	Kind units.Kind // of a quantity; empty for names, Count for whole numbers
	Text string     // as typed
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
	if tree["version"] != float64(Version) {
		return c, []Fault{{Path: "version", Why: message.New("shop.file.version", "version", Version)}}
	}
	r := reader{}
	r.object(tree, reflect.ValueOf(&c).Elem(), tag{}, "", "format", "version")
	if r.faults == nil {
		r.faults = check(&c)
	}
	c.tree = tree
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

// Leaves lists every value, in the order of the structs.
func (c Capability) Leaves() []Leaf {
	r := reader{lists: true}
	r.object(c.file(), reflect.ValueOf(&Capability{}).Elem(), tag{}, "", "format", "version")
	return r.fields
}

// With returns the capability with the value at path typed anew. With faults the
// capability returned is not to be used.
func (c Capability) With(path, text string) (Capability, []Fault) {
	steps := strings.Split(path, "/")
	var value any = text
	switch c.at(steps).(type) {
	case float64:
		n, err := units.Parse(units.Count, text, units.SI)
		if err != nil {
			return c, []Fault{{Path: path, Why: message.New("shop.file.whole")}}
		}
		value = n.SI
	case bool:
		if text == "true" || text == "false" {
			value = text == "true"
		}
	}
	next := Capability{tree: cloned(c.file()).(map[string]any)}
	if !put(next.tree, steps, value) {
		return c, []Fault{{Path: path, Why: message.New("shop.file.no_such")}}
	}
	return Open(next.Save())
}

// Add returns the capability with an item, as JSON, put at the end of the list
// at path: a measured tube, a tool, a fin type. A list that may be missing is begun.
func (c Capability) Add(path, item string) (Capability, []Fault) {
	var value any
	if json.Unmarshal([]byte(item), &value) != nil {
		return c, []Fault{{Path: path, Why: message.New("shop.file.not_json")}}
	}
	return c.relist(path, func(list []any) ([]any, bool) { return append(list, value), true })
}

// Remove returns the capability without the n-th item of the list at path.
func (c Capability) Remove(path string, n int) (Capability, []Fault) {
	return c.relist(path, func(list []any) ([]any, bool) {
		if n < 0 || n >= len(list) {
			return nil, false
		}
		return slices.Delete(list, n, n+1), true
	})
}

// relist changes one list of the file.
func (c Capability) relist(path string, change func([]any) ([]any, bool)) (Capability, []Fault) {
	tree := cloned(c.file()).(map[string]any)
	steps := strings.Split(path, "/")
	last := len(steps) - 1
	var parent any = tree
	for _, step := range steps[:last] {
		parent = child(parent, step)
	}
	m, ok := parent.(map[string]any)
	if !ok {
		return c, []Fault{{Path: path, Why: message.New("shop.file.no_such")}}
	}
	list, isList := m[steps[last]].([]any)
	_, present := m[steps[last]]
	if list, ok = change(list); !ok || present && !isList {
		return c, []Fault{{Path: path, Why: message.New("shop.file.no_such")}}
	}
	m[steps[last]] = list
	return Open(Capability{tree: tree}.Save())
}

// child returns what a step leads to, nil if nothing.
func child(node any, step string) any {
	switch n := node.(type) {
	case map[string]any:
		return n[step]
	case []any:
		if i, err := strconv.Atoi(step); err == nil && i >= 0 && i < len(n) {
			return n[i]
		}
	}
	return nil
}

// at returns what steps from the top lead to, nil if nothing.
func (c Capability) at(steps []string) any {
	var node any = c.file()
	for _, step := range steps {
		node = child(node, step)
	}
	return node
}

// cloned copies a tree, so that the one of another capability stays as it is.
func cloned(node any) any {
	switch n := node.(type) {
	case map[string]any:
		out := make(map[string]any, len(n))
		for key, value := range n {
			out[key] = cloned(value)
		}
		return out
	case []any:
		out := make([]any, len(n))
		for i, value := range n {
			out[i] = cloned(value)
		}
		return out
	}
	return node
}

// put sets the value that steps lead to; there must be one already.
func put(node any, steps []string, value any) bool {
	last := len(steps) - 1
	for _, step := range steps[:last] {
		node = child(node, step)
	}
	if child(node, steps[last]) == nil {
		return false
	}
	switch n := node.(type) {
	case map[string]any:
		n[steps[last]] = value
	case []any:
		i, _ := strconv.Atoi(steps[last]) // child has read it
		n[i] = value
	}
	return true
}

// reader fills structs from the tree of a JSON text and gathers what is wrong.
type reader struct {
	lists  bool // the fields are wanted
	faults []Fault
	fields []Leaf
}

func (r *reader) field(path string, t tag, text string) {
	if r.lists {
		r.fields = append(r.fields, Leaf{path, t.key, t.kind, text})
	}
}

func (r *reader) fault(path, key string, pairs ...any) {
	r.faults = append(r.faults, Fault{Path: path, Why: message.New(key, pairs...)})
}

func (r *reader) object(node any, v reflect.Value, around tag, path string, also ...string) {
	m, ok := node.(map[string]any)
	if !ok {
		r.fault(path, "shop.file.object")
		return
	}
	known := append(also, "note")
	for i, t := range tags()[v.Type()] {
		if t.key == "" {
			continue
		}
		known = append(known, t.key)
		child, present := m[t.key]
		switch {
		case present:
			r.value(child, v.Field(i), t.within(around), join(path, t.key))
		case !t.optional:
			r.fault(join(path, t.key), "shop.file.missing")
		}
	}
	if low := v.FieldByName("Low"); low.IsValid() && low.Float() > v.FieldByName("High").Float() {
		r.fault(join(path, "high"), "shop.file.range")
	}
	for key := range m {
		if !slices.Contains(known, key) {
			r.fault(join(path, key), "shop.file.unknown")
		}
	}
	if remark, ok := m["note"].(string); ok && tooLong(remark, longestRemark) {
		r.fault(join(path, "note"), "shop.file.text_long", "most", longestRemark)
	}
}

func join(path, step string) string {
	if path == "" {
		return step
	}
	return path + "/" + step
}

func (r *reader) value(node any, v reflect.Value, t tag, path string) {
	switch v.Kind() {
	case reflect.Struct:
		r.object(node, v, t, path)
	case reflect.Slice:
		r.list(node, v, t, path)
	case reflect.Float64:
		r.quantity(node, v, t, path)
	case reflect.Int:
		x, ok := node.(float64)
		switch {
		case !ok || x != math.Trunc(x):
			r.fault(path, "shop.file.whole")
			return
		case !t.holds(x):
			r.faults = append(r.faults, Fault{Path: path, Why: t.outside(plain(x))})
			return
		}
		v.SetInt(int64(x))
		r.field(path, t, strconv.Itoa(int(x)))
	case reflect.Bool:
		b, ok := node.(bool)
		if !ok {
			r.fault(path, "shop.file.yes_no")
			return
		}
		v.SetBool(b)
		r.field(path, t, strconv.FormatBool(b))
	case reflect.String:
		text, ok := node.(string)
		switch {
		case !ok || text == "":
			r.fault(path, "shop.file.text")
			return
		case tooLong(text, t.most):
			r.fault(path, "shop.file.text_long", "most", t.most)
			return
		}
		v.SetString(text)
		r.field(path, t, text)
	}
}

// list reads the items of a list, each by the tag of the list but for the bound on its length.
func (r *reader) list(node any, v reflect.Value, t tag, path string) {
	list, ok := node.([]any)
	switch {
	case !ok:
		r.fault(path, "shop.file.list")
		return
	case len(list) > t.most:
		r.fault(path, "shop.file.list_long", "items", len(list), "most", t.most)
		return
	}
	t.most = longestText
	v.Set(reflect.MakeSlice(v.Type(), len(list), len(list)))
	for i, item := range list {
		r.value(item, v.Index(i), t, join(path, strconv.Itoa(i)))
	}
}

func (r *reader) quantity(node any, v reflect.Value, t tag, path string) {
	text, ok := node.(string)
	switch {
	case !ok:
		r.fault(path, "shop.file.quantity", "accepts", message.Key("accepts."+string(t.kind)))
		return
	case tooLong(text, longestText):
		r.fault(path, "shop.file.text_long", "most", longestText)
		return
	}
	p, err := units.Parse(t.kind, text, units.SI)
	var bad *units.ParseError
	switch {
	case errors.As(err, &bad):
		r.faults = append(r.faults, Fault{Path: path, Why: message.Unread(bad)})
		return
	case !t.holds(p.SI):
		r.faults = append(r.faults, Fault{path, t.outside(text), typedIn(t.kind, text)})
		return
	}
	v.SetFloat(p.SI)
	r.field(path, t, text)
}

// typedIn returns the system of a text's unit.
func typedIn(k units.Kind, text string) units.System {
	if units.WrittenIn(k, text, units.SI) {
		return units.SI
	}
	return units.US
}

// plain writes a number of the file without an exponent where it has room.
func plain(x float64) string {
	if math.Abs(x) < 1e15 {
		return strconv.FormatFloat(x, 'f', -1, 64)
	}
	return strconv.FormatFloat(x, 'g', -1, 64)
}
