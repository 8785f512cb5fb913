package bridge

import (
	"encoding/base64"
	"fmt"
	"math"
	"slices"
	"strconv"
	"sync/atomic"
)

// encoder writes JSON. Each value ends with a comma, which the bracket that closes around it takes away. What it writes of a struct is
// generated (encoders.go).
type encoder struct{ text []byte }

// encodeMore writes the answers of the methods that only the whole program has.
var encodeMore = func(_ *encoder, answer any) { panic(fmt.Errorf("bridge: nothing writes %T", answer)) }

// least is the room that an encoder begins with [bytes], and last the length of the answer before, which the next is about as long as.
const least = 1 << 13

var last atomic.Int64

// encoded is the JSON of an object with one member.
func encoded(name string, value any) []byte {
	e := encoder{make([]byte, 0, max(least, last.Load()*9/8))}
	e.open('{')
	e.key(name)
	encode(&e, value)
	e.close('}')
	last.Store(int64(len(e.text)))
	return e.text[:len(e.text)-1]
}

func (e *encoder) open(bracket byte) { e.text = append(e.text, bracket) }

func (e *encoder) close(bracket byte) {
	if last := len(e.text) - 1; e.text[last] == ',' {
		e.text = e.text[:last]
	}
	e.text = append(e.text, bracket, ',')
}

// key starts a member; its name needs no escape.
func (e *encoder) key(name string) {
	e.text = append(e.text, '"')
	e.text = append(e.text, name...)
	e.text = append(e.text, '"', ':')
}

// name starts a member of a map, whose name comes from anywhere.
func (e *encoder) name(name string) {
	e.string(name)
	e.text[len(e.text)-1] = ':'
}

// json writes what is JSON already.
func (e *encoder) json(text []byte) {
	e.text = append(e.text, text...)
	e.text = append(e.text, ',')
}

func (e *encoder) null() { e.text = append(e.text, "null,"...) }

func (e *encoder) flag(v bool) {
	e.text = strconv.AppendBool(e.text, v)
	e.text = append(e.text, ',')
}

func (e *encoder) whole(v int) {
	e.text = strconv.AppendInt(e.text, int64(v), 10)
	e.text = append(e.text, ',')
}

// number writes the shortest text that reads as v. What is not finite has none: it is a fault of the engine.
func (e *encoder) number(v float64) {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		panic(fmt.Errorf("bridge: a reply with the number %v", v))
	}
	if -1e6 < v && v < 1e6 && v == float64(int(v)) {
		e.text = strconv.AppendInt(e.text, int64(v), 10)
	} else {
		e.text = strconv.AppendFloat(e.text, v, 'g', -1, 64)
	}
	e.text = append(e.text, ',')
}

// bytes are written in base 64.
func (e *encoder) bytes(v []byte) {
	e.text = append(e.text, '"')
	e.text = base64.StdEncoding.AppendEncode(e.text, v)
	e.text = append(e.text, '"', ',')
}

// string escapes what JSON must not hold. Texts are UTF-8: those of the catalogue are, and those of the page have been decoded.
func (e *encoder) string(s string) {
	e.text = append(e.text, '"')
	from := 0
	for i := range len(s) {
		c := s[i]
		if c >= ' ' && c != '"' && c != '\\' {
			continue
		}
		e.text = append(e.text, s[from:i]...)
		if c < ' ' {
			e.text = append(e.text, '\\', 'u', '0', '0', '0'+c>>4, "0123456789abcdef"[c&15])
		} else {
			e.text = append(e.text, '\\', c)
		}
		from = i + 1
	}
	e.text = append(e.text, s[from:]...)
	e.text = append(e.text, '"', ',')
}

// keys are the names of a map, in order, so that equal values are written alike.
func keys[V any](of map[string]V) []string {
	names := make([]string, 0, len(of))
	for name := range of {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}
