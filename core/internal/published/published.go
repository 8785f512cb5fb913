// Package published reads the reference tables of testdata/published for tests.
// Each row knows its file and line, so that a failing check names its source.
//
// A check is held to the digits that the source prints. Where it is wider a reason stands beside it; but where a source
// gives more than ten digits, 1e-9 to 1e-13 is what rounding leaves of two orders of the same sums.
package published

import (
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"testing"
)

// Proof is what a table proves; it is the name of its folder.
type Proof string

const (
	// Book tables are printed in a book, a paper or a standard: that a figure is right.
	Book Proof = "book"
	// Library tables were computed by an open library: that two programs read the same source alike.
	Library Proof = "library"
	// Computed tables are our own computation by another way, mostly with many digits: that an equation is solved, not
	// that it is the right one.
	Computed Proof = "computed"
	// Repeated tables hold what the code holds: that nothing was changed by a slip, and no more.
	Repeated Proof = "repeated"
)

// Row is one line of a reference table.
type Row struct {
	tb    testing.TB
	where string
	cells map[string]string
}

// Read returns the rows of testdata/published/<of>/<name>.csv, and fails the test
// unless the table has at least one and each names its source.
func Read(tb testing.TB, of Proof, name string) []Row {
	tb.Helper()
	_, here, _, _ := runtime.Caller(0)
	path := filepath.Join(filepath.Dir(here), "../../../testdata/published", string(of), name+".csv")
	file, err := os.Open(path)
	if err != nil {
		tb.Fatal(err)
	}
	defer file.Close()
	reader := csv.NewReader(file)
	header, err := reader.Read()
	if err != nil {
		tb.Fatalf("%s/%s.csv: %v", of, name, err)
	}
	var rows []Row
	for {
		record, err := reader.Read()
		if record == nil {
			break
		}
		if err != nil {
			tb.Fatalf("%s/%s.csv: %v", of, name, err)
		}
		line, _ := reader.FieldPos(0)
		cells := make(map[string]string, len(header))
		for i, column := range header {
			cells[column] = record[i]
		}
		if cells["source"] == "" {
			tb.Fatalf("testdata/published/%s/%s.csv:%d names no source", of, name, line)
		}
		rows = append(rows, Row{tb, fmt.Sprintf("testdata/published/%s/%s.csv:%d", of, name, line), cells})
	}
	if len(rows) == 0 {
		tb.Fatalf("%s/%s.csv has no rows", of, name)
	}
	return rows
}

// Where returns the row's file and line.
func (r Row) Where() string { return r.where }

// Text returns the cell of a column, and fails the test if there is no such column.
func (r Row) Text(column string) string {
	r.tb.Helper()
	text, ok := r.cells[column]
	if !ok {
		r.tb.Fatalf("%s: no column %q", r.where, column)
	}
	return text
}

// Float returns the number in a column, and fails the test if it holds none.
func (r Row) Float(column string) float64 {
	r.tb.Helper()
	v, err := strconv.ParseFloat(r.Text(column), 64)
	if err != nil {
		r.tb.Fatalf("%s: column %s: %v", r.where, column, err)
	}
	return v
}

// Has reports whether a column of this row holds anything; what a source does
// not give is an empty cell.
func (r Row) Has(column string) bool {
	r.tb.Helper()
	return r.Text(column) != ""
}

// CheckPrinted is Check with half a unit in the last printed digit as tolerance.
func (r Row) CheckPrinted(column string, got float64) {
	r.tb.Helper()
	want := r.Float(column)
	_, decimals, _ := strings.Cut(r.Text(column), ".")
	half := 0.5000001 * math.Pow10(-len(decimals))
	if diff := math.Abs(got - want); !(diff <= half) {
		r.tb.Errorf("%s: %s = %.12g, want %s as printed (%s)", r.where, column, got, r.Text(column), r.Text("source"))
	}
}

// Check reports an error, naming the row and its source, unless got is within
// the relative tolerance of the number in the column.
func (r Row) Check(column string, got, tolerance float64) {
	r.tb.Helper()
	want := r.Float(column)
	if diff := relative(got, want); !(diff <= tolerance) {
		r.tb.Errorf("%s: %s = %.17g, want %.17g: off by %.2g, allowed %.2g (%s)",
			r.where, column, got, want, diff, tolerance, r.Text("source"))
	}
}

func relative(got, want float64) float64 {
	if want == 0 {
		return math.Abs(got)
	}
	return math.Abs(got/want - 1)
}
