package proof

import (
	"encoding/binary"
	"hash/fnv"
	"math/rand/v2"
)

// FromBytes returns random numbers that a fuzzer steers: its bytes come first, and what follows them hangs on them alone.
func FromBytes(data []byte) *rand.Rand {
	h := fnv.New64a()
	h.Write(data)
	return rand.New(&drawn{data, rand.NewPCG(h.Sum64(), uint64(len(data)))})
}

type drawn struct {
	data []byte
	rest *rand.PCG
}

// Uint64 implements rand.Source.
func (d *drawn) Uint64() uint64 {
	if len(d.data) == 0 {
		return d.rest.Uint64()
	}
	var b [8]byte
	n := copy(b[:], d.data)
	d.data = d.data[n:]
	return binary.LittleEndian.Uint64(b[:])
}

// Text draws a text for a reader: one of the samples, mostly with a few bytes changed, cut, doubled or taken from another.
func Text(r *rand.Rand, samples ...string) string {
	b := []byte(samples[r.IntN(len(samples))])
	for range r.IntN(5) {
		at := r.IntN(len(b) + 1)
		to := min(len(b), at+r.IntN(1+r.IntN(12)))
		switch r.IntN(5) {
		case 0:
			b = append(b[:at:at], b[to:]...)
		case 1:
			b = append(b[:to:to], b[at:]...)
		case 2:
			b = b[:at]
		case 3:
			other := samples[r.IntN(len(samples))]
			from := r.IntN(len(other) + 1)
			b = append(append(b[:at:at], other[from:min(len(other), from+r.IntN(12))]...), b[to:]...)
		default:
			b = append(append(b[:at:at], odd[r.IntN(len(odd))]...), b[to:]...)
		}
	}
	return string(b)
}

// odd are what readers stumble over.
var odd = []string{
	"0", "9", "-", "+", ".", ",", "e9", "e308", "1e-320", "999999999999", "/", "/0", "\"", "'", " ", "\u00a0", "\u202f", "°", "²", "(", "[", "[[[[[[[[",
	"{", "}", "]", ":", "null", "true", "NaN", "Inf", "\x00", "\xff", "½", "µ", "\\u0000", "\\", "\n", "mm", "in", "ft", "fpi", "BWG", "%",
}
