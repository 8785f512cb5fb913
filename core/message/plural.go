package message

import (
	"math"
	"strconv"
	"strings"
)

// categories are those of CLDR in its order, but for "other", which takes what the rules leave.
var categories = []string{"zero", "one", "two", "few", "many"}

// A rule says which numbers are of a category, as CLDR writes it: "n % 10 = 2..4 and n % 100 != 12..14".
//
// Source: Unicode Technical Standard 35, part 3, Language Plural Rules.
type rule string

// holds reports whether a number, as printed with a point, is of the category; ok is false where rule or number cannot be read.
func (r rule) holds(number string) (holds, ok bool) {
	ok = true
	for _, either := range strings.Split(string(r), " or ") {
		all := true
		for _, relation := range strings.Split(either, " and ") {
			one, readable := relates(strings.Fields(relation), number)
			all, ok = all && one, ok && readable
		}
		holds = holds || all
	}
	return holds && ok, ok
}

// relates compares an operand of a number, or what a modulus leaves of it, with a list of ranges.
func relates(words []string, number string) (holds, ok bool) {
	if len(words) < 3 {
		return false, false
	}
	x, ok := operand(words[0], number)
	if len(words) == 5 && words[1] == "%" {
		modulus, err := strconv.ParseFloat(words[2], 64)
		ok = ok && err == nil && modulus > 0
		x, words = math.Mod(x, modulus), words[2:]
	}
	if len(words) != 3 || words[1] != "=" && words[1] != "!=" {
		return false, false
	}
	for _, list := range strings.Split(words[2], ",") {
		low, high, ranged := strings.Cut(list, "..")
		if !ranged {
			high = low
		}
		from, err1 := strconv.ParseFloat(low, 64)
		to, err2 := strconv.ParseFloat(high, 64)
		ok = ok && err1 == nil && err2 == nil
		holds = holds || from <= x && x <= to && (!ranged || x == math.Trunc(x))
	}
	return holds == (words[1] == "="), ok
}

// operand returns the part of a number that rules name by a letter: n the number, i its whole part, v how many digits stand
// after the point, f and t those digits with and without noughts at their end.
func operand(name, number string) (x float64, ok bool) {
	number = strings.TrimPrefix(number, "-")
	whole, digits, _ := strings.Cut(number, ".")
	switch name {
	case "n":
	case "i":
		number = whole
	case "v":
		return float64(len(digits)), true
	case "f":
		number = "0" + digits
	case "t":
		number = "0" + strings.TrimRight(digits, "0")
	default:
		return 0, false
	}
	x, err := strconv.ParseFloat(number, 64)
	return x, err == nil
}
