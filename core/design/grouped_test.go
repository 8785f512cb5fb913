package design

import (
	"math"
	"testing"

	"finwright/core/document"
	"finwright/core/shop"
)

// Orders of one set-up share it, whatever stands between them in the list; each changes the line no more often than it must; and what one adds to
// the price of all is what all cost less without it.
func TestGroupedOrdersShareASetUp(t *testing.T) {
	c := shop.House()
	today, _ := shop.ParseDay("2026-11-27")
	var list []Tally
	for _, e := range [][3]string{{"200", "10 fpi", "6 m"}, {"300", "8 fpi", "6 m"}, {"400", "10 fpi", "5 m"}, {"250", "8 fpi", "4 m"}, {"37", "10 fpi", "6 m"}} {
		d := document.New()
		for i, id := range []string{"quantity", "fin_pitch", "tube_length"} {
			d.Fields[id] = document.Entry{Text: e[i], Origin: document.Customer}
		}
		in, err := Read(d)
		if err != nil {
			t.Fatal(err)
		}
		in.MadeBy(&c)
		_, tally := LineAndTally(in)
		tally.AddWork(in, today)
		if tally.Work == nil || tally.Work.Worth <= 0 || tally.Work.Worth >= tally.Price {
			t.Fatalf("%+v", tally.Work)
		}
		list = append(list, tally)
	}
	whole := func(g Grouped, list []Tally) (sum float64) {
		for i := range list {
			if !list[i].Refused {
				sum += list[i].Price
			}
		}
		return sum - g.Saved
	}
	g := Group(list, &c, today)
	if len(g.Batches) != 2 || g.Together != 5 || g.Changes >= g.SetUps || g.Saved <= 0 || g.Ready <= today || g.Trucks < 1 {
		t.Fatalf("%+v", g)
	}
	for i := range list {
		without := make([]Tally, len(list))
		copy(without, list)
		without[i].Refused = true
		if less := whole(g, list) - whole(Group(without, &c, today), without); math.Abs(less-g.Adds[i]) > 1e-6*less {
			t.Errorf("order %d adds %g, and without it all cost %g less", i, g.Adds[i], less)
		}
		if g.Adds[i] > list[i].Price {
			t.Errorf("order %d adds more than its price", i)
		}
	}
	var sum Sum
	for _, tally := range list {
		sum.Add(tally)
	}
	if g.Trucks != int(math.Ceil(sum.Trucks)) || sum.Trucks < 0.1 {
		t.Errorf("%d trucks, all fill %g", g.Trucks, sum.Trucks)
	}
	// Two orders are of one tube, so that they share their last crates.
	holds, tubes, alone := list[0].Work.Crate.Holds, 0, 0
	for _, i := range []int{0, 4} {
		tubes, alone = tubes+list[i].Tubes, alone+(list[i].Tubes+holds-1)/holds
	}
	if shared := (tubes + holds - 1) / holds; shared >= alone || g.Crates-g.Shared != alone-shared || int(sum.Crates) != g.Crates {
		t.Errorf("%d crates for %d, of %d tubes each %d, together %d", g.Shared, g.Crates, holds, alone, shared)
	}
	if math.Abs(g.Alone-float64(sum.Price)) > 1e-6 {
		t.Errorf("all cost %g alone, their sum %g", g.Alone, sum.Price)
	}
	if len(g.Strips) != 2 {
		t.Errorf("%+v", g.Strips)
	}
	for i, s := range g.Strips {
		coil := g.Batches[i].Coil
		if s.Together > s.Coils || s.Together < 1 || float64(s.Together)*coil < s.Length*(1-shop.Slack) {
			t.Errorf("%+v of coils of %g m", s, coil)
		}
	}
	if none := Group([]Tally{{}, {Refused: true}}, &c, today); none.Together != 0 || len(none.Batches) != 0 || none.Ready != 0 {
		t.Errorf("%+v", none)
	}
}
