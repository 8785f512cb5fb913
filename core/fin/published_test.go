package fin

import (
	"testing"

	"finwright/core/internal/published"
)

// disc reads the columns that the annular tables share.
func disc(row published.Row, thickness string) (Fin, float64) {
	return Fin{
		RootRadius:    row.Float("tube_od_m") / 2,
		TipRadius:     row.Float("fin_od_m") / 2,
		RootThickness: row.Float(thickness),
		Conductivity:  row.Float("k_W_mK"),
	}, row.Float("h_W_m2K")
}

func TestUniformPublished(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "fin_efficiency_annular") {
		f, h := disc(row, "thickness_m")
		row.Check("eta", Solve(f, h).Efficiency, 1e-13)
		heat, _ := march(f, h)
		row.Check("eta", heat/(h*f.area()), 1e-13)
	}
}

func TestUniformConvectiveTipPublished(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "fin_efficiency_annular_convective_tip") {
		f, h := disc(row, "thickness_m")
		row.Check("eta_adiabatic_uncorrected", Solve(f, h).Efficiency, 1e-13)

		exact := f
		exact.Tip = Convective
		got := Solve(exact, h)
		row.Check("q_per_K_exact_W_K", got.HeatPerKelvin, 1e-13)
		row.Check("eta_exact_on_faces_plus_tip", got.Efficiency, 1e-13)
		heat, _ := march(exact, h)
		row.Check("q_per_K_exact_W_K", heat, 1e-13)

		corrected := f
		corrected.TipRadius += f.RootThickness / 2
		got = Solve(corrected, h)
		row.Check("q_per_K_corrected_length_W_K", got.HeatPerKelvin, 1e-13)
		row.Check("eta_corrected_length", got.Efficiency, 1e-13)
	}
}

func TestRolledTaperPublished(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "rolled_taper_annular") {
		f, h := disc(row, "t_root_m")
		f.Profile = RolledTaper
		got := Solve(f, h)
		row.Check("eta", got.Efficiency, 1e-13)
		row.Check("q_root_per_K_W_K", got.HeatPerKelvin, 1e-13)
		row.Check("t_tip_m", f.ThicknessAt(f.TipRadius), 1e-13)
	}
}

func TestLinearTaperPublished(t *testing.T) {
	for _, row := range published.Read(t, published.Computed, "tapered_annular") {
		f, h := disc(row, "t_root_m")
		f.Profile = LinearTaper
		f.TipThickness = row.Float("t_tip_m")
		got := Solve(f, h)
		row.Check("eta", got.Efficiency, 1e-13)
		row.Check("q_root_per_K_W_K", got.HeatPerKelvin, 1e-13)
		row.Check("tip_theta_ratio", got.TipRatio, 1e-13)
	}
}

func TestExtremesPublished(t *testing.T) {
	profiles := map[string]Profile{"uniform": Uniform, "rolled": RolledTaper}
	tips := map[string]Tip{"adiabatic": Adiabatic, "convective": Convective}
	for _, row := range published.Read(t, published.Computed, "fin_extremes") {
		f := Fin{
			Profile:       profiles[row.Text("profile")],
			Tip:           tips[row.Text("tip")],
			RootRadius:    row.Float("root_radius_m"),
			TipRadius:     row.Float("tip_radius_m"),
			RootThickness: row.Float("t_root_m"),
			Conductivity:  row.Float("k_W_mK"),
		}
		got := Solve(f, row.Float("h_W_m2K"))
		row.Check("ml", got.ML, 1e-13)
		row.Check("eta", got.Efficiency, 1e-13)
		row.Check("tip_theta_ratio", got.TipRatio, 1e-13)
	}
}
