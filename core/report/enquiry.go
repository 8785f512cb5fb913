package report

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/enquiry"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/units"
)

// ShownEnquiry is an enquiry as the page shows it.
type ShownEnquiry struct {
	Columns []ShownHead        `json:"columns"` // of a table; none of lines
	Names   []EnquiryName      `json:"names"`   // what a column may be taken for
	Heads   []EnquiryName      `json:"heads"`   // what items say something of, in the order of Names
	Items   []ShownEntry       `json:"items"`
	Cells   []EnquiryCell      `json:"cells"`   // what items say, each once
	Entries []EnquiryEntry     `json:"entries"` // what their designs say otherwise than the base, each once
	Designs [][]int            `json:"designs"` // those that differ, by their places in Entries
	Doubts  []ShownDoubt       `json:"doubts"`
	Asks    []ShownAsk         `json:"asks"` // what to ask the customer, those that doubts ask aside
	Left    []enquiry.Leftover `json:"left"`
	Said    string             `json:"said"` // how many items, and what is open
	Base    document.Document  `json:"base"` // that the designs of the items differ from
	Letter  string             `json:"letter"`
}

// EnquiryName is what something may be called.
type EnquiryName struct {
	ID      string         `json:"id"`
	Label   string         `json:"label"`
	Means   string         `json:"means"` // the text that its meaning is found by
	Choices []CarriedLabel `json:"choices"`
}

// CarriedLabel is a choice in words.
type CarriedLabel struct {
	ID   string `json:"id"`
	Text string `json:"text"`
}

// ShownHead is a column of the customer's table, and what its cells are taken for.
type ShownHead struct {
	enquiry.HeadColumn
	Said string `json:"said"` // what that rests on
}

// ShownEntry is an item: a cell for each of the heads. Ten thousand items say little that no other says: what they share stands once.
type ShownEntry struct {
	Mark    string   `json:"mark"`
	Title   string   `json:"title"`  // of its design; empty: the base's
	Source  string   `json:"source"` // the customer's words
	Cells   []int    `json:"cells"`  // their places
	Open    int      `json:"open"`   // doubts of it
	Unread  []string `json:"unread"` // words that were not understood
	Refused string   `json:"refused"`
	Design  int      `json:"design"` // its place
}

// EnquiryEntry is an entry of a design.
type EnquiryEntry struct {
	Field  string          `json:"field"`
	Text   string          `json:"text"`
	Origin document.Origin `json:"origin"`
}

// EnquiryCell is what an item says of one head.
type EnquiryCell struct {
	Field string   `json:"field"`
	Text  string   `json:"text"` // as it may be edited
	Shown string   `json:"shown"`
	SI    *float64 `json:"si,omitempty"` // of a number, to be ordered by
	Why   string   `json:"why"`          // why it is a guess, or why what was typed cannot be used
}

// ShownDoubt is one kind of doubt of some items: which of two readings is meant.
type ShownDoubt struct {
	Kind   string `json:"kind"`
	Field  string `json:"field"`
	Items  []int  `json:"items"`
	Said   string `json:"said"`
	First  string `json:"first"`
	Second string `json:"second"`
	Text   string `json:"text"` // of the second reading, where there may be several
}

// ShownAsk is a question, or what is to be said of items.
type ShownAsk struct {
	Kind  string `json:"kind"`
	Said  string `json:"said"`
	Items []int  `json:"items"`
}

// besideFields are what is read beside the entries of a design, in the order in which a page shows them.
var besideFields = []string{enquiry.FinOD, enquiry.FinGap, enquiry.FinnedLength, enquiry.BetweenFaces, enquiry.Spare, enquiry.SpareBare, enquiry.GasFlow, enquiry.Seam}

// enquiryOrder are the fields that enquiries mostly speak of, first.
var enquiryOrder = []string{
	"quantity", "tube_metal", "tube_od", "tube_wall", "wall_basis", "tube_length", "fin_type", "fin_metal", "fin_height", enquiry.FinOD, "strip_thickness", "fin_pitch",
	"plain_end_a", "plain_end_b",
}

// Enquiry prints an enquiry, with what was typed and could not be used.
func (w Writer) Enquiry(e *enquiry.Enquiry, wrong []enquiry.Fault, base document.Document) ShownEnquiry {
	out := ShownEnquiry{
		Columns: []ShownHead{}, Names: w.enquiryNames(), Heads: []EnquiryName{}, Items: []ShownEntry{}, Cells: []EnquiryCell{}, Entries: []EnquiryEntry{},
		Designs: [][]int{}, Doubts: []ShownDoubt{}, Asks: []ShownAsk{}, Left: e.Left, Base: base,
	}
	for _, c := range e.Columns {
		out.Columns = append(out.Columns, ShownHead{c, w.restsOn(&c)})
	}
	said := map[string]bool{}
	for i := range e.Items {
		for _, r := range e.Items[i].Whole {
			said[r.Field] = true
		}
	}
	for _, f := range wrong {
		said[f.Field] = true
	}
	for _, n := range out.Names {
		if said[n.ID] {
			out.Heads = append(out.Heads, n)
		}
	}
	asks := make([][]enquiry.Ask, len(e.Items))
	once := newShared(w, &out)
	open := 0
	for i := range e.Items {
		asks[i] = e.Items[i].Asks()
		out.Items = append(out.Items, once.entry(&e.Items[i]))
		if out.Items[i].Open > 0 {
			open++
		}
	}
	for _, f := range wrong {
		at := slices.IndexFunc(out.Heads, func(n EnquiryName) bool { return n.ID == f.Field })
		out.Items[f.Item].Cells[at] = once.cell(EnquiryCell{Field: f.Field, Text: f.Text, Shown: f.Text, Why: w.say(f.Why)})
	}
	w.together(&out, e, asks)
	out.Said = w.say(message.New("enquiry.said", "items", len(e.Items), "open", open, "asks", len(out.Asks)+len(out.Doubts)))
	out.Letter = w.letter(&out)
	return out
}

func (w Writer) enquiryNames() (out []EnquiryName) {
	add := func(id string, f *field.Field) {
		n := EnquiryName{ID: id, Label: w.say(message.New(enquiry.Label(id))), Means: enquiry.Label(id), Choices: []CarriedLabel{}}
		if f != nil && f.Choice != nil {
			for _, c := range f.Choices() {
				n.Choices = append(n.Choices, CarriedLabel{c, w.Texts.Text(f.ChoiceKey(c))})
			}
		}
		out = append(out, n)
	}
	for _, id := range enquiryOrder {
		f, ok := field.Find(id)
		if !ok {
			f = nil
		}
		add(id, f)
	}
	for i := range field.Fields {
		if f := &field.Fields[i]; !slices.Contains(enquiryOrder, f.ID) {
			add(f.ID, f)
		}
	}
	for _, id := range besideFields {
		if !slices.Contains(enquiryOrder, id) {
			add(id, nil)
		}
	}
	return out
}

// restsOn says what a column's guess rests on: its head, or its first cells.
func (w Writer) restsOn(c *enquiry.HeadColumn) string {
	cells := strings.Join(c.Examples, ", ")
	switch {
	case c.Field == "":
		return w.say(message.New("enquiry.column.lines", "cells", cells))
	case c.Guessed:
		return w.say(message.New("enquiry.column.cells", "cells", cells))
	}
	return w.say(message.New("enquiry.column.head", "head", c.Head, "cells", cells))
}

// reading prints a text of a field.
func (w Writer) reading(name, text string) string {
	f, ok := field.Find(name)
	switch {
	case text == "":
		return ""
	case ok && f.Choice != nil && slices.Contains(f.Choices(), text):
		return w.Texts.Text(f.ChoiceKey(text))
	case name == enquiry.Seam:
		return w.Texts.Text("enquiry.seam." + text)
	}
	return w.Texts.Numbers.Typed(text)
}

// second prints the second reading of a doubt.
func (w Writer) second(name string, d enquiry.Doubt) string {
	switch {
	case d.Field == "":
		return w.Texts.Text("enquiry.nothing")
	case d.Field != name:
		return w.say(message.New("enquiry.as", "label", message.Key(enquiry.Label(d.Field)), "text", w.reading(d.Field, d.Text)))
	}
	return w.reading(name, d.Text)
}

// mostMarks of items are named in a question; mostWords of theirs are quoted.
const (
	mostMarks = 12
	mostWords = 4
)

// together puts like doubts and questions of several items together.
func (w Writer) together(out *ShownEnquiry, e *enquiry.Enquiry, asks [][]enquiry.Ask) {
	type key struct{ kind, field, with string }
	var order []key
	of := map[key][]int{}
	first := map[key]enquiry.Ask{}
	words := map[key][]string{}
	for i, list := range asks {
		for _, a := range list {
			k := key{a.Kind, a.Field, strings.Join(a.With, " ")}
			if a.Second != "" && a.Other == a.Field && isTwice(a.Kind) {
				k.with = a.Second
			}
			if a.Kind == "unread" || a.Kind == "not_made" || a.Kind == "no_such_item" {
				k.with = a.Words
			}
			if _, ok := first[k]; !ok {
				order, first[k] = append(order, k), a
			}
			if n := len(of[k]); n == 0 || of[k][n-1] != i {
				of[k] = append(of[k], i)
			}
			if a.Words != "" && !slices.Contains(words[k], a.Words) {
				words[k] = append(words[k], a.Words)
			}
		}
	}
	for _, k := range order {
		a, items := first[k], of[k]
		args := []any{"items", w.marks(e, items), "label", message.Key("enquiry.nothing"), "words", quoted(words[k])}
		if a.Field != "" {
			args[3] = message.Key(enquiry.Label(a.Field))
		}
		doubt := a.Second != "" || a.Other != "" || a.Kind == "alone"
		if doubt {
			d := enquiry.Doubt{Kind: a.Kind, Field: a.Other, Text: a.Second}
			shown := ShownDoubt{Kind: a.Kind, Field: a.Field, Items: items, First: w.choice(a, true), Second: w.choice(a, false)}
			if isTwice(a.Kind) {
				shown.Text = a.Second
			}
			shown.Said = w.say(message.New("enquiry.ask."+a.Kind, append(args, "first", w.reading(a.Field, a.First), "second", w.second(a.Field, d))...))
			out.Doubts = append(out.Doubts, shown)
			continue
		}
		for n, text := range append(a.With, "", "", "", "")[:4] {
			args = append(args, "with"+strconv.Itoa(n+1), w.Texts.Numbers.Typed(text))
		}
		if a.Kind == "not_made" {
			args = append(args, "what", message.Key("enquiry.not_made."+a.First))
		}
		if a.Kind == "missing" {
			args = append(args, "assumed", w.reading(a.Field, out.Base.Text(a.Field)))
		}
		out.Asks = append(out.Asks, ShownAsk{Kind: a.Kind, Said: w.say(message.New("enquiry.ask."+a.Kind, args...)), Items: items})
	}
}

// isTwice reports whether doubts of a kind are told apart by their second reading.
func isTwice(kind string) bool { return kind == "twice" || kind == "one_of" }

// unitDoubts are kinds whose readings differ by the unit alone, which is what a press names.
var unitDoubts = []string{"no_unit", "degrees", "gauge_pressure"}

// choice is what a press says that settles doubts of several items for the first reading or the second.
func (w Writer) choice(a enquiry.Ask, first bool) string {
	text, name := a.Second, a.Other
	if first {
		text, name = a.First, a.Field
	}
	switch {
	case name == "":
		return w.Texts.Text("enquiry.nothing")
	case slices.Contains(unitDoubts, a.Kind):
		if at := strings.LastIndexByte(text, ' '); at > 0 {
			return text[at+1:]
		}
	case name != a.Field || first && a.Other != a.Field && a.Other != "":
		return w.Texts.Text(enquiry.Label(name))
	case a.Kind == "day" || a.Kind == "pipe" || a.Kind == "gauge" || a.Kind == "thousands" || a.Kind == "normal":
		key := "enquiry.press." + a.Kind + ".second"
		if first {
			key = "enquiry.press." + a.Kind + ".first"
		}
		return w.Texts.Text(key)
	}
	return w.reading(name, text)
}

// marks names items as the customer does: "item 3", "items 1, 2, 4 to 9".
func (w Writer) marks(e *enquiry.Enquiry, items []int) string {
	if len(items) == len(e.Items) && len(items) > 1 {
		return w.say(message.New("enquiry.all", "count", len(items)))
	}
	var list []string
	for i := 0; i < len(items); {
		j := i
		for j+1 < len(items) && items[j+1] == items[j]+1 {
			j++
		}
		if j-i >= 2 {
			list = append(list, e.Items[items[i]].Mark+"–"+e.Items[items[j]].Mark)
			i = j + 1
			continue
		}
		list = append(list, e.Items[items[i]].Mark)
		i++
	}
	more := ""
	if len(list) > mostMarks {
		list, more = list[:mostMarks], " …"
	}
	return w.say(message.New("enquiry.items", "count", len(items), "marks", strings.Join(list, ", ")+more))
}

func quoted(words []string) string {
	more := ""
	if len(words) > mostWords {
		words, more = words[:mostWords], " …"
	}
	out := make([]string, len(words))
	for i, word := range words {
		out[i] = "“" + strings.Join(strings.Fields(word), " ") + "”"
	}
	return strings.Join(out, ", ") + more
}

// letter is the list of questions as text, ready to be sent.
func (w Writer) letter(e *ShownEnquiry) string {
	var lines []string
	add := func(said string) { lines = append(lines, strconv.Itoa(len(lines)+1)+". "+said) }
	for _, a := range e.Asks {
		if a.Kind != "unread" {
			add(a.Said)
		}
	}
	for _, d := range e.Doubts {
		add(d.Said)
	}
	if len(lines) == 0 {
		return ""
	}
	return w.say(message.New("enquiry.letter")) + "\n\n" + strings.Join(lines, "\n") + "\n"
}

// ShownPriced is what decides of an item: its verdict and its price. Of one that cannot be rated Refused says why.
type ShownPriced struct {
	State   figure.State `json:"state"`
	Mark    string       `json:"mark"` // the state in a word
	Why     string       `json:"why"`
	Refused string       `json:"refused"`
	Price   float64      `json:"price"` // [money]
	Shown   string       `json:"shown"` // empty: there is none
}

// Priced prints what decides of an item.
func (w Writer) Priced(r design.Row, t *design.Tally) ShownPriced {
	out := ShownPriced{State: r.State, Mark: w.mark(r.State)}
	if !r.Why.None() {
		out.Why = w.say(r.Why)
	}
	if !t.Unpriced {
		out.Price, out.Shown = t.Price, strings.TrimSpace(w.Texts.Numbers.Figure(units.Cost, t.Price, w.System).Value+" "+w.Currency)
	}
	return out
}

// Unrated says why an item is not rated: by the first of what is wrong.
func (w Writer) Unrated(wrong design.FieldErrors) ShownPriced {
	return ShownPriced{State: figure.No, Mark: w.mark(figure.No), Refused: w.say(wrong[0].Message)}
}

// ShownTotal is one line of the totals.
type ShownTotal struct {
	ID    string `json:"id"`
	Label string `json:"label"`
	Value string `json:"value"`
	Unit  string `json:"unit"`
	Note  string `json:"note"` // what it lacks, or how sure it is
}

// Totals prints what a list of orders comes to; so many of them rest on a reading that is not settled.
func (w Writer) Totals(s *design.Sum, provisional int) (out []ShownTotal) {
	add := func(id, label string, kind units.Kind, si float64, note string) {
		text := w.Texts.Numbers.Figure(kind, si, w.System)
		if kind.Money() {
			text.Unit = w.Currency
		}
		out = append(out, ShownTotal{id, label, text.Value, text.Unit, note})
	}
	label := func(id string) string { return w.Texts.Text("enquiry.total." + id) }
	note := ""
	if s.Refused > 0 {
		note = w.say(message.New("enquiry.total.refused_note", "count", s.Refused))
	}
	add("tubes", label("tubes"), units.Count, float64(s.Tubes), note)
	add("metres", label("metres"), units.Run, s.Metres, "")
	add("finned", label("finned"), units.Run, s.Finned, "")
	add("weight", label("weight"), units.Weight, s.Weight, "")
	for _, b := range s.Strips {
		name := w.say(message.New("enquiry.total.strip", "metal", message.Key("metal."+b.Metal),
			"width", message.Amount{Kind: units.Width, SI: b.Width}, "thickness", message.Amount{Kind: units.Thickness, SI: b.Thickness}))
		coils := w.say(message.New("enquiry.total.coils", "count", b.Coils, "mass", message.Amount{Kind: units.Weight, SI: b.Mass}))
		add("strip", name, units.Run, b.Length, coils)
	}
	add("hours", label("hours"), units.Hours, s.Hours, "")
	add("crates", label("crates"), units.Count, float64(s.Crates), "")
	if s.Trucks > 0 {
		add("trucks", label("trucks"), units.Count, math.Ceil(s.Trucks-1e-9), w.say(message.New("enquiry.total.trucks_note")))
	}
	var sure []string
	if provisional > 0 {
		sure = append(sure, w.say(message.New("enquiry.total.provisional", "count", provisional)))
	}
	if s.Unpriced > 0 {
		sure = append(sure, w.say(message.New("enquiry.total.unpriced", "count", s.Unpriced)))
	}
	add("price", label("price"), units.Cost, s.Price, strings.Join(sure, " "))
	return out
}
