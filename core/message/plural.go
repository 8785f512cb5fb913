package message

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
)

// categories are those of CLDR in its order, but for "other", which takes what the rules leave.
var categories = []string{"zero", "one", "two", "few", "many"}

// A rule says which numbers are of a category: any of its lists of relations, all of a list.
//
// Source: Unicode Technical Standard 35, part 3, Language Plural Rules.
type rule [][]relation

// relation compares an operand of a number, or what is left of it by a modulus, with ranges.
type relation struct {
	operand string
	modulus float64 // 0: none
	not     bool
	ranges  [][2]float64
}

// readRule reads a rule as CLDR writes it: "n % 10 = 2..4 and n % 100 != 12..14".
func readRule(text string) (rule, error) {
	var r rule
	for either := range strings.SplitSeq(text, " or ") {
		var all []relation
		for part := range strings.SplitSeq(either, " and ") {
			one, ok := readRelation(part)
			if !ok {
				return nil, fmt.Errorf("message: %q in the plural rule %q", part, text)
			}
			all = append(all, one)
		}
		r = append(r, all)
	}
	return r, nil
}

func readRelation(text string) (r relation, ok bool) {
	words := strings.Fields(text)
	if len(words) == 5 && words[1] == "%" {
		var err error
		if r.modulus, err = strconv.ParseFloat(words[2], 64); err != nil || r.modulus <= 0 {
			return r, false
		}
		words = slices.Delete(words, 1, 3)
	}
	if len(words) != 3 || len(words[0]) != 1 || !strings.Contains("nivft", words[0]) || words[1] != "=" && words[1] != "!=" {
		return r, false
	}
	r.operand, r.not = words[0], words[1] == "!="
	for list := range strings.SplitSeq(words[2], ",") {
		low, high, ranged := strings.Cut(list, "..")
		if !ranged {
			high = low
		}
		from, err1 := strconv.ParseFloat(low, 64)
		to, err2 := strconv.ParseFloat(high, 64)
		if err1 != nil || err2 != nil {
			return r, false
		}
		r.ranges = append(r.ranges, [2]float64{from, to})
	}
	return r, true
}

// holds reports whether a number, as printed with a point, is of the rule's category.
func (r rule) holds(number string) bool {
	return slices.ContainsFunc(r, func(all []relation) bool {
		return !slices.ContainsFunc(all, func(one relation) bool { return !one.holds(number) })
	})
}

func (r relation) holds(number string) bool {
	x, ok := operand(r.operand, number)
	if r.modulus > 0 {
		x = math.Mod(x, r.modulus)
	}
	within := slices.ContainsFunc(r.ranges, func(of [2]float64) bool {
		return of[0] <= x && x <= of[1] && (x == math.Trunc(x) || of[0] == of[1])
	})
	return ok && within != r.not
}

// operand returns the part of a number that rules name by a letter: n the number, i its whole part, v how many digits stand
// after the point, f and t those digits with and without noughts at their end.
func operand(name, number string) (x float64, ok bool) {
	number = strings.TrimPrefix(number, "-")
	whole, digits, _ := strings.Cut(number, ".")
	switch name {
	case "i":
		number = whole
	case "v":
		return float64(len(digits)), true
	case "f":
		number = "0" + digits
	case "t":
		number = "0" + strings.TrimRight(digits, "0")
	}
	x, err := strconv.ParseFloat(number, 64)
	return x, err == nil
}
