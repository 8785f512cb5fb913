package enquiry

import (
	_ "embed" // the words
	"slices"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"
)

//go:embed words.txt
var wordsFile string

// sense is what a word of the trade says: its kind, as the file of words has it, and what belongs to that.
type sense struct {
	kind string // "field", "is", "maybe", "metal", "unit", "tube", "fin", "no", "end", "word" or "skip"
	a, b string // of "is" and "maybe" the field and its choice, else the one name there is
	more string // of "maybe" the second choice, of "is" how a tube of that standard is made: "seamless" or "welded"
}

// node is a place in the words' tree: what a spelling means that ends here, and how others go on.
type node struct {
	next []branch
	says *sense
}

// branch leads on by one letter.
type branch struct {
	letter rune
	to     *node
}

// place is where a letter leads on from a node, or would in the order of the letters.
func (n *node) place(letter rune) int {
	low, high := 0, len(n.next)
	for low < high {
		if mid := (low + high) / 2; n.next[mid].letter < letter {
			low = mid + 1
		} else {
			high = mid
		}
	}
	return low
}

// by returns the node that a letter leads to; nil where none does.
func (n *node) by(letter rune) *node {
	if i := n.place(letter); i < len(n.next) && n.next[i].letter == letter {
		return n.next[i].to
	}
	return nil
}

// words is the tree of all spellings, which is made when it is first asked for.
var words = sync.OnceValue(func() *node {
	root := &node{}
	for line := range strings.Lines(wordsFile) {
		line = strings.TrimRight(line, "\n")
		head, spellings, ok := strings.Cut(line, " | ")
		if !ok || strings.HasPrefix(line, "#") {
			continue
		}
		parts := append(strings.Fields(head), "", "", "")
		says := &sense{parts[0], parts[1], parts[2], parts[3]}
		for spelling := range strings.SplitSeq(spellings, ", ") {
			root.add(spelling, says)
		}
	}
	return root
})

func (n *node) add(spelling string, says *sense) {
	for _, r := range strings.ReplaceAll(spelling, "-", " ") {
		r = folded(r)
		next := n.by(r)
		if next == nil {
			next = &node{}
			n.next = slices.Insert(n.next, n.place(r), branch{r, next})
		}
		n = next
	}
	if n.says == nil {
		n.says = says
	}
}

// marks are letters with marks and what stands for them.
var marks = map[rune]rune{
	'á': 'a', 'à': 'a', 'â': 'a', 'ä': 'a', 'é': 'e', 'è': 'e', 'ê': 'e', 'í': 'i', 'ì': 'i', 'î': 'i', 'ó': 'o', 'ò': 'o', 'ô': 'o', 'ö': 'o',
	'ú': 'u', 'ù': 'u', 'û': 'u', 'ü': 'u', 'ñ': 'n', '’': '\'', '′': '\'', '‘': '\'', '″': '"', '”': '"', '“': '"', '－': '-', '–': '-', '—': '-', '⁄': '/',
	'（': '(', '）': ')', '，': ',', '；': ';', '：': ':', '、': ',', '。': ';', '\u00a0': ' ', '\u2009': ' ', '\u202f': ' ', '\u3000': ' ',
}

// folded is a letter without case and marks.
func folded(r rune) rune {
	if r < utf8.RuneSelf {
		if 'A' <= r && r <= 'Z' {
			r += 'a' - 'A'
		}
		return r
	}
	r = unicode.ToLower(r)
	if plain, ok := marks[r]; ok {
		return plain
	}
	return r
}

// at returns the letter of a text at a place, folded, and its length; of the end 0 and 0.
func at(text string, i int) (r rune, size int) {
	if i >= len(text) {
		return 0, 0
	}
	r, size = utf8.DecodeRuneInString(text[i:])
	return folded(r), size
}

// before returns the letter that ends at a place.
func before(text string, i int) rune {
	if i <= 0 {
		return 0
	}
	r, _ := utf8.DecodeLastRuneInString(text[:i])
	return folded(r)
}

func isLatin(r rune) bool { return r < 0x2e80 && unicode.IsLetter(r) }
func isDigit(r rune) bool { return '0' <= r && r <= '9' }

// joined reports whether two letters side by side belong to one word.
func joined(a, b rune) bool { return isLatin(a) && isLatin(b) || isDigit(a) && isDigit(b) }

// word finds the longest spelling that begins at a place of a text and ends with a word; nil where there is none.
func word(text string, from int) (says *sense, to int) {
	first, _ := at(text, from)
	last := before(text, from)
	if joined(last, first) || isDigit(first) && isLatin(last) {
		return nil, from
	}
	if (last == '.' || last == ',') && isDigit(first) && from > 1 && isDigit(before(text, from-1)) {
		return nil, from
	}
	says, to = words().longest(text, from, from)
	if says != nil && isDigit(last) && says.a == "fin_type" {
		return nil, from // 14g
	}
	if says != nil && !capital(text[from:to]) {
		return nil, from
	}
	return says, to
}

// separates are the letters that may part the words of a spelling.
func separates(r rune) bool { return r == ' ' || r == '-' || r == '.' || r == '_' || r == '\'' }

// longest walks on from a node; from is where the spelling began.
func (n *node) longest(text string, from, i int) (says *sense, to int) {
	r, size := at(text, i)
	if n.says != nil && endsWord(text, i) {
		says, to = n.says, i
	}
	try := func(next *node, at int) {
		if s, end := next.longest(text, from, at); s != nil && end > to {
			says, to = s, end
		}
	}
	if next := n.by(r); next != nil && size > 0 {
		try(next, i+size)
	}
	if next := n.by(' '); next != nil {
		end := i
		for c, size := at(text, end); size > 0 && separates(c); c, size = at(text, end) {
			end += size
		}
		try(next, end)
	}
	// A space before a digit, and the point of an abbreviation, may stand where the spelling has none.
	if last := before(text, i); i > from && isLatin(last) && (r == ' ' || r == '-' || r == '.') {
		c, width := at(text, i+size)
		if next := n.by(c); next != nil && (isDigit(c) && r != '.' || isLatin(c) && r == '.') {
			try(next, i+size+width)
		}
	}
	return says, to
}

// endsWord reports whether a word may end at a place.
func endsWord(text string, i int) bool {
	last := before(text, i)
	next, _ := at(text, i)
	return !joined(last, next) && !(isDigit(last) && isLatin(next))
}

// capital reports whether a spelling of one to three letters that names a fin type has none that is small.
func capital(text string) bool {
	switch strings.TrimFunc(text, func(r rune) bool { return !unicode.IsLetter(r) }) {
	case "l", "g", "i", "ll", "kl", "kll":
		return false
	}
	return true
}
