package issued

import (
	"slices"
	"strings"
)

// names that a drawing of ours has, with their attributes. What a file says more is not taken into the page: no script, no address, no style.
var (
	elements   = []string{"svg", "path", "text"}
	attributes = []string{
		"xmlns", "class", "width", "height", "viewBox", "font-size", "font-family", "font-weight", "fill", "fill-opacity", "fill-rule",
		"stroke", "stroke-opacity", "stroke-width", "stroke-linejoin", "stroke-dasharray", "d", "x", "y", "text-anchor", "transform",
	}
)

const namespace = "http://www.w3.org/2000/svg"

// Drawn reports whether a text is a drawing as we write them (drawing/svg): one svg with paths and texts in it, and nothing else.
func Drawn(svg string) bool {
	if !readable(svg) {
		return false
	}
	rest, open := svg, []string{}
	for n := 0; rest != ""; n++ {
		text, after, tagged := strings.Cut(rest, "<")
		if strings.Contains(text, ">") || trimmed(text) != "" && (len(open) == 0 || open[len(open)-1] != "text") {
			return false
		}
		if !tagged {
			break
		}
		tag, behind, closed := strings.Cut(after, ">")
		if !closed {
			return false
		}
		rest = behind
		if name, ends := strings.CutPrefix(tag, "/"); ends {
			if len(open) == 0 || open[len(open)-1] != name {
				return false
			}
			open = open[:len(open)-1]
			if len(open) == 0 && trimmed(rest) != "" {
				return false
			}
			continue
		}
		tag, alone := strings.CutSuffix(tag, "/")
		name, said, _ := strings.Cut(tag, " ")
		if !slices.Contains(elements, name) || (name == "svg") != (len(open) == 0 && n == 0) || len(open) > 1 || !plain(said) || name == "svg" && !strings.Contains(said, `xmlns="`+namespace+`"`) {
			return false
		}
		if !alone {
			open = append(open, name)
		}
	}
	return len(open) == 0 && svg != ""
}

// references are how marks are written that stand for themselves.
var references = []string{"&lt;", "&gt;", "&amp;", "&#34;", "&#39;"}

// readable reports whether a text is of letters and references that we write.
func readable(svg string) bool {
	for i, r := range svg {
		if r < ' ' && r != '\n' || r == '\uFFFD' || r == '\uFFFE' || r == '\uFFFF' {
			return false
		}
		if r == '&' && !slices.ContainsFunc(references, func(one string) bool { return strings.HasPrefix(svg[i:], one) }) {
			return false
		}
	}
	return true
}

// trimmed is a text without the spaces of XML that we write around it.
func trimmed(text string) string { return strings.Trim(text, " \n") }

// plain reports whether all attributes are of those known, each once and with a value that names nothing outside.
func plain(said string) bool {
	seen := map[string]bool{}
	for said = trimmed(said); said != ""; said = trimmed(said) {
		name, rest, ok := strings.Cut(said, `="`)
		value, after, ended := strings.Cut(rest, `"`)
		if !ok || !ended || seen[name] || !slices.Contains(attributes, name) || name == "xmlns" && value != namespace || name != "xmlns" && strings.ContainsAny(value, ":\\@") || strings.Contains(value, "<") || strings.Contains(strings.ToLower(value), "url") {
			return false
		}
		seen[name], said = true, after
		if said != "" && said[0] != ' ' {
			return false
		}
	}
	return true
}
