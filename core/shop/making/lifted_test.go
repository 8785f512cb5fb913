package making

import (
	"os"
	"testing"

	"finwright/core/shop"
)

// A shop's file of version 1 that was edited in every list costs its orders what it cost them then. The prices are those of the
// program that last wrote that version.
func TestFirstVersionKeepsItsPrices(t *testing.T) {
	text, err := os.ReadFile("../../../testdata/samples/shop-1-edited.json")
	if err != nil {
		t.Fatal(err)
	}
	c, faults := shop.Open(text)
	if faults != nil || len(c.Lifted()) == 0 {
		t.Fatal(faults, c.Lifted())
	}
	for _, want := range []struct {
		name     string
		line     int
		order    Order
		quantity int
		bought   float64
		free     float64 // with the customer's tubes
	}{
		{"footed", 0, footed(), 1, 1118.8010210210591, 1029.280315144294},
		{"footed", 0, footed(), 37, 3325.6912576728123, 2430.4841989051642},
		{"footed", 0, footed(), 120, 8587.583779216913, 5812.441897037205},
		{"footed", 0, footed(), 900, 59673.450712572674, 39083.68836091677},
		{"embedded", 1, embedded(), 1, 1283.3206401908074, 1169.066272711323},
		{"embedded", 1, embedded(), 37, 3756.9006804633455, 2614.3570056685026},
		{"embedded", 1, embedded(), 120, 9720.098195797314, 6121.0856201935585},
		{"embedded", 1, embedded(), 900, 67549.66895137946, 41271.16443109806},
		{"supported", 1, supported(), 1, 1554.2564129346606, 1325.7476779756919},
		{"supported", 1, supported(), 120, 19329.5737963462, 12188.675828878428},
	} {
		for free, price := range map[bool]float64{false: want.bought, true: want.free} {
			want.order.Quantity, want.order.FreeIssue = want.quantity, free
			p := PlanOf(&c, &c.Lines[want.line], &want.order, nil)
			if p.Cost == nil {
				t.Fatal(p.Absent)
			}
			near(t, want.name, float64(p.Cost.Price), price, 1e-12)
		}
	}
	again, faults := shop.Open(c.Save())
	if faults != nil || again.Lifted() != nil {
		t.Errorf("saved, it is not of this version: %v %v", faults, again.Lifted())
	}
}
