package shop

import (
	"flag"
	"fmt"
	"go/format"
	"os"
	"reflect"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the shop that ships anew, from house.json")

// TestHouseIsItsFile holds the ready-made values of the shop that ships against its file.
func TestHouseIsItsFile(t *testing.T) {
	want, faults := Open(houseFile)
	if faults != nil {
		t.Fatal(faults)
	}
	want.tree = nil
	if *update {
		writeHouse(t, want)
		return
	}
	if !reflect.DeepEqual(House(), want) {
		t.Error("house_values.go is not what house.json says: make golden")
	}
	if mark := fingerprint(House()); mark != houseFingerprint {
		t.Errorf("the house's fingerprint is %s, and %s lies ready: make golden", mark, houseFingerprint)
	}
}

func writeHouse(t *testing.T, c Capability) {
	t.Helper()
	values := strings.NewReplacer("finwright/core/", "", "shop.", "").Replace(fmt.Sprintf("%#v", c))
	values = strings.ReplaceAll(values, "}, ", "},\n")
	text, err := format.Source([]byte("// Code generated from house.json by make golden. DO NOT EDIT.\n\npackage shop\n\nimport (\n\"finwright/core/tube\"\n\"finwright/core/units\"\n)\n\nconst houseFingerprint = \"" + fingerprint(c) + "\"\n\nfunc houseValues() Capability {\nreturn " + values + "\n}\n"))
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile("house_values.go", text, 0o644); err != nil {
		t.Fatal(err)
	}
}
