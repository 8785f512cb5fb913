package shop

import (
	"encoding/json"
	"slices"
	"strings"

	"finwright/core/units"
)

// Schema describes a capability file of this version, in JSON Schema of 2020-12, for programs of others that read or write one. It is found by the
// reader itself: where a value may stand from what it offers, and whether it must from what it misses. What a quantity may be, the page says.
func Schema() []byte {
	c := House()
	for again := true; again; { // an item in each list, so that the reader is asked of all
		_, empty := c.Contents()
		again = false
		for _, path := range empty {
			if next, faults := c.More(path); faults == nil {
				c, again = next, true
				break
			}
		}
	}
	root := &described{}
	for _, l := range c.Places() {
		root.put(strings.Split(Shape(l.Path), "/"), l)
	}
	tree := cloned(c.file()).(map[string]any)
	root.require(tree, tree)
	schema := root.schema()
	properties := schema["properties"].(map[string]any)
	properties["format"], properties["version"] = map[string]any{"const": Format}, map[string]any{"const": Version}
	schema["required"] = append(schema["required"].([]string), "format", "version")
	schema["$schema"], schema["title"] = "https://json-schema.org/draft/2020-12/schema", Format
	out, err := json.MarshalIndent(schema, "", " ")
	if err != nil {
		panic("shop: " + err.Error())
	}
	return append(out, '\n')
}

// described is what may stand at a shape: an object, a list or a value.
type described struct {
	of       map[string]*described // by key; of a list the one is "*"
	required map[string]bool
	value    Leaf
}

func (d *described) put(steps []string, l Leaf) {
	if len(steps) == 0 {
		d.value = l
		return
	}
	if d.of == nil {
		d.of, d.required = map[string]*described{}, map[string]bool{}
	}
	if d.of[steps[0]] == nil {
		d.of[steps[0]] = &described{}
	}
	d.of[steps[0]].put(steps[1:], l)
}

// require takes each key out of what stands in a node of a whole file, and looks whether the reader misses it.
func (d *described) require(whole map[string]any, node any) {
	switch n := node.(type) {
	case map[string]any:
		for key, inner := range d.of {
			kept, there := n[key]
			if !there {
				continue
			}
			if !d.required[key] {
				delete(n, key)
				r := reader{}
				r.read(whole, "", &Capability{}, "format", "version")
				n[key] = kept
				d.required[key] = slices.ContainsFunc(r.faults, func(f Fault) bool { return f.Why.Key == "shop.file.missing" })
			}
			inner.require(whole, kept)
		}
	case []any:
		if len(n) > 0 && d.of[listed] != nil {
			d.of[listed].require(whole, n[0])
		}
	}
}

const listed = "*"

func (d *described) schema() map[string]any {
	switch {
	case d.of[listed] != nil:
		return map[string]any{"type": "array", "items": d.of[listed].schema()}
	case d.of == nil && d.value.YesNo:
		return map[string]any{"type": "boolean"}
	case d.of == nil && d.value.Kind == units.Count:
		return map[string]any{"type": "integer"}
	case d.of == nil:
		return map[string]any{"type": "string", "maxLength": longestRemark}
	}
	properties, required := map[string]any{"note": map[string]any{"type": "string", "maxLength": longestRemark}}, []string{}
	for key, inner := range d.of {
		properties[key] = inner.schema()
		if d.required[key] {
			required = append(required, key)
		}
	}
	slices.Sort(required)
	return map[string]any{"type": "object", "properties": properties, "required": required, "additionalProperties": false}
}
