package deflate

import "slices"

// Bits that a word may have, RFC 1951, 3.2.7.
const (
	longestWord   = 15
	longestOfHead = 7
)

// headOrder is the order in which the lengths of the head's own code stand there.
var headOrder = [...]int{16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15}

// item is one symbol of a head: a length of a word, or how often to repeat one.
type item struct{ symbol, extra, bits int }

// codes are those of a block and how its head tells them.
type codes struct {
	symbol, distance, head code
	lengths                [2]int // told of the first two
	items                  []item
	ordered                int // lengths told of the third
}

func (c *counts) codes() codes {
	out := codes{symbol: codeOf(c.symbol[:], longestWord), distance: codeOf(c.distance[:], longestWord)}
	told := func(lengths []uint8, least int) []uint8 {
		n := len(lengths)
		for n > least && lengths[n-1] == 0 {
			n--
		}
		return lengths[:n]
	}
	symbol, distance := told(out.symbol.lengths, ending+1), told(out.distance.lengths, 1)
	out.lengths = [2]int{len(symbol), len(distance)}
	out.items = shorten(slices.Concat(symbol, distance))
	var counts [len(headOrder)]int
	for _, i := range out.items {
		counts[i.symbol]++
	}
	out.head = codeOf(counts[:], longestOfHead)
	for out.ordered = len(headOrder); out.ordered > 4 && out.head.lengths[headOrder[out.ordered-1]] == 0; {
		out.ordered--
	}
	return out
}

// shorten writes runs of equal lengths as such.
func shorten(lengths []uint8) (out []item) {
	for len(lengths) > 0 {
		v, run := lengths[0], 1
		for run < len(lengths) && lengths[run] == v {
			run++
		}
		lengths = lengths[run:]
		repeat := func(symbol, least, most, bits int) {
			for run >= least {
				n := min(run, most)
				out = append(out, item{symbol, n - least, bits})
				run -= n
			}
		}
		if v == 0 {
			repeat(18, 11, 138, 7)
			repeat(17, 3, 10, 3)
		} else {
			out = append(out, item{symbol: int(v)})
			run--
			repeat(16, 3, 6, 2)
		}
		for range run {
			out = append(out, item{symbol: int(v)})
		}
	}
	return out
}

// size returns the bits of a block.
func (c *counts) size() int {
	codes := c.codes()
	bits := 3 + 5 + 5 + 4 + 3*codes.ordered
	for _, i := range codes.items {
		bits += int(codes.head.lengths[i.symbol]) + i.bits
	}
	for s, n := range c.symbol {
		bits += n * (int(codes.symbol.lengths[s]) + lengthExtra[s])
	}
	for s, n := range c.distance {
		bits += n * (int(codes.distance.lengths[s]) + distanceExtra(s))
	}
	return bits
}

// writer puts bits into bytes, the lowest first.
type writer struct {
	out  []byte
	held uint64
	n    int // bits held
}

func (w *writer) bits(x, n int) {
	w.held |= uint64(x) << w.n
	for w.n += n; w.n >= 8; w.n -= 8 {
		w.out = append(w.out, byte(w.held))
		w.held >>= 8
	}
}

func (w *writer) word(c *code, symbol int) { w.bits(int(c.words[symbol]), int(c.lengths[symbol])) }

// flush fills the last byte.
func (w *writer) flush() {
	if w.n > 0 {
		w.bits(0, 8-w.n)
	}
}

func (w *writer) block(b *block, last bool) {
	const ownCodes = 2
	final := 0
	if last {
		final = 1
	}
	w.bits(final, 1)
	w.bits(ownCodes, 2)
	c := b.codes()
	w.bits(c.lengths[0]-ending-1, 5)
	w.bits(c.lengths[1]-1, 5)
	w.bits(c.ordered-4, 4)
	for _, s := range headOrder[:c.ordered] {
		w.bits(int(c.head.lengths[s]), 3)
	}
	for _, i := range c.items {
		w.word(&c.head, i.symbol)
		w.bits(i.extra, i.bits)
	}
	at := 0
	for _, s := range b.steps {
		if s.back == 0 {
			w.word(&c.symbol, int(b.content[at]))
		} else {
			length, distance := lengthSymbol[s.length], distanceSymbol(int(s.back))
			w.word(&c.symbol, length)
			w.bits(int(s.length)-lengthBase[length], lengthExtra[length])
			w.word(&c.distance, distance)
			w.bits(int(s.back)-distanceBase(distance), distanceExtra(distance))
		}
		at += int(s.length)
	}
	w.word(&c.symbol, ending)
}
