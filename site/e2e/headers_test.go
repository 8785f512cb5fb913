//go:build browser

package e2e

import (
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"
	"testing"
)

// cachingRules reads headers.example: what is said of caching, by pattern.
func cachingRules(t *testing.T) map[string]string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(dist, "headers.example"))
	if err != nil {
		t.Fatal(err)
	}
	rules := map[string]string{}
	var patterns []string
	open := false // whether the patterns still wait for their headers
	for line := range strings.Lines(string(text)) {
		line = strings.TrimRight(line, "\n")
		switch {
		case strings.HasPrefix(line, "/"):
			if !open {
				patterns = nil
			}
			patterns, open = append(patterns, line), true
		case strings.HasPrefix(line, "  "):
			open = false
			if value, found := strings.CutPrefix(line, "  Cache-Control: "); found {
				for _, pattern := range patterns {
					rules[pattern] = value
				}
			}
		}
	}
	return rules
}

// Every file of the build falls under one rule of headers.example, and under the right one.
func TestHeadersExampleCoversEveryFile(t *testing.T) {
	rules := cachingRules(t)
	addresses := []string{"/"}
	err := fs.WalkDir(os.DirFS(dist), ".", func(name string, entry fs.DirEntry, err error) error {
		if !entry.IsDir() && name != "headers.example" {
			addresses = append(addresses, "/"+name)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	for _, address := range addresses {
		want := "no-cache"
		if served.MatchString(address) {
			want = "public, max-age=31536000, immutable"
		}
		found := 0
		for pattern, value := range rules {
			if match, err := path.Match(pattern, address); err != nil || !match {
				continue
			}
			found++
			if value != want {
				t.Errorf("%s: %q by %s, want %q", address, value, pattern, want)
			}
		}
		if found != 1 {
			t.Errorf("%s falls under %d rules", address, found)
		}
	}
}
