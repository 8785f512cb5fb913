//go:build browser

package e2e

import (
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"testing"

	"finwright/site/static"
)

// Firefox does the main job on the picture, without a complaint; its workers reach no other origin either, and would
// without the policy.
func TestFirefox(t *testing.T) {
	program, err := exec.LookPath("firefox-esr")
	if err != nil {
		program, err = exec.LookPath("firefox")
	}
	if err != nil {
		t.Fatal(err)
	}
	const base = "/some/where/"
	server := httptest.NewServer(static.Host{Base: base}.Handler(os.DirFS(dist)))
	t.Cleanup(server.Close)
	other, barely, plain := newStranger(t), newStranger(t), newStranger(t)

	single, err := filepath.Abs(filepath.Join(dist, "finwright.html"))
	if err != nil {
		t.Fatal(err)
	}
	job := exec.Command("node", "e2e/firefox.js", program, server.URL+base, t.TempDir(), tempted(other.URL), tempted(barely.URL), plain.URL, "file://"+filepath.ToSlash(single))
	job.Dir = site
	output, err := job.CombinedOutput()
	if err != nil {
		t.Fatalf("%v\n%s", err, output)
	}
	if asked := other.paths(); len(asked) > 0 {
		t.Errorf("the worker asked another origin for %q", asked)
	}
	if got := barely.paths(); !slices.Equal(got, ways) {
		t.Errorf("the worker without a policy asked for %q, want %q", got, ways)
	}
}
