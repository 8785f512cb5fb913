// Package strict reads JSON from outside: files, links, what was stored and what a page sends.
package strict

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
)

// Depth is how deep brackets may nest. Nothing of ours goes a third as deep; a reader calls itself for each, and in a browser
// the stack for that is short.
const Depth = 32

// Faults of a text that is JSON otherwise.
var (
	ErrDeep = errors.New("strict: nested too deep")
	ErrRest = errors.New("strict: something follows the value")
)

// Unmarshal is json.Unmarshal for a text that nests no deeper than Depth.
func Unmarshal(text []byte, into any) error {
	if deep(text) {
		return ErrDeep
	}
	return json.Unmarshal(text, into)
}

// Decode reads one value and refuses names that into does not have, since they would silently leave a nought behind.
func Decode(text []byte, into any) error {
	if deep(text) {
		return ErrDeep
	}
	decoder := json.NewDecoder(bytes.NewReader(text))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(into); err != nil {
		return err
	}
	if _, err := decoder.Token(); err != io.EOF {
		return ErrRest
	}
	return nil
}

// Count returns how many elements a list has, without reading them; 0 of what is no list.
//
// Valid: JSON.
func Count(text []byte) int {
	depth, quoted, commas, some := 0, false, 0, false
	for i := 0; i < len(text); i++ {
		c := text[i]
		if depth == 1 && c > ' ' && c != ']' {
			some = true
		}
		switch {
		case quoted && c == '\\':
			i++
		case c == '"':
			quoted = !quoted
		case quoted:
		case c == '[' || c == '{':
			depth++
		case c == ']' || c == '}':
			depth--
		case c == ',' && depth == 1:
			commas++
		}
	}
	if !some || !bytes.HasPrefix(bytes.TrimLeft(text, " \t\r\n"), []byte("[")) {
		return 0
	}
	return commas + 1
}

// deep reports whether brackets nest deeper than Depth, those in strings aside.
func deep(text []byte) bool {
	depth, quoted := 0, false
	for i := 0; i < len(text); i++ {
		switch c := text[i]; {
		case quoted && c == '\\':
			i++
		case c == '"':
			quoted = !quoted
		case quoted:
		case c == '{' || c == '[':
			if depth++; depth > Depth {
				return true
			}
		case c == '}' || c == ']':
			depth--
		}
	}
	return false
}
