package bridge

import (
	"encoding/json"
	"reflect"
	"testing"

	"finwright/testdata/cases"
)

// pulled asks for the first design with another fin height, as a page does that pulls it.
func pulled(t testing.TB, section string, height float64, more map[string]any) []byte {
	t.Helper()
	args := map[string]any{
		"document": cases.First(), "section": section, "quantity": "area_ratio",
		"commands": []any{map[string]any{"op": "set", "values": []any{map[string]any{"field": "fin_height", "number": height, "unit": "mm"}}}},
		"sheet":    map[string]any{"width": 680, "height": 340},
	}
	for key, value := range more {
		args[key] = value
	}
	b, err := json.Marshal(args)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// What a glimpse shows is what the whole answer shows in its place.
func TestGlimpseIsAPartOfTheAnswer(t *testing.T) {
	for _, section := range []string{"surface", "heat", "making"} {
		type answer struct {
			Data struct {
				Document any
				View     map[string]any
			}
		}
		var whole, part answer
		for _, ask := range []struct {
			to      *answer
			glimpse bool
		}{{&whole, false}, {&part, true}} {
			if err := json.Unmarshal(Call("edit", pulled(t, section, 14.2, map[string]any{"glimpse": ask.glimpse, "lists": true})), ask.to); err != nil {
				t.Fatal(err)
			}
		}
		if !reflect.DeepEqual(whole.Data.Document, part.Data.Document) {
			t.Errorf("%s: another document", section)
		}
		for _, name := range []string{"title", "units", "valid", "headline", "groups", "scene"} {
			if !reflect.DeepEqual(whole.Data.View[name], part.Data.View[name]) {
				t.Errorf("%s: %s is not that of the whole answer", section, name)
			}
		}
		if section == "heat" && !reflect.DeepEqual(whole.Data.View["bars"], part.Data.View["bars"]) {
			t.Error("other bars")
		}
		places := map[string]any{}
		plots, _ := whole.Data.View["plots"].([]any)
		for _, p := range plots {
			plot := p.(map[string]any)
			places[plot["id"].(string)] = plot["rings"]
		}
		rings, _ := part.Data.View["rings"].([]any)
		for _, r := range rings {
			ring := r.(map[string]any)
			if !reflect.DeepEqual(ring["rings"], places[ring["id"].(string)]) {
				t.Errorf("%s: the rings of %v", section, ring["id"])
			}
		}
		if len(rings) != len(plots) {
			t.Errorf("%s: rings in %d of %d plots", section, len(rings), len(plots))
		}
		fields, _ := part.Data.View["fields"].([]any)
		if len(fields) != 1 || fields[0].(map[string]any)["text"] != "14.2 mm" {
			t.Errorf("%s: the entries %v", section, fields)
		}
		var short answer
		if err := json.Unmarshal(Call("edit", pulled(t, section, 14.2, map[string]any{"glimpse": true})), &short); err != nil {
			t.Fatal(err)
		}
		if v := short.Data.View; v["groups"] != nil || v["bars"] != nil || !reflect.DeepEqual(v["headline"], whole.Data.View["headline"]) {
			t.Errorf("%s: without lists, %v and %v", section, v["groups"], v["bars"])
		}
		if part.Data.View["glimpse"] != true || whole.Data.View["glimpse"] != false || part.Data.View["plots"] != nil {
			t.Errorf("%s: is it a glimpse?", section)
		}
	}
}

// What cannot be measured is answered whole, with its fault.
func TestGlimpseOfAFault(t *testing.T) {
	var got struct {
		Data struct {
			View struct {
				Valid, Glimpse bool
				Fields         []struct{ ID, Error string }
			}
		}
	}
	if err := json.Unmarshal(Call("edit", pulled(t, "surface", -3, map[string]any{"glimpse": true})), &got); err != nil {
		t.Fatal(err)
	}
	if v := got.Data.View; v.Valid || v.Glimpse || len(v.Fields) < 50 {
		t.Errorf("valid %t, glimpse %t, %d fields", v.Valid, v.Glimpse, len(v.Fields))
	}
}

// A pulled drawing is traced and not packed, whatever the screen claims to be.
func TestPulledDrawingIsTraced(t *testing.T) {
	for _, screen := range []map[string]any{
		{"k": 1, "ratio": 1}, {"k": 3, "x": -200, "y": -100, "ratio": 2, "dark": true}, {"k": 1e300, "x": 1e300, "y": -1e300, "ratio": 1e300}, {"k": -1, "ratio": 0},
	} {
		var got struct {
			Data struct {
				View struct {
					Scene struct {
						Ink    []byte
						Traces []struct{ Path string }
					}
				}
			}
		}
		reply := Call("edit", pulled(t, "heat", 14.2, map[string]any{"glimpse": true, "sheet": map[string]any{"width": 680, "height": 340, "traced": screen}}))
		if err := json.Unmarshal(reply, &got); err != nil {
			t.Fatal(err)
		}
		if s := got.Data.View.Scene; len(s.Ink) > 0 || len(s.Traces) == 0 || len(s.Traces) > 30 {
			t.Errorf("%v: %d bytes of ink, %d paths", screen, len(s.Ink), len(s.Traces))
		}
	}
}

func BenchmarkGlimpse(b *testing.B) {
	for _, section := range []string{"surface", "heat", "making"} {
		b.Run(section, func(b *testing.B) {
			var args [8][]byte
			for i := range args {
				args[i] = pulled(b, section, 14+0.1*float64(i), map[string]any{"glimpse": true, "sheet": map[string]any{"width": 680, "height": 340, "traced": map[string]any{"k": 1, "ratio": 1}}})
			}
			size := 0
			for i := 0; b.Loop(); i++ {
				size = len(Call("edit", args[i%len(args)]))
			}
			b.ReportMetric(float64(size), "bytes")
		})
	}
}

// What stands before the engine lives are all entries and figures of a glimpse, and a drawing at which nothing is pulled.
func TestSeenIsAGlimpseOfAll(t *testing.T) {
	type answer struct {
		Data struct{ View map[string]any }
	}
	var whole, early answer
	args, err := json.Marshal(map[string]any{"document": cases.First(), "section": "surface", "sheet": map[string]any{"width": 680, "height": 340}})
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(Call("seen", args), &early); err != nil {
		t.Fatal(err)
	}
	args, err = json.Marshal(map[string]any{"document": cases.First(), "section": "surface", "commands": []any{}, "sheet": map[string]any{"width": 680, "height": 340}})
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(Call("edit", args), &whole); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"title", "units", "valid", "headline", "groups"} {
		if !reflect.DeepEqual(whole.Data.View[name], early.Data.View[name]) {
			t.Errorf("%s is not that of the whole answer", name)
		}
	}
	said := map[string]any{}
	for _, f := range whole.Data.View["fields"].([]any) {
		said[f.(map[string]any)["id"].(string)] = f.(map[string]any)["text"]
	}
	fields := early.Data.View["fields"].([]any)
	for _, f := range fields {
		if f := f.(map[string]any); f["text"] != said[f["id"].(string)] {
			t.Errorf("%v is %v, not %v", f["id"], f["text"], said[f["id"].(string)])
		}
	}
	scene := early.Data.View["scene"].(map[string]any)
	if grips, _ := scene["grips"].([]any); len(fields) != len(said) || len(grips) > 0 || scene["traces"] == nil {
		t.Errorf("%d of %d fields, grips %v", len(fields), len(said), scene["grips"])
	}
}
