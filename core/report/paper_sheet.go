package report

import (
	"strconv"
	"strings"

	"finwright/core/csv"
	"finwright/core/paper"
)

// Sheet is a table of a paper for a spreadsheet: what was printed as a number is one, in the unit that its head then bears.
func (w Writer) Sheet(t *paper.Table) EnquiryTable {
	out := EnquiryTable{Heads: make([]string, len(t.Columns)), Cells: []TableCell{{}}, Rows: make([][]int, len(t.Rows))}
	unit := make([]string, len(t.Columns))
	numbers := make([]bool, len(t.Columns))
	for i, c := range t.Columns {
		unit[i], numbers[i] = w.columnUnit(t, i)
		out.Heads[i] = c.Label
		if numbers[i] && unit[i] != "" {
			out.Heads[i] += " [" + unit[i] + "]"
		}
		out.Heads[i] = csv.Harmless(out.Heads[i])
	}
	for r, row := range t.Rows {
		out.Rows[r] = make([]int, len(row))
		for i, text := range row {
			cell := TableCell{Text: csv.Harmless(text)}
			if x, u, ok := w.numberOf(text); ok && numbers[i] && u == unit[i] {
				cell = TableCell{Number: &x}
			}
			if text != "" {
				out.Cells = append(out.Cells, cell)
				out.Rows[r][i] = len(out.Cells) - 1
			}
		}
	}
	return out
}

// columnUnit tells whether a column holds numbers, and in which unit: one that says so, or one where each cell is a number with the same unit.
func (w Writer) columnUnit(t *paper.Table, i int) (unit string, numbers bool) {
	for _, row := range t.Rows {
		if row[i] == "" {
			continue
		}
		_, u, ok := w.numberOf(row[i])
		switch {
		case !ok && t.Columns[i].Number:
			continue
		case !ok, numbers && u != unit, u == "" && !t.Columns[i].Number:
			return "", t.Columns[i].Number && unit == ""
		}
		unit, numbers = u, true
	}
	return unit, numbers
}

// numberOf reads what was printed: a number in the reader's style, and the unit behind it.
func (w Writer) numberOf(text string) (x float64, unit string, ok bool) {
	style := &w.Texts.Numbers
	digits := 0
	rest := strings.TrimLeft(text, "-−")
	if len(text)-len(rest) > len("−") {
		return 0, "", false
	}
	var plain strings.Builder
	if rest != text {
		plain.WriteByte('-')
	}
	decimal := style.Decimal
	if decimal == "" {
		decimal = "."
	}
	for more := true; more && rest != ""; {
		switch {
		case rest[0] >= '0' && rest[0] <= '9':
			digits++
			plain.WriteByte(rest[0])
			rest = rest[1:]
		case digits > 0 && style.Group != "" && strings.HasPrefix(rest, style.Group):
			rest = rest[len(style.Group):]
		case digits > 0 && strings.HasPrefix(rest, decimal):
			plain.WriteByte('.')
			rest = rest[len(decimal):]
		default:
			more = false
		}
	}
	if unit = strings.TrimLeft(rest, " \u00a0"); unit != "" && (unit == rest || strings.ContainsAny(unit, " ,;()0123456789") || len(unit) > mostUnit) {
		return 0, "", false
	}
	x, err := strconv.ParseFloat(plain.String(), 64)
	return x, unit, err == nil && digits > 0
}

// mostUnit bytes are in a unit.
const mostUnit = 16
