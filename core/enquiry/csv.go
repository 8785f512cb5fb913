package enquiry

import (
	"strconv"
	"strings"
)

// CSV writes rows of cells for a spreadsheet: parted by commas, quoted where they must be, each line ended as the format asks. A cell that a
// spreadsheet would take for a formula gets a quote in front, so that what a customer wrote is never run; a number stays one.
func CSV(rows [][]string) string {
	var out strings.Builder
	for _, row := range rows {
		for i, cell := range row {
			if i > 0 {
				out.WriteByte(',')
			}
			cell = harmless(cell)
			if strings.ContainsAny(cell, "\",\r\n") {
				cell = `"` + strings.ReplaceAll(cell, `"`, `""`) + `"`
			}
			out.WriteString(cell)
		}
		out.WriteString("\r\n")
	}
	return out.String()
}

// harmless is a cell that no spreadsheet takes for a formula.
func harmless(cell string) string {
	if cell == "" || !strings.ContainsAny(cell[:1], "=+-@\t\r") {
		return cell
	}
	if _, err := strconv.ParseFloat(cell, 64); err == nil && !strings.ContainsAny(cell, "xXpP_nN") {
		return cell
	}
	return "'" + cell
}
