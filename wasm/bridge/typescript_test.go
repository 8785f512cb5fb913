package bridge

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"
	"strings"
	"unicode"
)

// typeWriter names the structs that it comes upon, each to be written once.
type typeWriter struct {
	text  bytes.Buffer
	names map[string]reflect.Type
	open  []reflect.Type // named and not yet written
	fault error
}

func (w *typeWriter) write(format string, args ...any) { fmt.Fprintf(&w.text, format, args...) }

// next is a struct not yet written.
func (w *typeWriter) next() (reflect.Type, bool) {
	if len(w.open) == 0 {
		return nil, false
	}
	t := w.open[0]
	w.open = w.open[1:]
	return t, true
}

// name is that of a struct; no two may share it, since one name means one thing.
func (w *typeWriter) name(t reflect.Type) string {
	runes := []rune(t.Name())
	runes[0] = unicode.ToUpper(runes[0])
	name := string(runes)
	switch known := w.names[name]; known {
	case t:
	case nil:
		w.names[name] = t
		w.open = append(w.open, t)
	default:
		w.fault = fmt.Errorf("%s and %s would both be %s", t, known, name)
	}
	return name
}

// members calls each for the fields of a struct, with those of what it embeds, as encoding/json does: with its name there, where it
// stands in Go, and when it is left out.
func members(t reflect.Type, each func(name, place, omitted string, f reflect.StructField)) {
	for i := range t.NumField() {
		f := t.Field(i)
		tag, options, _ := strings.Cut(f.Tag.Get("json"), ",")
		switch {
		case tag == "-":
		case f.Anonymous && tag == "":
			members(f.Type, each)
		case f.IsExported():
			each(tag, f.Name, options, f)
		}
	}
}

// typescript writes structs as interfaces.
type typescript struct{ typeWriter }

func (w *typescript) all() ([]byte, error) {
	for t, ok := w.next(); ok; t, ok = w.next() {
		w.write("\nexport interface %s {\n", w.name(t))
		members(t, func(name, _, omitted string, f reflect.StructField) {
			switch {
			case f.Tag.Get("ts") != "": // it writes itself
				w.write("  %s: %s;\n", name, f.Tag.Get("ts"))
			case omitted != "":
				w.write("  %s?: %s;\n", name, strings.TrimSuffix(w.kind(f.Type), " | null"))
			default:
				w.write("  %s: %s;\n", name, w.kind(f.Type))
			}
		})
		w.write("}\n")
	}
	return w.text.Bytes(), w.fault
}

func (w *typescript) kind(t reflect.Type) string {
	if t.Implements(reflect.TypeFor[json.Marshaler]()) {
		w.fault = fmt.Errorf("%s writes itself: say as what, in the tag ts", t)
	}
	switch t.Kind() {
	case reflect.String:
		return "string"
	case reflect.Bool:
		return "boolean"
	case reflect.Int, reflect.Float64:
		return "number"
	case reflect.Struct:
		return w.name(t)
	case reflect.Pointer:
		return w.kind(t.Elem()) + " | null"
	case reflect.Map:
		return "Record<string, " + w.kind(t.Elem()) + ">"
	case reflect.Array:
		return "[" + strings.TrimSuffix(strings.Repeat(w.kind(t.Elem())+", ", t.Len()), ", ") + "]"
	case reflect.Slice:
		if t.Elem().Kind() == reflect.Uint8 {
			return "string" // base64
		}
		return strings.TrimSuffix(w.kind(t.Elem()), " | null") + "[]" // never null: TestListsAreThere
	}
	w.fault = fmt.Errorf("no type of TypeScript for %s", t)
	return "never"
}
