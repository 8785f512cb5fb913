package svg

import (
	"encoding/xml"
	"io"
	"strings"
	"testing"

	"finwright/core/drawing/finned"
	"finwright/core/internal/sample"
	"finwright/core/message"
	"finwright/core/units"
)

// A page with a strict policy can take the picture in, and every text of the scene is in it.
func TestSVGIsPlain(t *testing.T) {
	s := finned.Compose(sample.Footed(), finned.Options{System: units.SI, WidthPx: 760, HeightPx: 470, Text: message.English()})
	out := Write(s, Style{Ink: `"#123"<`, Grey: "50%"})
	decoder := xml.NewDecoder(strings.NewReader(out))
	texts := 0
	for {
		token, err := decoder.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
		if e, ok := token.(xml.StartElement); ok {
			if e.Name.Local == "style" || e.Name.Local == "script" {
				t.Errorf("<%s>", e.Name.Local)
			}
			for _, a := range e.Attr {
				if a.Name.Local == "style" || strings.HasPrefix(a.Name.Local, "on") {
					t.Errorf("<%s %s>", e.Name.Local, a.Name.Local)
				}
			}
			if e.Name.Local == "text" {
				texts++
			}
		}
	}
	if texts != len(s.Texts) || !strings.Contains(out, `"50%"`) || strings.Contains(out, "NaN") || strings.Contains(out, "%!") {
		t.Errorf("%d texts of %d, or a wrong colour: %.300s", texts, len(s.Texts), out)
	}
}
