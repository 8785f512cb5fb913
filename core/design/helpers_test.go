package design

import "testing"

// rate rates a design that can be.
func rate(t testing.TB, in Input) Heat {
	t.Helper()
	h, err := Rate(in)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

func evaluate(t testing.TB, in Input) Result {
	t.Helper()
	return Evaluate(in, rate(t, in))
}
