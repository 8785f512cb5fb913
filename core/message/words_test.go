package message

import (
	"regexp"
	"slices"
	"strings"
	"testing"
)

// What a foreman would laugh at, or not know. A splice of strip is always a joint, and what holds the fin on the tube a bond.
var wrongWords = regexp.MustCompile(`(?i)\bnought\b|\bsplices?\b|\bis none to\b|\bpositions? bear|\bholds? the heat back\b|\brest without\b|\bnegative number\b`)

func TestWordsOfTheTrade(t *testing.T) {
	c := English()
	strip := []string{"coil", "joints", "whole_tubes", "no_joint", "stranded", "strip_scrap", "strip_cut_back", "restart", "symbol.S_8", "winding", "field.joint", ".long", ".short", ".apart", "symbol.J", "symbol.S_5"}
	for _, key := range c.Keys() {
		text := c.Text(key)
		if wrong := wrongWords.FindString(text); wrong != "" {
			t.Errorf("%s says %q: %s", key, wrong, text)
		}
		if regexp.MustCompile(`(?i)\bjoints?\b`).MatchString(text) && !slices.ContainsFunc(strip, func(s string) bool { return strings.Contains(key, s) }) {
			t.Errorf("%s calls something a joint that is not one of strip: %s", key, text)
		}
	}
}
