package deflate

import (
	"cmp"
	"math"
	"math/bits"
	"slices"
)

// code is the word of each symbol, reversed as it is written, and its length in bits; 0 for a symbol that does not come.
type code struct {
	words   []uint16
	lengths []uint8
}

// codeOf returns the shortest code for symbols that come so often, of words of at most so many bits.
//
// Source: package-merge, Larmore and Hirschberg, J. ACM 37 (1990) 464; words in the order of RFC 1951, 3.2.2.
func codeOf(counts []int, most int) code {
	type leaf struct{ count, symbol int }
	var leaves []leaf
	for s, n := range counts {
		if n > 0 {
			leaves = append(leaves, leaf{n, s})
		}
	}
	for s := 0; len(leaves) < 2; s++ { // a code of one word is none to some readers
		if counts[s] == 0 {
			leaves = append(leaves, leaf{1, s})
		}
	}
	slices.SortStableFunc(leaves, func(a, b leaf) int { return cmp.Compare(a.count, b.count) })
	type pack struct {
		count   int
		symbols []int
	}
	var packs []pack
	for range most {
		var next []pack
		for i, j := 0, 0; i < len(leaves) || j+1 < len(packs); {
			pair := math.MaxInt
			if j+1 < len(packs) {
				pair = packs[j].count + packs[j+1].count
			}
			if i < len(leaves) && leaves[i].count <= pair {
				next = append(next, pack{leaves[i].count, []int{leaves[i].symbol}})
				i++
			} else {
				next = append(next, pack{pair, slices.Concat(packs[j].symbols, packs[j+1].symbols)})
				j += 2
			}
		}
		packs = next
	}
	c := code{make([]uint16, len(counts)), make([]uint8, len(counts))}
	for _, p := range packs[:2*len(leaves)-2] {
		for _, s := range p.symbols {
			c.lengths[s]++
		}
	}
	c.assign()
	return c
}

// assign gives out words: shorter ones first, in the order of the symbols.
func (c *code) assign() {
	word := 0
	for length := uint8(1); length < 16; length++ {
		word <<= 1
		for s, l := range c.lengths {
			if l == length {
				c.words[s] = bits.Reverse16(uint16(word)) >> (16 - length)
				word++
			}
		}
	}
}
