package paper

import "unicode/utf8"

// Say adds a line of the head, where there is something to say.
func (p *Paper) Say(label, value string) {
	if value != "" {
		p.Head = append(p.Head, Pair{Label: label, Value: value})
	}
}

func (p *Paper) add(b Block) { p.Blocks = append(p.Blocks, b) }

// Heading begins a part.
func (p *Paper) Heading(text string) { p.add(Block{Form: Heading, Text: text}) }

// Text adds lines one under the other; none adds nothing.
func (p *Paper) Text(lines ...string) { p.lines(Text, lines) }

// Caution adds what must be heeded.
func (p *Paper) Caution(lines ...string) { p.lines(Caution, lines) }

func (p *Paper) lines(f Form, lines []string) {
	var said []string
	for _, line := range lines {
		if line != "" {
			said = append(said, line)
		}
	}
	if said != nil {
		p.add(Block{Form: f, Lines: said})
	}
}

// Pairs adds what has a name; none adds nothing.
func (p *Paper) Pairs(list ...Pair) {
	if len(list) > 0 {
		p.add(Block{Form: Pairs, Pairs: list})
	}
}

// Blanks adds places that a hand fills, each under its name.
func (p *Paper) Blanks(labels ...string) {
	b := Block{Form: Blanks}
	for _, label := range labels {
		b.Pairs = append(b.Pairs, Pair{Label: label})
	}
	p.add(b)
}

// Hold adds a line at which work waits for a signature.
func (p *Paper) Hold(text string) { p.add(Block{Form: Hold, Text: text}) }

// Table adds a table under its title; one without rows adds nothing.
func (p *Paper) Table(title string, columns []Column, rows [][]string) {
	if len(rows) > 0 {
		p.add(Block{Form: Tabulated, Text: title, Table: &Table{Columns: columns, Rows: rows}})
	}
}

// Summed adds a table with a last row that is of all above it; one without rows adds nothing.
func (p *Paper) Summed(title string, columns []Column, rows [][]string, sum []string) {
	if len(rows) > 0 {
		p.add(Block{Form: Tabulated, Text: title, Table: &Table{Columns: columns, Rows: append(rows, sum), Sum: true}})
	}
}

// Draw adds a picture.
func (p *Paper) Draw(svg, text string) {
	p.add(Block{Form: Picture, Drawing: &Drawing{svg, text}})
}

// mostCoded bytes fit the code of 41 squares a side, with room for dirt on it.
const mostCoded = 100

// Code adds a text in squares that a camera reads, as much of it as they hold.
func (p *Paper) Code(text string) {
	for len(text) > mostCoded {
		_, size := utf8.DecodeLastRuneInString(text)
		text = text[:len(text)-size]
	}
	p.add(Block{Form: Code, Text: text})
}

// NewSheet begins a sheet.
func (p *Paper) NewSheet() { p.add(Block{Form: NewSheet}) }

// Tables are those of a paper, in its order.
func (p *Paper) Tables() []Block {
	var out []Block
	for _, b := range p.Blocks {
		if b.Form == Tabulated {
			out = append(out, b)
		}
	}
	return out
}
