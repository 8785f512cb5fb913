package csv

import (
	"encoding/csv"
	"slices"
	"strings"
	"testing"
)

// What is written is read by another reader, and no cell begins as a formula does.
func TestCSVComesBack(t *testing.T) {
	rows := [][]string{
		{"Item", "Quantity", "Tube OD [mm]", "Words"},
		{"A-1", "40", "-25.4", `1" OD, 14 BWG`},
		{"=1+1", "+1e3", "@SUM(A1)", "two\nlines"},
		{"\t=cmd", "-1+2", "", "外径"},
		{"\r=x", "+nan", "-Inf", "'quoted'"},
	}
	got, err := csv.NewReader(strings.NewReader(Write(rows...))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	want := [][]string{rows[0], rows[1], {"'=1+1", "+1e3", "'@SUM(A1)", "two\nlines"}, {"'\t=cmd", "'-1+2", "", "外径"}, {"'\r=x", "'+nan", "'-Inf", "'quoted'"}}
	for i := range want {
		for c := range got[i] { // the reader takes \r\n for \n, and a lone \r in quotes stays
			if got[i][c] != want[i][c] {
				t.Errorf("row %d, cell %d: %q, want %q", i, c, got[i][c], want[i][c])
			}
		}
	}
	if slices.ContainsFunc(got[2], func(cell string) bool { return strings.HasPrefix(cell, "=") }) {
		t.Error("a formula is left")
	}
}
