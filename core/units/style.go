package units

import (
	"strings"
	"unicode"
)

// Style is how a language writes numbers.
type Style struct {
	Decimal string // between whole and parts; empty: the point
	Group   string // between thousands
	From    int    // digits of a whole number from which on its thousands are parted
}

// Plain is how documents hold numbers, and English: a point, and thousands parted by a thin space from five digits on, as
// ISO 80000-1 does.
var Plain = Style{Group: "\u202f", From: 5}

// StyleOf reads a style off 1234.5 and 12345.6 as they are written in it.
func StyleOf(short, long string) (n Style, ok bool) {
	between := func(text, before, after string) string {
		_, rest, _ := strings.Cut(text, before)
		sign, _, _ := strings.Cut(rest, after)
		return sign
	}
	n = Style{Decimal: between(long, "345", "6"), Group: between(long, "12", "345"), From: 5}
	if between(short, "1", "234") != "" {
		n.From = 4
	}
	signs := n.Decimal != "" && n.Decimal != n.Group && !strings.ContainsFunc(n.Decimal+n.Group, unicode.IsDigit)
	if n.Decimal == "." {
		n.Decimal = ""
	}
	return n, signs && n.grouped("1234.5") == short && n.grouped("12345.6") == long
}

// Write puts this language's decimal sign in the numbers of a text, which have a point.
func (n *Style) Write(text string) string {
	if n.Decimal == "" {
		return text
	}
	b := []byte(text[:min(1, len(text))])
	for i := 1; i < len(text); i++ {
		if text[i] == '.' && isDigit(text[i-1]) && i+1 < len(text) && isDigit(text[i+1]) {
			b = append(b, n.Decimal...)
		} else {
			b = append(b, text[i])
		}
	}
	return string(b)
}

// Typed turns what a reader types into what documents hold, and back: point and decimal sign change places. So what reads two
// ways to a reader of this language, as 2.108 where the comma parts, is what reads two ways in a document: 2,108.
func (n *Style) Typed(text string) string {
	if n.Decimal == "" {
		return text
	}
	parts := strings.Split(text, n.Decimal)
	for i := range parts {
		parts[i] = strings.ReplaceAll(parts[i], ".", n.Decimal)
	}
	return strings.Join(parts, ".")
}

// grouped writes a number printed with a point.
func (n *Style) grouped(v string) string {
	sign := ""
	if strings.HasPrefix(v, "-") {
		sign, v = "-", v[1:]
		if strings.Trim(v, "0.") == "" {
			sign = ""
		}
	}
	whole, _, _ := strings.Cut(v, ".")
	if n.Group == "" || len(whole) < n.From || strings.ContainsAny(v, "eE") {
		return sign + n.Write(v)
	}
	var b strings.Builder
	for i, r := range whole {
		if i > 0 && (len(whole)-i)%3 == 0 {
			b.WriteString(n.Group)
		}
		b.WriteRune(r)
	}
	if len(v) > len(whole) {
		b.WriteString(n.Write("0" + v[len(whole):])[1:])
	}
	return sign + b.String()
}
