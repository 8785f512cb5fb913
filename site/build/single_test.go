package main

import (
	"strings"
	"testing"
)

// One file runs the scripts of the build by their digests, and nothing else.
func TestPolicyOfOneFile(t *testing.T) {
	in := &inline{}
	if _, err := in.script("go()"); err != nil {
		t.Fatal(err)
	}
	in.style("a{}")
	in.style("a{}") // the same, in two templates
	got := in.policy()
	// printf 'go()' | openssl dgst -sha256 -binary | base64
	for _, want := range []string{"script-src 'sha256-5KYv+PUboo5h+0+YAtGRPbwv5d/QxzHslP4YGnUaxRw=' 'wasm-unsafe-eval';", "connect-src blob:;"} {
		if !strings.Contains(got, want) {
			t.Errorf("%s lacks %s", got, want)
		}
	}
	if strings.Contains(got, "unsafe-inline") || strings.Contains(got, "'self'") || len(in.styles) != 1 {
		t.Errorf("too wide: %s", got)
	}
	for _, text := range []string{`say("</script>")`, `say("<!--")`} {
		if _, err := in.script(text); err == nil {
			t.Errorf("%s would end before its end", text)
		}
	}
}
