// Package links proves that the page unpacks whatever a link carries.
package links

import (
	"bytes"
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"strconv"
	"testing"
	"time"

	"finwright/core/document"
	"finwright/core/proof"
	"finwright/testdata/cases"
)

const seed = 11

// mostLetters of a link's fragment leave room for an address within two thousand.
const mostLetters = 1800

// The usual tubes go by a link that any mail or chat leaves in one piece.
func TestLinksAreShort(t *testing.T) {
	var texts []string
	for _, c := range cases.List() {
		text, err := document.Save([]document.Document{c.Document()})
		if err != nil {
			t.Fatal(err)
		}
		texts = append(texts, string(text))
	}
	input, err := json.Marshal(texts)
	if err != nil {
		t.Fatal(err)
	}
	command := exec.Command("node", "pack.mjs")
	command.Stdin = bytes.NewReader(input)
	output, err := command.Output()
	if err != nil {
		t.Fatalf("node: %v\n%s", err, output)
	}
	var links []struct{ Link, Back string }
	if err := json.Unmarshal(output, &links); err != nil || len(links) != len(texts) {
		t.Fatalf("%v in %s", err, output)
	}
	for i, got := range links {
		if len(got.Link) > mostLetters || got.Back != texts[i] {
			t.Errorf("example %d: %d letters, the same again %v", i+1, len(got.Link), got.Back == texts[i])
		}
		t.Logf("example %d: %d letters", i+1, len(got.Link))
	}
}

// usualIs is of what links take as read. Whoever changes that breaks every link that was made: there must be another kind of link, beside this one.
const usualIs = "274b3c708d384ef57152d371d1f58b96d845b51dc7f0e9804a392b3b074b32fd"

func TestUsualIsFrozen(t *testing.T) {
	script, err := os.ReadFile("../js/usual.js")
	if err != nil {
		t.Fatal(err)
	}
	if got := fmt.Sprintf("%x", sha256.Sum256(bytes.Split(script, []byte("`"))[1])); got != usualIs {
		t.Errorf("what links take as read is %s", got)
	}
}

// Any fragment gives a text within bounds, a good one the text that was packed.
func TestLinksUnpack(t *testing.T) {
	count := 200
	if proof.Long() {
		count = 1_000_000
	}
	began := time.Now()
	output, err := exec.Command("node", "unpack.mjs", strconv.Itoa(seed), "0", strconv.Itoa(count)).Output()
	if err != nil {
		t.Fatalf("node: %v\n%s", err, output)
	}
	var got struct {
		Count, Failures int
		Told            []string
	}
	if err := json.Unmarshal(output, &got); err != nil {
		t.Fatalf("%v in %s", err, output)
	}
	for _, why := range got.Told {
		t.Error(why)
	}
	if got.Count != count || got.Failures > 0 {
		t.Errorf("%d of %d cases failed", got.Failures, got.Count)
	}
	if proof.Long() {
		proof.Report(t.Name(), count, seed, got.Failures, time.Since(began))
	}
}
