package shop

import (
	"encoding/json"
	"slices"
	"strconv"
	"strings"

	"finwright/core/message"
	"finwright/core/units"
)

// With returns the capability with another text typed at path. With faults the
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
