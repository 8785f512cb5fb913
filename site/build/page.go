package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"html/template"
	"path/filepath"
	"regexp"
	"strings"
)

// policy is the content security policy of every document: own origin only, no inline script or style, and of eval
// nothing but WebAssembly.
const policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data: blob:; " +
	"font-src 'self'; connect-src 'self'; worker-src 'self' blob:; frame-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'"

// head is put first into every document. The last line tells the scripts under which name each file is served.
var head = template.Must(template.New("head").Parse(`<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="{{.Policy}}">
<meta name="robots" content="none">
<link rel="icon" href="icon.svg" type="image/svg+xml">
<meta name="finwright-assets" content="{{.Assets}}">
`))

// index is the page itself, the only document that is asked for by a name of its own.
const index = "index.html"

// renderPage fills in one page of the site folder in one language. The sources name files as they lie there; in the rendered page
// each is replaced by its served name.
func renderPage(built *assets, l language, file string) (string, error) {
	page, err := template.New(filepath.Base(file)).Funcs(template.FuncMap{"msg": l.texts.Text}).ParseFiles(file)
	if err != nil {
		return "", err
	}
	data := pageData(l)
	if data.FirstView, err = firstView(l); err != nil {
		return "", err
	}
	var body bytes.Buffer
	if err := page.Execute(&body, data); err != nil {
		return "", err
	}
	names, err := json.Marshal(built.askedByScripts())
	if err != nil {
		return "", err
	}
	var top strings.Builder
	if err := head.Execute(&top, map[string]string{"Policy": policy, "Assets": string(names)}); err != nil {
		return "", err
	}
	text := strings.Replace(body.String(), "<head>\n", top.String(), 1)
	if !strings.Contains(text, policy) && !strings.Contains(text, template.HTMLEscapeString(policy)) {
		return "", fmt.Errorf("%s: no <head> line to put the policy after", file)
	}
	text, err = serveNames(built, text)
	if err != nil {
		return "", fmt.Errorf("%s: %w", file, err)
	}
	return text, nil
}

// writeIndex writes the page itself under the name of the build.
func writeIndex(built *assets, text, build string) error {
	text = strings.Replace(text, "<head>\n", "<head>\n<meta name=\"finwright-build\" content=\""+build+"\">\n", 1)
	return built.add(index, index, []byte(text))
}

var reference = regexp.MustCompile(`\b(src|href)="([^"#:{]+)"`)

// serveNames replaces the names of files by the names they are served under. A name that leads nowhere fails the build.
func serveNames(built *assets, text string) (string, error) {
	var missing []string
	text = reference.ReplaceAllStringFunc(text, func(found string) string {
		parts := reference.FindStringSubmatch(found)
		served, ok := built.find(parts[2])
		if !ok && !strings.HasSuffix(parts[2], ".html") {
			missing = append(missing, parts[2])
		}
		if !ok {
			served = parts[2]
		}
		return parts[1] + `="` + served + `"`
	})
	if len(missing) > 0 {
		return "", fmt.Errorf("names files that are not built: %s", strings.Join(missing, ", "))
	}
	return text, nil
}
