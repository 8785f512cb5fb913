package enquiry

import "testing"

func BenchmarkLine(b *testing.B) {
	b.ReportAllocs()
	for range b.N {
		Line("450 off 1 in x 14 BWG avg SA-179 x 20 ft, 5/8 x 10 fpi Al L, 3 in bare ends")
	}
}
