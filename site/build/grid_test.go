package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// The grid serves whoever shows it a model: its files know nothing but each other and how elements are kept, and each is short.
func TestGridStandsAlone(t *testing.T) {
	const mostLines = 160
	files, err := filepath.Glob("../js/grid/*.js")
	if err != nil || len(files) < 8 {
		t.Fatalf("%d files: %v", len(files), err)
	}
	from := regexp.MustCompile(`(?:from |import\()"([^"]+)"`)
	for _, name := range files {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if n := strings.Count(string(text), "\n"); n > mostLines {
			t.Errorf("%s has %d lines", name, n)
		}
		for _, m := range from.FindAllStringSubmatch(string(text), -1) {
			if !strings.HasPrefix(m[1], "./") && m[1] != "../keyed.js" {
				t.Errorf("%s knows %s", name, m[1])
			}
		}
		if strings.Contains(strings.ToLower(string(text)), "shop") {
			t.Errorf("%s speaks of shops", name)
		}
	}
}
