package main

import (
	"bytes"
	"path/filepath"
	"text/template"
)

// writeHeadersExample puts the policy of the pages into the example for hosts, so that the two never differ.
func writeHeadersExample(built *assets) error {
	const name = "headers.example"
	example, err := template.ParseFiles(filepath.Join(source, name))
	if err != nil {
		return err
	}
	var text bytes.Buffer
	if err := example.Execute(&text, map[string]string{"Policy": policy}); err != nil {
		return err
	}
	return built.add(name, name, text.Bytes())
}
