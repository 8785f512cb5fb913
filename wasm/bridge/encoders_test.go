package bridge

import (
	"encoding/json"
	"fmt"
	"go/format"
	"reflect"
	"slices"
	"strings"
)

// encoders writes, for each struct, a function that writes it as encoding/json would.
type encoders struct {
	typeWriter
	imports map[string]bool
	first   []reflect.Type // answers of the first program
	whole   []reflect.Type // of the whole one alone
	depth   int            // of lists in lists
}

// answer has t written where it comes as an answer.
func (w *encoders) answer(t reflect.Type, first bool) {
	w.name(t)
	switch {
	case slices.Contains(w.first, t):
	case first:
		w.first = append(w.first, t)
	case !slices.Contains(w.whole, t):
		w.whole = append(w.whole, t)
	}
}

func (w *encoders) all() ([]byte, error) {
	w.choice("encode writes what a method of the first program answers.\nfunc encode", w.first, "encodeMore(e, answer)\n")
	w.choice("encodeWhole writes what only the whole program answers.\nfunc encodeWhole", w.whole, "panic(fmt.Errorf(\"bridge: nothing writes %T\", answer))\n")
	for t, ok := w.next(); ok; t, ok = w.next() {
		w.write("\nfunc encode%s(e *encoder, v *%s) {\ne.open('{')\n", w.name(t), w.local(t))
		members(t, func(name, place, omitted string, f reflect.StructField) {
			value := "v." + place
			if omitted == "" {
				w.write("e.key(%q)\n", name)
				w.value(f.Type, value)
				return
			}
			w.write("if %s {\ne.key(%q)\n", w.there(f.Type, value, omitted), name)
			if f.Type.Kind() == reflect.Pointer {
				w.value(f.Type.Elem(), w.target(f.Type.Elem(), value))
			} else {
				w.value(f.Type, value)
			}
			w.write("}\n")
		})
		w.write("e.close('}')\n}\n")
	}
	paths := make([]string, 0, len(w.imports))
	for path := range w.imports {
		paths = append(paths, fmt.Sprintf("%q\n", path))
	}
	slices.Sort(paths)
	text, err := format.Source([]byte("//go:build !ungenerated\n\n// Code generated from the structs of this package by make golden; DO NOT EDIT.\n\npackage bridge\n\nimport (\n\"fmt\"\n\n" +
		strings.Join(paths, "") + ")\n" + w.text.String()))
	if err != nil {
		return nil, err
	}
	return text, w.fault
}

func (w *encoders) choice(head string, answers []reflect.Type, otherwise string) {
	w.write("\n// %s(e *encoder, answer any) {\nswitch v := answer.(type) {\n", head)
	for _, t := range answers {
		w.write("case %s:\nencode%s(e, &v)\n", w.local(t), w.name(t))
	}
	w.write("default:\n%s}\n}\n", otherwise)
}

// local is the name of a type in this package.
func (w *encoders) local(t reflect.Type) string {
	own := reflect.TypeFor[refusal]().PkgPath()
	if t.PkgPath() == own {
		return t.Name()
	}
	w.imports[t.PkgPath()] = true
	return t.String()
}

// there is the condition under which a member is not left out.
func (w *encoders) there(t reflect.Type, value, omitted string) string {
	switch kind := t.Kind(); {
	case kind == reflect.String:
		return value + ` != ""`
	case kind == reflect.Bool:
		return value
	case kind == reflect.Int || kind == reflect.Float64:
		return value + " != 0"
	case kind == reflect.Pointer, kind == reflect.Slice && omitted == "omitzero":
		return value + " != nil"
	case kind == reflect.Slice, kind == reflect.Map:
		return "len(" + value + ") > 0"
	case kind == reflect.Struct && omitted == "omitzero" && t.Comparable():
		return fmt.Sprintf("%s != (%s{})", value, w.local(t))
	}
	w.fault = fmt.Errorf("no condition for %s of %s", omitted, t)
	return "false"
}

// target is what a pointer points to; value hands a struct on by its pointer.
func (w *encoders) target(t reflect.Type, pointer string) string {
	switch t.Kind() {
	case reflect.Struct, reflect.Slice, reflect.Map:
		return "(*" + pointer + ")"
	}
	return "*" + pointer
}

func (w *encoders) value(t reflect.Type, value string) {
	inner := fmt.Sprintf("v%d", w.depth)
	each := func(over, bracket, key string) {
		w.depth++
		w.write("e.open('%s')\n%s{\n%s", bracket[:1], over, key)
		w.value(t.Elem(), inner)
		w.write("}\ne.close('%s')\n", bracket[1:])
		w.depth--
	}
	switch t.Kind() {
	case reflect.String:
		w.write("e.string(%s)\n", cast(t, "string", value))
	case reflect.Bool:
		w.write("e.flag(%s)\n", cast(t, "bool", value))
	case reflect.Int:
		w.write("e.whole(%s)\n", cast(t, "int", value))
	case reflect.Float64:
		w.write("e.number(%s)\n", cast(t, "float64", value))
	case reflect.Struct:
		if strings.HasPrefix(value, "(*") && strings.HasSuffix(value, ")") {
			w.write("encode%s(e, %s)\n", w.name(t), value[2:len(value)-1])
		} else {
			w.write("encode%s(e, &%s)\n", w.name(t), value)
		}
	case reflect.Pointer:
		w.write("if %s == nil {\ne.null()\n} else {\n", value)
		w.value(t.Elem(), w.target(t.Elem(), value))
		w.write("}\n")
	case reflect.Map:
		each(fmt.Sprintf("for _, k := range keys(%s) ", value), "{}", fmt.Sprintf("%s := %s[k]\ne.name(k)\n", inner, value))
	case reflect.Array:
		each(fmt.Sprintf("for _, %s := range %s ", inner, value), "[]", "")
	case reflect.Slice:
		switch {
		case t.Implements(reflect.TypeFor[json.Marshaler]()):
			w.write("e.json(%s)\n", value)
		case t.Elem().Kind() == reflect.Uint8:
			w.write("e.bytes(%s)\n", value)
		case t.Elem().Kind() == reflect.Struct:
			w.write("e.open('[')\nfor i := range %s {\n", value)
			w.value(t.Elem(), value+"[i]")
			w.write("}\ne.close(']')\n")
		default:
			each(fmt.Sprintf("for _, %s := range %s ", inner, value), "[]", "")
		}
	default:
		w.fault = fmt.Errorf("nothing writes %s", t)
	}
}

// cast is a value of a named type as one of the plain kind.
func cast(t reflect.Type, kind, value string) string {
	if t.Name() == kind {
		return value
	}
	return kind + "(" + value + ")"
}
