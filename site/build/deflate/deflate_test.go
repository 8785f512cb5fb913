package deflate

import (
	"bytes"
	"compress/gzip"
	"io"
	"math/rand/v2"
	"os"
	"strings"
	"testing"
)

// unpacked is what the library reads.
func unpacked(t testing.TB, packed []byte) []byte {
	t.Helper()
	r, err := gzip.NewReader(bytes.NewReader(packed))
	if err != nil {
		t.Fatal(err)
	}
	out, err := io.ReadAll(r)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// What is packed comes out again, whatever it is: nothing, one byte, all equal, noise, pieces that join and pieces that do not.
func TestWhatIsPackedComesOut(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	noise := make([]byte, 3*piece+17)
	for i := range noise {
		noise[i] = byte(r.Uint32())
	}
	few := make([]byte, 5*piece)
	for i := range few {
		few[i] = "aab"[r.IntN(3)]
	}
	for name, content := range map[string][]byte{
		"nothing": nil, "a byte": {7}, "two": {0, 0}, "three": {1, 1, 1}, "a piece": noise[:piece], "noise": noise, "few letters": few,
		"zeros": make([]byte, 4*piece+longest), "words": []byte(strings.Repeat("so much strip to the tube, ", 4000)),
		"all": append(append(append([]byte{}, few...), noise...), make([]byte, 100000)...),
		"far": append(append(append([]byte{}, noise[:300]...), make([]byte, window-300)...), noise[:300]...),
	} {
		if got := unpacked(t, Gzip(content)); !bytes.Equal(got, content) {
			t.Errorf("%s: %d bytes became %d others", name, len(content), len(got))
		}
	}
}

// It is here for being smaller.
func TestSmallerThanTheLibrarys(t *testing.T) {
	content, err := os.ReadFile("../../../core/message/en.txt")
	if err != nil {
		t.Fatal(err)
	}
	var theirs bytes.Buffer
	w, _ := gzip.NewWriterLevel(&theirs, gzip.BestCompression)
	w.Write(content)
	w.Close()
	if ours := len(Gzip(content)); float64(ours) > 0.97*float64(theirs.Len()) {
		t.Errorf("%d bytes, the library's %d", ours, theirs.Len())
	}
}

// Every length and every distance has a symbol that says it.
func TestSymbolsSayAll(t *testing.T) {
	for l := shortest; l <= longest; l++ {
		s := lengthSymbol[l]
		if x := l - lengthBase[s]; x < 0 || x >= 1<<lengthExtra[s] {
			t.Errorf("length %d: symbol %d from %d, %d bits", l, s, lengthBase[s], lengthExtra[s])
		}
	}
	for d := 1; d <= window; d++ {
		s := distanceSymbol(d)
		if x := d - distanceBase(s); x < 0 || x >= 1<<distanceExtra(s) {
			t.Fatalf("distance %d: symbol %d from %d, %d bits", d, s, distanceBase(s), distanceExtra(s))
		}
	}
}

func FuzzGzip(f *testing.F) {
	f.Add([]byte("fins and fins and fins"))
	f.Fuzz(func(t *testing.T, content []byte) {
		if !bytes.Equal(unpacked(t, Gzip(content)), content) {
			t.Fatal("it became another")
		}
	})
}
