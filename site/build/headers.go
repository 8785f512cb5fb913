package main

import (
	"bytes"
	"path/filepath"
	"text/template"
)

const headersExample = "headers.example"

// writeHeadersExample puts the policy of the pages into the example for hosts, so that the two never differ.
func writeHeadersExample(built *assets) error {
	example, err := template.ParseFiles(filepath.Join(source, headersExample))
	if err != nil {
		return err
	}
	var text bytes.Buffer
	if err := example.Execute(&text, map[string]string{"Policy": policy}); err != nil {
		return err
	}
	return built.add(headersExample, headersExample, text.Bytes())
}
