package paper

import "strings"

// CSV writes a table as a file that spreadsheets open: a line a row, cells between commas, with a mark by which they know the
// letters. A cell that they would take for a formula stands behind an apostrophe.
func (t *Table) CSV() string {
	var out strings.Builder
	out.WriteString("\ufeff")
	for i, c := range t.Columns {
		cell(&out, i, c.Label)
	}
	out.WriteString("\r\n")
	for _, row := range t.Rows {
		for i, text := range row {
			cell(&out, i, text)
		}
		out.WriteString("\r\n")
	}
	return out.String()
}

func cell(out *strings.Builder, i int, text string) {
	if i > 0 {
		out.WriteByte(',')
	}
	text = Harmless(text)
	if strings.ContainsAny(text, "\",\r\n;\t") || strings.TrimSpace(text) != text {
		text = `"` + strings.ReplaceAll(text, `"`, `""`) + `"`
	}
	out.WriteString(text)
}

// Harmless puts an apostrophe before a text that a spreadsheet would compute. A number with its sign is none.
func Harmless(text string) string {
	first := strings.TrimLeft(text, " \u00a0")
	if first == "" || !strings.ContainsAny(first[:1], "=+-@\t\r|%") || isNumber(first) {
		return text
	}
	return "'" + text
}

// isNumber reports whether a text has a sign, digits and marks between them, and nothing else.
func isNumber(text string) bool {
	digits := strings.TrimLeft(text, "+-")
	return len(text)-len(digits) <= 1 && digits != "" && digits[0] >= '0' && digits[0] <= '9' && strings.Trim(digits, "0123456789.,") == ""
}
