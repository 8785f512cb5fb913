package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestServedNameFollowsTheContent(t *testing.T) {
	built := newAssets(t.TempDir())
	served := map[string]bool{}
	for _, content := range []string{"one", "two", "one"} {
		if err := built.addHashed("js/page.worker.js", []byte(content)); err != nil {
			t.Fatal(err)
		}
		name := built.served["js/page.worker.js"]
		served[name] = true
		if !strings.HasPrefix(name, "js/page.") || !strings.HasSuffix(name, ".worker.js") {
			t.Errorf("served as %s", name)
		}
		written, err := os.ReadFile(filepath.Join(built.folder, name))
		if err != nil || string(written) != content {
			t.Errorf("%s holds %q (%v), want %q", name, written, err, content)
		}
	}
	if len(served) != 2 {
		t.Errorf("two contents are served as %v", served)
	}
}

func TestPagesNameServedFiles(t *testing.T) {
	built := newAssets(t.TempDir())
	built.record("js/page.js", "js/page.ABCDEFGH.js")
	for _, c := range []struct{ name, page, want, fault string }{
		{"a script", `<script src="js/page.js">`, `<script src="js/page.ABCDEFGH.js">`, ""},
		{"another page", `<iframe src="drawing.html">`, `<iframe src="drawing.html">`, ""},
		{"a place in the page", `<a href="#entries">`, `<a href="#entries">`, ""},
		{"data in the tag", `<link href="data:,">`, `<link href="data:,">`, ""},
		{"no such file", `<link href="css/none.css">`, "", "css/none.css"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := serveNames(built, c.page)
			if c.fault == "" && (err != nil || got != c.want) {
				t.Errorf("%q, %v, want %q", got, err, c.want)
			}
			if c.fault != "" && (err == nil || !strings.Contains(err.Error(), c.fault)) {
				t.Errorf("%v, want an error that names %s", err, c.fault)
			}
		})
	}
}

func TestCodeWithoutLicenceFailsTheBuild(t *testing.T) {
	root := t.TempDir()
	inner := filepath.Join(root, "inner")
	if err := os.Mkdir(inner, 0o755); err != nil {
		t.Fatal(err)
	}
	code := work{title: "some code 1.0", root: root, folders: []string{inner}}
	var text strings.Builder
	if err := code.write(&text); err == nil {
		t.Error("no licence file, and no error")
	}
	for file, content := range map[string]string{
		filepath.Join(root, "LICENSE.txt"): "outer terms", filepath.Join(inner, "COPYING"): "inner terms", filepath.Join(root, "licensing.go"): "code",
	} {
		if err := os.WriteFile(file, []byte(content), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := code.write(&text); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"some code 1.0: LICENSE.txt", "outer terms", "some code 1.0: inner/COPYING", "inner terms"} {
		if !strings.Contains(text.String(), want) {
			t.Errorf("%q is missing in %q", want, text.String())
		}
	}
	if strings.Contains(text.String(), "licensing.go") {
		t.Error("a source file was taken for a licence")
	}
}

// The build reads the languages that lie in a folder, and refuses one that says what nobody asks for: it names file and key.
func TestUnknownKeyFailsTheBuild(t *testing.T) {
	folder := t.TempDir()
	numbers := "language.number.long 12.345,6\nlanguage.number.short 1.234,5\n"
	for file, text := range map[string]string{"en.txt": "not read", "xx.txt": numbers} {
		if err := os.WriteFile(filepath.Join(folder, file), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	list, err := readLanguages(filepath.Join(folder, "*.txt"))
	if err != nil || len(list) != 2 || list[0].code != "en" || list[1].code != "xx" || string(list[1].file) != numbers {
		t.Errorf("read %v, %v", list, err)
	}
	if err := os.WriteFile(filepath.Join(folder, "xx.txt"), []byte(numbers+"page.weather fine\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if _, err := readLanguages(filepath.Join(folder, "*.txt")); err == nil || !strings.Contains(err.Error(), "xx.txt") || !strings.Contains(err.Error(), "page.weather") {
		t.Errorf("an unknown key: %v", err)
	}
}
