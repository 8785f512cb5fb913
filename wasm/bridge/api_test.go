package bridge

import (
	"bytes"
	"flag"
	"maps"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/report"
	"finwright/testdata/cases"
)

// What the first program answers, before the tests have it answer everything.
var firstMethods = slices.Sorted(maps.Keys(methods))

func init() { Whole() }

var update = flag.Bool("update", false, "write the types of the page's scripts anew")

// TestAPI holds what is generated from the structs that the methods take and give: the types by which the page's scripts know them,
// and what writes the replies.
func TestAPI(t *testing.T) {
	scripts := typescript{typeWriter{names: map[string]reflect.Type{}}}
	replies := encoders{typeWriter: typeWriter{names: map[string]reflect.Type{}}, imports: map[string]bool{}}
	scripts.write("// What the engine takes and gives. `make golden` writes it from the structs of wasm/bridge; do not edit.\n\nexport interface Methods {\n")
	names := make([]string, 0, len(methods))
	for name := range methods {
		names = append(names, name)
	}
	slices.Sort(names)
	for _, name := range firstMethods {
		replies.answer(reflect.TypeOf(methods[name]).Out(0), true)
	}
	for _, name := range names {
		method := reflect.TypeOf(methods[name])
		args, reply := method.In(0), method.Out(0)
		scripts.write("  %s: { args: %s; reply: %s };\n", name, scripts.name(args), scripts.name(reply))
		replies.answer(reply, false)
	}
	scripts.write("}\n")
	scripts.name(reflect.TypeFor[refusal]())
	replies.answer(reflect.TypeFor[refusal](), true)
	generated(t, "../../site/js/api.d.ts", scripts.all)
	generated(t, "encoders.go", replies.all)
}

// generated holds a file to what is generated for it.
func generated(t *testing.T, file string, generate func() ([]byte, error)) {
	t.Helper()
	want, err := generate()
	if err != nil {
		t.Fatal(err)
	}
	if *update {
		if err := os.WriteFile(file, want, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	now, err := os.ReadFile(file)
	if err != nil || !bytes.Equal(now, want) {
		t.Errorf("%s is not what the engine takes and gives: make golden (%v)", file, err)
	}
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
