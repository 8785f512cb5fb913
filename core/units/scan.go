package units

import (
	"strings"
	"unicode/utf8"
)

// What a typed text is read by, piece by piece from its front.

// cutSign splits a sign from the front of t.
func cutSign(t string) (sign, rest string) {
	if t != "" && (t[0] == '-' || t[0] == '+') {
		return t[:1], t[1:]
	}
	return "", t
}

// cutDigits splits the digits from the front of t.
func cutDigits(t string) (digits, rest string) {
	n := 0
	for n < len(t) && isDigit(t[n]) {
		n++
	}
	return t[:n], t[n:]
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

// dropThinSpaces takes out the thin and the unbreakable spaces that group digits.
func dropThinSpaces(t string) string {
	var kept strings.Builder
	from := 0
	for i, r := range t {
		after := i + utf8.RuneLen(r)
		if strings.ContainsRune("\u2009\u202f\u00a0", r) && i > 0 && isDigit(t[i-1]) && after < len(t) && isDigit(t[after]) {
			kept.WriteString(t[from:i])
			from = after
		}
	}
	return kept.String() + t[from:]
}

// dropWideSpace takes out a space that groups thousands; one that parts a whole number from a fraction stays.
func dropWideSpace(t string) string {
	_, number := cutSign(t)
	whole, rest := cutDigits(number)
	tail, spaced := strings.CutPrefix(rest, " ")
	thousands, after := cutDigits(tail)
	if !spaced || whole == "" || len(whole) > 3 || len(thousands) != 3 || strings.HasPrefix(after, "/") {
		return t
	}
	return strings.TrimSuffix(t, rest) + tail
}

// dropGroups takes the marks between thousands out of the number at the front of t, and puts a point for its decimal sign,
// where nothing else can be meant: groups of three before another mark, as in 1,234.5 and 1.234,5, or two groups, as in
// 1,234,567. One mark alone may be either and stays.
func dropGroups(t string) string {
	sign, number := cutSign(t)
	whole, rest := cutDigits(number)
	if whole == "" || len(whole) > 3 || whole[0] == '0' || rest == "" || rest[0] != ',' && rest[0] != '.' {
		return t
	}
	mark, groups := rest[:1], 0
	for strings.HasPrefix(rest, mark) {
		part, after := cutDigits(rest[1:])
		if len(part) != 3 {
			return t
		}
		whole, rest = whole+part, after
		groups++
	}
	if rest != "" && (rest[0] == ',' || rest[0] == '.') {
		if decimals, _ := cutDigits(rest[1:]); decimals == "" {
			return t
		}
		return sign + whole + "." + rest[1:]
	}
	if groups < 2 {
		return t
	}
	return sign + whole + rest
}

// cutFraction splits "5/8", "1 1/4" or "1-1/4" from the front of t, with its sign; whole may be empty.
func cutFraction(t string) (sign, whole, num, den, rest string, ok bool) {
	sign, rest = cutSign(t)
	num, rest = cutDigits(rest)
	if tail := strings.TrimLeft(rest, " -"); num != "" && tail != rest {
		whole = num
		num, rest = cutDigits(tail)
	}
	rest, ok = strings.CutPrefix(rest, "/")
	den, rest = cutDigits(rest)
	return sign, whole, num, den, rest, ok && num != "" && den != ""
}

// cutDecimal splits a number with a point or a comma, and perhaps an exponent, from the front of t; empty where there is none.
func cutDecimal(t string) (decimal, rest string) {
	_, rest = cutSign(t)
	whole, rest := cutDigits(rest)
	if strings.HasPrefix(rest, ".") || strings.HasPrefix(rest, ",") {
		part, after := cutDigits(rest[1:])
		if whole+part == "" {
			return "", t
		}
		rest = after
	} else if whole == "" {
		return "", t
	}
	if strings.HasPrefix(rest, "e") || strings.HasPrefix(rest, "E") {
		_, power := cutSign(rest[1:])
		if digits, after := cutDigits(power); digits != "" {
			rest = after
		}
	}
	return t[:len(t)-len(rest)], rest
}

// twoWays reports whether a decimal can mean two things: up to three digits, a comma and exactly three more. A leading
// nought settles it.
func twoWays(decimal string) bool {
	_, decimal = cutSign(decimal)
	whole, part, comma := strings.Cut(decimal, ",")
	digits, after := cutDigits(part)
	return comma && 1 <= len(whole) && len(whole) <= 3 && whole[0] != '0' && len(digits) == 3 && after == ""
}

// gaugeMark is how the wire gauge of a wall is written behind its number.
const gaugeMark = "BWG"

// gaugeNumber reads a whole text as a wire gauge: "14 BWG", "14 ga", "BWG 14" or "#14".
func gaugeNumber(t string) (number string, ok bool) {
	t = strings.ToLower(t)
	if number, rest := cutDigits(t); number != "" {
		switch strings.TrimLeft(rest, " ") {
		case "bwg", "ga", "gauge", "gage":
			return number, true
		}
		return "", false
	}
	for _, mark := range []string{"bwg", "#"} {
		if rest, ok := strings.CutPrefix(t, mark); ok {
			number, rest = cutDigits(strings.TrimLeft(rest, " "))
			return number, number != "" && rest == ""
		}
	}
	return "", false
}
