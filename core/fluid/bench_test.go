package fluid

import "testing"

func BenchmarkDryAir(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := DryAir(313.15, StandardPressure); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkWater(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Water(313.15, 5e5); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSaturatedWater(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := SaturatedWater(453.15); err != nil {
			b.Fatal(err)
		}
	}
}
