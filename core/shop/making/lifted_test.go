package making

import (
	"os"
	"testing"

	"finwright/core/shop"
)

// A shop's file of version 1 that was edited in every list costs its orders what it cost them then. The prices are those of the
// program that last wrote that version.
func TestFirstVersionKeepsItsPrices(t *testing.T) {
	text, err := os.ReadFile("../../../testdata/samples/shop-1-edited.json")
	if err != nil {
		t.Fatal(err)
	}
	c, faults := shop.Open(text)
	if faults != nil || len(c.Lifted()) == 0 {
		t.Fatal(faults, c.Lifted())
	}
	for _, want := range []struct {
		name     string
		line     int
		order    Order
		quantity int
		bought   float64
		free     float64 // with the customer's tubes
	}{
		{"footed", 0, footed(), 1, 1118.8010210210591, 1029.280315144294},
		{"footed", 0, footed(), 37, 3325.6912576728123, 2430.4841989051642},
		{"footed", 0, footed(), 120, 8587.583779216913, 5812.441897037205},
		{"footed", 0, footed(), 900, 59673.450712572674, 39083.68836091677},
		{"embedded", 1, embedded(), 1, 1283.3206401908074, 1169.066272711323},
		{"embedded", 1, embedded(), 37, 3756.9006804633455, 2614.3570056685026},
		{"embedded", 1, embedded(), 120, 9720.098195797314, 6121.0856201935585},
		{"embedded", 1, embedded(), 900, 67549.66895137946, 41271.16443109806},
		{"supported", 1, supported(), 1, 1554.2564129346606, 1325.7476779756919},
		{"supported", 1, supported(), 120, 19329.5737963462, 12188.675828878428},
	} {
		for free, price := range map[bool]float64{false: want.bought, true: want.free} {
			want.order.Quantity, want.order.FreeIssue = want.quantity, free
			p := PlanOf(&c, &c.Lines[want.line], &want.order, nil)
			if p.Cost == nil {
				t.Fatal(p.Absent)
			}
			near(t, want.name, float64(p.Cost.Price), price, 1e-12)
		}
	}
	again, faults := shop.Open(c.Save())
	if faults != nil || again.Lifted() != nil {
		t.Errorf("saved, it is not of this version: %v %v", faults, again.Lifted())
	}
}

// A file of version 2, as it shipped and edited, costs its orders what it cost them then. The prices are those of the program that
// last wrote that version.
func TestSecondVersionKeepsItsPrices(t *testing.T) {
	for _, want := range []struct {
		file     string
		line     int
		order    Order
		quantity int
		bought   float64
		free     float64 // with the customer's tubes
	}{
		{"shop-2.json", 0, footed(), 1, 1063.8148279967781, 1029.0126437107897},
		{"shop-2.json", 0, footed(), 37, 3028.6984496348055, 2285.745279469998},
		{"shop-2.json", 0, footed(), 120, 7681.8671968224835, 5306.424371273767},
		{"shop-2.json", 0, footed(), 900, 53163.31293495955, 35461.45613080052},
		{"shop-2.json", 1, embedded(), 1, 1203.710098165459, 1169.412792787178},
		{"shop-2.json", 1, embedded(), 37, 3397.4459383366907, 2459.5298244893984},
		{"shop-2.json", 1, embedded(), 120, 8597.686740513347, 5573.361668388898},
		{"shop-2.json", 1, embedded(), 900, 59989.18165919346, 37345.188410881194},
		{"shop-2.json", 1, supported(), 1, 1539.9483690889713, 1471.1861298928975},
		{"shop-2.json", 1, supported(), 37, 6034.15193373986, 4158.978439383848},
		{"shop-2.json", 1, supported(), 120, 17276.849030353424, 11230.699314787005},
		{"shop-2.json", 1, supported(), 900, 122121.57049078311, 76893.14723294307},
		{"shop-2-edited.json", 0, footed(), 1, 1500, 1500},
		{"shop-2-edited.json", 0, footed(), 37, 3131.8690065907876, 2390.265118210188},
		{"shop-2-edited.json", 0, footed(), 120, 7814.481316311259, 5397.841549635131},
		{"shop-2-edited.json", 0, footed(), 900, 53554.916093143205, 35570.046334389415},
		{"shop-2-edited.json", 1, embedded(), 1, 1500, 1500},
		{"shop-2-edited.json", 1, embedded(), 37, 3574.293138603518, 2622.769564106743},
		{"shop-2-edited.json", 1, embedded(), 120, 9110.077772749346, 6017.643932337737},
		{"shop-2-edited.json", 1, embedded(), 900, 61890.85218295628, 38906.47857001884},
		{"shop-2-edited.json", 1, supported(), 1, 1613.682694612718, 1544.3461106373225},
		{"shop-2-edited.json", 1, supported(), 37, 6315.033364944541, 4412.5369006445535},
		{"shop-2-edited.json", 1, supported(), 120, 18138.749559832304, 11997.524165102659},
		{"shop-2-edited.json", 1, supported(), 900, 124466.70786058632, 78514.94101121413},
	} {
		text, err := os.ReadFile("../../../testdata/samples/" + want.file)
		if err != nil {
			t.Fatal(err)
		}
		c, faults := shop.Open(text)
		if faults != nil {
			t.Fatal(faults)
		}
		for free, price := range map[bool]float64{false: want.bought, true: want.free} {
			want.order.Quantity, want.order.FreeIssue = want.quantity, free
			p := PlanOf(&c, &c.Lines[want.line], &want.order, nil)
			if p.Cost == nil {
				t.Fatal(p.Absent)
			}
			near(t, want.file, float64(p.Cost.Price), price, 1e-12)
		}
	}
}
