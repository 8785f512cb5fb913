package ink

import (
	"errors"
	"strconv"
	"strings"
)

// ParseColour reads what a browser computes for a colour: rgb(r, g, b) or
// rgba(r, g, b, a), and #rrggbb.
func ParseColour(text string) (RGBA, error) {
	bad := errors.New("ink: no colour: " + strconv.Quote(text))
	if hex, ok := strings.CutPrefix(text, "#"); ok {
		n, err := strconv.ParseUint(hex, 16, 32)
		if err != nil || len(hex) != 6 {
			return RGBA{}, bad
		}
		return RGBA{float32(n>>16) / 255, float32(n>>8&255) / 255, float32(n&255) / 255, 1}, nil
	}
	_, list, ok := strings.Cut(strings.TrimSuffix(text, ")"), "(")
	parts := strings.Split(list, ",")
	if !ok || !strings.HasPrefix(text, "rgb") || len(parts) < 3 || len(parts) > 4 {
		return RGBA{}, bad
	}
	c := RGBA{3: 1}
	for i, part := range parts {
		x, err := strconv.ParseFloat(strings.TrimSpace(part), 32)
		if err != nil {
			return RGBA{}, bad
		}
		c[i] = float32(x)
		if i < 3 {
			c[i] /= 255
		}
	}
	return c, nil
}

// Complete derives the other tones from paper, ink and grey.
func (t *Theme) Complete() {
	const share = 0.65 // hatching: halfway from paper to grey and a little on
	faint := RGBA{3: 1}
	for i := range 3 {
		faint[i] = t[PaperTone][i] + share*(t[GreyTone][i]-t[PaperTone][i])
	}
	t[FaintTone] = faint
	t.Warm(t[PaperTone][1] < t[InkTone][1])
}

// Warm sets the tones of temperatures.
func (t *Theme) Warm(dark bool) {
	for step := range HeatSteps {
		t[HeatTone(step)] = HeatColour(step, dark)
	}
}
