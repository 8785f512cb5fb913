package shop

import (
	"slices"
	"strconv"
	"strings"

	"finwright/core/message"
	"finwright/core/units"
)

// Entered is a text for the value at Path; an empty one takes the value away. A place behind the end of a list gets another item.
// "lines/0/types/0/fin_metals/=al1060" says "true" or "false": whether the list has that name.
type Entered struct {
	Path string `json:"path"`
	Text string `json:"text"`
}

// Member marks the step of a path that is a name in a list, and not its place there.
const Member = "="

// Enter returns the capability with those of many entries that hold together, and of each other one why it does not. An
// entry that is refused takes no other with it, unless they are wrong together only.
func (c Capability) Enter(list []Entered) (Capability, []Fault) {
	kinds := map[string]Leaf{}
	for _, l := range c.Places() {
		kinds[Shape(l.Path)] = l
	}
	var refused []Fault
	for len(list) > 0 {
		e := entering{c: c, kinds: kinds, tree: cloned(c.file()).(map[string]any)}
		next, faults := e.enter(list)
		if faults == nil {
			return next, refused
		}
		var kept []Entered
		for i, one := range list {
			if f := slices.IndexFunc(faults, func(f Fault) bool { return e.toBlame(i, f.Path) }); f >= 0 {
				refused = append(refused, Fault{Path: one.Path, Of: faults[f].Path, Why: faults[f].Why, System: faults[f].System})
			} else {
				kept = append(kept, one)
			}
		}
		list = kept
	}
	return c, refused
}

// Shape is a path without the places in lists: what stands at paths of one shape is alike.
func Shape(path string) string {
	steps := strings.Split(path, "/")
	for i, step := range steps {
		if _, err := strconv.Atoi(step); err == nil || strings.HasPrefix(step, Member) {
			steps[i] = "*"
		}
	}
	return strings.Join(steps, "/")
}

// entering puts texts into a tree.
type entering struct {
	c     Capability
	kinds map[string]Leaf // by shape
	tree  map[string]any
	at    []string // where each entry went
	thin  []*thinned
}

// thinned is a list of values of which some are to go.
type thinned struct {
	in   map[string]any
	key  string
	path string
	gone []int // in order
}

func (e *entering) enter(list []Entered) (Capability, []Fault) {
	var lost []Fault
	e.at = make([]string, len(list))
	for i, one := range list {
		ok := false
		if leaf, known := e.kinds[Shape(one.Path)]; known {
			e.at[i], ok = e.put(strings.Split(one.Path, "/"), one.Text, leaf)
		}
		if !ok {
			e.at[i] = one.Path
			lost = append(lost, Fault{Path: one.Path, Why: message.New("shop.file.no_such")})
		}
	}
	if lost != nil {
		return e.c, lost
	}
	for _, t := range e.thin {
		slices.Sort(t.gone)
		values := t.in[t.key].([]any)
		kept := []any{}
		for i, v := range values {
			if !slices.Contains(t.gone, i) {
				kept = append(kept, v)
			}
		}
		t.in[t.key] = kept
	}
	next, faults := Open(Capability{tree: e.tree}.Save())
	for i := range faults {
		faults[i].Path = e.before(faults[i].Path)
	}
	return next, faults
}

// before is where a fault's value stood before lists were thinned.
func (e *entering) before(path string) string {
	for _, t := range e.thin {
		rest, ok := strings.CutPrefix(path, t.path+"/")
		i, err := strconv.Atoi(rest)
		if !ok || err != nil {
			continue
		}
		for _, g := range t.gone {
			if g <= i {
				i++
			}
		}
		return nth(t.path, i)
	}
	return path
}

// toBlame reports whether none of the entries is nearer to a fault's place than the i-th.
func (e *entering) toBlame(i int, fault string) bool {
	near := func(at string) int { return together(strings.Split(at, "/"), strings.Split(fault, "/")) }
	mine := near(e.at[i])
	return !slices.ContainsFunc(e.at, func(at string) bool { return near(at) > mine })
}

// together counts the steps that two paths begin with together.
func together(a, b []string) int {
	n := 0
	for n < min(len(a), len(b)) && a[n] == b[n] {
		n++
	}
	return n
}

// put enters a text at the end of a path, and returns where that is.
func (e *entering) put(steps []string, text string, leaf Leaf) (at string, ok bool) {
	m := e.tree
	var outer map[string]any // that m stands in, under within
	var within string
	for i := 0; i < len(steps); i++ {
		key, rest := steps[i], steps[i+1:]
		at = join(at, key)
		if len(rest) == 0 {
			set(m, key, text, leaf)
			if outer != nil && hollow(m) {
				delete(outer, within)
			}
			return at, true
		}
		n, err := strconv.Atoi(rest[0])
		name, member := strings.CutPrefix(rest[0], Member)
		if err != nil && !member { // an object, which may be missing yet
			inner, there := m[key].(map[string]any)
			if !there && m[key] != nil {
				return at, false
			}
			if !there {
				inner = e.begun(at)
				m[key] = inner
			}
			outer, within, m = m, key, inner
			continue
		}
		items, there := m[key].([]any)
		if !there && m[key] != nil || n < 0 {
			return at, false
		}
		if member {
			m[key] = withMember(items, name, text == "true")
			return join(at, rest[0]), true
		}
		n = min(n, len(items))
		if len(rest) == 1 {
			m[key] = e.value(m, key, at, items, n, text, leaf)
			return nth(at, n), true
		}
		if at = nth(at, n); n == len(items) {
			if text == "" {
				return at, true // nothing begins with nothing
			}
			item, ok := another(items, steps[:i+1])
			if !ok {
				return at, false
			}
			items = append(items, item)
			m[key] = items
		}
		if m, ok = items[n].(map[string]any); !ok {
			return at, false
		}
		outer = nil
		i++
	}
	return at, false
}

// begun is an object that was missing, with its lists, which hold nothing.
func (e *entering) begun(at string) map[string]any {
	m := map[string]any{}
	for shape := range e.kinds {
		if rest, within := strings.CutPrefix(shape, Shape(at)+"/"); within {
			if key, _, list := strings.Cut(rest, "/*"); list && !strings.Contains(key, "/") {
				m[key] = []any{}
			}
		}
	}
	return m
}

// hollow reports whether an object says nothing any more.
func hollow(m map[string]any) bool {
	for _, value := range m {
		if list, ok := value.([]any); !ok || len(list) > 0 {
			return false
		}
	}
	return true
}

// value returns a list of values with a text at its n-th place, or with that noted to go.
func (e *entering) value(in map[string]any, key, path string, items []any, n int, text string, leaf Leaf) []any {
	switch {
	case text != "" && n < len(items):
		items[n] = said(text, leaf)
	case text != "":
		return append(slices.Clip(items), said(text, leaf))
	case n < len(items):
		i := slices.IndexFunc(e.thin, func(t *thinned) bool { return t.path == path })
		if i < 0 {
			i = len(e.thin)
			e.thin = append(e.thin, &thinned{in: in, key: key, path: path})
		}
		e.thin[i].gone = append(e.thin[i].gone, n)
	}
	if items == nil {
		return []any{}
	}
	return items
}

// withMember returns a list of names that has one of them, at its end if it is new, or not.
func withMember(list []any, name string, has bool) []any {
	out := slices.DeleteFunc(slices.Clone(list), func(v any) bool { return v == name && !has })
	if has && !slices.Contains(list, any(name)) {
		out = append(out, name)
	}
	if out == nil {
		return []any{}
	}
	return out
}

// set puts a value under a key, or takes it away.
func set(m map[string]any, key, text string, leaf Leaf) {
	if text == "" {
		delete(m, key)
		return
	}
	m[key] = said(text, leaf)
}

// said is a text as the file holds it. One that is no such value stays a text, which the reader refuses.
func said(text string, leaf Leaf) any {
	switch {
	case leaf.Kind == units.Count:
		if n, err := units.Parse(units.Count, text, units.SI); err == nil {
			return n.SI
		}
	case leaf.YesNo && (text == "true" || text == "false"):
		return text == "true"
	}
	return text
}
