package design

import (
	"math"
	"testing"

	"finwright/core/shop"
	"finwright/testdata/cases"
)

// By hand: the fin OD is d + 2 h = 25.4 + 2 x 15.875 = 57.15 mm, so a hundredth of the height, 0.15875 mm, is 2 x 0.15875 / 57.15 of
// it, and a hundredth of the tube 0.254 / 57.15.
func TestMovesOfTheFinOD(t *testing.T) {
	moves, _ := Moves(cases.First(), nil, "fin_od")
	want := map[string]float64{"fin_height": 2 * 0.15875 / 57.15, "tube_od": 0.254 / 57.15}
	if len(moves) != len(want) || moves[0].Field != "fin_height" {
		t.Fatalf("moved by %+v", moves)
	}
	for _, m := range moves {
		if math.Abs(m.By-want[m.Field]) > 1e-9 {
			t.Errorf("%s moves it by %g, want %g", m.Field, m.By, want[m.Field])
		}
	}
}

func TestMovesFollowAndFall(t *testing.T) {
	house := shop.House()
	for id, c := range map[string]struct {
		field string
		sign  float64
	}{
		"duty":        {"inside_in", 1},
		"process_out": {"inside_in", 1},
		"price_tube":  {"tube_length", 1},
		"air_drop":    {"face_velocity", 1},
	} {
		moves, _ := Moves(cases.First(), &house, id)
		if len(moves) < 5 {
			t.Fatalf("%s: %d moves", id, len(moves))
		}
		found := false
		for i, m := range moves {
			if i > 0 && math.Abs(m.By) > math.Abs(moves[i-1].By) {
				t.Errorf("%s: %s does more than %s", id, m.Field, moves[i-1].Field)
			}
			if m.Field == c.field {
				found = m.By*c.sign > 0
			}
		}
		if !found {
			t.Errorf("%s is not moved by %s: %+v", id, c.field, moves)
		}
	}
	if moves, _ := Moves(cases.First(), nil, "no_such_figure"); moves != nil {
		t.Errorf("no figure is moved by %v", moves)
	}
}
