package enquiry

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"finwright/core/units"
)

// said writes what an item says: its mark and the fields asked for.
func said(x *Entry, fields ...string) string {
	out := []string{x.Mark}
	for _, f := range fields {
		if got, ok := x.Find(f); ok {
			out = append(out, got.Text)
		} else {
			out = append(out, "-")
		}
	}
	return strings.Join(out, " | ")
}

func TestTablesInTheirStyles(t *testing.T) {
	for name, text := range map[string]string{
		"tabs":           "Item\tQty\tTube OD (in)\tWall\tFin height\n1\t40\t1\t14 BWG MW\t5/8\n2\t60\t1.25\t12 BWG MW\t5/8\n",
		"commas":         "Item,Qty,Tube OD (in),Wall,Fin height\n1,40,1,14 BWG MW,5/8\n2,60,1.25,12 BWG MW,5/8\n",
		"quoted":         "\"Item\",\"Qty\",\"Tube OD\",\"Wall\",\"Fin height\"\r\n\"1\",\"40\",\"1\"\"\",\"14 BWG MW\",\"5/8\"\"\"\r\n\"2\",\"60\",\"1.25\"\"\",\"12 BWG MW\",\"5/8\"\"\"\r\n",
		"bare quotes":    "Item;Qty;Tube OD;Wall;Fin height\n1;40;1\";14 BWG MW;5/8\"\n2;60;1.25\";12 BWG MW;5/8\"\n",
		"a title":        "Enquiry 4711\t\t\t\t\n\t\t\t\t\nItem\tQty\tTube OD\tWall\tFin height\n1\t40\t1 in\t14 BWG MW\t5/8\n2\t60\t1.25 in\t12 BWG MW\t5/8\nTotal\t100\t\t\t\n",
		"units below":    "Item\tQty\tTube OD\tWall\tFin height\n\t\t(in)\t\t(in)\n1\t40\t1\t14 BWG MW\t5/8\n2\t60\t1.25\t12 BWG MW\t5/8\n",
		"merged heads":   "\t\tTube\t\tFin\nItem\tQty\tOD (in)\tWall\tHeight\n1\t40\t1\t14 BWG MW\t5/8\n2\t60\t1.25\t12 BWG MW\t5/8\n",
		"German":         "Pos.;Menge;Rohraußendurchmesser (Zoll);Wanddicke;Rippenhöhe\n1;40;1;14 BWG min;5/8\n2;60;1,25;12 BWG min;5/8\n",
		"Spanish":        "Partida;Cantidad;Diámetro exterior (pulg);Pared;Altura de aleta\n1;40;1;14 BWG mín;5/8\n2;60;1,25;12 BWG mín;5/8\n",
		"Chinese":        "序号\t数量\t外径 (in)\t壁厚\t翅片高度\n1\t40\t1\t14 BWG 最小\t5/8\n2\t60\t1.25\t12 BWG 最小\t5/8\n",
		"ditto":          "Item\tQty\tTube OD\tWall\tFin height\n1\t40\t1 in\t14 BWG MW\t5/8\n2\t60\t1.25 in\t12 BWG MW\tditto\n",
		"two rows each":  "Item\tQty\tDescription\n1\t40\ttube 1 in OD x 14 BWG MW\n\t\tfins 5/8 in high\n2\t60\ttube 1.25 in OD x 12 BWG MW\n\t\tfins 5/8 in high\n",
		"lines":          "Dear Sirs,\n\n1) 40 off tube 1 in OD x 14 BWG MW, fins 5/8 in high\n2) 60 off tube 1.25 in OD x 12 BWG MW, fins 5/8 in high\n\nRegards\n",
		"many lines":     "Item 1: 40 off\ntube 1 in OD x 14 BWG MW\nfins 5/8 in high\n\nItem 2: 60 off\ntube 1.25 in OD x 12 BWG MW\nfins 5/8 in high\n",
		"as item 1 but":  "Item 1: 40 off tube 1 in OD x 14 BWG MW, fins 5/8 in high\nItem 2: 60 off as item 1 but tube 1.25 in OD x 12 BWG MW\n",
		"said of all":    "All tubes with fins 5/8 in high.\nItem 1: 40 off tube 1 in OD x 14 BWG MW\nItem 2: 60 off tube 1.25 in OD x 12 BWG MW\n",
		"byte order":     "\ufeffItem\tQty\tTube OD (in)\tWall\tFin height\n1\t40\t1\t14 BWG MW\t5/8\n2\t60\t1.25\t12 BWG MW\t5/8\n",
		"blank between":  "Item\tQty\tTube OD\tWall\tFin height\n\n1\t40\t1 in\t14 BWG MW\t5/8\n\n2\t60\t1.25 in\t12 BWG MW\t5/8\n",
		"unnamed column": "Item\tQty\tTube OD\tWall\tFin height\t\n1\t40\t1 in\t14 BWG MW\t5/8\turgent\n2\t60\t1.25 in\t12 BWG MW\t5/8\t\n",
	} {
		e, err := Text(text, nil, unheard)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		var got []string
		for i := range e.Items {
			item := &e.Items[i]
			od, _ := item.Find("tube_od")
			if od == nil || !alike("tube_od", od.Text, []string{"1 in", "1.25 in"}[min(i, 1)]) {
				t.Errorf("%s: item %d has the tube %v", name, i+1, od)
			}
			if h, _ := item.Find("fin_height"); h == nil || !alike("fin_height", h.Text, "5/8 in") {
				t.Errorf("%s: item %d has the fin %v", name, i+1, h)
			}
			got = append(got, said(item, "quantity", "tube_wall", "wall_basis"))
		}
		if want := "1 | 40 | 14 BWG | minimum\n2 | 60 | 12 BWG | minimum"; strings.Join(got, "\n") != want {
			t.Errorf("%s:\n%s\nwant\n%s", name, strings.Join(got, "\n"), want)
		}
	}
}

func TestWhatIsNoItemIsLeft(t *testing.T) {
	e, err := Text("Dear Sirs,\nplease quote as below.\n\n1) 40 off tube 1 in OD x 14 BWG MW\n\nKind regards\nJ. Doe", nil, unheard)
	if err != nil || len(e.Items) != 1 || len(e.Left) != 4 || e.Left[0].Text != "Dear Sirs," || e.Left[3].Row != 7 {
		t.Errorf("%v: %d items, left %v", err, len(e.Items), e.Left)
	}
}

// What was told of a column stands, whatever its head says.
func TestColumnsAreToldOtherwise(t *testing.T) {
	text := "Item\tQty\tSpacing\n1\t40\t2.5\n"
	e, _ := Text(text, nil, unheard)
	if x, ok := e.Items[0].Find("fin_pitch"); !ok || len(x.Doubts) == 0 {
		t.Errorf("a spacing is read as %v", e.Items[0].Whole)
	}
	e.Columns[2].Field, e.Columns[2].Unit = FinGap, "mm"
	again, _ := Text(text, e.Columns, unheard)
	if x, ok := again.Items[0].Find(FinGap); !ok || x.Text != "2.5 mm" {
		t.Errorf("told to be a gap it is read as %v", again.Items[0].Whole)
	}
	e.Columns[2].Skipped = true
	if again, _ = Text(text, e.Columns, unheard); len(again.Items[0].Parts) != 2 {
		t.Errorf("a column that is left out is read: %v", again.Items[0].Parts)
	}
}

func TestFloodsAreRefused(t *testing.T) {
	for key, text := range map[string]string{
		"enquiry.binary":  "Item\tQty\x00\n1\t2\n",
		"enquiry.columns": "Item\tQty" + strings.Repeat("\tx", 1_000_000) + "\n1\t2\n",
		"enquiry.cells":   strings.Repeat("Item\tQty\tOD\tWall\t\t\t\t\t\t\t\t\t\t\n", 15_000),
		"enquiry.rows":    strings.Repeat("40 off\n", MostRows+1),
	} {
		_, err := Text(text, nil, unheard)
		refused, ok := err.(*Refusal)
		if !ok || refused.Key != key {
			t.Errorf("want %s, got %v", key, err)
		}
	}
}

// unheard is for who does not ask how far a reading is.
func unheard(float64) {}

// What is settled and entered in a copy changes nothing of what was read, and how far a long reading is is told on the way.
func TestCopyLeavesWhatWasRead(t *testing.T) {
	text := "Item\tQty\tTube OD (mm)\tWall (mm)\n" + strings.Repeat("1\t40\t25.4\t2.11\n", 1000)
	var shares []float64
	e, err := Text(text, nil, func(share float64) { shares = append(shares, share) })
	if err != nil || len(e.Items) != 1000 || len(shares) != 4 || !slices.IsSorted(shares) || shares[3] > 1 {
		t.Fatal(err, len(e.Items), shares)
	}
	all := make([]int, 1000)
	for i := range all {
		all[i] = i
	}
	was, _ := json.Marshal(e)
	other := e.Clone()
	other.Decide([]Decision{{Items: all, Field: "wall_basis", Kind: "basis", Second: true}})
	other.Enter([]Edit{{0, "quantity", "80"}, {1, Mark, "B"}}, units.SI)
	if now, _ := json.Marshal(e); string(now) != string(was) {
		t.Error("what was read has changed")
	}
	if r, _ := other.Items[999].Find("wall_basis"); r.Text != "minimum" || len(r.Doubts) != 0 || other.Items[1].Mark != "B" {
		t.Errorf("%v", r)
	}
}
