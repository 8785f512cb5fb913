package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"finwright/core/message"
	"finwright/site/charts"
)

// language is one in which the page is rendered. English, which comes first, has the static folder; another a folder in it,
// named by its code, and shares all that has no words in it.
type language struct {
	code  string
	texts message.Catalogue
	file  []byte // what the engine is to speak; nil: English, which it has
	built *assets
}

// root is the way from the page of a language to the static folder.
func (l language) root() string {
	if l.file == nil {
		return "./"
	}
	return "../"
}

// readLanguages reads the files of all languages beside English.
func readLanguages(pattern string) ([]language, error) {
	list := []language{{code: "en", texts: message.English()}}
	names, err := filepath.Glob(pattern)
	if err != nil {
		return nil, err
	}
	for _, name := range names {
		code := strings.TrimSuffix(filepath.Base(name), filepath.Ext(name))
		if code == list[0].code {
			continue
		}
		file, err := os.ReadFile(name)
		if err != nil {
			return nil, err
		}
		texts, err := message.Load(string(file))
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		list = append(list, language{code: code, texts: texts, file: file})
	}
	return list, nil
}

// renderLanguages writes the pages and the charts of each language, and returns the name of the build.
func renderLanguages(built *assets, languages []language, pages []string, scripts singleScripts) (string, error) {
	indexes := make([]string, len(languages))
	for i := range languages {
		l := &languages[i]
		l.built = built
		if l.file != nil {
			l.built = built.within(l.code)
			if err := l.built.addHashed("language.txt", l.file); err != nil {
				return "", err
			}
		}
		options, err := charts.JSON(l.texts)
		if err != nil {
			return "", err
		}
		if err := l.built.addHashed("charts.json", options); err != nil {
			return "", err
		}
		if err := writeManifest(*l); err != nil {
			return "", err
		}
		if err := writeShell(*l, scripts); err != nil {
			return "", err
		}
		if err := writeSingle(*l); err != nil {
			return "", err
		}
		for _, page := range pages { // in order of the alphabet: index.html, which names the others, comes last
			text, err := renderPage(l.built, *l, page)
			if err != nil {
				return "", err
			}
			if filepath.Base(page) == index {
				indexes[i] = text
			} else if err := l.built.addHashed(filepath.Base(page), []byte(text)); err != nil {
				return "", err
			}
		}
	}
	// The pages name all else, by names that change with the content: so their own content stands for the build.
	name := hash([]byte(strings.Join(indexes, "")))
	for i, l := range languages {
		if err := writeIndex(l.built, indexes[i], name); err != nil {
			return "", err
		}
	}
	return name, nil
}
