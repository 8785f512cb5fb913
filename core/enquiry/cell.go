package enquiry

import (
	"slices"
	"strings"
)

// Column is what the head of a column says of its cells.
type Column struct {
	Field string `json:"field"`          // that a number alone is of, a name of the trade's words; empty: cells are read as lines
	Unit  string `json:"unit,omitempty"` // of numbers without one
	Side  string `json:"side,omitempty"` // "tube" or "fin": what is spoken of
	Basis string `json:"basis,omitempty"`
}

// Head reads the head of a column. ok is false where no word of it says what its cells are.
func Head(text string) (c Column, ok bool) {
	r := &reader{text: text, list: tokens(text)}
	r.used, r.field = make([]bool, len(r.list)), make([]string, len(r.list))
	r.divide()
	r.sides()
	for i := range r.list {
		t := &r.list[i]
		if t.sort != aWord {
			continue
		}
		if side := sideOf(t); side != "" && c.Side == "" {
			c.Side = side
		}
		switch s := t.says; s.kind {
		case "field":
			if name := r.nameOf(i); c.Field == "" || c.Field == "tube_length" && name == "overall" || c.Field == "fin_type" && name != "tube_length" {
				c.Field = name
			}
			ok = true
		case "unit":
			c.unit(s.a)
			ok = ok || c.Field != ""
		case "is":
			if ok = true; s.a == "wall_basis" {
				c.Basis = s.b
				c.Field = cmpOr(c.Field, "tube_wall")
			}
		case "tube", "fin":
			ok = true
		case "word":
			ok = ok || s.a == "finned"
		}
	}
	return c, ok
}

// unit takes a unit of a head, which may say by itself what the cells are.
func (c *Column) unit(unit string) {
	names := map[string]string{"fpi": "fin_pitch", "fins/m": "fin_pitch", "BWG": "tube_wall", "SWG": "tube_wall", "ga": "tube_wall", "off": "quantity", "spare": Spare}
	name, tells := names[unit]
	if tells && (c.Field == "" || name == c.Field || c.Field == "fins_word") {
		c.Field = name
	}
	if unit != "off" && unit != "spare" && c.Unit == "" && (!tells || c.Field == name) {
		c.Unit = unit
	}
}

// Cell reads a cell of a table by the head of its column.
func Cell(head, text string) Read {
	c, _ := Head(head)
	return c.Cell(text)
}

// Cell reads a cell of the column. One of which nothing is understood is kept whole.
func (c Column) Cell(text string) Read {
	trimmed := strings.TrimSpace(text)
	none := Read{Text: text, Readings: []Reading{}}
	from := strings.Index(text, trimmed)
	all := Span{from, from + len(trimmed)}
	switch {
	case strings.Trim(trimmed, "-–—") == "":
		return none
	case strings.HasPrefix(trimmed, "=") || strings.HasPrefix(trimmed, "#") && strings.HasSuffix(trimmed, "!"):
		none.Unread = []Span{all}
		return none
	case c.Field == Mark:
		none.Readings = append(none.Readings, Reading{Field: Mark, Text: trimmed, From: []Span{all}})
		return none
	}
	if c.isSize() {
		if one, other, ok := fractionOfDay(trimmed); ok {
			none.Readings = append(none.Readings, Reading{Field: c.design(), Text: one + " in", From: []Span{all}, Doubts: []Doubt{{"day", c.design(), other + " in"}}})
			return none
		}
	}
	read := readText(text, prior{c.Field, c.Unit, c.Side, c.Basis})
	if len(read.Readings)+len(read.NotMade) == 0 && c.Field != "" {
		read.Unread = []Span{all}
	}
	return read
}

// isSize reports whether the column holds lengths as are written in fractions of an inch.
func (c Column) isSize() bool {
	return slices.Contains([]string{"tube_od", "tube_size", "tube_wall", "fin_height", FinOD, "strip_thickness", "tube_pitch", "plain_end_a", "plain_end_b"}, c.Field) && (c.Unit == "" || c.Unit == "in")
}

// design is the field of the column's cells as a reading names it.
func (c Column) design() string {
	if c.Field == "tube_size" {
		return "tube_od"
	}
	return c.Field
}
