package main

import (
	"os"
	"regexp"
	"strings"
	"testing"
)

// What is typed is the user's own: no place of the page lets a browser read it over for its spelling, for which some ask their maker.
func TestNothingTypedIsReadOver(t *testing.T) {
	page, err := os.ReadFile("../index.html")
	if err != nil {
		t.Fatal(err)
	}
	kind := regexp.MustCompile(`\btype="(\w+)"`)
	places := 0
	for _, tag := range regexp.MustCompile(`(?s)<(?:input|textarea)\b[^>]*>`).FindAllString(string(page), -1) {
		if found := kind.FindStringSubmatch(tag); found != nil && found[1] != "text" && found[1] != "search" {
			continue
		}
		places++
		if !strings.Contains(tag, `spellcheck="false"`) {
			t.Error(tag)
		}
	}
	if places < 15 {
		t.Errorf("%d places to type at", places)
	}
}
