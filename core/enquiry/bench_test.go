package enquiry

import (
	"fmt"
	"strings"
	"testing"

	"finwright/core/document"
)

func BenchmarkLine(b *testing.B) {
	b.ReportAllocs()
	for range b.N {
		Line("450 off 1 in x 14 BWG avg SA-179 x 20 ft, 5/8 x 10 fpi Al L, 3 in bare ends")
	}
}

// BenchmarkThousandItems reads a thousand lines and makes their designs.
func BenchmarkThousandItems(b *testing.B) {
	var text strings.Builder
	for i := range 1000 {
		fmt.Fprintf(&text, "Item %d: %d off 1 in x 14 BWG avg SA-179 x %.2f ft overall, 5/8 in high x 10 fpi Al L, 3 in bare ends\n", i+1, 20+i%50, 16+0.01*float64(i))
	}
	base := document.New()
	for range b.N {
		e, err := Text(text.String(), nil, unheard)
		if err != nil || len(e.Items) != 1000 {
			b.Fatal(err, len(e.Items))
		}
		for i := range e.Items {
			e.Items[i].Differences(base)
		}
	}
}
