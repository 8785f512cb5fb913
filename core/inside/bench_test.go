package inside

import (
	"testing"

	"finwright/core/fluid"
)

func BenchmarkSinglePhase(b *testing.B) {
	w, err := fluid.Water(313.15, 5e5)
	if err != nil {
		b.Fatal(err)
	}
	f := Flow{Properties: w, MassVelocity: 1500}
	b.ReportAllocs()
	for b.Loop() {
		SinglePhase(oneInch, f)
	}
}

func BenchmarkPressureDrop(b *testing.B) {
	w, err := fluid.Water(313.15, 5e5)
	if err != nil {
		b.Fatal(err)
	}
	f := Flow{Properties: w, MassVelocity: 1500}
	b.ReportAllocs()
	for b.Loop() {
		PressureDrop(oneInch, f, 2, DefaultTurnLoss)
	}
}
