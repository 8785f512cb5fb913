package paper

import (
	"hash/fnv"
	"strconv"
	"strings"
)

// Mark is the fingerprint of a paper: of the design, of the shop and of the program that found its figures. Where one of them is
// another, so is its part.
type Mark struct{ Design, Shop, Program string }

// Parts of a mark, in its order. What differs is the text "paper.differs.<part>".
const (
	ItsDesign  = "design"
	ItsShop    = "shop"
	ItsProgram = "program"
)

// lengths of the parts in hexadecimal digits: the design's must tell thousands apart.
var lengths = [...]int{12, 8, 8}

// MarkOf makes a mark of the fingerprints of design and shop, and of the program's name.
func MarkOf(design, shop, program string) Mark {
	h := fnv.New64a()
	h.Write([]byte(program))
	return Mark{part(0, design), part(1, shop), part(2, strconv.FormatUint(h.Sum64(), 16))}
}

// part is the end of a number in hexadecimal digits, filled up where it has fewer.
func part(i int, digits string) string {
	digits = strings.Repeat("0", 16) + digits
	return digits[len(digits)-lengths[i]:]
}

// String is the mark as it is printed.
func (m Mark) String() string { return m.Design + "-" + m.Shop + "-" + m.Program }

// ReadMark reads a mark as it was printed, in letters of any size; ok is false where it is none.
func ReadMark(text string) (m Mark, ok bool) {
	parts := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return r < '0' || r > '9' && r < 'a' || r > 'f' })
	if len(parts) != len(lengths) {
		return m, false
	}
	for i, p := range parts {
		if len(p) != lengths[i] {
			return m, false
		}
	}
	return Mark{parts[0], parts[1], parts[2]}, true
}

// Differs names the parts in which two marks differ.
func (m Mark) Differs(other Mark) []string {
	var out []string
	for _, p := range []struct{ name, a, b string }{{ItsDesign, m.Design, other.Design}, {ItsShop, m.Shop, other.Shop}, {ItsProgram, m.Program, other.Program}} {
		if p.a != p.b {
			out = append(out, p.name)
		}
	}
	return out
}
