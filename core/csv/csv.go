// Package csv writes tables that spreadsheets open, of texts that may come from anywhere.
package csv

import (
	"strconv"
	"strings"
)

// Mark is what a spreadsheet knows the letters of a file by; it stands before the first row.
const Mark = "\ufeff"

// Write writes rows of cells: parted by commas, quoted where they must be or where a spreadsheet might part them otherwise, each line ended as
// the format asks. A cell that would be taken for a formula is made Harmless.
func Write(rows ...[]string) string {
	var out strings.Builder
	for _, row := range rows {
		for i, cell := range row {
			if i > 0 {
				out.WriteByte(',')
			}
			cell = Harmless(cell)
			if strings.ContainsAny(cell, "\",\r\n;\t") || strings.TrimSpace(cell) != cell {
				cell = `"` + strings.ReplaceAll(cell, `"`, `""`) + `"`
			}
			out.WriteString(cell)
		}
		out.WriteString("\r\n")
	}
	return out.String()
}

// Harmless puts an apostrophe before a text that a spreadsheet would compute, spaces before it or not: what a customer wrote is never run. A number with
// its sign is none.
func Harmless(text string) string {
	first := strings.TrimLeft(text, " \u00a0")
	if first == "" || !strings.ContainsAny(first[:1], "=+-@\t\r|%") || isNumber(first) {
		return text
	}
	return "'" + text
}

// isNumber reports whether a text is a number, or a sign and digits with marks between them.
func isNumber(text string) bool {
	if _, err := strconv.ParseFloat(text, 64); err == nil && !strings.ContainsAny(text, "xXpP_nN") {
		return true
	}
	digits := strings.TrimLeft(text, "+-")
	return len(text)-len(digits) <= 1 && digits != "" && digits[0] >= '0' && digits[0] <= '9' && strings.Trim(digits, "0123456789.,") == ""
}
