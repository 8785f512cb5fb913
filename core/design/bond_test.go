package design

import (
	"math"
	"testing"

	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// The headline is the lower duty, with the closed one and the band of winding strain beside it; each is a figure that has its
// working. The remark stands at the case that opened the bond.
func TestOpenBondReachesTheHeadline(t *testing.T) {
	in := read(t, "inside_in", "95 °C", "start_up", "95 °C", "upset", "190 °C")
	res := evaluate(t, in)
	value := func(id string) float64 {
		f, ok := res.Find(id)
		if !ok || !f.Absent.None() {
			t.Fatalf("no %s", id)
		}
		return f.SI
	}
	if !(value("duty_soft") < value("duty") && value("duty") < value("duty_hard") && value("duty_hard") <= value("duty_closed") && value("u_bare") < value("u_closed")) {
		t.Errorf("soft %g, stated %g, hard %g, closed %g W", value("duty_soft"), value("duty"), value("duty_hard"), value("duty_closed"))
	}
	duty, _ := res.Find("duty")
	said := duty.Beside[len(duty.Beside)-1]
	if said.Key != "beside.bond_band" || said.Arg("closed").(message.Amount).SI != value("duty_closed") || said.Arg("open") != message.Key("opened.upset") ||
		said.Arg("strains") != (message.Span{Kind: units.Duty, Low: value("duty_soft"), High: value("duty_hard")}) {
		t.Errorf("beside the duty: %v", said)
	}
	if state, field := noticed(res, "notice.bond_open"); state != figure.Watch || field != "upset" {
		t.Errorf("remarked as %q at %q", state, field)
	}
	closed := read(t, "inside_in", "95 °C", "start_up", "95 °C", "upset", "95 °C")
	if h := rate(t, closed); h.Loosened != nil || math.Abs(h.Thermal.Duty.Heat-value("duty_closed")) > 1e-9*value("duty_closed") {
		t.Errorf("the closed duty is %g W, without the upset %g W", value("duty_closed"), h.Thermal.Duty.Heat)
	}
	for _, c := range PlantCases(in, rate(t, in)) {
		if c.Absent.None() && (len(c.Differs) == 0 || c.Differs[len(c.Differs)-1].Key != "opened.upset") {
			t.Errorf("%s: %v does not say that the bond is open", c.ID, c.Differs)
		}
	}
	if f, ok := evaluate(t, closed).Find("bond_gap"); ok {
		t.Errorf("a closed bond has a gap of %g m", f.SI)
	}
	if _, ok := evaluate(t, read(t, "upset", "190 °C", "fin_type", "embedded", "tube_wall", "3 mm")).Find("bond_gap"); ok {
		t.Error("an embedded fin has a gap")
	}
}

// The strain is the shop's: what winds tighter holds longer, in the rating as in the rule of the line.
func TestStrainIsTheShops(t *testing.T) {
	in := read(t, "upset", "190 °C")
	c := shop.House()
	in.MadeBy(&c)
	house := rate(t, in).Thermal
	c.Placing.Strain = 3e-3
	in.MadeBy(&c)
	if tight := rate(t, in).Thermal; house.Joint.Gap == 0 || tight.Joint.Gap != 0 {
		t.Errorf("gaps of %g and %g m", house.Joint.Gap, tight.Joint.Gap)
	}
}
