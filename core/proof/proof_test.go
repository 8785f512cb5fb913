package proof

import (
	"math/rand/v2"
	"os"
	"os/exec"
	"strings"
	"sync"
	"testing"
)

// A case comes out the same whatever the core and the order.
func TestCasesHangOnSeedAndIndex(t *testing.T) {
	p := Proof{Share: 200, Full: 200, Seed: 3}
	var drawn [2]map[int]uint64
	var lock sync.Mutex
	for run := range drawn {
		drawn[run] = map[int]uint64{}
		p.Run(t, func(c *Case) {
			lock.Lock()
			defer lock.Unlock()
			drawn[run][c.Index] = c.Rand.Uint64()
		})
	}
	for i, x := range drawn[0] {
		if drawn[1][i] != x {
			t.Errorf("case %d draws %d, then %d", i, x, drawn[1][i])
		}
	}
}

// What fails says how to have it again, and a panic fails its case alone. The test runs itself with a property that does
// not hold.
func TestFailuresAreTold(t *testing.T) {
	if os.Getenv("FINWRIGHT_FAILS") != "" {
		Proof{Share: 10, Full: 100, Seed: 3}.Run(t, func(c *Case) {
			switch c.Index {
			case 7:
				c.Fatalf("seven")
			case 61:
				panic("sixty-one")
			}
		})
		return
	}
	run := func(env ...string) string {
		cmd := exec.Command(os.Args[0], "-test.run=^TestFailuresAreTold$")
		cmd.Env = append(os.Environ(), append(env, "FINWRIGHT_FAILS=1")...)
		out, err := cmd.CombinedOutput()
		if err == nil {
			t.Errorf("%v: passes", env)
		}
		return string(out)
	}
	for _, c := range []struct {
		env  string
		want []string
	}{
		{"FINWRIGHT_LONG=", []string{"FINWRIGHT_CASE=7: seven", "1 of 10 cases failed"}},
		{"FINWRIGHT_LONG=1", []string{"FINWRIGHT_CASE=7: seven", "FINWRIGHT_CASE=61: panic: sixty-one", "2 of 100 cases failed", "proof:\tTestFailuresAreTold\t100\t3\t2\t"}},
		{"FINWRIGHT_LONG=1 FINWRIGHT_PART=2/3", []string{"FINWRIGHT_CASE=61: panic", "1 of 33 cases failed", "proof:\tTestFailuresAreTold\t33\t3\t1\t"}},
		{"FINWRIGHT_CASE=61", []string{"1 of 1 cases failed"}},
	} {
		out := run(strings.Fields(c.env)...)
		for _, want := range c.want {
			if !strings.Contains(out, want) {
				t.Errorf("%s does not say %q:\n%s", c.env, want, out)
			}
		}
	}
}

func TestFromBytesHangsOnTheBytes(t *testing.T) {
	draw := func(data string) (out [4]uint64) {
		r := FromBytes([]byte(data))
		for i := range out {
			out[i] = r.Uint64()
		}
		return out
	}
	first := draw("twelve bytes")
	if again := draw("twelve bytes"); again != first || draw("other bytes!") == first {
		t.Error("the numbers do not follow from the bytes")
	}
	if a, b := draw("same 8 b, then this"), draw("same 8 b, then that"); a[0] != b[0] || a[3] == b[3] {
		t.Error("the bytes do not come first")
	}
}

func TestTextStaysNearItsSamples(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	same, samples := 0, []string{"1 1/4 in", "14 BWG"}
	for range 1000 {
		if text := Text(r, samples...); text == samples[0] || text == samples[1] {
			same++
		}
	}
	if same < 100 || same > 700 {
		t.Errorf("%d of 1000 texts are a sample unchanged", same)
	}
}
