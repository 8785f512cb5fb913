package temperature

import (
	"testing"

	"finwright/core/internal/published"
)

// Wider than the table's own uncertainty by what the grid costs: that of the page, and one refined.
func TestConductionPublished(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "conduction_2d") {
		s := Section{
			BoreRadius:       row.Float("tube_od_m")/2 - row.Float("wall_m"),
			TubeRadius:       row.Float("tube_od_m") / 2,
			FinRadius:        row.Float("tube_od_m")/2 + row.Float("fin_height_m"),
			Pitch:            row.Float("pitch_m"),
			Thickness:        row.Float("fin_thickness_m"),
			TubeConductivity: row.Float("k_tube_W_mK"),
			FinConductivity:  row.Float("k_fin_W_mK"),
			InsideFilm:       row.Float("h_inside_W_m2K"),
			OutsideFilm:      row.Float("h_outside_W_m2K"),
		}
		for fineness, tolerance := range map[Fineness]float64{Page: 2e-3, Refined: 2e-4} {
			got, err := Solve(s, 1, 0, fineness)
			if err != nil {
				t.Fatal(err)
			}
			row.Check("heat_per_pitch_per_K_W_K", got.HeatOut, tolerance+row.Float("rel_uncertainty"))
		}
	}
}
