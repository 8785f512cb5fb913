package enquiry

import (
	"strings"
	"unicode"
)

// Ceilings on what is taken for an enquiry, against floods.
const (
	MostCells   = 200_000
	MostColumns = 256
	MostRows    = 20_000
)

// Refusal says why a text is not read at all.
type Refusal struct {
	Key  string // of a text
	Most int    // that is taken; 0: no ceiling was passed
}

func (r *Refusal) Error() string { return "enquiry: " + r.Key }

// delimiters are what parts columns; of those that fit the earlier.
var delimiters = []byte{'\t', ';', '|', ','}

// split takes a text apart into rows of cells. Without columns each line is a row of one cell.
func split(text string) (rows [][]string, columns bool, err error) {
	text = strings.TrimPrefix(text, "\ufeff")
	if strings.ContainsRune(text, 0) {
		return nil, false, &Refusal{Key: "enquiry.binary"}
	}
	for _, d := range delimiters {
		found, err := parse(text, d, sample)
		if err != nil && d != ',' {
			return nil, false, err
		}
		if err == nil && isTable(found, d) {
			rows, err = parse(text, d, MostRows)
			return rows, true, err
		}
	}
	lines, n := strings.Split(strings.ReplaceAll(strings.ReplaceAll(text, "\r\n", "\n"), "\r", "\n"), "\n"), 0
	for _, line := range lines {
		if n++; n > MostRows {
			return nil, false, &Refusal{"enquiry.rows", MostRows}
		}
		rows = append(rows, []string{line})
	}
	return rows, false, nil
}

// sample is how many rows are looked at for the sign that parts columns.
const sample = 40

// parse reads rows of cells, which may stand in quotes; at most so many rows of a sample. A cell that begins with a quote and has no second one
// that ends it is the text that it is, as 5/8" is.
func parse(text string, delimiter byte, most int) (rows [][]string, err error) {
	cells := 0
	row := []string{}
	for i := 0; i <= len(text); {
		cell, next := cutCell(text, i, delimiter)
		row = append(row, cell)
		if len(row) > MostColumns {
			return nil, &Refusal{"enquiry.columns", MostColumns}
		}
		if cells++; cells > MostCells {
			return nil, &Refusal{"enquiry.cells", MostCells}
		}
		if next < len(text) && text[next] == delimiter {
			i = next + 1
			continue
		}
		if rows = append(rows, row); len(rows) >= most {
			if most == MostRows && strings.TrimSpace(text[min(next, len(text)):]) != "" {
				return nil, &Refusal{"enquiry.rows", MostRows}
			}
			return rows, nil
		}
		row = []string{}
		if next >= len(text) {
			break
		}
		if i = next + 1; text[next] == '\r' && i < len(text) && text[i] == '\n' {
			i++
		}
		if i == len(text) {
			break // the last line's end begins no row
		}
	}
	return rows, nil
}

// longestCell bounds what is looked through for the end of a quoted cell.
const longestCell = 32_000

// cutCell reads the cell at a place, and where it ends.
func cutCell(text string, i int, delimiter byte) (cell string, next int) {
	ends := func(k int) bool {
		return k >= len(text) || text[k] == delimiter || text[k] == '\n' || text[k] == '\r'
	}
	if i < len(text) && text[i] == '"' {
		var out strings.Builder
		for k := i + 1; k < len(text) && k-i < longestCell; k++ {
			if text[k] != '"' {
				out.WriteByte(text[k])
				continue
			}
			if k+1 < len(text) && text[k+1] == '"' {
				out.WriteByte('"')
				k++
				continue
			}
			if ends(k + 1) {
				return out.String(), k + 1
			}
			break
		}
	}
	for next = i; !ends(next); next++ {
	}
	return text[i:next], next
}

// isTable reports whether rows are columns of a table and no lines of a mail: most of them have as many cells, and where a comma parts them, or
// few do, some row names its columns.
func isTable(rows [][]string, delimiter byte) bool {
	counts, filled, best := map[int]int{}, 0, 0
	for _, row := range rows {
		if strings.TrimSpace(strings.Join(row, "")) == "" {
			continue
		}
		filled++
		if len(row) > 1 {
			counts[len(row)]++
		}
	}
	for _, n := range counts {
		best = max(best, n)
	}
	switch {
	case best == 0:
		return false
	case delimiter == '\t':
		return 2*best >= filled
	case headRow(rows) < 0:
		return false
	}
	return 5*best >= 3*filled
}

// headRow finds the row that names the columns, among the first of a table; -1 where none does.
func headRow(rows [][]string) int {
	for i, row := range rows[:min(len(rows), sample/2)] {
		known, named, filled := 0, 0, 0
		for _, cell := range row {
			if strings.TrimSpace(cell) == "" {
				continue
			}
			filled++
			if c, ok := Head(cell); ok && !holdsNumber(cell) && (c.Field != "" || c.Side != "") {
				known++
				if c.Field != "" {
					named++
				}
			}
		}
		if named >= 2 && 2*known >= filled {
			return i
		}
	}
	return -1
}

// holdsNumber reports whether a cell has a digit, as heads seldom do.
func holdsNumber(cell string) bool { return strings.ContainsFunc(cell, unicode.IsDigit) }

// headsOf returns the names of the columns of a table whose names begin in row first: a name that stands over several is theirs all, and a row
// of units below is theirs too. It returns the first row behind them.
func headsOf(rows [][]string, first int) (heads []string, next int) {
	width := 0
	for _, row := range rows[first:min(len(rows), first+sample)] {
		width = max(width, len(row))
	}
	heads = make([]string, width)
	if first > 0 && isOver(rows[first-1], rows[first]) {
		over := ""
		for c := range heads {
			if text := cellAt(rows[first-1], c); text != "" {
				over = text
			}
			heads[c] = over
		}
	}
	for c := range heads {
		heads[c] = strings.TrimSpace(heads[c] + " " + cellAt(rows[first], c))
	}
	for next = first + 1; next < len(rows) && isUnits(rows[next]); next++ {
		for c := range heads {
			if unit := cellAt(rows[next], c); unit != "" {
				heads[c] = strings.TrimSpace(heads[c] + " " + unit)
			}
		}
	}
	return heads, next
}

func cellAt(row []string, c int) string {
	if c >= len(row) {
		return ""
	}
	return strings.TrimSpace(row[c])
}

// isOver reports whether a row names groups of the columns that the next row names: fewer cells, of words alone.
func isOver(over, heads []string) bool {
	filled, below := 0, 0
	for c := range heads {
		if cellAt(heads, c) != "" {
			below++
		}
		if text := cellAt(over, c); text != "" {
			if holdsNumber(text) {
				return false
			}
			if h, ok := Head(text); ok && (h.Side != "" || h.Field != "") {
				filled++
			}
		}
	}
	return filled > 0 && filled < below
}

// isUnits reports whether a row holds units or further names alone.
func isUnits(row []string) bool {
	found := 0
	for _, cell := range row {
		text := strings.Trim(strings.TrimSpace(cell), "()[]")
		if text == "" || text == "-" {
			continue
		}
		list := tokens(text)
		for i := range list {
			if list[i].sort != aWord || list[i].says.kind != "unit" && list[i].says.kind != "is" {
				return false
			}
		}
		found++
	}
	return found > 0
}
