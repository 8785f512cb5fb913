package enquiry

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// prior is what a column's head says of all its cells.
type prior struct {
	field string // that a number alone is of
	unit  string // of numbers without one
	side  string // "tube" or "fin": what is spoken of
	basis string // of a wall
}

// reader reads one text.
type reader struct {
	text  string
	list  []token
	prior prior
	part  []int    // of each token: the sentence or column that it stands in
	piece []int    // of each token: the part of that between signs for times and slashes
	side  []string // of each token: "tube", "fin" or empty, by the words next to it
	used  []bool
	field []string // of each number: what it was read as
	out   Read
}

func readText(text string, p prior) Read {
	read, rest := text, 0
	if len(text) > longest {
		for rest = longest; rest > 0 && !utf8.RuneStart(text[rest]); rest-- {
		}
		read = text[:rest]
	}
	r := &reader{text: read, list: tokens(read), prior: p, out: Read{Text: text, Readings: []Reading{}}}
	n := len(r.list)
	r.used, r.field = make([]bool, n), make([]string, n)
	r.divide()
	r.sides()
	r.marks()
	r.unitsBefore()
	r.pipes()
	r.ends()
	r.labels()
	r.byUnit()
	r.alone()
	r.choices()
	r.settle()
	r.leave()
	if rest > 0 {
		r.out.Unread = append(r.out.Unread, Span{rest, len(text)})
	}
	return r.out
}

// divide says of each token in which part and piece it stands.
func (r *reader) divide() {
	r.part, r.piece = make([]int, len(r.list)), make([]int, len(r.list))
	part, piece := 0, 0
	for i := range r.list {
		switch r.list[i].sort {
		case pause:
			part, piece = part+1, piece+1
		case times, slash:
			piece++
		}
		r.part[i], r.piece[i] = part, piece
	}
}

// sideOf is what a known word speaks of; empty: of neither.
func sideOf(t *token) string {
	if t.sort == aNumber {
		switch t.unit {
		case "fpi", "fins/m":
			return "fin"
		case "BWG", "SWG", "ga":
			return "tube"
		}
		return ""
	}
	if t.sort != aWord {
		return ""
	}
	switch s := t.says; s.kind {
	case "tube", "fin":
		return s.kind
	case "is", "maybe", "field":
		switch s.a {
		case "fin_type", "fin_metal", "fin_height", FinOD, "strip_thickness", "fin_pitch", "fin_spacing", FinGap, "fins_word":
			return "fin"
		case "tube_metal", "tube_od", "tube_wall", "tube_size", "wall_basis":
			return "tube"
		}
	case "unit":
		switch s.a {
		case "fpi", "fins/m":
			return "fin"
		case "BWG":
			return "tube"
		}
	}
	return ""
}

// sides finds for each token the nearest word that speaks of tube or fin: in its piece, in its part, or before.
func (r *reader) sides() {
	r.side = make([]string, len(r.list))
	last := r.prior.side
	for i := range r.list {
		found := r.nearest(i, r.piece)
		if found == "" {
			found = r.nearest(i, r.part)
		}
		if found == "" {
			found = last
		}
		r.side[i] = found
		if own := sideOf(&r.list[i]); own != "" {
			last = own
		}
	}
}

func (r *reader) nearest(i int, within []int) string {
	for d := 0; d < len(r.list); d++ {
		out := true
		for _, j := range [2]int{i + d, i - d} {
			if j >= 0 && j < len(r.list) && within[j] == within[i] {
				if s := sideOf(&r.list[j]); s != "" {
					return s
				}
				out = false
			}
		}
		if out {
			break
		}
	}
	return ""
}

// beside is what the nearest word of a name's own part speaks of, before it or behind it; the name's own is none.
func (r *reader) beside(i int) string {
	for d := 1; d < len(r.list); d++ {
		for _, j := range []int{i - d, i + d} {
			if j >= 0 && j < len(r.list) && r.part[j] == r.part[i] {
				s := sideOf(&r.list[j])
				if r.list[j].sort == aWord && r.namesTube(j) && (s == "" || r.says(j, "unit", "off")) || r.says(j, "unit", "off") {
					return "tube" // fin tubes 25.4 mm OD
				}
				if s != "" && !r.says(j, "field", "tube_od") {
					return s
				}
			}
		}
	}
	return ""
}

func (r *reader) says(i int, kind, a string) bool {
	return i >= 0 && i < len(r.list) && r.list[i].sort == aWord && r.list[i].says.kind == kind && (a == "" || r.list[i].says.a == a)
}

// isFree reports whether a token is a number that nothing was made of yet.
func (r *reader) isFree(i int) bool {
	return i >= 0 && i < len(r.list) && r.list[i].sort == aNumber && !r.used[i]
}

// partSays reports whether a name stands in the part of a token.
func (r *reader) partSays(i int, name string) bool {
	for j := range r.list {
		if r.part[j] == r.part[i] && r.says(j, "field", name) {
			return true
		}
	}
	return false
}

// refuses reports whether the text speaks of something that is not made here.
func (r *reader) refuses(id string) bool {
	for j := range r.list {
		if r.says(j, "no", id) {
			return true
		}
	}
	return false
}

// over returns the next token from i on that is no mark of a kind that may stand between a name and its value.
func (r *reader) over(i int) int {
	for i < len(r.list) && (r.list[i].sort == colon || r.list[i].sort == bracket || r.list[i].sort == nothing) {
		i++
	}
	return i
}

// marks reads what the customer calls the item.
func (r *reader) marks() {
	for i := range r.list {
		if !r.says(i, "field", Mark) {
			continue
		}
		j := r.over(i + 1)
		if j >= len(r.list) || r.used[j] || r.list[j].sort != unknown && r.list[j].sort != aNumber || r.list[j].unit != "" {
			continue
		}
		if _, ok := r.out.Find(Mark); ok {
			continue
		}
		r.used[i], r.used[j] = true, true
		r.add(Mark, r.text[r.list[j].From:r.list[j].To], r.list[i].Span, r.list[j].Span)
	}
}

// unitsBefore gives a number the unit that stands before it, as in "FPI 10", behind a bracket, as in "(10) FPI", or behind the
// other end of a range, as in "50 - 60 pcs". What stands right before tubes of a kind that is not made here counts them: "30 U-tubes".
func (r *reader) unitsBefore() {
	for i := range r.list {
		if r.says(i, "is", "wall_basis") && folds(r.text[r.list[i].From:r.list[i].To]) == "mw" && r.isFree(i-1) && r.list[i-1].unit == "" && r.partSays(i, "duty_wanted") {
			r.list[i-1].unit, r.used[i] = "MW", true
		}
		if r.says(i, "unit", "") && slices.Contains([]string{"fpi", "fins/m", "BWG", "SWG", "ga", "off", "rows", "passes"}, r.list[i].says.a) {
			j := r.over(i + 1)
			if back := r.overBack(i - 1); r.isFree(back) && r.list[back].unit == "" && back < i-1 {
				r.list[back].unit = r.list[i].says.a
			} else if r.isFree(j) && !r.namesTube(i) && r.list[j].unit == "" && r.part[j] == r.part[i] && !r.list[j].n.inch {
				r.list[j].unit = r.list[i].says.a
				r.list[j].From = r.list[i].From
			}
		}
		if r.says(i+1, "no", "u_tube") && r.isBare(i) && r.list[i].n.whole && r.part[i] == r.part[i+1] {
			r.list[i].unit = "off"
		}
		if !r.isFree(i) || r.list[i].unit != "" || !r.isFree(i+2) || r.list[i+2].unit == "" {
			continue
		}
		between := r.text[r.list[i].To:r.list[i+2].From]
		if unit := r.list[i+2].unit; between == "/" && lengthUnit(unit) == 0 || strings.TrimSpace(between) == "-" && unit == "off" {
			r.list[i].unit = unit
		}
	}
}

// namesTube reports whether a word that counts is that for the tubes themselves.
func (r *reader) namesTube(i int) bool {
	word := folds(r.text[r.list[i].From:r.list[i].To])
	return strings.Contains(word, "tub") || strings.Contains(word, "rohr") || strings.Contains(word, "管") || strings.HasSuffix(word, " of")
}

// overBack is over, the other way.
func (r *reader) overBack(i int) int {
	for i >= 0 && r.list[i].sort == bracket {
		i--
	}
	return i
}

// take notes that a number was read as a field.
func (r *reader) take(i int, field string) {
	r.used[i], r.field[i] = true, field
}

// add adds a reading. A field that was read before with another text keeps the first, with the other as its second reading; of a
// guess at a choice and a plain word the word counts.
func (r *reader) add(field, text string, from ...Span) *Reading {
	if was, ok := r.out.Find(field); ok {
		was.From = append(was.From, from...)
		switch {
		case sameText(field, was.Text, text):
		case len(was.Doubts) > 0 && was.Doubts[0].Kind == "one_of":
			was.Text, was.Doubts = text, nil
		default:
			was.Doubts = append(was.Doubts, Doubt{"twice", field, text})
		}
		return was
	}
	r.out.Readings = append(r.out.Readings, Reading{Field: field, Text: text, From: slices.Clone(from)})
	return &r.out.Readings[len(r.out.Readings)-1]
}

// leave keeps what was not understood.
func (r *reader) leave() {
	for i := range r.list {
		t := &r.list[i]
		if r.used[i] && r.field[i] != "other" || t.sort != unknown && t.sort != aNumber && !r.says(i, "field", "other") {
			continue
		}
		if n := len(r.out.Unread); n > 0 && r.text[r.out.Unread[n-1].To:t.From] == "-" {
			r.out.Unread[n-1].To = t.To
			continue
		}
		r.out.Unread = append(r.out.Unread, t.Span)
	}
}
