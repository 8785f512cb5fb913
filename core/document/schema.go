package document

import (
	"encoding/json"

	"finwright/core/field"
	"finwright/core/units"
)

// Schema describes what this version saves, in JSON Schema of 2020-12: for programs of others that read or write our files. It says how a
// file is built; whether a text is a length, and a length a tube, the page says.
func Schema() []byte {
	object := func(properties map[string]any, required ...string) map[string]any {
		return map[string]any{"type": "object", "properties": properties, "required": append([]string{}, required...), "additionalProperties": false}
	}
	ref := func(name string) map[string]any { return map[string]any{"$ref": "#/$defs/" + name} }
	list := func(of any, least, most int) map[string]any {
		return map[string]any{"type": "array", "items": of, "minItems": least, "maxItems": most}
	}
	text := map[string]any{"type": "string", "maxLength": maxText}
	word := map[string]any{"type": "string"}
	fields, ids := map[string]any{}, []string{}
	for i := range field.Fields {
		fields[field.Fields[i].ID] = ref("entry")
		ids = append(ids, field.Fields[i].ID)
	}
	day := map[string]any{"type": "string", "pattern": `^\d{4}-\d{2}-\d{2}$`}
	dayOrNone := map[string]any{"type": "string", "pattern": `^(\d{4}-\d{2}-\d{2})?$`}
	frame := func(fields any) map[string]any {
		return map[string]any{"title": text, "mark": text, "units": map[string]any{"enum": []units.System{units.SI, units.US}}, "fields": fields, "spans": list(ref("span"), 0, maxSpans)}
	}
	schema := map[string]any{
		"$schema": "https://json-schema.org/draft/2020-12/schema",
		"title":   Format,
		"type":    "object",
		"properties": map[string]any{
			"format":  map[string]any{"const": Format},
			"version": map[string]any{"const": Version},
			"head":    object(map[string]any{"reference": text, "revision": text, "received": dayOrNone, "due": dayOrNone}),
			"base":    ref("design"),
			"items":   list(ref("item"), 1, maxItems),
			"by":      list(ref("basis"), 0, maxBases),
		},
		"required": []string{"format", "version", "base", "items"},
		"$defs": map[string]any{
			"entry":       object(map[string]any{"text": text, "origin": map[string]any{"enum": Origins}}, "origin"),
			"span":        object(map[string]any{"centre": ref("entry"), "width": ref("entry")}, "centre", "width"),
			"design":      object(frame(object(fields, ids...)), "units", "fields"),
			"differences": object(frame(object(fields))),
			"kept":        object(map[string]any{"name": text, "design": ref("differences")}),
			"item": object(map[string]any{
				"id":     map[string]any{"type": "string", "pattern": "^[0-9A-Za-z-]+$", "maxLength": maxID},
				"design": ref("differences"), "kept": list(ref("kept"), 0, MostKept),
				"shown": object(map[string]any{"by": map[string]any{"type": "integer", "minimum": 0}, "day": day, "cells": map[string]any{"type": []string{"array", "null"}, "items": map[string]any{"type": []string{"number", "null"}}}}, "day"),
			}, "id"),
			"basis": object(map[string]any{"build": word, "shop": word, "named": word, "dated": dayOrNone, "figures": map[string]any{"type": "array", "items": word}}),
		},
	}
	out, err := json.MarshalIndent(schema, "", " ")
	if err != nil {
		panic("document: " + err.Error())
	}
	return append(out, '\n')
}
