package rating

import (
	"math"
	"testing"

	"finwright/core/exchanger"
	"finwright/core/fin"
	"finwright/core/fin/temperature"
	"finwright/core/internal/published"
)

// Fins in perfect contact, whose heat in two dimensions was computed apart, by finite volumes on three grids: the resistances in
// series, worked out here, carry 0.5 to 2.8 % more, and the field of the page says by how much to a tenth of a per cent.
func TestConstrictionPublished(t *testing.T) {
	least, most := math.Inf(1), math.Inf(-1)
	for _, row := range published.Read(t, published.Computed, "conduction_2d") {
		od, pitch, height := row.Float("tube_od_m"), row.Float("pitch_m"), row.Float("fin_height_m")
		s := temperature.Section{
			BoreRadius: od/2 - row.Float("wall_m"), TubeRadius: od / 2, FinRadius: od/2 + height, Pitch: pitch,
			Thickness: row.Float("fin_thickness_m"), TubeConductivity: row.Float("k_tube_W_mK"), FinConductivity: row.Float("k_fin_W_mK"),
			InsideFilm: row.Float("h_inside_W_m2K"), OutsideFilm: row.Float("h_outside_W_m2K"),
		}
		faces := 2*math.Pi*(s.FinRadius*s.FinRadius-s.TubeRadius*s.TubeRadius) + 2*math.Pi*s.FinRadius*s.Thickness
		between, bare := math.Pi*od*(pitch-s.Thickness), math.Pi*od*pitch
		eta := fin.Solve(s.Fin(), s.OutsideFilm).Efficiency
		u := exchanger.OverallU(exchanger.Path{
			OD: od, ID: 2 * s.BoreRadius, InsideFilm: s.InsideFilm, WallConductivity: s.TubeConductivity, OutsideFilm: s.OutsideFilm,
			AreaRatio: (faces + between) / bare, SurfaceEfficiency: fin.SurfaceEfficiency(faces, faces+between, eta),
		}).OnBare
		want := u*bare/row.Float("heat_per_pitch_per_K_W_K") - 1
		d, err := temperature.Solve(s, 1, 0, temperature.Page)
		if err != nil {
			t.Fatal(err)
		}
		if got := d.Constriction(u, od, pitch); math.Abs(got-want) > 1e-3 {
			t.Errorf("%g mm, %g W/m2K outside: %.4f, want %.4f", od*1e3, s.OutsideFilm, got, want)
		}
		least, most = min(least, want), max(most, want)
	}
	if least < 0.005 || most > 0.028 {
		t.Errorf("from %.4f to %.4f", least, most)
	}
	t.Logf("from %.4f to %.4f", least, most)
}
