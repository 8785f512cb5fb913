package deflate

import (
	"math"
	"math/bits"
)

// Symbols of RFC 1951, 3.2.5: bytes, the end of a block and lengths in one alphabet, distances in another.
const (
	ending    = 256
	symbols   = 286
	distances = 30
)

var lengthSymbol, lengthBase, lengthExtra = lengths()

// lengths returns the symbol of each length, and of each symbol its first length and how many bits tell the others.
func lengths() (symbol [longest + 1]int, base, extra [symbols]int) {
	length := shortest
	for s := ending + 1; s < symbols-1; s++ {
		base[s], extra[s] = length, max(0, (s-261)/4)
		for range 1 << extra[s] {
			symbol[min(length, longest)] = s
			length++
		}
	}
	symbol[longest], base[symbols-1] = symbols-1, longest
	return symbol, base, extra
}

func distanceSymbol(back int) int {
	if back <= 4 {
		return back - 1
	}
	n := bits.Len(uint(back-1)) - 1
	return 2*n + (back-1)>>(n-1)&1
}

func distanceExtra(s int) int { return max(0, s/2-1) }

func distanceBase(s int) int {
	if s < 4 {
		return s + 1
	}
	return (2+s&1)<<distanceExtra(s) + 1
}

// counts is how often a block has each symbol.
type counts struct {
	symbol   [symbols]int
	distance [distances]int
}

func count(steps []step, content []byte) (c counts) {
	at := 0
	for _, s := range steps {
		if s.back == 0 {
			c.symbol[content[at]]++
		} else {
			c.symbol[lengthSymbol[s.length]]++
			c.distance[distanceSymbol(int(s.back))]++
		}
		at += int(s.length)
	}
	c.symbol[ending]++
	return c
}

func (c *counts) add(o *counts) {
	for s, n := range o.symbol {
		c.symbol[s] += n
	}
	for s, n := range o.distance {
		c.distance[s] += n
	}
	c.symbol[ending]--
}

// costs are bits.
type costs struct {
	literal  [256]float32
	length   [longest + 1]float32
	distance [distances]float32
}

// firstCosts are those of a block of which nothing is known.
func firstCosts() costs {
	var c counts
	for s := range c.symbol {
		c.symbol[s] = 1
	}
	for b := range 256 {
		c.symbol[b] = 2 // a byte is more likely than any length
	}
	for s := range c.distance {
		c.distance[s] = 1
	}
	return costsOf(&c)
}

// costsOf returns what symbols cost that come so often: by Shannon's measure, since codes of whole bits would hide what changes.
func costsOf(c *counts) (out costs) {
	symbol, distance := shannon(c.symbol[:]), shannon(c.distance[:])
	copy(out.literal[:], symbol)
	for l := shortest; l <= longest; l++ {
		s := lengthSymbol[l]
		out.length[l] = symbol[s] + float32(lengthExtra[s])
	}
	for s := range distance {
		out.distance[s] = distance[s] + float32(distanceExtra(s))
	}
	return out
}

// shannon returns the bits of each symbol; one that does not come costs what one that comes once does.
func shannon(counts []int) []float32 {
	sum := 0
	for _, n := range counts {
		sum += n
	}
	out := make([]float32, len(counts))
	for s, n := range counts {
		out[s] = float32(math.Log2(float64(max(sum, 1)) / float64(max(n, 1))))
	}
	return out
}
