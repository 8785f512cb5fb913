// Package schemas holds the schemas that ship with the page against the readers, by a validator of others.
package schemas

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"finwright/core/document"
	"finwright/core/proof"
	"finwright/core/shop"
	"finwright/testdata/cases"
)

// compiled is a schema that is valid by the schema of schemas, whose vocabulary comes with the validator.
func compiled(t *testing.T, text []byte) *jsonschema.Schema {
	t.Helper()
	of, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("ours.json", of); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("ours.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func tree(t *testing.T, text []byte) any {
	t.Helper()
	v, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func file(t *testing.T, name string) []byte {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("../../../testdata/samples", name))
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// What we save is as the schemas say.
func TestWhatIsSavedIsValid(t *testing.T) {
	designs := make([]document.Document, 0, 3)
	for _, c := range cases.List() {
		designs = append(designs, c.Document())
	}
	job := document.JobOf(designs)
	job.Items[0].Kept = []document.Kept{{Name: "other", Design: designs[1].From(job.Base)}}
	saved, err := document.SaveJob(job)
	if err != nil {
		t.Fatal(err)
	}
	ofDesigns, ofShops := compiled(t, document.Schema()), compiled(t, shop.Schema())
	for name, text := range map[string][]byte{"job": saved, "sample": file(t, fmt.Sprintf("design-%d.json", document.Version)), "working copy": file(t, fmt.Sprintf("working-copy-%d.json", document.Version))} {
		if err := ofDesigns.Validate(tree(t, text)); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	house := shop.House()
	for name, text := range map[string][]byte{"house": house.Save(), "sample": file(t, fmt.Sprintf("shop-%d.json", shop.Version))} {
		if err := ofShops.Validate(tree(t, text)); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// Damaged in one place, a file is refused by reader and schema alike: each key taken out, each value of another type, and a key too many in each
// object.
func TestSchemasRefuseWhatReadersRefuse(t *testing.T) {
	saved, err := document.Save([]document.Document{cases.First()})
	if err != nil {
		t.Fatal(err)
	}
	house := shop.House()
	for name, c := range map[string]struct {
		schema *jsonschema.Schema
		text   []byte
		reads  func([]byte) bool
		least  int
	}{
		"design": {compiled(t, document.Schema()), saved, func(text []byte) bool { _, err := document.Open(text); return err == nil }, 300},
		"shop":   {compiled(t, shop.Schema()), house.Save(), readsShop, 500},
	} {
		n, every := 0, 9
		if proof.Long() {
			every = 1
		}
		damage(tree(t, c.text), "", func(what string, whole any) {
			if n++; n%every != 0 {
				return
			}
			text, err := json.Marshal(whole)
			if err != nil {
				t.Fatal(err)
			}
			if valid, read := c.schema.Validate(whole) == nil, c.reads(text); valid != read && !(read && strings.HasSuffix(what, "/note of another kind")) { // a remark that is no text is left unread
				t.Errorf("%s, %s: valid %v, read %v", name, what, valid, read)
			}
		})
		if n < c.least {
			t.Errorf("%s: only %d damages", name, n)
		}
	}
}

// readsShop reports whether a file is built as one: what a value may be is not the schema's.
func readsShop(text []byte) bool {
	_, faults := shop.Open(text)
	return !slices.ContainsFunc(faults, func(f shop.Fault) bool {
		return slices.Contains([]string{"missing", "unknown", "object", "list", "yes_no", "whole", "text", "quantity", "format", "version"}, strings.TrimPrefix(f.Why.Key, "shop.file."))
	})
}

// damage does one thing after another to a tree, and undoes it.
func damage(root any, path string, try func(what string, whole any)) {
	var walk func(node any, path string)
	walk = func(node any, path string) {
		switch n := node.(type) {
		case map[string]any:
			n["no_such"] = "x"
			if path != "" { // beside its parts an envelope may say whose it is
				try(path+": a key too many", root)
			}
			delete(n, "no_such")
			for _, key := range slices.Sorted(maps.Keys(n)) {
				was, at := n[key], path+"/"+key
				delete(n, key)
				try(at+" taken out", root)
				n[key] = otherKind(was)
				try(at+" of another kind", root)
				n[key] = was
				walk(was, at)
			}
		case []any:
			if len(n) > 0 { // of those that are alike the first stands for all
				was := n[0]
				n[0] = otherKind(was)
				try(path+"/0 of another kind", root)
				n[0] = was
				walk(was, path+"/0")
			}
		}
	}
	walk(root, path)
}

// otherKind is a value of a kind that none is read as.
func otherKind(v any) any {
	if _, text := v.(string); text {
		return []any{map[string]any{}}
	}
	return "x"
}
