package shop

import (
	"strings"
	"testing"
)

func TestFingerprintFollowsTheFile(t *testing.T) {
	house := House()
	for change, same := range map[string]bool{house.Name: true, house.Name + "x": false} {
		other, faults := Open([]byte(strings.Replace(string(house.Save()), house.Name, change, 1)))
		if len(faults) > 0 {
			t.Fatal(faults)
		}
		if (other.Fingerprint() == house.Fingerprint()) != same {
			t.Errorf("%q: fingerprint %s, that of the house %s", change, other.Fingerprint(), house.Fingerprint())
		}
	}
}

// The day of a shop's prices is the newest that one of them bears.
func TestDayOfPrices(t *testing.T) {
	c := House()
	if got := c.PricesOf(); got != "2026-10-19" {
		t.Errorf("prices of %q", got)
	}
	c.BoughtIn = []BoughtIn{{Dated: "2026-11-02"}}
	if got := c.PricesOf(); got != "2026-11-02" {
		t.Errorf("prices of %q", got)
	}
	bare := Capability{BoughtIn: []BoughtIn{{Dated: Undated}}}
	if got := bare.PricesOf(); got != "" {
		t.Errorf("prices of %q", got)
	}
}
