package airside

import (
	"math"
	"strings"
	"testing"

	"finwright/core/figure"
	"finwright/core/fin"
	"finwright/core/fluid"
	"finwright/core/internal/correlation"
	"finwright/core/internal/published"
)

// The tables come from the open library ht: uniform fins, corbels that the face area
// counts as half a pitch and the free area does not.
func bankOf(row published.Row) (Bank, Flow) {
	whole := func(column string) int { return int(row.Float(column)) }
	b := Bank{
		OD:              row.Float("tube_od_m"),
		FinOD:           row.Float("tube_od_m") + 2*row.Float("fin_height_m"),
		FinPitch:        row.Float("fin_interval_m"),
		RootThickness:   row.Float("fin_thickness_m"),
		MeanThickness:   row.Float("fin_thickness_m"),
		AreaRatio:       row.Float("A_increase"),
		TransversePitch: row.Float("pitch_normal_m"),
		RowPitch:        row.Float("pitch_parallel_m"),
		Rows:            whole("tube_rows"),
		TubesPerRow:     whole("tubes_per_row"),
		EdgePitches:     0.5,
	}
	if strings.HasSuffix(row.Text("case"), "_sq") {
		b.Layout = InLine
	}
	face := (float64(b.TubesPerRow) + b.EdgePitches) * b.TransversePitch * row.Float("tube_length_m")
	return b, Flow{
		FaceMassVelocity: row.Float("m_air_kg_s") / face,
		Properties: fluid.Properties{
			Density: row.Float("rho_kg_m3"), HeatCapacity: row.Float("Cp_J_kgK"),
			Viscosity: row.Float("mu_Pa_s"), Conductivity: row.Float("k_W_mK"),
		},
	}
}

func TestFilmsPublished(t *testing.T) {
	for name, correlation := range map[string]func(*Crossing) Film{
		"briggs_young": BriggsYoung1963, "esdu_high_fin": ESDU86022, "ganguli_vdi": Ganguli1985,
	} {
		for _, row := range published.Read(t, published.Library, name) {
			b, f := bankOf(row)
			if name == "ganguli_vdi" && math.Abs(1-b.TransversePitch/b.RowPitch) < 0.05 {
				b.Layout = InLine // as the library tells in-line rows
			}
			got := correlation(crossing(b, f))
			row.Check("Pr", f.Prandtl(), 1e-9)
			row.Check("Re", got.Reynolds, 1e-9)
			row.Check("Nu", got.Nusselt, 1e-9)
			row.Check("h_W_m2K", got.Coefficient, 1e-9)
			row.Check("flow_area_contraction_ratio", b.FreeRatio(), 1e-9)
			// With the fin's efficiency, the figures that the library itself prints.
			eta := fin.Solve(fin.Fin{
				RootRadius: b.OD / 2, TipRadius: b.FinOD / 2, RootThickness: b.RootThickness, Conductivity: row.Float("k_fin_W_mK"),
			}, got.Coefficient).Efficiency
			row.Check("eta_fin", eta, 1e-9)
			used := fin.SurfaceEfficiency(row.Float("A_fin_m2"), row.Float("A_m2"), eta) * got.Coefficient
			row.Check("h_total_area_basis_W_m2K", used, 1e-9)
			row.Check("h_bare_tube_basis_W_m2K", used*b.AreaRatio, 1e-9)
		}
	}
}

func TestDropsPublished(t *testing.T) {
	for _, row := range published.Read(t, published.Library, "dp_esdu_high_fin") {
		b, f := bankOf(row)
		got := ESDU86022Drop(crossing(b, f))
		row.Check("Re", got.Reynolds, 1e-9)
		row.Check("Kf_per_row", got.Friction, 1e-9)
		row.Check("dP_total_Pa", got.Total, 1e-9)
		row.Check("dP_friction_Pa", got.PerRow*float64(b.Rows), 1e-9)
	}
	for _, row := range published.Read(t, published.Computed, "robinson_briggs") {
		b, f := bankOf(row)
		got := RobinsonBriggs1966(crossing(b, f))
		row.Check("pitch_diagonal_m", b.DiagonalPitch(), 1e-9)
		row.Check("f_fanning", got.Friction, 1e-9)
		row.Check("dP_friction_Pa", got.Total, 1e-9)
	}
}

// The tables say which rows lie in the stated range of Reynolds number and tube; the
// paper's equilateral six rows are further limits of ours.
func TestStatedRange(t *testing.T) {
	for name, limits := range map[string]func([]figure.Limit, *Crossing) []figure.Limit{
		"briggs_young": briggsYoungLimits, "esdu_high_fin": esduLimits, "dp_esdu_high_fin": esduLimits,
	} {
		for _, row := range published.Read(t, published.Library, name) {
			b, f := bankOf(row)
			in := true
			for _, l := range limits(nil, crossing(b, f)) {
				if l.Variable != "rows" && l.Variable != "pitch_ratio" {
					in = in && l.In()
				}
			}
			if in != (row.Text("in_stated_range") == "1") {
				t.Errorf("%s: in range %v, table says %s", row.Where(), in, row.Text("in_stated_range"))
			}
		}
	}
}

func TestGeometryPublished(t *testing.T) {
	for _, row := range published.Read(t, published.Library, "aircooled_geometry") {
		b := Bank{
			OD: row.Float("tube_diameter_m"), FinOD: row.Float("fin_diameter"), FinPitch: row.Float("fin_interval_m"),
			RootThickness: row.Float("fin_thickness_m"), MeanThickness: row.Float("fin_thickness_m"),
			TransversePitch: row.Float("pitch_normal_m"), RowPitch: row.Float("pitch_parallel_m"),
			TubesPerRow: int(row.Float("tubes_per_row")), EdgePitches: 1 - 0.5*row.Float("corbels"),
		}
		row.Check("fin_height_m", b.FinHeight(), 1e-9)
		row.Check("bare_length", b.Gap(), 1e-9)
		row.Check("pitch_diagonal", b.DiagonalPitch(), 1e-9)
		row.Check("flow_area_contraction_ratio", b.FreeRatio(), 1e-9)
	}
}

// vector is the common bank of 1 in tubes with 5/8 in fins, 10 to the inch, four rows,
// at 3 m/s of air at 40 C, computed independently of this project.
func vector() (Bank, Flow) {
	bank := Bank{
		OD: inch, FinOD: 0.05715, FinPitch: 0.1 * inch, RootThickness: 0.4e-3, MeanThickness: 0.4e-3, AreaRatio: 21.5094,
		TransversePitch: 2.5 * inch, RowPitch: 2.5 * inch * math.Sqrt(3) / 2, Rows: 4, TubesPerRow: 10,
	}
	flow := Flow{
		FaceMassVelocity: 1.12721 * 3,
		Properties:       fluid.Properties{Density: 1.12721, Viscosity: 1.90757e-5, Conductivity: 0.02727, HeatCapacity: 0.7042 * 0.02727 / 1.90757e-5},
	}
	return bank, flow
}

func near(t testing.TB, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance*math.Abs(want)) {
		t.Errorf("%s = %.9g, want %.9g within %.2g", what, got, want, tolerance)
	}
}

// Want: the cross-check vector (core/internal/correlation), computed independently of this project, to the digits
// printed; 3e-4 and 5e-4 for the four digits of what goes in and comes out.
func TestCrossCheckVector(t *testing.T) {
	b, f := vector()
	near(t, "free over face area", b.FreeRatio(), 0.52126, 1e-5)
	near(t, "Reynolds number", ESDU86022(crossing(b, f)).Reynolds, 8638.3, 1e-5)
	for _, m := range FilmMethods {
		near(t, m.ID, m.Compute(crossing(b, f)).Coefficient, correlation.Films[m.ID].Vector, 3e-4)
	}
	inLine := b
	inLine.Layout = InLine
	near(t, "in line", Schmidt1963(crossing(inLine, f)).Coefficient, 39.25*0.30/0.45, 3e-4)
	for _, m := range DropMethods {
		near(t, m.ID, m.Compute(crossing(b, f)).PerRow, correlation.Drops[m.ID].Vector, 5e-4)
	}
	near(t, "entry and exit", ESDU86022Drop(crossing(b, f)).Entry, 23.74, 3e-4)
}

// The same bank with the air's properties computed here, which differ from the rounded ones of the vector by up to 0.2 %.
func TestCrossCheckVectorWithOwnAir(t *testing.T) {
	b, f := vector()
	air, err := fluid.DryAir(313.15, fluid.StandardPressure)
	if err != nil {
		t.Fatal(err)
	}
	f.Properties = air
	f.FaceMassVelocity = 3 * air.Density
	near(t, "film coefficient", ESDU86022(crossing(b, f)).Coefficient, 48.962, 2e-3)
}

// Worked examples: Hewitt, Shires and Bott (1994), Serth and Lestina (2014), VDI Heat
// Atlas (2010), inputs and answers as the open library ht carries them.
func TestWorkedExamples(t *testing.T) {
	find := func(table, name string) published.Row {
		for _, row := range published.Read(t, published.Library, table) {
			if strings.HasPrefix(row.Text("case"), name) {
				return row
			}
		}
		t.Fatalf("no case %s in %s", name, table)
		return published.Row{}
	}
	find("esdu_high_fin", "hewitt_high_fin").Check("h_bare_tube_basis_W_m2K", 1390.888918, 1e-9)

	// The row is like the book's example, not the same: 0.8 % apart.
	b, f := bankOf(find("ganguli_vdi", "serth_like"))
	near(t, "Serth and Lestina, example 12.1: Nu", Ganguli1985(crossing(b, f)).Nusselt, 47.22, 0.01)
	near(t, "Serth and Lestina, example 12.1: h", Ganguli1985(crossing(b, f)).Coefficient, 51.785762, 0.01)

	// The book's 414 Pa needs 0.052024 m2 of free area: that with the edge space open to
	// the gas, 6.25 % more than the library's with corbels; 0.6 % are left, not traced.
	row := find("dp_esdu_high_fin", "hewitt_low_fin")
	b, _ = bankOf(row)
	face := (float64(b.TubesPerRow) + b.EdgePitches) * b.TransversePitch * row.Float("tube_length_m")
	near(t, "Hewitt, low fins: free area with corbels", b.FreeRatio()*face, 0.0486667, 1e-6)
	b.EdgePitches = 0
	near(t, "Hewitt, low fins: free area with open edges", b.FreeRatio()*face, 0.052024, 0.007)
}

// VDI Heat Atlas, example of a finned bundle in line: 22.49 W/m2K on the whole area with
// the fin's efficiency; 22.72683 recomputed by the open library ht.
func TestVDIExample(t *testing.T) {
	const length, tubes = 0.98, 17
	b := Bank{
		Layout: InLine, OD: inch, FinOD: 0.056, FinPitch: inch / 9, RootThickness: 0.4e-3, MeanThickness: 0.4e-3,
		TransversePitch: 0.06, RowPitch: 0.06, Rows: 4, TubesPerRow: tubes, EdgePitches: 0.5,
	}
	n := 1 / b.FinPitch
	faces := n * math.Pi / 2 * (b.FinOD*b.FinOD - b.OD*b.OD)
	tip := n * math.Pi * b.FinOD * b.RootThickness
	between := math.Pi * b.OD * (1 - n*b.RootThickness)
	b.AreaRatio = (faces + tip + between) / (math.Pi * b.OD)
	f := Flow{
		FaceMassVelocity: 1.92 / ((tubes + b.EdgePitches) * b.TransversePitch * length),
		Properties:       fluid.Properties{Density: 0.909, HeatCapacity: 1009.0188, Viscosity: 2.237e-5, Conductivity: 0.03197131806799132},
	}
	h := Ganguli1985(crossing(b, f)).Coefficient
	eta := fin.Solve(fin.Fin{RootRadius: b.OD / 2, TipRadius: b.FinOD / 2, RootThickness: 0.4e-3, Conductivity: 209}, h).Efficiency
	used := h * fin.SurfaceEfficiency(faces+tip, faces+tip+between, eta)
	near(t, "recomputed", used, 22.72683, 1e-6)
	near(t, "book", used, 22.49, 0.02) // 1 % apart: half of it is the approximate fin efficiency of the Atlas, the rest not traced
}
