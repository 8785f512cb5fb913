package main

import (
	"encoding/json"
	"fmt"
)

const manifestFile = "manifest.webmanifest"

// writeManifest adds what a browser asks before it offers to keep the page as a program of its own. Paths in it are from where it lies.
func writeManifest(l language) error {
	icon, ok := l.built.find("icon.svg")
	if !ok {
		return fmt.Errorf("%s: no icon", manifestFile)
	}
	text, err := json.Marshal(map[string]any{
		"id": "./", "start_url": "./", "scope": "./", "display": "standalone", "lang": l.code,
		"name": l.texts.Text("page.name"), "short_name": l.texts.Text("page.name"), "description": l.texts.Text("page.description"),
		"background_color": "#f2f5f4", "theme_color": "#f2f5f4",
		"icons": []map[string]string{{"src": icon, "sizes": "any", "type": "image/svg+xml"}},
	})
	if err != nil {
		return err
	}
	return l.built.addHashed(manifestFile, text)
}
