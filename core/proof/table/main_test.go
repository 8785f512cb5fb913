package main

import (
	"bytes"
	"strings"
	"testing"
)

func TestGather(t *testing.T) {
	good := "=== RUN   TestA\nproof:\tTestA\t2000\t7\t0\t1.5\n--- PASS: TestA (1.50s)\nPASS\nok  \tfinwright/core/a\t1.6s\n"
	bad := strings.Replace(good, "\t0\t", "\t3\t", 1)
	for name, c := range map[string]struct {
		in   string
		want bool
	}{
		"good":             {good, true},
		"a failed proof":   {bad, false},
		"a failed test":    {good + "--- FAIL: TestB (0.00s)\n", false},
		"a failed package": {good + "FAIL\tfinwright/core/b [build failed]\n", false},
		"no proof":         {"PASS\nok  \tfinwright/core/a\t0.1s\n", false},
	} {
		var out bytes.Buffer
		if got := gather(strings.NewReader(c.in), &out); got != c.want {
			t.Errorf("%s: %v\n%s", name, got, &out)
		}
		if strings.Contains(out.String(), "=== RUN") || c.in == good && !strings.Contains(out.String(), "core/a TestA  2000   7     0         1.5") {
			t.Errorf("%s:\n%s", name, &out)
		}
	}
}
