package published

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// A table that no test names proves nothing, and one outside the four folders does not say what it proves.
func TestEveryTableIsUsed(t *testing.T) {
	var tests strings.Builder
	err := filepath.WalkDir("../..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, "_test.go") {
			return err
		}
		text, err := os.ReadFile(path)
		tests.Write(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	const root = "../../../testdata/published"
	found := 0
	err = filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		found++
		folder, file := filepath.Split(path)
		if !slices.Contains([]Proof{Book, Library, Computed, Repeated}, Proof(filepath.Base(folder))) {
			t.Errorf("%s stands in no folder that says what it proves", path)
		}
		if name := strings.TrimSuffix(file, ".csv"); !strings.Contains(tests.String(), `"`+name+`"`) {
			t.Errorf("no test names %s", path)
		}
		return nil
	})
	if err != nil || found < 25 {
		t.Errorf("%d tables, %v", found, err)
	}
}
