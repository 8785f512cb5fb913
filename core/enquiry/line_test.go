package enquiry

import (
	"math"
	"os"
	"strings"
	"testing"
)

// row of the tables of testdata/enquiry.
type example struct {
	file                  string
	line                  int
	text, head            string
	fields                map[string]string
	doubts, notMade, left []string
}

func examples(t *testing.T, files ...string) (out []example) {
	t.Helper()
	for _, file := range files {
		content, err := os.ReadFile("../../testdata/enquiry/" + file)
		if err != nil {
			t.Fatal(err)
		}
		for n, line := range strings.Split(strings.TrimRight(string(content), "\n"), "\n")[1:] {
			columns := strings.Split(line, "\t")
			e := example{file: file, line: n + 2, text: columns[0], fields: map[string]string{}}
			if columns = columns[1:]; file == "cells.tsv" {
				e.head, columns = columns[0], columns[1:]
			}
			for _, f := range parts(columns[0]) {
				name, text, _ := strings.Cut(f, "=")
				e.fields[name] = text
			}
			e.doubts, e.notMade, e.left = parts(columns[1]), parts(columns[2]), parts(columns[3])
			out = append(out, e)
		}
	}
	return out
}

func parts(list string) (out []string) {
	for part := range strings.SplitSeq(list, ";") {
		if part = strings.TrimSpace(part); part != "" {
			out = append(out, part)
		}
	}
	return out
}

// alike reports whether two texts of a field say the same, to the digits of a table of sizes.
func alike(field, a, b string) bool {
	x, _, _ := si(field, a)
	y, _, _ := si(field, b)
	return a == b || x != 0 && math.Abs(x-y) <= 2e-4*math.Abs(x)
}

// told reports whether a doubt as the tables write it stands at a reading.
func told(read *Read, doubt string) bool {
	field, second, _ := strings.Cut(doubt, ">")
	other, text, ok := strings.Cut(second, "=")
	if !ok {
		other, text = field, second
	}
	x, found := read.Find(field)
	if !found {
		return false
	}
	for _, d := range x.Doubts {
		if d.Field == other && alike(other, d.Text, text) {
			return true
		}
	}
	return false
}

// score counts what was read.
type score struct{ wanted, right, flagged, silent, missing, asked, over int }

// TestShareReadRight holds the reader to the tables: at least 95 of 100 fields are read right, and none is read wrong without being marked as a
// guess; every second reading that the tables name stands beside its first, and so does every word that is not understood.
func TestShareReadRight(t *testing.T) {
	var all score
	for _, file := range []string{"lines.tsv", "short.tsv", "ambiguous.tsv", "not_made.tsv", "cells.tsv", "later.tsv"} {
		var s score
		list := examples(t, file)
		for _, e := range list {
			read := Line(e.text)
			if e.head != "" {
				read = Cell(e.head, e.text)
			}
			s.judge(t, &e, &read)
		}
		t.Logf("%-14s %3d texts, %4d fields: %4d right, %d wrong but marked, %d wrong in silence, %d missing; %d marked, of these %d beyond the table",
			file, len(list), s.wanted, s.right, s.flagged, s.silent, s.missing, s.asked, s.over)
		all.wanted, all.right, all.silent, all.over, all.asked = all.wanted+s.wanted, all.right+s.right, all.silent+s.silent, all.over+s.over, all.asked+s.asked
	}
	share := float64(all.right) / float64(all.wanted)
	t.Logf("read right: %.1f %% of %d fields", 100*share, all.wanted)
	if share < 0.95 {
		t.Errorf("only %.1f %% of the fields are read right", 100*share)
	}
	if all.silent > 0 {
		t.Errorf("%d fields are read wrong in silence", all.silent)
	}
	if all.over > all.wanted/20 {
		t.Errorf("%d readings are marked as guesses that are none", all.over)
	}
}

func (s *score) judge(t *testing.T, e *example, read *Read) {
	for name, want := range e.fields {
		s.wanted++
		switch x, ok := read.Find(name); {
		case ok && alike(name, x.Text, want):
			s.right++
		case ok && len(x.Doubts) > 0:
			s.flagged++
			t.Logf("%s:%d %q: %s is guessed to be %q, want %q", e.file, e.line, e.text, name, x.Text, want)
		case ok:
			s.silent++
			t.Logf("%s:%d %q: SILENT %s is read as %q, want %q", e.file, e.line, e.text, name, x.Text, want)
		default:
			s.missing++
			t.Logf("%s:%d %q: %s is not read, want %q", e.file, e.line, e.text, name, want)
		}
	}
	for i := range read.Readings {
		x := &read.Readings[i]
		if _, wanted := e.fields[x.Field]; !wanted && x.Field != Seam {
			if len(x.Doubts) == 0 {
				s.silent++
				t.Logf("%s:%d %q: SILENT %s is read as %q, and is not there", e.file, e.line, e.text, x.Field, x.Text)
			} else {
				s.flagged++
				t.Logf("%s:%d %q: %s is guessed to be %q, and is not there", e.file, e.line, e.text, x.Field, x.Text)
			}
			continue
		}
		if len(x.Doubts) > 0 {
			s.asked++
			wanted := false
			for _, d := range e.doubts {
				wanted = wanted || strings.HasPrefix(d, x.Field+">")
			}
			if !wanted {
				s.over++
				t.Logf("%s:%d %q: over %s=%q marked %v", e.file, e.line, e.text, x.Field, x.Text, x.Doubts)
			}
		}
	}
	for _, d := range e.doubts {
		if !told(read, d) {
			t.Errorf("%s:%d %q: no second reading %s", e.file, e.line, e.text, d)
		}
	}
	for _, id := range e.notMade {
		found := false
		for _, n := range read.NotMade {
			found = found || n.ID == id
		}
		if !found {
			t.Errorf("%s:%d %q: it is not said that %s is not made here", e.file, e.line, e.text, id)
		}
	}
	for _, word := range e.left {
		for part := range strings.FieldsSeq(word) {
			if !strings.Contains(unread(read), part) {
				t.Errorf("%s:%d %q: %q is not kept as not understood, of %q", e.file, e.line, e.text, part, unread(read))
			}
		}
	}
}

func unread(read *Read) string {
	var out []string
	for _, s := range read.Unread {
		out = append(out, read.Text[s.From:s.To])
	}
	return strings.Join(out, " ")
}
