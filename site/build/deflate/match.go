package deflate

import (
	"encoding/binary"
	"math/bits"
)

const (
	window   = 1 << 15 // how far back a match may stand
	shortest = 3
	longest  = 258
)

// matches lists, for each place of a stretch, what the bytes there repeat: the nearest place for each length.
type matches struct {
	all   []step // of one place, each longer than the one before and further back
	first []int  // of each place, and one past the last
}

func (m matches) at(i int) []step { return m.all[m.first[i]:m.first[i+1]] }

// find looks for matches of the content between two places.
func find(content []byte, from, to int) matches {
	const hashBits = 15
	start := max(0, from-window)
	latest, earlier := make([]int, 1<<hashBits), make([]int, to-start) // places with three bytes alike, plus one
	var out matches
	for i := start; i < to; i++ {
		if i >= from {
			out.first = append(out.first, len(out.all))
		}
		if i+shortest > len(content) {
			continue
		}
		three := uint32(content[i]) | uint32(content[i+1])<<8 | uint32(content[i+2])<<16
		hash := three * 2654435761 >> (32 - hashBits)
		if i >= from {
			best, most := shortest-1, min(longest, to-i)
			for at, n := latest[hash], 0; at > 0 && n < tries && best < most; at, n = earlier[at-1-start], n+1 {
				j := at - 1
				if i-j > window {
					break
				}
				if content[j+best] != content[i+best] {
					continue
				}
				if length := alike(content[i:i+most], content[j:]); length > best {
					best = length
					out.all = append(out.all, step{uint16(length), uint16(i - j)})
				}
			}
		}
		earlier[i-start], latest[hash] = latest[hash], i+1
	}
	out.first = append(out.first, len(out.all))
	return out
}

// alike returns how many bytes of a stand at the beginning of b, which is no shorter.
func alike(a, b []byte) int {
	n := 0
	for ; n+8 <= len(a); n += 8 {
		if x := binary.LittleEndian.Uint64(a[n:]) ^ binary.LittleEndian.Uint64(b[n:]); x != 0 {
			return n + bits.TrailingZeros64(x)/8
		}
	}
	for n < len(a) && a[n] == b[n] {
		n++
	}
	return n
}
