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
