package document

import (
	"strings"
	"unicode"
)

// maxFileName bounds the name in a file's name [letters].
const maxFileName = 60

// FileName makes the name of a saved file of what it holds and the day, as in "Oil-cooler-2026-11-27.design.json". Only
// letters and digits of name are kept, so that every file system takes it; where nothing is left of it, other stands in.
// False when date is no day of the form 2026-11-27.
func FileName(name, other, date, ending string) (string, bool) {
	if !isDate(date) {
		return "", false
	}
	words := strings.FieldsFunc(name, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	letters := []rune(strings.Join(words, "-"))
	safe := strings.TrimRight(string(letters[:min(len(letters), maxFileName)]), "-")
	if safe == "" {
		safe = other
	}
	return safe + "-" + date + ending, true
}

func isDate(text string) bool {
	for i, r := range text {
		if dash := i == 4 || i == 7; dash != (r == '-') || !dash && (r < '0' || r > '9') {
			return false
		}
	}
	return len(text) == len("2026-11-27")
}
