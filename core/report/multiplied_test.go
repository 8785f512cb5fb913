package report

import "testing"

func TestFactorsHaveASign(t *testing.T) {
	for s, want := range map[string]string{
		"0.0254 + 2 0.015875":        "0.0254 + 2 × 0.015875",
		"2 3 4 / 5":                  "2 × 3 × 4 / 5",
		"π 0.1 (2 + 3) (4 − 1)":      "π × 0.1 × (2 + 3) × (4 − 1)",
		"0.5 ln(3)":                  "0.5 × ln(3)",
		"1e-05 7":                    "1e-05 × 7",
		"2 − 3":                      "2 − 3",
		"smaller of (1; 2)":          "smaller of (1; 2)",
		"0.134 8349^0.681 0.71^0.33": "0.134 × 8349^0.681 × 0.71^0.33",
	} {
		if got := multiplied(s); got != want {
			t.Errorf("%q is written %q, want %q", s, got, want)
		}
	}
}
