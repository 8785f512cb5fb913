package enquiry

import (
	"math"
	"strconv"
	"strings"
	"time"
)

// Sheet is the first sheet of a workbook as text, and what of it a reader may not see.
type Sheet struct {
	Text          string // rows of cells, tabs between them
	HiddenRows    int
	HiddenColumns int
	Merged        int // areas
	Formulas      int // cells that show what a formula gave
}

// Workbook reads the parts of a workbook in the Office Open XML format: a sheet, and the texts and styles that it names by number.
// Links to other files are not followed.
func Workbook(sheet, texts, styles string) (Sheet, error) {
	b := book{texts: sharedTexts(texts), formats: cellFormats(styles)}
	if err := b.read(sheet); err != nil {
		return Sheet{}, err
	}
	var out strings.Builder
	for _, row := range b.rows {
		for c, cell := range row {
			if c > 0 {
				out.WriteByte('\t')
			}
			out.WriteString(oneLine(cell))
		}
		out.WriteByte('\n')
	}
	b.out.Text = out.String()
	return b.out, nil
}

// oneLine is a cell without the marks that part cells.
func oneLine(cell string) string {
	return strings.Join(strings.FieldsFunc(cell, func(r rune) bool { return r == '\t' || r == '\n' || r == '\r' }), " ")
}

type book struct {
	texts   []string
	formats []format // by style
	rows    [][]string
	cells   int
	out     Sheet
}

// format is how a number is shown, as far as it changes what it says.
type format int

const (
	plainNumber format = iota
	asDay
	asFraction
	asPercent
)

// tag is a piece of XML: a tag, or the text before one.
type tag struct {
	text  string // between the last tag and this one
	name  string // without its prefix; empty at the end
	end   bool   // </name>
	empty bool   // <name/>
	attrs string
}

// eachTag goes through XML until see returns false. What is no XML ends it.
func eachTag(xml string, see func(t tag) bool) {
	for {
		open := strings.IndexByte(xml, '<')
		if open < 0 {
			return
		}
		text := xml[:open]
		if rest, ok := strings.CutPrefix(xml[open:], "<![CDATA["); ok {
			data, after, closed := strings.Cut(rest, "]]>")
			if !closed || !see(tag{text: text + data}) {
				return
			}
			xml = after
			continue
		}
		shut := strings.IndexByte(xml[open:], '>')
		if shut < 0 {
			return
		}
		inside := xml[open+1 : open+shut]
		xml = xml[open+shut+1:]
		t := tag{text: text}
		inside, t.end = strings.CutPrefix(inside, "/")
		inside, t.empty = strings.CutSuffix(inside, "/")
		t.name, t.attrs, _ = strings.Cut(inside, " ")
		if _, local, ok := strings.Cut(t.name, ":"); ok {
			t.name = local
		}
		if !see(t) {
			return
		}
	}
}

// attr returns an attribute of a tag.
func (t *tag) attr(name string) string {
	rest := " " + t.attrs
	_, after, ok := strings.Cut(rest, " "+name+"=")
	if !ok || after == "" || after[0] != '"' && after[0] != '\'' {
		return ""
	}
	value, _, _ := strings.Cut(after[1:], after[:1])
	return unescaped(value)
}

var entities = strings.NewReplacer("&lt;", "<", "&gt;", ">", "&quot;", `"`, "&apos;", "'", "&#10;", "\n", "&#9;", "\t", "&#13;", "\r", "_x000D_", "", "&amp;", "&")

func unescaped(text string) string { return entities.Replace(text) }

// sharedTexts are the texts of a workbook, by their numbers. How they are pronounced is left out.
func sharedTexts(xml string) (out []string) {
	var now strings.Builder
	inside, spoken := false, false
	eachTag(xml, func(t tag) bool {
		if inside && !spoken {
			now.WriteString(t.text)
		}
		switch t.name {
		case "si":
			if t.end || t.empty {
				out = append(out, unescaped(now.String()))
			}
			now.Reset()
		case "rPh":
			spoken = !t.end
		case "t":
			inside = !t.end && !t.empty
		}
		return len(out) < MostCells
	})
	return out
}

// cellFormats are the formats of a workbook's styles, by their numbers.
func cellFormats(xml string) (out []format) {
	own := map[string]format{}
	inside := false
	eachTag(xml, func(t tag) bool {
		switch t.name {
		case "numFmt":
			own[t.attr("numFmtId")] = formatOf(t.attr("formatCode"))
		case "cellXfs":
			inside = !t.end
		case "xf":
			if inside && !t.end {
				id := t.attr("numFmtId")
				f, ok := own[id]
				if !ok {
					f = builtIn(id)
				}
				out = append(out, f)
			}
		}
		return len(out) < MostCells
	})
	return out
}

// builtIn are the formats that a workbook has without telling.
func builtIn(id string) format {
	switch n, _ := strconv.Atoi(id); {
	case n >= 14 && n <= 22 || n >= 45 && n <= 47:
		return asDay
	case n == 12 || n == 13:
		return asFraction
	case n == 9 || n == 10:
		return asPercent
	}
	return plainNumber
}

func formatOf(code string) format {
	var bare strings.Builder
	quoted, bracket := false, false
	for _, r := range strings.ToLower(code) {
		switch {
		case r == '"':
			quoted = !quoted
		case r == '[':
			bracket = true
		case r == ']':
			bracket = false
		case !quoted && !bracket:
			bare.WriteRune(r)
		}
	}
	switch code = bare.String(); {
	case strings.Contains(code, "?/") || strings.Contains(code, "#/"):
		return asFraction
	case strings.ContainsAny(code, "ymdh") && !strings.Contains(code, "general"):
		return asDay
	case strings.Contains(code, "%"):
		return asPercent
	}
	return plainNumber
}

// read reads a sheet.
func (b *book) read(xml string) (err error) {
	var cell struct {
		column        int
		kind, style   string
		value, inline strings.Builder
		formula       bool
	}
	inValue, inText := false, false
	rowAt := 0
	refuse := func(key string, most int) bool { err = &Refusal{key, most}; return false }
	eachTag(xml, func(t tag) bool {
		if inValue {
			cell.value.WriteString(t.text)
		}
		if inText {
			cell.inline.WriteString(t.text)
		}
		switch t.name {
		case "col":
			if t.attr("hidden") == "1" || t.attr("hidden") == "true" {
				from, _ := strconv.Atoi(t.attr("min"))
				to, _ := strconv.Atoi(t.attr("max"))
				b.out.HiddenColumns += max(0, min(to, MostColumns)-from+1)
			}
		case "mergeCell":
			b.out.Merged++
		case "row":
			if t.end {
				break
			}
			rowAt++
			if n, e := strconv.Atoi(t.attr("r")); e == nil && n >= rowAt {
				rowAt = n
			}
			if rowAt > MostRows {
				return refuse("enquiry.rows", MostRows)
			}
			for len(b.rows) < rowAt {
				b.rows = append(b.rows, nil)
			}
			if hidden := t.attr("hidden"); hidden == "1" || hidden == "true" {
				b.out.HiddenRows++
			}
		case "c":
			if !t.end {
				at := columnOf(t.attr("r"))
				if at < 0 {
					at = 0
					if rowAt > 0 {
						at = len(b.rows[rowAt-1])
					}
				}
				cell.column, cell.kind, cell.style, cell.formula = at, t.attr("t"), t.attr("s"), false
				cell.value.Reset()
				cell.inline.Reset()
			}
			if !t.end && !t.empty || rowAt == 0 {
				break
			}
			if cell.column >= MostColumns {
				return refuse("enquiry.columns", MostColumns)
			}
			if b.cells++; b.cells > MostCells {
				return refuse("enquiry.cells", MostCells)
			}
			row := &b.rows[rowAt-1]
			for len(*row) <= cell.column {
				*row = append(*row, "")
			}
			text := unescaped(cell.value.String())
			if cell.formula {
				b.out.Formulas++
			}
			(*row)[cell.column] = b.shown(cell.kind, cell.style, text, unescaped(cell.inline.String()), cell.formula)
		case "f":
			cell.formula = true
		case "v":
			inValue = !t.end && !t.empty
		case "t":
			inText = !t.end && !t.empty
		}
		return true
	})
	return err
}

// columnOf is the place of a column in the name of a cell, from 0 on; -1 of what is none.
func columnOf(name string) int {
	n := 0
	for _, r := range name {
		if r < 'A' || r > 'Z' {
			break
		}
		if n = 26*n + int(r-'A') + 1; n > 1<<20 {
			break
		}
	}
	return n - 1
}

// shown is what a cell shows, as far as it matters here.
func (b *book) shown(kind, style, value, inline string, formula bool) string {
	switch kind {
	case "s":
		if n, err := strconv.Atoi(value); err == nil && n >= 0 && n < len(b.texts) {
			return b.texts[n]
		}
		return ""
	case "inlineStr":
		return inline
	case "str", "e", "b":
		return value
	}
	if value == "" {
		if formula {
			return "=" // what it gives is not in the file
		}
		return ""
	}
	x, err := strconv.ParseFloat(value, 64)
	if err != nil || math.IsInf(x, 0) || math.IsNaN(x) {
		return value
	}
	f := plainNumber
	if n, err := strconv.Atoi(style); err == nil && n >= 0 && n < len(b.formats) {
		f = b.formats[n]
	}
	switch {
	case f == asDay && x >= 1 && x < 3e6:
		return time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC).AddDate(0, 0, int(x)).Format("2006-01-02")
	case f == asFraction && x > 0 && x < 1000:
		if text, ok := sixtyFourths(x); ok {
			return text
		}
	case f == asPercent:
		return strconv.FormatFloat(x*100, 'g', 12, 64) + " %"
	}
	return strconv.FormatFloat(x, 'g', 12, 64)
}

// sixtyFourths writes a number as a fraction of at most so many parts, if it is one.
func sixtyFourths(x float64) (text string, ok bool) {
	n := math.Round(x * 64)
	if math.Abs(x*64-n) > 1e-6 || n == 0 {
		return "", false
	}
	over, den := int(n), 64
	for over%2 == 0 && den > 1 {
		over, den = over/2, den/2
	}
	whole, part := over/den, over%den
	switch {
	case part == 0:
		return strconv.Itoa(whole), true
	case whole == 0:
		return ratio(part, den), true
	}
	return strconv.Itoa(whole) + " " + ratio(part, den), true
}
