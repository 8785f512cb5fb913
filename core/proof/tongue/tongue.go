// Package tongue makes up a language, for tests: what a page in it still shows in English is written elsewhere than in the
// catalogue.
package tongue

import (
	"fmt"
	"strings"
	"unicode"

	"finwright/core/message"
	"finwright/core/units"
)

// Code stands for the language: a code for private use.
const Code = "qtx"

var numbers, _ = units.StyleOf("1.234,5", "12.345,6")

// File is the language's file: English with other vowels, longer words, a decimal comma, thousands parted by a point, and
// three plurals.
func File() string {
	var file strings.Builder
	english := message.English()
	for _, key := range english.Keys() {
		text := english.Text(key)
		switch key {
		case "language.number.long":
			text = "12.345,6"
		case "language.number.short":
			text = "1.234,5"
		case "language.plural.one":
			fmt.Fprintln(&file, "language.plural.few n = 2..4")
		default:
			text = Say(text)
		}
		fmt.Fprintln(&file, key, text)
	}
	return file.String()
}

// Say puts an English text in the language; its {places} stay, with one form of their words more.
func Say(text string) string {
	var said strings.Builder
	for {
		before, after, open := strings.Cut(text, "{")
		place, rest, closed := strings.Cut(after, "}")
		if !open || !closed {
			return said.String() + words(text)
		}
		said.WriteString(words(before) + "{")
		name, forms, plural := strings.Cut(place, "|")
		said.WriteString(name)
		if plural {
			one, more, _ := strings.Cut(forms, "|")
			said.WriteString("|" + words(one) + "|" + words(more) + "|" + words(more))
		}
		said.WriteString("}")
		text = rest
	}
}

var vowels = strings.NewReplacer("a", "å", "e", "é", "i", "î", "o", "ö", "u", "ü", "A", "Å", "E", "É", "I", "Î", "O", "Ö", "U", "Ü")

// words changes the words of a text, and its numbers.
func words(text string) string {
	var said strings.Builder
	text = numbers.Write(text)
	for text != "" {
		end := strings.IndexFunc(text, func(r rune) bool { return !unicode.IsLetter(r) })
		if end < 0 {
			end = len(text)
		}
		said.WriteString(vowels.Replace(text[:end]))
		for range (end + 1) / 5 { // a third longer
			said.WriteString("ën")
		}
		text = text[end:]
		next := strings.IndexFunc(text, unicode.IsLetter)
		if next < 0 {
			next = len(text)
		}
		said.WriteString(text[:next])
		text = text[next:]
	}
	return said.String()
}

// English lists the words of a text that are letter for letter English: three letters or more, one of them a vowel without
// a mark.
func English(text string) []string {
	var left []string
	for _, word := range strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) }) {
		plain := !strings.ContainsFunc(word, func(r rune) bool { return r > unicode.MaxASCII })
		if len(word) > 2 && plain && strings.ContainsAny(strings.ToLower(word), "aeiou") {
			left = append(left, word)
		}
	}
	return left
}
