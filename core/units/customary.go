package units

import "strings"

// customary reports whether a text holds a mark or a word of US customary units. It has been read, so that no other word
// can hold these.
func customary(text string) bool {
	t := strings.ToLower(text)
	if strings.ContainsAny(t, `"″'′’#½¼¾⅛⅜⅝⅞`) {
		return true
	}
	for _, part := range []string{"bwg", "fpi", "per inch", "btu", "lb", "ksi", "psi", "gpm", "gal", "cfm", "fpm", "inh2o", "inh₂o", "inwg"} {
		if strings.Contains(t, part) {
			return true
		}
	}
	for end := range t {
		if end > 0 && inWord(t[end-1]) && !inWord(t[end]) && endsCustomary(t[:end]) {
			return true
		}
	}
	return endsCustomary(t)
}

func inWord(c byte) bool { return 'a' <= c && c <= 'z' || isDigit(c) || c == '_' }

// afterNumber are the words that count after a number or a stroke alone.
var afterNumber = []string{"ga", "gauge", "gage", "mil", "mils", "thou", "in", "inch", "inches", "ft", "feet", "foot"}

// endsCustomary reports whether t ends with a customary unit.
func endsCustomary(t string) bool {
	for _, end := range []string{"f", "hp", "per in"} {
		if strings.HasSuffix(t, end) {
			return true
		}
	}
	for _, word := range afterNumber {
		if before, ok := strings.CutSuffix(t, word); ok {
			before = strings.TrimRight(before, " ")
			if n := len(before); n > 0 && (isDigit(before[n-1]) || before[n-1] == '/') {
				return true
			}
		}
	}
	return false
}
