package inside

import (
	"testing"

	"finwright/core/fluid"
)

// warmWater is water of 40 C at about 1.5 m/s.
func warmWater(b *testing.B) Flow {
	w, err := fluid.Water(313.15, 5e5)
	if err != nil {
		b.Fatal(err)
	}
	return Flow{Properties: w, MassVelocity: 1500}
}

func BenchmarkSinglePhase(b *testing.B) {
	f := warmWater(b)
	b.ReportAllocs()
	for b.Loop() {
		SinglePhase(oneInch, f)
	}
}

func BenchmarkPressureDrop(b *testing.B) {
	f := warmWater(b)
	b.ReportAllocs()
	for b.Loop() {
		PressureDrop(oneInch, f, 2, DefaultTurnLoss)
	}
}
