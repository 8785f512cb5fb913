package bridge

import (
	"encoding/json"
	"runtime"
	"testing"

	"finwright/core/document"
	"finwright/core/report"
)

// BenchmarkSearchMemory searches as a page does, by texts to and fro, with nothing refused and three things wanted, so that the front is as
// long as it gets. What the program then has of the system (in WebAssembly its linear memory) holds the page's side here too.
func BenchmarkSearchMemory(b *testing.B) {
	axis := func(field, low, high, step string) map[string]string {
		return map[string]string{"field": field, "low": low, "high": high, "step": step}
	}
	texts := func(field string, texts ...string) map[string]any {
		return map[string]any{"field": field, "texts": texts}
	}
	axes := []any{
		axis("fin_pitch", "7 fpi", "11 fpi", "1 fpi"), axis("rows", "3", "6", "1"), axis("face_velocity", "2 m/s", "3.75 m/s", "0.25 m/s"), texts("fin_height", "3/8 in", "1/2 in", "5/8 in"),
		axis("tubes_per_row", "16", "61", "5"), axis("tube_length", "4.5 m", "7 m", "0.5 m"), texts("passes", "1", "2", "3"),
		texts("tube_od", "25.4 mm", "31.75 mm", "38.1 mm"), texts("fin_type", "footed", "embedded"), texts("tube_wall", "14 BWG", "12 BWG"),
	}
	for _, grid := range []struct {
		name string
		axes []any
	}{{"1k", axes[:4]}, {"86k", axes[:7]}, {"1M", axes}} {
		b.Run(grid.name, func(b *testing.B) {
			for b.Loop() {
				with := func(more map[string]any) map[string]any {
					more["document"] = document.New()
					more["problem"] = map[string]any{"axes": grid.axes, "must": map[string]string{}, "wanted": []string{"price", "duty", "fan_power"}, "outside": true}
					return more
				}
				var size sized
				var start searchStarted
				said := func(why string) {
					if why != "" {
						b.Fatal(why)
					}
				}
				said(ask(b, "search_size", with(map[string]any{}), &size))
				said(ask(b, "search_start", with(map[string]any{}), &start))
				const step = 4000
				var waiting []json.RawMessage
				merge := func(last bool) {
					var merged json.RawMessage
					said(ask(b, "search_merge", with(map[string]any{"parts": waiting, "last": last}), &merged))
					waiting = []json.RawMessage{merged}
				}
				for from := 0; from < size.Count; from += step {
					var part json.RawMessage
					said(ask(b, "search_chunk", with(map[string]any{"hurdle": start.Hurdle, "from": from, "to": min(size.Count, from+step)}), &part))
					if waiting = append(waiting, part); len(waiting) > 8 {
						merge(false)
					}
				}
				merge(true)
				var told report.SearchTold
				said(ask(b, "search_told", with(map[string]any{"part": waiting[0], "marks": []document.Document{document.New()}}), &told))
				var whole foundPart
				if err := json.Unmarshal(waiting[0], &whole); err != nil {
					b.Fatal(err)
				}
				var m runtime.MemStats
				runtime.ReadMemStats(&m)
				b.ReportMetric(float64(m.Sys)/(1<<20), "MB")
				b.ReportMetric(float64(len(whole.Front)), "front")
				b.ReportMetric(float64(whole.Passed), "rated")
				b.ReportMetric(float64(size.Count), "designs")
			}
		})
	}
}
