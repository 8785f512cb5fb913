package bridge

import (
	"encoding/json"
	"testing"

	"finwright/core/proof"
)

// Whatever is asked, an answer takes no more memory than stated.
func TestAnswersAllocateLittle(t *testing.T) {
	proof.Proof{Share: 40, Full: 20_000, Seed: 9, Alone: true}.Run(t, func(c *proof.Case) {
		method, args := question(c.Rand)
		text, err := json.Marshal(args)
		if err != nil {
			c.Fatal(err)
		}
		if took := allocated(func() { Call(method, text) }); took > mostAllocated {
			c.Errorf("%s took %.1f MB: %s", method, float64(took)/(1<<20), text)
		}
	})
}
