package enquiry

import (
	"slices"
	"strconv"
	"strings"
)

// HeadColumn is a column of a table, what its cells are taken for, and what that rests on.
type HeadColumn struct {
	Column
	Head     string   `json:"head"`
	Examples []string `json:"examples"`
	Guessed  bool     `json:"guessed,omitempty"` // by its cells: no word of its head tells
	Skipped  bool     `json:"skipped,omitempty"` // its cells are not read
}

// Part is a cell or a line of an item, and what was read of it.
type Part struct {
	Row    int  `json:"row"`              // of the text, from 1 on
	Column int  `json:"column,omitempty"` // from 1 on; 0: a line
	Common bool `json:"common,omitempty"` // it was said of all items
	Read
}

// Entry is an item of an enquiry.
type Entry struct {
	Mark    string    `json:"mark"` // what the customer calls it, or its place
	Named   bool      `json:"named"`
	Parts   []Part    `json:"parts"`
	Whole   []Reading `json:"whole"`             // all that was read of it, each field once; the words stand in its parts
	As      string    `json:"as,omitempty"`      // the item that it is like, by the customer's words
	Unknown bool      `json:"unknown,omitempty"` // there is no such item
}

// Leftover is a line that belongs to no item.
type Leftover struct {
	Row  int    `json:"row"`
	Text string `json:"text"`
}

// Enquiry is a text that was read.
type Enquiry struct {
	Columns []HeadColumn `json:"columns"` // none of lines
	Items   []Entry      `json:"items"`
	Left    []Leftover   `json:"left"`
}

// often is how many rows are read between two words of how much is done.
const often = 250

// Text reads a whole enquiry: a table, whose columns are taken as told where they are, or lines. hear is told what share of it is read.
func Text(text string, told []HeadColumn, hear func(share float64)) (Enquiry, error) {
	rows, columns, err := split(text)
	if err != nil {
		return Enquiry{}, err
	}
	at := func(row int) {
		if row%often == often-1 {
			hear(float64(row) / float64(len(rows)))
		}
	}
	e := Enquiry{Columns: []HeadColumn{}, Items: []Entry{}, Left: []Leftover{}}
	if columns {
		e.table(rows, told, at)
	} else {
		e.lines(rows, at)
	}
	e.name()
	e.likes()
	for i := range e.Items {
		e.Items[i].gather()
	}
	return e, nil
}

// table reads rows of cells.
func (e *Enquiry) table(rows [][]string, told []HeadColumn, at func(row int)) {
	head := headRow(rows)
	next := 0
	var heads []string
	if head >= 0 {
		heads, next = headsOf(rows, head)
		over := head > 0 && isOver(rows[head-1], rows[head])
		for i := range head {
			if !over || i < head-1 {
				e.leave(i, strings.Join(rows[i], " "))
			}
		}
	} else {
		for _, row := range rows[:min(len(rows), sample)] {
			heads = append(heads, make([]string, max(0, len(row)-len(heads)))...)
		}
	}
	e.columns(heads, rows[next:])
	for i := range min(len(told), len(e.Columns)) {
		if told[i].Head == e.Columns[i].Head {
			e.Columns[i].Column, e.Columns[i].Skipped, e.Columns[i].Guessed = told[i].Column, told[i].Skipped, told[i].Guessed
		}
	}
	marked := slices.ContainsFunc(e.Columns, func(c HeadColumn) bool { return c.Field == Mark })
	known := cellsRead{}
	for i := next; i < len(rows); i++ {
		e.row(rows, i, marked, known)
		at(i)
	}
}

// cellsRead are the cells of a table by their column and text: of ten thousand rows most say what one above says.
type cellsRead map[cellText]cellRead

type cellText struct {
	column int
	text   string
}

// cellRead is what a cell says, and the item that it is like.
type cellRead struct {
	Read
	like string
}

// read reads a cell, if none of its column and text was read before.
func (known cellsRead) read(c Column, at cellText) cellRead {
	if was, ok := known[at]; ok {
		return was
	}
	var out cellRead
	if out.like, out.Read = asItem(at.text); out.like == "" {
		out.Read = c.Cell(at.text)
	}
	known[at] = out
	return out
}

// columns says what each column's cells are: by its head, or else by what most of its cells say.
func (e *Enquiry) columns(heads []string, rows [][]string) {
	for c, head := range heads {
		column := HeadColumn{Head: head, Examples: []string{}}
		var known bool
		column.Column, known = Head(head)
		votes := map[string]int{}
		for _, row := range rows {
			text := cellAt(row, c)
			if text == "" {
				continue
			}
			if len(column.Examples) < 3 && !slices.Contains(column.Examples, text) {
				column.Examples = append(column.Examples, text)
			}
			if !known && len(votes) < sample {
				read := Line(text)
				for _, x := range read.Readings {
					votes[x.Field]++
				}
			}
		}
		if !known {
			column.Guessed = true
			for field, n := range votes {
				if n > votes[column.Field] && 2*n >= min(len(rows), sample) && isNumber(field) {
					column.Field = field
				}
			}
		}
		e.Columns = append(e.Columns, column)
	}
}

func isNumber(field string) bool {
	f, ok := row(field)
	return ok && f.IsNumber()
}

// ditto are cells that say what the one above says.
var ditto = []string{`"`, "″", "''", "ditto", "do.", "dto.", "dto", "–\"–", "-\"-", "同上", "idem", "id."}

// row reads a row of a table: an item, or more of the last one where nothing names or counts it.
func (e *Enquiry) row(rows [][]string, i int, marked bool, known cellsRead) {
	cells := rows[i]
	all := strings.TrimSpace(strings.Join(cells, ""))
	if all == "" {
		return
	}
	if isTotal(cells) {
		e.leave(i, strings.TrimSpace(strings.Join(cells, " ")))
		return
	}
	var parts []Part
	has := map[string]bool{}
	like := ""
	for c, cell := range cells {
		if strings.TrimSpace(cell) == "" || c < len(e.Columns) && e.Columns[c].Skipped {
			continue
		}
		if slices.Contains(ditto, strings.ToLower(strings.TrimSpace(cell))) {
			for k := i - 1; k >= 0 && slices.Contains(ditto, strings.ToLower(strings.TrimSpace(cell))); k-- {
				cell = cellAt(rows[k], c)
			}
		}
		var column Column
		if c < len(e.Columns) {
			column = e.Columns[c].Column
		}
		read := known.read(column, cellText{c, cell})
		part := Part{Row: i + 1, Column: c + 1, Read: read.Read}
		like = cmpOr(read.like, like)
		for _, x := range part.Readings {
			has[x.Field] = true
		}
		parts = append(parts, part)
	}
	more := len(e.Items) > 0 && like == "" && !has["quantity"] && !has[Mark] && (marked || !has["tube_od"])
	if more {
		last := &e.Items[len(e.Items)-1]
		last.Parts = append(last.Parts, parts...)
		return
	}
	e.Items = append(e.Items, Entry{Parts: parts, As: like})
}

// isTotal reports whether a row sums the table up.
func isTotal(cells []string) bool {
	for _, cell := range cells {
		word := strings.Trim(folds(strings.TrimSpace(cell)), ":. ")
		if word != "" {
			return slices.Contains([]string{"total", "totals", "sum", "summe", "gesamt", "subtotal", "grand total", "suma", "合计", "总计"}, word)
		}
	}
	return false
}

// lines reads lines of plain text: each item begins with its name, a number before a bracket or a point, or a quantity, and goes on to the next or
// to an empty line.
func (e *Enquiry) lines(rows [][]string, hear func(row int)) {
	var common []Part
	open := false
	for i, row := range rows {
		hear(i)
		line := row[0]
		if strings.TrimSpace(line) == "" {
			open = false
			continue
		}
		mark, rest := enumerated(line)
		as, read := asItem(rest)
		if as == "" {
			read = Line(rest)
		}
		if mark != "" {
			shift := len(line) - len(rest)
			read.shift(line, shift)
			if _, told := read.Find(Mark); !told {
				at := strings.Index(line, mark)
				read.Readings = append([]Reading{{Field: Mark, Text: mark, From: []Span{{at, at + len(mark)}}}}, read.Readings...)
			}
		}
		part := Part{Row: i + 1, Read: read}
		_, named := read.Find(Mark)
		_, counted := read.Find("quantity")
		entries := len(read.Readings)
		begins := as != "" || counted || named && entries > 1 || named && mark == "" || !open && entries >= 3
		switch {
		case saidOfAll(line) && !counted && entries > 0:
			part.Common = true
			common = append(common, part)
		case open && !named && entries > 0 && (!counted || !e.lastHas("quantity")):
			last := &e.Items[len(e.Items)-1]
			last.Parts = append(last.Parts, part)
		case begins:
			e.Items = append(e.Items, Entry{Parts: []Part{part}, As: as})
			open = true
		default:
			e.leave(i, line)
		}
	}
	for i := range e.Items {
		e.Items[i].Parts = append(e.Items[i].Parts, common...)
	}
}

// lastHas reports whether something of the last item says a field.
func (e *Enquiry) lastHas(field string) bool {
	for _, p := range e.Items[len(e.Items)-1].Parts {
		if _, ok := p.Find(field); ok {
			return true
		}
	}
	return false
}

// saidOfAll reports whether a line speaks of all items.
func saidOfAll(line string) bool {
	text := folds(line)
	for _, words := range []string{"all tubes", "all items", "for all", "alle rohre", "alle positionen", "fur alle", "todos los", "全部"} {
		if strings.Contains(text, words) {
			return true
		}
	}
	return false
}

// enumerated splits "1)", "2.", "(3)" or "a)" from the front of a line.
func enumerated(line string) (mark, rest string) {
	text := strings.TrimLeft(line, " \t(-*•")
	digits, to := cutDigits(text, 0)
	if digits == "" || len(digits) > 3 || to+1 >= len(text) || text[to] != ')' && !(text[to] == '.' && text[to+1] == ' ') {
		return "", line
	}
	return digits, text[to+1:]
}

// shift moves spans by what was cut off the front of a line.
func (r *Read) shift(line string, by int) {
	r.Text = line
	for i := range r.Readings {
		for k := range r.Readings[i].From {
			r.Readings[i].From[k].From += by
			r.Readings[i].From[k].To += by
		}
	}
	for i := range r.Unread {
		r.Unread[i].From += by
		r.Unread[i].To += by
	}
	for i := range r.NotMade {
		r.NotMade[i].From.From += by
		r.NotMade[i].From.To += by
	}
}

// asItem reads "as item 2 but 24 ft": the item that is meant, and the rest.
func asItem(text string) (as string, rest Read) {
	if !mayBeLike(text) {
		return "", Read{}
	}
	list := tokens(text)
	for i := range list {
		if list[i].sort != aWord || list[i].says.kind != "word" || list[i].says.a != "like" {
			continue
		}
		as = "-" // the one above
		for j := i + 1; j < len(list) && j <= i+2; j++ {
			if list[j].sort == aNumber && list[j].unit == "" || list[j].sort == unknown {
				as = text[list[j].From:list[j].To]
				blank := text[:list[i].From] + strings.Repeat(" ", list[j].To-list[i].From) + text[list[j].To:]
				rest = Line(blank)
				rest.Text = text
				return as, rest
			}
			if list[j].sort != aWord || list[j].says.kind != "field" || list[j].says.a != Mark {
				break
			}
		}
		blank := text[:list[i].From] + strings.Repeat(" ", list[i].To-list[i].From) + text[list[i].To:]
		rest = Line(blank)
		rest.Text = text
		return as, rest
	}
	return "", Read{}
}

// mayBeLike reports whether a text has letters by which one begins that is like another: a glance, since few have.
func mayBeLike(text string) bool {
	text = folds(text)
	for _, front := range []string{"as", "same", "like", "wie", "como", "dit", "dto"} {
		if strings.Contains(text, front+" ") || strings.Contains(text, front+"-") || front == "dit" && strings.Contains(text, "ditto") || text == front {
			return true
		}
	}
	return false
}

func (e *Enquiry) leave(row int, text string) {
	if text = strings.TrimSpace(text); text != "" {
		e.Left = append(e.Left, Leftover{row + 1, text})
	}
}

// name gives each item the customer's name, or its place.
func (e *Enquiry) name() {
	for i := range e.Items {
		item := &e.Items[i]
		item.Mark = strconv.Itoa(i + 1)
		for _, p := range item.Parts {
			if x, ok := p.Find(Mark); ok {
				item.Mark, item.Named = x.Text, true
				break
			}
		}
	}
}

// likes lays what an item says over what the one says that it is like.
func (e *Enquiry) likes() {
	for i := range e.Items {
		item := &e.Items[i]
		if item.As == "" {
			continue
		}
		from := i - 1
		if item.As != "-" {
			from = slices.IndexFunc(e.Items[:i], func(other Entry) bool { return other.Mark == item.As })
		}
		if from < 0 {
			item.Unknown = true
			continue
		}
		item.As = e.Items[from].Mark
		told := map[string]bool{Mark: true, "quantity": true}
		for _, p := range item.Parts {
			for _, x := range p.Readings {
				told[x.Field] = true
			}
		}
		for _, p := range e.Items[from].Parts {
			p.Readings = slices.DeleteFunc(slices.Clone(p.Readings), func(x Reading) bool { return told[x.Field] })
			p.Unread, p.NotMade = nil, nil
			if len(p.Readings) > 0 {
				item.Parts = append(item.Parts, p)
			}
		}
	}
}

// gather puts together what the parts of an item say. Where two say otherwise the first counts, with the other as its second reading; what was
// said of all items gives way.
func (x *Entry) gather() {
	x.Whole = []Reading{}
	var all Read
	for _, p := range x.Parts {
		for _, found := range p.Readings {
			if found.Field == Mark {
				continue
			}
			found.Doubts = slices.Clone(found.Doubts)
			was, ok := all.Find(found.Field)
			switch {
			case !ok:
				all.Readings = append(all.Readings, found)
			case p.Common:
			case sameText(found.Field, was.Text, found.Text):
				if len(found.Doubts) < len(was.Doubts) {
					was.Doubts = found.Doubts
				}
			case len(was.Doubts) > 0 && (was.Doubts[0].Kind == "basis" || was.Doubts[0].Kind == "one_of"):
				*was = found
			case len(found.Doubts) > 0 && (found.Doubts[0].Kind == "basis" || found.Doubts[0].Kind == "one_of"):
			default:
				was.doubt("twice", found.Field, found.Text)
			}
		}
	}
	x.Whole = append(x.Whole, all.Readings...)
}

// Find returns what an item says of a field.
func (x *Entry) Find(field string) (found *Reading, ok bool) {
	for i := range x.Whole {
		if x.Whole[i].Field == field {
			return &x.Whole[i], true
		}
	}
	return nil, false
}
