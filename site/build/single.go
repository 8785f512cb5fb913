package main

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"html/template"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

// The page as one file, which opens by a double click, holds all that it asks for as text. Its shell is the page itself with scripts and
// styles written into it, and a place for each part; who fills the places is single/compose.js, here and in the page.
const (
	shellName  = "single.html.gz"
	singleFile = "finwright.html"
)

// singleParts are what the scripts of one file ask for, besides its own shell.
var singleParts = []string{"engine.wasm.gz", "canvas.wasm.gz", "charts.json", "licences.txt", "design.schema.json", "shop.schema.json", "language.txt"}

// singleScripts are the scripts of one file, each whole: a file cannot import another from a disk.
type singleScripts struct{ page, frame string }

func bundleSingle(built *assets) (singleScripts, error) {
	var s singleScripts
	var err error
	if s.page, err = bundleText(built, "js/main.js"); err != nil {
		return s, err
	}
	s.frame, err = bundleText(built, "js/frame.js")
	return s, err
}

// inline collects what stands within a document, for its policy.
type inline struct{ scripts, styles []string }

func (in *inline) script(text string) (string, error) {
	lower := strings.ToLower(text)
	if strings.Contains(lower, "</script") || strings.Contains(lower, "<!--") {
		return "", fmt.Errorf("a script that cannot stand within a page: it has a tag in it")
	}
	in.scripts = append(in.scripts, digest(text))
	return "<script>" + text + "</script>", nil
}

func (in *inline) style(text string) string {
	if d := digest(text); !slices.Contains(in.styles, d) {
		in.styles = append(in.styles, d)
	}
	return "<style>" + text + "</style>"
}

// policy of one file: nothing is asked of anybody, and no script runs but those of the build.
func (in *inline) policy() string {
	return "default-src 'none'; script-src " + strings.Join(in.scripts, " ") + " 'wasm-unsafe-eval'; style-src " + strings.Join(in.styles, " ") +
		"; img-src data: blob:; font-src data:; connect-src blob:; worker-src blob:; base-uri 'none'; form-action 'none'"
}

func digest(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
}

var (
	preloadTag = regexp.MustCompile(`<link rel="(?:preload|manifest)"[^>]*>\n`)
	iconTag    = regexp.MustCompile(`<link rel="icon" href="([^"]+)"`)
	styleTag   = regexp.MustCompile(`<link rel="stylesheet" href="([^"]+)">`)
	firstTag   = regexp.MustCompile(`<script src="([^"]+)"></script>\n`)
	moduleTag  = regexp.MustCompile(`<script type="module" src="[^"]+"></script>\n`)
	policyTag  = regexp.MustCompile(`(<meta http-equiv="Content-Security-Policy" content=")[^"]*`)
	assetsTag  = regexp.MustCompile(`(<meta name="finwright-assets" content=")[^"]*`)
	fontURL    = regexp.MustCompile(`url\("?([^)"]+\.woff2)"?\)`)
	linkTag    = regexp.MustCompile(`href="(?:\.\./)?(licences|design\.schema|shop\.schema)\.(?:[A-Z0-9]{8}\.)?(txt|json)"`)
)

// writeShell adds the shell of a language's page; it comes before the page itself, which names it.
func writeShell(l language, scripts singleScripts) error {
	frame, in, err := singleFrame(l, scripts.frame)
	if err != nil {
		return err
	}
	text, err := renderPage(l.built, l, filepath.Join(source, index))
	if err != nil {
		return err
	}
	if text, err = within(l.built, text, in); err != nil {
		return err
	}
	first := firstTag.FindStringSubmatch(text)
	if first == nil {
		return fmt.Errorf("%s: no script in its head", index)
	}
	script, err := os.ReadFile(filepath.Join(l.built.folder, first[1]))
	if err != nil {
		return err
	}
	begin, err := in.script(string(script))
	if err != nil {
		return err
	}
	rest, err := in.script(scripts.page)
	if err != nil {
		return err
	}
	parts, names := places(l.built, frame)
	served, err := json.Marshal(names)
	if err != nil {
		return err
	}
	text = strings.Replace(text, first[0], parts+begin+"\n", 1)
	text = moduleTag.ReplaceAllString(text, "")
	text = strings.Replace(text, "</body>", rest+"\n</body>", 1)
	text = strings.Replace(text, "<html ", "<html data-single ", 1)
	text = linkTag.ReplaceAllString(text, `data-part-link="$1.$2" download="$1.$2" href=""`)
	text = assetsTag.ReplaceAllStringFunc(text, func(tag string) string {
		return assetsTag.FindStringSubmatch(tag)[1] + template.HTMLEscapeString(string(served))
	})
	return addPacked(l.built, shellName, withPolicy(text, in))
}

// singleFrame is the drawing's frame as text for srcdoc. What stands in it counts as the page's own: the page's policy holds there too.
func singleFrame(l language, script string) (string, *inline, error) {
	in := &inline{}
	text, err := renderPage(l.built, l, filepath.Join(source, "drawing.html"))
	if err != nil {
		return "", nil, err
	}
	if text, err = within(l.built, text, in); err != nil {
		return "", nil, err
	}
	tag, err := in.script(script)
	if err != nil {
		return "", nil, err
	}
	text = moduleTag.ReplaceAllString(text, "")
	return withPolicy(strings.Replace(text, "</body>", tag+"</body>", 1), in), in, nil
}

func withPolicy(text string, in *inline) string {
	return policyTag.ReplaceAllString(text, "${1}"+template.HTMLEscapeString(in.policy()))
}

// within writes styles, fonts and the icon into a page.
func within(built *assets, text string, in *inline) (string, error) {
	var fault error
	read := func(name string) []byte {
		content, err := os.ReadFile(filepath.Join(built.folder, name))
		if err != nil {
			fault = err
		}
		return content
	}
	text = preloadTag.ReplaceAllString(text, "")
	text = iconTag.ReplaceAllStringFunc(text, func(tag string) string {
		return `<link rel="icon" href="` + dataURL("image/svg+xml", read(iconTag.FindStringSubmatch(tag)[1])) + `"`
	})
	text = styleTag.ReplaceAllStringFunc(text, func(tag string) string {
		name := styleTag.FindStringSubmatch(tag)[1]
		style := fontURL.ReplaceAllStringFunc(strings.TrimSpace(string(read(name))), func(url string) string {
			return "url(" + dataURL("font/woff2", read(filepath.Join(filepath.Dir(name), fontURL.FindStringSubmatch(url)[1]))) + ")"
		})
		return in.style(style)
	})
	return text, fault
}

func dataURL(kind string, content []byte) string {
	return "data:" + kind + ";base64," + base64.StdEncoding.EncodeToString(content)
}

// places are where the parts go, with the drawing's frame there already, and the names that the scripts know them by.
func places(built *assets, frame string) (string, map[string]string) {
	var text strings.Builder
	names := map[string]string{shellName: shellName}
	place := func(name, content string) {
		fmt.Fprintf(&text, "<script type=\"application/octet-stream\" data-part=%q>%s</script>\n", name, content)
	}
	for _, name := range singleParts {
		if served, ok := built.find(name); ok {
			names[name] = served
			place(name, "")
		}
	}
	place(shellName, "")
	text.WriteString("<script type=\"text/plain\" data-part=\"drawing.html\">" + base64.StdEncoding.EncodeToString([]byte(frame)) + "</script>\n")
	text.WriteString("<script type=\"text/plain\" data-part=\"carried\"></script>\n")
	return text.String(), names
}

// addPacked adds a text compressed as the programs are.
func addPacked(built *assets, name, text string) error {
	folder, err := os.MkdirTemp("", "finwright-build-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	plain, packed := filepath.Join(folder, "plain"), filepath.Join(folder, "packed")
	if err := os.WriteFile(plain, []byte(text), 0o644); err != nil {
		return err
	}
	if output, err := exec.Command("node", filepath.Join(source, "build", "pack.js"), plain, packed).CombinedOutput(); err != nil {
		return fmt.Errorf("packing %s: %w\n%s", name, err, output)
	}
	content, err := os.ReadFile(packed)
	if err != nil {
		return err
	}
	return built.addHashed(name, content)
}

// writeSingle puts the page of a language together as one file, with nothing that it carries.
func writeSingle(l language) error {
	file := func(name string) string {
		served, _ := l.built.find(name)
		return filepath.Join(l.built.folder, served)
	}
	arguments := []string{filepath.Join(source, "build", "single.js"), file(shellName), filepath.Join(l.built.folder, singleFile), shellName, file(shellName)}
	for _, name := range singleParts {
		if _, ok := l.built.find(name); ok {
			arguments = append(arguments, name, file(name))
		}
	}
	var complaint bytes.Buffer
	command := exec.Command("node", arguments...)
	command.Stderr = &complaint
	if err := command.Run(); err != nil {
		return fmt.Errorf("%s: %w\n%s", singleFile, err, &complaint)
	}
	return nil
}
