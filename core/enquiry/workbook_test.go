package enquiry

import (
	"strings"
	"testing"
)

const stylesXML = `<styleSheet><numFmts count="1"><numFmt numFmtId="164" formatCode="d\-mmm"/></numFmts><cellStyleXfs><xf numFmtId="0"/></cellStyleXfs><cellXfs count="4"><xf numFmtId="0"/><xf numFmtId="164"/><xf numFmtId="12"/><xf numFmtId="14"/></cellXfs></styleSheet>`

func TestWorkbookIsRead(t *testing.T) {
	texts := `<?xml version="1.0"?><sst><si><t>Item</t></si><si><t>Qty</t></si><si><r><t>Tube </t></r><r><t>OD &quot;in&quot;</t></r><rPh><t>x</t></rPh></si><si><t>Fin height</t></si></sst>`
	sheet := `<worksheet><cols><col min="5" max="6" hidden="1"/></cols><sheetData>
		<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" t="s"><v>2</v></c><c r="D1" t="s"><v>3</v></c></row>
		<row r="2" hidden="1"><c r="A2"><v>1</v></c><c r="B2"><f>20*2</f><v>40</v></c><c r="C2" s="2"><v>1.25</v></c><c r="D2" s="1"><v>46239</v></c></row>
		<row r="4"><c r="A4" t="inlineStr"><is><t>two
lines</t></is></c><c r="B4"><f>[1]Other!A1</f></c><c r="D4" t="e"><v>#REF!</v></c></row>
		</sheetData><mergeCells><mergeCell ref="A1:B1"/></mergeCells></worksheet>`
	got, err := Workbook(sheet, texts, stylesXML)
	if err != nil {
		t.Fatal(err)
	}
	want := "Item\tQty\tTube OD \"in\"\tFin height\n1\t40\t1 1/4\t2026-08-05\n\ntwo lines\t=\t\t#REF!\n"
	if got.Text != want {
		t.Errorf("%q\nwant %q", got.Text, want)
	}
	if got.HiddenRows != 1 || got.HiddenColumns != 2 || got.Merged != 1 || got.Formulas != 2 {
		t.Errorf("%+v", got)
	}
	e, err := Text(got.Text, nil, unheard)
	if err != nil || len(e.Items) != 2 {
		t.Fatal(err, len(e.Items))
	}
	if h, ok := e.Items[0].Find("fin_height"); !ok || h.Text != "5/8 in" || len(h.Doubts) == 0 {
		t.Errorf("a day is read as %v", h)
	}
}

func TestWorkbooksOutOfBoundsAreRefused(t *testing.T) {
	many := strings.Repeat("<c><v>1</v></c>", 100)
	for key, sheet := range map[string]string{
		"enquiry.columns": `<sheetData><row r="1"><c r="ZZZ1"><v>1</v></c></row></sheetData>`,
		"enquiry.rows":    `<sheetData><row r="9999999"><c r="A1"><v>1</v></c></row></sheetData>`,
		"enquiry.cells":   "<sheetData>" + strings.Repeat("<row>"+many+"</row>", MostCells/100+1) + "</sheetData>",
	} {
		_, err := Workbook(sheet, "", "")
		refused, ok := err.(*Refusal)
		if !ok || refused.Key != key {
			t.Errorf("want %s, got %v", key, err)
		}
	}
	for _, sheet := range []string{"", "<", "<row", "no XML at all", "<c><v>1</v></c>", `<row r="x"><c r="`, "<sheetData><row><c t=\"s\"><v>99</v></c></row>"} {
		if _, err := Workbook(sheet, "", ""); err != nil {
			t.Errorf("%q: %v", sheet, err)
		}
	}
}

func FuzzWorkbook(f *testing.F) {
	f.Add(`<sheetData><row r="1"><c r="A1" t="s" s="1"><f>x</f><v>0</v></c></row></sheetData>`, "<si><t>a</t></si>", stylesXML)
	f.Fuzz(func(t *testing.T, sheet, texts, styles string) {
		if got, err := Workbook(sheet, texts, styles); err == nil && strings.Count(got.Text, "\n") > MostRows {
			t.Error("more rows than there may be")
		}
	})
}
