// Package deflate packs what is shipped smaller than the library does: it weighs all ways to write a stretch against each
// other instead of taking the longest match (a twentieth less of the engine, for some seconds of the build).
//
// The format is that of RFC 1951 in a member of RFC 1952, so whatever unpacks gzip reads it.
package deflate

import (
	"encoding/binary"
	"hash/crc32"
	"math"
	"runtime"
	"slices"
	"sync"
)

// How hard is searched: what more would save takes longer than it is worth.
const (
	tries  = 256     // places looked at for a match
	rounds = 3       // in which steps and what they cost settle
	piece  = 1 << 14 // bytes that are weighed together
)

// Gzip packs content.
func Gzip(content []byte) []byte {
	w := writer{out: []byte{0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 2, 255}} // no name, no time, packed slowly, on any system
	blocks := parse(content)
	for i := range blocks {
		w.block(&blocks[i], i == len(blocks)-1)
	}
	w.flush()
	w.out = binary.LittleEndian.AppendUint32(w.out, crc32.ChecksumIEEE(content))
	return binary.LittleEndian.AppendUint32(w.out, uint32(len(content)))
}

// step is length bytes of the content: one as it is where back is 0, else those that stand so far back.
type step struct{ length, back uint16 }

// block is a stretch of the content with codes of its own.
type block struct {
	content []byte
	steps   []step
	counts
}

// parse parts content into blocks.
func parse(content []byte) []block {
	pieces := make([]block, max(1, (len(content)+piece-1)/piece))
	var each sync.WaitGroup
	free := make(chan bool, runtime.GOMAXPROCS(0))
	for i := range pieces {
		free <- true
		each.Go(func() {
			from := i * piece
			to := min(from+piece, len(content))
			found := find(content, from, to)
			b, c := block{content: content[from:to]}, firstCosts()
			for range rounds {
				b.steps = c.cheapest(b.content, found)
				b.counts = count(b.steps, b.content)
				c = costsOf(&b.counts)
			}
			pieces[i] = b
			<-free
		})
	}
	each.Wait()
	return join(content, pieces)
}

// join makes one block of neighbours that are written shorter so.
func join(content []byte, pieces []block) []block {
	out, bits, from := pieces[:1:1], []int{pieces[0].size()}, 0
	for _, b := range pieces[1:] {
		last := len(out) - 1
		both := block{content: content[from : from+len(out[last].content)+len(b.content)], counts: out[last].counts}
		both.add(&b.counts)
		if size, alone := both.size(), b.size(); size < bits[last]+alone {
			both.steps = append(out[last].steps, b.steps...)
			out[last], bits[last] = both, size
		} else {
			from += len(out[last].content)
			out, bits = append(out, b), append(bits, alone)
		}
	}
	return out
}

// cheapest returns the steps over a stretch that cost least.
func (c *costs) cheapest(content []byte, found matches) []step {
	n := len(content)
	sum, last := make([]float32, n+1), make([]step, n+1) // from the start to a place, and the step that leads there
	for i := range sum[1:] {
		sum[i+1] = math.MaxFloat32
	}
	for i, b := range content {
		if s := sum[i] + c.literal[b]; s < sum[i+1] {
			sum[i+1], last[i+1] = s, step{length: 1}
		}
		length := shortest
		for _, m := range found.at(i) {
			for far := sum[i] + c.distance[distanceSymbol(int(m.back))]; length <= int(m.length); length++ {
				if s := far + c.length[length]; s < sum[i+length] {
					sum[i+length], last[i+length] = s, step{uint16(length), m.back}
				}
			}
		}
	}
	var out []step
	for i := n; i > 0; i -= int(last[i].length) {
		out = append(out, last[i])
	}
	slices.Reverse(out)
	return out
}
