// Package strict reads JSON from outside: files, links, what was stored and what a page sends.
package strict

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"iter"
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
	if !bytes.HasPrefix(bytes.TrimLeft(text, " \t\r\n"), []byte("[")) {
		return 0
	}
	commas, some := 0, 0
	for c, depth := range marks(text) {
		if depth > 1 || c != ']' {
			some++
		}
		if depth == 1 && c == ',' {
			commas++
		}
	}
	if some == 1 { // the list's own bracket
		return 0
	}
	return commas + 1
}

// deep reports whether brackets nest deeper than Depth.
func deep(text []byte) bool {
	for _, depth := range marks(text) {
		if depth > Depth {
			return true
		}
	}
	return false
}

// marks yields what stands outside strings, spaces aside, and a string by its opening quote; with how many brackets are open there,
// an opening one among them and a closing one too.
func marks(text []byte) iter.Seq2[byte, int] {
	return func(yield func(byte, int) bool) {
		depth, quoted := 0, false
		for i := 0; i < len(text); i++ {
			c := text[i]
			switch {
			case quoted && c == '\\':
				i++
				continue
			case c == '"':
				if quoted = !quoted; !quoted {
					continue
				}
			case quoted, c <= ' ':
				continue
			case c == '{' || c == '[':
				depth++
			}
			if !yield(c, depth) {
				return
			}
			if c == '}' || c == ']' {
				depth--
			}
		}
	}
}
