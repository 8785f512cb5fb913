package units

import (
	"slices"
	"strings"
)

// What a number is that is typed without a unit.

// spoken are units in which a number alone may have been meant, beside those in which the two systems show its kind: as they are spoken of where
// such tubes are made and bought. Common practice, no source.
var spoken = map[Kind][]string{
	FinCount:     {"fpi"},
	Wall:         {gaugeMark},
	Distance:     {"m", "ft"},
	Dense:        {"g/cm³"},
	SpecificHeat: {"kJ/kg·K"},
	MassRate:     {"kg/h"},
	Duty:         {"MW"},
	Pressure:     {"bar"},
	Loss:         {"bar"},
}

// Readings returns the texts that a number alone may be meant as, and the quantities [SI], each once: first with the unit given or, where that
// makes nothing of it, with the one in which system s shows kind k. Of two units that make the same the one that is spoken of stands.
func Readings(k Kind, alone, unit string, s System) (texts []string, si []float64) {
	p, err := Parse(k, alone, s)
	if err != nil || !p.Alone {
		return nil, nil
	}
	number := strings.TrimSuffix(p.Text, p.Unit)
	add := func(unit string) {
		p, err := Parse(k, number+unit, s)
		known := func(other float64) bool { return !Above(p.SI, other) && !Above(other, p.SI) }
		if err == nil && !slices.ContainsFunc(si, known) {
			texts, si = append(texts, p.Text), append(si, p.SI)
		}
	}
	if add(unit); len(si) == 0 {
		add(k.Unit(s))
	}
	for _, name := range slices.Concat(spoken[k], []string{k.Unit(SI), k.Unit(US)}) {
		add(name)
	}
	return texts, si
}

// FinCount prints a fin count, in metric units with the count to an inch beside it, by which the trade orders everywhere.
func (n *Style) FinCount(si float64, s System) string {
	text := n.Figure(FinCount, si, s).String()
	if s == SI {
		text += ", " + n.perInch(si)
	}
	return text
}

// Other prints what stands beside an entry of kind k in its own unit: a fin count to the inch beside one to the metre; empty where nothing does.
func (n *Style) Other(k Kind, si float64, s System) string {
	if k != FinCount || s != SI {
		return ""
	}
	return n.perInch(si)
}

func (n *Style) perInch(si float64) string {
	x := In(FinCount, si, US)
	return n.Write(trimmed(digit{}.write(FinCount.shown(US), x, FinCount.shown(US).decimals))) + " fpi"
}
