package enquiry

import (
	"slices"
	"strconv"
	"strings"
)

// Span is a piece of a text, in bytes.
type Span struct {
	From int `json:"from"`
	To   int `json:"to"`
}

// sort is what kind of thing a token is.
type sort int

const (
	aWord   sort = iota // that is known
	aNumber             // with its unit, where it has one
	unknown             // a word that is not
	times               // x, between sizes
	slash               // between alternatives or sizes
	colon               // or =, after a name
	pause               // what parts sentences and columns
	bracket             // round or square
	nothing             // a mark that says nothing
)

// token is a piece of a text that is read at once.
type token struct {
	sort
	Span
	says *sense // of a known word
	n    number
	unit string // of a number; empty: none
}

// number is one as it is written.
type number struct {
	text    string // with a point, or as a fraction
	grouped string // what it is if its one mark parts thousands; empty: it cannot
	comma   bool   // that mark is a comma
	inch    bool   // a fraction, as inches are written
	whole   bool
	value   float64
}

// tokens takes a text apart.
func tokens(text string) []token {
	out := make([]token, 0, len(text)/3+2)
	for i := 0; i < len(text); {
		r, size := at(text, i)
		next := i + size
		add := func(s sort) { out = append(out, token{sort: s, Span: Span{i, next}}) }
		switch {
		case r == ' ':
			i = next
			continue
		case r == '×' || r == '*' || r == 'x' && !isLatin(before(text, i)) && !followedByLetter(text, next):
			add(times)
		case isFractionGlyph(r) || isDigit(r) || (r == '.' || r == ',') && isDigit(second(text, next)) && !isDigit(before(text, i)):
			if says, to := word(text, i); says != nil {
				next = to
				out = append(out, token{sort: aWord, Span: Span{i, to}, says: says})
				break
			}
			n, to := readNumber(text, i, !afterName(out))
			next = to
			if _, after := cutDigits(text, to+1); second(text, to) == '-' && after > to+1 && isLatin(second(text, after)) {
				if says, _ := word(text, after); says == nil && second(text, after) != 'x' {
					next = endOfWord(text, after)
					add(unknown)
					break
				}
			}
			if c, _ := at(text, to); isLatin(c) && c != 'x' {
				if says, _ := word(text, to); says == nil {
					next = endOfWord(text, to)
					add(unknown)
					break
				}
			}
			out = append(out, token{sort: aNumber, Span: Span{i, to}, n: n})
		default:
			if says, to := word(text, i); says != nil && !isCode(says, out, text, to) {
				next = to
				out = append(out, token{sort: aWord, Span: Span{i, to}, says: says})
				break
			}
			switch {
			case r == ',' || r == ';' || r == '|' || r == '\n' || r == '\r' || r == '\t':
				add(pause)
			case r == ':' || r == '=':
				add(colon)
			case r == '/':
				add(slash)
			case r == '.':
				if c, _ := at(text, next); (c == ' ' || c == 0) && !(len(out) > 0 && out[len(out)-1].sort == aWord && out[len(out)-1].To == i) {
					add(pause)
				} else {
					add(nothing)
				}
			case r == '-':
				if c, _ := at(text, next); before(text, i) == ' ' && c == ' ' {
					add(pause)
				} else {
					add(nothing)
				}
			case strings.ContainsRune("()[]{}", r):
				add(bracket)
			case strings.ContainsRune(`"'!?+&<>~@`, r):
				add(nothing)
			default:
				next = endOfWord(text, next)
				add(unknown)
			}
		}
		i = next
	}
	return withUnits(text, out)
}

func second(text string, i int) rune { r, _ := at(text, i); return r }

func followedByLetter(text string, i int) bool { return isLatin(second(text, i)) }

// isCode reports whether a word that was found is the front of a code: A-101, FT-1.
func isCode(says *sense, before []token, text string, to int) bool {
	lone := len(before) == 0 || before[len(before)-1].sort != aNumber
	return (says.kind == "skip" || says.kind == "unit" && lone && says.a != "off") && second(text, to) == '-' && isDigit(second(text, to+1))
}

// endOfWord returns where a word that is not known ends.
func endOfWord(text string, i int) int {
	for i < len(text) {
		r, size := at(text, i)
		if r == ' ' || strings.ContainsRune(",;:|()[]=\n\r\t", r) || r == '.' && second(text, i+1) == ' ' || r == '/' {
			break
		}
		if r >= 0x2e80 { // a script without spaces: letter by letter
			if says, _ := word(text, i); says != nil {
				break
			}
		}
		i += size
	}
	return i
}

var glyphs = map[rune]string{'½': "1/2", '¼': "1/4", '¾': "3/4", '⅛': "1/8", '⅜': "3/8", '⅝': "5/8", '⅞': "7/8"}

func isFractionGlyph(r rune) bool { return glyphs[r] != "" }

// afterName reports whether the name of an item's number was read last.
func afterName(out []token) bool {
	return len(out) > 0 && out[len(out)-1].sort == aWord && out[len(out)-1].says.kind == "field" && out[len(out)-1].says.a == "mark"
}

// readNumber reads the number that begins at a place; spaced: a space may part thousands.
func readNumber(text string, from int, spaced bool) (n number, to int) {
	if r, size := at(text, from); isFractionGlyph(r) {
		return fraction("", glyphs[r]), from + size
	}
	digits, i := cutDigits(text, from)
	if glyph, size := at(text, i); isFractionGlyph(glyph) {
		return fraction(digits, glyphs[glyph]), i + size
	}
	if n, to, ok := mixed(text, digits, i); ok {
		return n, to
	}
	groups := []string{digits}
	var marks []byte
	for i < len(text) && (text[i] == '.' || text[i] == ',' || spaced && text[i] == ' ' && len(digits) <= 3 && digits != "" || text[i] == '\'') {
		part, end := cutDigits(text, i+1)
		if part == "" || (text[i] == ' ' || text[i] == '\'') && (len(part) != 3 || !thousandsEnd(text, end)) {
			break
		}
		marks, groups, i = append(marks, text[i]), append(groups, part), end
	}
	return assembled(groups, marks), i
}

// thousandsEnd reports whether a group behind a space ends a number of thousands: neither a fraction nor a decimal or unit joined to it goes on.
func thousandsEnd(text string, i int) bool {
	r := second(text, i)
	return r == 0 || r == ' ' || r == ',' && !isDigit(second(text, i+1))
}

// assembled makes a number of groups of digits and the marks between them.
func assembled(groups []string, marks []byte) number {
	n := number{}
	last := len(marks) - 1
	joinedAll := strings.Join(groups, "")
	switch {
	case last < 0:
		n.text, n.whole = groups[0], true
	case marks[last] == ' ' || marks[last] == '\'', last > 0 && !slices.ContainsFunc(marks, func(m byte) bool { return m != marks[0] }):
		n.text, n.whole = joinedAll, true
	case last > 0:
		n.text = strings.Join(groups[:last+1], "") + "." + groups[last+1]
	default:
		n.text = cmpOr(groups[0], "0") + "." + groups[1]
		n.comma = marks[0] == ','
		if len(groups[1]) == 3 && len(groups[0]) >= 1 && len(groups[0]) <= 3 && groups[0][0] != '0' {
			n.grouped = joinedAll
		}
	}
	n.value, _ = strconv.ParseFloat(n.text, 64)
	return n
}

func cmpOr(a, b string) string {
	if a != "" {
		return a
	}
	return b
}

// mixed reads "5/8", "1 1/2" or "1-1/2", whose first digits end at i.
func mixed(text, digits string, i int) (n number, to int, ok bool) {
	if digits == "" {
		return n, i, false
	}
	if den, end := cutDigits(text, i+1); i < len(text) && text[i] == '/' && isInchFraction(digits, den) && !strings.HasPrefix(text[end:], "/") && second(text, end) != '.' {
		return fraction("", digits+"/"+den), end, true
	}
	at := i
	for at < len(text) && (text[at] == ' ' || text[at] == '-') && at-i < 2 {
		at++
	}
	num, end := cutDigits(text, at)
	if at == i || num == "" || end >= len(text) || text[end] != '/' {
		return n, i, false
	}
	den, end := cutDigits(text, end+1)
	if !isInchFraction(num, den) {
		return n, i, false
	}
	return fraction(digits, num+"/"+den), end, true
}

// isInchFraction reports whether a quotient is one by which inches are divided.
func isInchFraction(num, den string) bool {
	a, err1 := strconv.Atoi(num)
	b, err2 := strconv.Atoi(den)
	return err1 == nil && err2 == nil && 0 < a && a < b && (b == 2 || b == 4 || b == 8 || b == 16 || b == 32 || b == 64)
}

func fraction(whole, part string) number {
	num, den, _ := strings.Cut(part, "/")
	w, _ := strconv.ParseFloat(cmpOr(whole, "0"), 64)
	a, _ := strconv.ParseFloat(num, 64)
	b, _ := strconv.ParseFloat(den, 64)
	return number{text: strings.TrimSpace(whole + " " + part), inch: true, value: w + a/b}
}

func cutDigits(text string, i int) (digits string, to int) {
	if i > len(text) {
		return "", i
	}
	for to = i; to < len(text) && isDigit(rune(text[to])); to++ {
	}
	return text[i:to], to
}

// withUnits gives numbers the units that stand behind them, and makes one of feet and inches. What it returns takes the place of the list.
func withUnits(text string, list []token) []token {
	out := list[:0]
	for i := 0; i < len(list); i++ {
		t := list[i]
		if t.sort != aNumber {
			out = append(out, t)
			continue
		}
		j := i + 1
		if j < len(list) && list[j].sort == nothing && text[list[j].From:list[j].To] == "-" && list[j].From == t.To {
			j++
		}
		if j < len(list) && list[j].sort == aWord && list[j].says.kind == "unit" {
			t.unit, t.To = list[j].says.a, list[j].To
			i = j
			if t.unit == "ft" {
				i = inchesToo(text, list, &t, j)
			}
		}
		out = append(out, t)
	}
	return out
}

// inchesToo takes the inches that follow feet into one number; it returns the last token of them.
func inchesToo(text string, list []token, t *token, last int) int {
	j := last + 1
	joint := false
	if j < len(list) && list[j].sort == nothing && text[list[j].From:list[j].To] == "-" {
		joint = true
		j++
	}
	if j >= len(list) || list[j].sort != aNumber || list[j].n.value >= 12 || list[j].From-t.To > 2 {
		return last
	}
	marked := j+1 < len(list) && list[j+1].sort == aWord && list[j+1].says.kind == "unit" && list[j+1].says.a == "in"
	if !marked && !joint {
		return last
	}
	feet := t.n.text
	t.n.text, t.n.grouped, t.n.inch = feet+" ft "+list[j].n.text, "", false
	t.unit, t.To = "in", list[j].To
	if marked {
		j++
		t.To = list[j].To
	}
	return j
}
