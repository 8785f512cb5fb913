package enquiry

import (
	"strconv"
	"strings"
)

// A spreadsheet makes a day of a fraction that is typed into it: 5/8 becomes 5-Aug or 8-May, by the country it was set up for, and 1-1/2 the
// first of January 2002.

// months are those of the languages whose words are read, by their first three letters.
var months = map[string]int{
	"jan": 1, "feb": 2, "mar": 3, "apr": 4, "may": 5, "jun": 6, "jul": 7, "aug": 8, "sep": 9, "oct": 10, "nov": 11, "dec": 12,
	"mai": 5, "okt": 10, "dez": 12, "ene": 1, "abr": 4, "ago": 8, "dic": 12, "mrz": 3,
}

// fractionOfDay returns the fraction that a cell held before a spreadsheet took it for a day, and the one it would have been read the other
// way round. ok is false of what is no day, or no fraction by which inches are divided.
func fractionOfDay(text string) (one, other string, ok bool) {
	var numbers []int
	var isMonth []bool
	for _, part := range strings.FieldsFunc(folds(text), func(r rune) bool { return strings.ContainsRune("-/. 年月日", r) }) {
		if n, err := strconv.Atoi(part); err == nil {
			numbers, isMonth = append(numbers, n), append(isMonth, false)
			continue
		}
		n, known := months[firstLetters(part, 3)]
		if !known {
			return "", "", false
		}
		numbers, isMonth = append(numbers, n), append(isMonth, true)
	}
	year := -1
	for i, n := range numbers {
		if n >= 1000 {
			year = i
		}
	}
	named := false
	for _, is := range isMonth {
		named = named || is
	}
	switch {
	case year < 0 && strings.Count(text, "/") == 1 && !named:
		return "", "", false // a fraction
	case len(numbers) == 3 && year < 0:
		year = 2
	case len(numbers) == 2 && year < 0 && (named || strings.Contains(text, "月")):
	case len(numbers) == 2 && year < 0 && strings.Count(text, "-") == 1 && !strings.Contains(text, " "):
		if a, b := numbers[0], numbers[1]; isInchFraction(strconv.Itoa(a), strconv.Itoa(b)) && a%2 == 1 {
			return ratio(a, b), strconv.Itoa(a), true
		}
		return "", "", false
	case len(numbers) != 3:
		return "", "", false
	}
	y := 0
	if year >= 0 {
		y = numbers[year] % 1000
		numbers = append(append([]int{}, numbers[:year]...), numbers[year+1:]...)
	}
	a, b := numbers[0], numbers[1]
	if year >= 0 && (y == 2 || y == 4 || y == 8) && a < 10 && b < y {
		return strconv.Itoa(a) + " " + ratio(b, y), ratio(a, b), true
	}
	low, high := min(a, b), max(a, b)
	if !isInchFraction(strconv.Itoa(low), strconv.Itoa(high)) {
		return "", "", false
	}
	return ratio(low, high), ratio(high, low), true
}

func ratio(a, b int) string { return strconv.Itoa(a) + "/" + strconv.Itoa(b) }

func folds(text string) string { return strings.Map(folded, text) }

// firstLetters cuts a text to n letters.
func firstLetters(text string, n int) string {
	for i := range text {
		if n == 0 {
			return text[:i]
		}
		n--
	}
	return text
}
