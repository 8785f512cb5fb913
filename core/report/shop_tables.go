package report

import (
	"slices"
	"strconv"
	"strings"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// ShopTables is a capability file laid out to be edited, one table a subject. What the tables are follows from the file's keys
// alone (core/shop/keys.go), so that a key that is added there is in them.
type ShopTables struct {
	Name   string      `json:"name"`
	Tables []ShopTable `json:"tables"`
}

// ShopTable is one subject: a list of things, a row each, or a column each where much is said of a few; the values of a group; values
// of the same kind for several owners, a column each; or which names of a list each owner has.
type ShopTable struct {
	ID      string       `json:"id"` // the shape of its paths
	Label   string       `json:"label"`
	Of      string       `json:"of"`     // the subject that it is part of; empty: it is one itself
	Across  bool         `json:"across"` // a thing is a column
	Columns []ShopColumn `json:"columns"`
	Rows    []ShopRow    `json:"rows"`
	Sorts   []ShopSort   `json:"sorts"`
}

// ShopColumn heads a column by its parts, from the whole to what is named.
type ShopColumn struct {
	Parts  []string    `json:"parts"`
	Record *ShopRecord `json:"record"`
}

// ShopRow is a row with a cell for each column.
type ShopRow struct {
	Parts  []string    `json:"parts"`
	Record *ShopRecord `json:"record"`
	Cells  []ShopCell  `json:"cells"`
}

// ShopRecord is the item of a list that a row or column says something of.
type ShopRecord struct {
	List  string `json:"list"`
	Index int    `json:"index"`
	New   bool   `json:"new"` // the list holds none: what is entered begins it
}

// ShopCell is a value as typed. There is none to be entered where the path is empty.
type ShopCell struct {
	Path string `json:"path"`
	Text string `json:"text"`
	Sort int    `json:"sort"` // among the table's
}

// ShopSort says what may be entered in a cell.
type ShopSort struct {
	Kind    units.Kind `json:"kind"` // of a quantity; empty for names and choices
	Unit    string     `json:"unit"` // of a number without one
	Hint    string     `json:"hint"`
	Long    bool       `json:"long"` // it may take several lines
	Choices []Choice   `json:"choices"`
}

// acrossFrom is how many values of a thing are too many for a row: a line has thirty, and a shop has few lines.
const acrossFrom = 13

// ShopTables lays a capability file out.
func (w Writer) ShopTables(c shop.Capability) ShopTables {
	w.Currency = c.Currency
	l := laidOut{Writer: w, names: map[string]string{}, by: map[string]*shopSubject{}}
	places := c.Places()
	for _, p := range places {
		l.name(p)
	}
	for _, p := range places {
		l.put(p)
	}
	l.together()
	out := ShopTables{Name: c.Name, Tables: []ShopTable{}}
	for _, s := range l.subjects {
		out.Tables = append(out.Tables, l.table(s))
	}
	return out
}

// laidOut sorts the values of a file by subject.
type laidOut struct {
	Writer
	names    map[string]string // of items of lists, by path
	by       map[string]*shopSubject
	subjects []*shopSubject
	sorts    map[sortOf]int // of the table in hand, since its values are many and of few sorts
}

// sortOf tells the values of one table apart by what may be entered for them.
type sortOf struct {
	key   string
	kind  units.Kind
	yesNo bool
}

// shopSubject is a table while it is filled: the values by owner and key, both in the order of the file.
type shopSubject struct {
	id      string
	listed  bool // its owners are items of a list
	values  bool // its values are items of a list themselves
	owners  []string
	keys    []string
	cells   map[[2]string]shop.Leaf
	missing map[string]bool // owners that are not there yet
}

// name notes what an item of a list is called within.
func (l *laidOut) name(p shop.Leaf) {
	if steps := strings.Split(p.Path, "/"); len(steps) > 1 && carriesName(p.Path) && isIndex(steps[len(steps)-2]) && !p.Missing {
		l.names[strings.Join(steps[:len(steps)-1], "/")] = l.shown(p)
	}
}

// shown is a value in words.
func (l *laidOut) shown(p shop.Leaf) string {
	for _, c := range l.shopChoices(p) {
		if c.ID == p.Text {
			return c.Text
		}
	}
	return p.Text
}

func (l *laidOut) put(p shop.Leaf) {
	steps := strings.Split(p.Path, "/")
	last := len(steps) - 1
	for last > 0 && !isIndex(steps[last]) {
		last--
	}
	owner, key := strings.Join(steps[:last+1], "/"), strings.Join(steps[last+1:], "/")
	var s *shopSubject
	switch {
	case last > 0 && key == "": // one of a list of values
		s = l.subject(shop.Shape(strings.Join(steps[:last], "/")))
		s.values, owner, key = true, strings.Join(steps[:last], "/"), steps[last]
	case last > 0:
		s = l.subject(shop.Shape(strings.Join(steps[:last], "/")))
		s.listed = true
	default: // a value of the shop, or of a group
		owner, key = "", strings.Join(steps[1:], "/")
		if id := steps[0]; key == "" {
			s, key = l.subject(""), id
		} else {
			s = l.subject(id)
		}
	}
	if !slices.Contains(s.owners, owner) {
		s.owners = append(s.owners, owner)
		s.missing[owner] = true
	}
	if !slices.Contains(s.keys, key) {
		s.keys = append(s.keys, key)
	}
	if !p.Missing {
		s.missing[owner] = false
	}
	s.cells[[2]string{owner, key}] = p
}

func (l *laidOut) subject(id string) *shopSubject {
	s, ok := l.by[id]
	if !ok {
		s = &shopSubject{id: id, cells: map[[2]string]shop.Leaf{}, missing: map[string]bool{}}
		l.by[id] = s
		l.subjects = append(l.subjects, s)
	}
	return s
}

// top is the step that a subject's paths begin with.
func (s *shopSubject) top() string { top, _, _ := strings.Cut(s.id, "/"); return top }

// remarkKey is the key of what somebody noted of a thing.
const remarkKey = "note"

// said counts the keys of what is said of a thing, remarks apart.
func (s *shopSubject) said() int {
	n := 0
	for _, key := range s.keys {
		if key != remarkKey {
			n++
		}
	}
	return n
}

// together puts what is part of a subject behind it.
func (l *laidOut) together() {
	order := map[string]int{}
	for _, s := range l.subjects {
		if _, known := order[s.top()]; !known {
			order[s.top()] = len(order)
		}
	}
	place := func(s *shopSubject) int {
		n := 2 * order[s.top()]
		if s.id != s.top() {
			n++
		}
		return n
	}
	slices.SortStableFunc(l.subjects, func(a, b *shopSubject) int { return place(a) - place(b) })
}

func (l *laidOut) table(s *shopSubject) ShopTable {
	l.sorts = map[sortOf]int{}
	t := ShopTable{ID: s.id, Label: l.Texts.Text("shop.table.shop"), Columns: []ShopColumn{}, Rows: []ShopRow{}, Sorts: []ShopSort{}}
	if s.id != "" {
		steps := strings.Split(s.id, "/")
		t.Label = l.Texts.Text("shop.field." + steps[len(steps)-1])
		if own := "shop.table." + strings.ReplaceAll(s.id, "/", "_"); l.Texts.Has(own) { // where the key alone says too little
			t.Label = l.Texts.Text(own)
		}
	}
	if s.id != s.top() {
		t.Of = l.Texts.Text("shop.field." + s.top())
	}
	switch {
	case s.values:
		l.fillValues(&t, s)
	case s.listed && s.said() < acrossFrom:
		l.fillRows(&t, s)
	default:
		t.Across = s.listed
		l.fillColumns(&t, s)
	}
	return t
}

// fillRows gives each thing a row.
func (l *laidOut) fillRows(t *ShopTable, s *shopSubject) {
	for _, key := range s.keys {
		t.Columns = append(t.Columns, ShopColumn{Parts: l.labels(key)})
	}
	for _, owner := range s.owners {
		row := ShopRow{Parts: l.whole(owner), Record: s.record(owner), Cells: make([]ShopCell, len(s.keys))}
		if len(row.Parts) == 0 {
			row.Parts = []string{l.count(row.Record.Index)}
		}
		for i, key := range s.keys {
			row.Cells[i] = l.cell(t, s, owner, key)
		}
		t.Rows = append(t.Rows, row)
	}
}

// fillColumns gives each thing, or the group, a column.
func (l *laidOut) fillColumns(t *ShopTable, s *shopSubject) {
	for _, owner := range s.owners {
		column := ShopColumn{Parts: []string{t.Label}}
		if s.listed {
			column.Record = s.record(owner)
			column.Parts = append(l.whole(owner), l.called(owner, column.Record.New))
		}
		t.Columns = append(t.Columns, column)
	}
	for _, key := range s.keys {
		row := ShopRow{Parts: l.labels(key), Cells: make([]ShopCell, len(s.owners))}
		for i, owner := range s.owners {
			row.Cells[i] = l.cell(t, s, owner, key)
		}
		t.Rows = append(t.Rows, row)
	}
}

// fillValues gives each list of values a column: its values one under the other and room for one more or, of names out of a
// list, for each name whether it is among them.
func (l *laidOut) fillValues(t *ShopTable, s *shopSubject) {
	for _, owner := range s.owners {
		parts := l.whole(owner)
		if len(parts) == 0 {
			parts = []string{t.Label}
		}
		t.Columns = append(t.Columns, ShopColumn{Parts: parts})
	}
	some := s.cells[[2]string{s.owners[0], "0"}]
	if names := l.shopChoices(some); names != nil {
		some.YesNo = true
		sort := l.sort(t, some)
		for _, name := range names {
			row := ShopRow{Parts: []string{name.Text}, Cells: make([]ShopCell, len(s.owners))}
			for i, owner := range s.owners {
				has := slices.ContainsFunc(s.keys, func(key string) bool { return s.cells[[2]string{owner, key}].Text == name.ID })
				row.Cells[i] = ShopCell{Path: owner + "/" + shop.Member + name.ID, Text: strconv.FormatBool(has), Sort: sort}
			}
			t.Rows = append(t.Rows, row)
		}
		return
	}
	for i := range s.keys {
		row := ShopRow{Parts: []string{l.count(i)}, Cells: make([]ShopCell, len(s.owners))}
		for j, owner := range s.owners {
			key := strconv.Itoa(i)
			row.Cells[j] = l.cell(t, s, owner, key)
			if row.Cells[j].Path == "" { // behind the last of this list
				row.Cells[j].Path = owner + "/" + key
			}
		}
		t.Rows = append(t.Rows, row)
	}
}

func (s *shopSubject) record(owner string) *ShopRecord {
	at := strings.LastIndex(owner, "/")
	n, _ := strconv.Atoi(owner[at+1:]) // it is an item of a list
	return &ShopRecord{List: owner[:at], Index: n, New: s.missing[owner]}
}

func (l *laidOut) cell(t *ShopTable, s *shopSubject, owner, key string) ShopCell {
	p, ok := s.cells[[2]string{owner, key}]
	if !ok {
		return ShopCell{}
	}
	text := p.Text
	if p.Kind != "" {
		text = l.Texts.Numbers.Typed(text)
	}
	return ShopCell{Path: p.Path, Text: text, Sort: l.sort(t, p)}
}

// sort returns the place among the table's sorts of what may be entered for a value.
func (l *laidOut) sort(t *ShopTable, p shop.Leaf) int {
	of := sortOf{p.Key, p.Kind, p.YesNo}
	i, known := l.sorts[of]
	if !known {
		i = l.newSort(t, p)
		l.sorts[of] = i
	}
	return i
}

func (l *laidOut) newSort(t *ShopTable, p shop.Leaf) int {
	sort := ShopSort{Kind: p.Kind, Choices: []Choice{}, Long: p.Key == remarkKey}
	if choices := l.shopChoices(p); choices != nil {
		sort.Choices = choices
	}
	if p.Kind != "" {
		sort.Unit, sort.Hint = p.Kind.Unit(units.SI), l.Texts.Text(string(message.Accepts(p.Kind)))
		if p.Kind.Money() {
			sort.Unit = strings.TrimSpace(l.Currency + " " + sort.Unit)
		}
	}
	same := func(other ShopSort) bool {
		return other.Kind == sort.Kind && other.Long == sort.Long && slices.Equal(other.Choices, sort.Choices)
	}
	if i := slices.IndexFunc(t.Sorts, same); i >= 0 {
		return i
	}
	t.Sorts = append(t.Sorts, sort)
	return len(t.Sorts) - 1
}

// whole names the items of lists that something is part of, the outermost first.
func (l *laidOut) whole(path string) []string {
	parts := []string{}
	steps := strings.Split(path, "/")
	for i := range steps[:len(steps)-1] {
		if isIndex(steps[i]) {
			parts = append(parts, l.called(strings.Join(steps[:i+1], "/"), false))
		}
	}
	return parts
}

// called is what an item of a list is called: by its name, or its number.
func (l *laidOut) called(path string, missing bool) string {
	if missing {
		return l.Texts.Text("shop.table.none")
	}
	if name := l.names[path]; name != "" {
		return name
	}
	n, _ := strconv.Atoi(path[strings.LastIndex(path, "/")+1:])
	return l.count(n)
}

func (w Writer) count(index int) string {
	return w.say(message.New("making.count", "count", index+1))
}

// labels names what the steps of a key lead to.
func (l *laidOut) labels(key string) []string {
	parts := []string{}
	for step := range strings.SplitSeq(key, "/") {
		parts = append(parts, l.Texts.Text("shop.field."+step))
	}
	return parts
}
