package bridge

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"finwright/core/report"
)

// manyItems is a table of so many items, no two alike, and the same as lines.
func manyItems(n int) (table, lines string) {
	var cells, words strings.Builder
	cells.WriteString("Item\tQty\tTube OD (mm)\tWall (mm) min\tTube material\tLength overall (mm)\tFin type\tFin material\tFin height (mm)\tStrip thickness (mm)\tFPI\tBare end A (mm)\tBare end B (mm)\n")
	types := []string{"L", "G", "KL"}
	for i := range n {
		fmt.Fprintf(&cells, "%d\t%d\t%s\t2.11\tSA-179\t%d\t%s\tAl\t15.8\t0.4\t%d\t80\t100\n", i+1, 20+i%50, []string{"25.4", "31.75"}[i%2], 5000+i, types[i%3], 8+i%4)
		fmt.Fprintf(&words, "Item %d: %d off 1 in OD x 14 BWG min SA-179 x %.2f ft overall, 5/8 in high x %d fpi Al %s fins, 3 in bare ends\n", i+1, 20+i%50, 16+0.001*float64(i), 8+i%4, types[i%3])
	}
	return cells.String(), words.String()
}

// BenchmarkEnquiry tells what ten thousand items take from the text to their total, in parts.
func BenchmarkEnquiry(b *testing.B) {
	Whole()
	table, lines := manyItems(10_000)
	for _, of := range []struct{ name, text string }{{"table", table}, {"lines", lines}} {
		args, _ := json.Marshal(enquiryArgs{Text: of.text, Units: "si"})
		var reply []byte
		b.Run(of.name+"/read", func(b *testing.B) {
			b.ReportAllocs()
			for range b.N {
				reply = Call("enquiry_read", args)
			}
			b.ReportMetric(float64(len(reply)), "bytes")
		})
		if reply == nil {
			continue // not asked for
		}
		var read struct{ Data report.ShownEnquiry }
		if err := json.Unmarshal(reply, &read); err != nil || len(read.Data.Items) != 10_000 {
			b.Fatal(err, len(read.Data.Items))
		}
		var chunks [][]byte
		for i := 0; i < 10_000; i += 100 {
			var items []int
			for k := i; k < i+100; k++ {
				items = append(items, k)
			}
			chunk, _ := json.Marshal(rowsOf(&read.Data, items...))
			chunks = append(chunks, chunk)
		}
		b.Run(of.name+"/rows", func(b *testing.B) {
			b.ReportAllocs()
			size := 0
			for range b.N {
				size = 0
				for _, chunk := range chunks {
					size += len(Call("enquiry_rows", chunk))
				}
			}
			b.ReportMetric(float64(size), "bytes")
		})
	}
}
