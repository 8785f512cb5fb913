package bridge

import (
	"bytes"
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"
	"unicode"

	"finwright/core/document"
	"finwright/core/report"
	"finwright/testdata/cases"
)

var update = flag.Bool("update", false, "write the types of the page's scripts anew")

const apiFile = "../../site/js/api.d.ts"

// TestAPI holds the types by which the page's scripts know the engine to what the methods take and give.
func TestAPI(t *testing.T) {
	w := typeWriter{names: map[string]reflect.Type{}}
	w.write("// What the engine takes and gives. `make golden` writes it from the structs of wasm/bridge; do not edit.\n\nexport interface Methods {\n")
	names := make([]string, 0, len(methods))
	for name := range methods {
		names = append(names, name)
	}
	slices.Sort(names)
	for _, name := range names {
		f := reflect.TypeOf(methods[name])
		w.write("  %s: { args: %s; reply: %s };\n", name, w.name(f.In(0)), w.name(f.Out(0)))
	}
	w.write("}\n")
	w.name(reflect.TypeFor[refusal]())
	for len(w.open) > 0 {
		next := w.open[0]
		w.open = w.open[1:]
		w.write("\nexport interface %s {\n", w.name(next))
		w.members(next)
		w.write("}\n")
	}
	if w.fault != nil {
		t.Fatal(w.fault)
	}
	if *update {
		if err := os.WriteFile(apiFile, w.text.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	now, err := os.ReadFile(apiFile)
	if err != nil || !bytes.Equal(now, w.text.Bytes()) {
		t.Errorf("%s is not what the engine takes and gives: make golden (%v)", apiFile, err)
	}
}

// typeWriter writes structs as encoding/json does, as interfaces of TypeScript.
type typeWriter struct {
	text  bytes.Buffer
	names map[string]reflect.Type
	open  []reflect.Type // named and not yet written
	fault error
}

func (w *typeWriter) write(format string, args ...any) { fmt.Fprintf(&w.text, format, args...) }

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

// members are the fields of a struct, with those of what it embeds.
func (w *typeWriter) members(t reflect.Type) {
	for i := range t.NumField() {
		f := t.Field(i)
		tag, options, _ := strings.Cut(f.Tag.Get("json"), ",")
		switch {
		case tag == "-":
		case f.Anonymous && tag == "":
			w.members(f.Type)
		case !f.IsExported():
		case f.Tag.Get("ts") != "": // it writes itself
			w.write("  %s: %s;\n", tag, f.Tag.Get("ts"))
		case strings.Contains(options, "omit"):
			w.write("  %s?: %s;\n", tag, strings.TrimSuffix(w.kind(f.Type), " | null"))
		default:
			w.write("  %s: %s;\n", tag, w.kind(f.Type))
		}
	}
}

func (w *typeWriter) kind(t reflect.Type) string {
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

// A list that is nil would be null in JSON, where the types say that there is one: it is empty, or left out.
func TestListsAreThere(t *testing.T) {
	empty := cases.First()
	empty.Fields["tube_od"] = document.Entry{Text: "wide"}
	for _, d := range []document.Document{cases.First(), document.New(), empty} {
		for _, s := range report.Sections {
			args := map[string]any{"document": d, "section": s.ID, "sheet": area, "quantity": "used_area", "figure": "bare_area", "room": map[string]any{"wide": 900, "card": 300}}
			for name, keys := range map[string][]string{
				"edit":    {"document", "section", "sheet", "quantity", "room"},
				"working": {"document", "section", "figure"},
				"map":     {"document", "quantity"},
				"shop":    {},
			} {
				if !slices.Contains(keys, "section") && s.ID != report.Sections[0].ID {
					continue // once is enough
				}
				some := map[string]any{}
				for _, key := range keys {
					some[key] = args[key]
				}
				reply, err := methods[name].answer(mustMarshal(t, some))
				if err != nil && d.Fields["tube_od"].Text != "wide" {
					t.Errorf("%s in %s: %v", name, s.ID, err)
				} else if err == nil {
					wholeLists(t, name, reflect.ValueOf(reply))
				}
			}
		}
	}
}

func wholeLists(t *testing.T, path string, v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			wholeLists(t, path, v.Elem())
		}
	case reflect.Slice:
		if v.IsNil() {
			t.Errorf("%s is null", path)
		}
		for i := range v.Len() {
			if v.Index(i).Kind() == reflect.Uint8 {
				break
			}
			wholeLists(t, path, v.Index(i))
		}
	case reflect.Struct:
		for i := range v.NumField() {
			f := v.Type().Field(i)
			tag := f.Tag.Get("json")
			if tag == "-" || strings.Contains(tag, "omit") && v.Field(i).IsZero() {
				continue
			}
			wholeLists(t, path+"."+f.Name, v.Field(i))
		}
	}
}
