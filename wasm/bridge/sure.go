package bridge

import (
	"encoding/binary"
	"errors"
	"math"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/tolerance"
)

// supposed is a design with the limits of its bands, as typed, by their IDs; those that are not there are the house's.
type supposed struct {
	Document document.Document `json:"document"`
	Shop     string            `json:"shop,omitempty"` // a capability file; empty: the one that ships
	Limits   map[string]string `json:"limits,omitempty"`
	Seed     int               `json:"seed"`
}

// mostDraws bounds what is drawn at once.
const mostDraws = 5000

type drawsArgs struct {
	supposed
	From  int `json:"from"`
	Count int `json:"count"`
}

// draws are outcomes, each of their measures in four bytes, base 64.
type draws struct {
	Outcomes []byte `json:"outcomes"`
}

type sureArgs struct {
	supposed
	Figure   string   `json:"figure"`
	Outcomes [][]byte `json:"outcomes,omitempty"` // of draws, in their order
}

// bench prepares the design. What cannot be used of the document, or keeps it from being rated, is the message.
func (s *supposed) bench(w *report.Writer) (b *tolerance.Bench, wrong map[string]string, absent message.Message, err error) {
	if err := document.Check(s.Document); err != nil {
		return nil, nil, absent, err
	}
	*w = writer(s.Document)
	limits, wrong := w.Limits(s.Limits)
	c, err := openShop(s.Shop)
	if err != nil {
		return nil, wrong, absent, err
	}
	w.Currency = c.Currency
	in, err := design.Read(s.Document)
	if err == nil {
		b, absent, err = tolerance.New(in, &c, limits)
	}
	var refused design.FieldErrors
	if errors.As(err, &refused) {
		return nil, wrong, refused[0].Message, nil
	}
	return b, wrong, absent, err
}

// sureDraws makes some of the draws, for a worker.
func sureDraws(a drawsArgs) (draws, error) {
	var w report.Writer
	b, _, _, err := a.bench(&w)
	if err != nil || b == nil {
		return draws{[]byte{}}, err
	}
	count := min(max(a.Count, 0), mostDraws)
	out := make([]byte, 0, count*len(tolerance.Measures)*4)
	for i := range count {
		for _, x := range b.Draw(uint64(a.Seed), a.From+i) {
			out = binary.LittleEndian.AppendUint32(out, math.Float32bits(float32(x)))
		}
	}
	return draws{out}, nil
}

// sure tells how sure a design is: what each band does by itself, and what draws of all say together.
func sure(a sureArgs) (report.ShownSure, error) {
	var w report.Writer
	b, wrong, absent, err := a.bench(&w)
	if err != nil {
		return report.ShownSure{}, err
	}
	out := w.Sure(b, absent, a.Limits, wrong, a.Figure)
	if b == nil {
		return out, nil
	}
	var outcomes []tolerance.Outcome
	for _, part := range a.Outcomes {
		for size := len(tolerance.Measures) * 4; len(part) >= size && len(outcomes) < tolerance.Draws; part = part[size:] {
			var o tolerance.Outcome
			for i := range o {
				o[i] = float64(math.Float32frombits(binary.LittleEndian.Uint32(part[4*i:])))
			}
			outcomes = append(outcomes, o)
		}
	}
	if len(outcomes) > 0 {
		w.Told(&out, b, b.Tell(outcomes), a.Seed)
	}
	return out, nil
}
