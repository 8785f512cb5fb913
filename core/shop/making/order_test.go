package making

import (
	"math"
	"testing"

	"finwright/core/internal/sample"
	"finwright/core/tube"
)

const fpi = sample.PerInch

func near(t testing.TB, name string, got, want, rtol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= rtol*math.Abs(want)) {
		t.Errorf("%s = %.9g, want %.9g within %.1g", name, got, want, rtol)
	}
}

// ordered is an order for 120 tubes.
func ordered(t tube.Tube) Order {
	ofTube, ofFin := sample.Metals()
	return Order{Tube: t, TubeMetal: ofTube, FinMetal: ofFin, Quantity: 120}
}

func footed() Order    { return ordered(sample.Footed()) }
func embedded() Order  { return ordered(sample.Embedded()) }
func supported() Order { return ordered(sample.Supported()) }
