package figure

import "regexp"

// Formula is how a figure is computed. Expression is written in the symbols of
// the arguments; Source and Valid are message keys.
type Formula struct {
	Result     string // symbol of the result
	Expression string
	Source     string // "source.<id>"
	Valid      string // "valid.<id>"
}

// symbol is a name in an expression, with an index after an underscore: D_f, I_{2/3}.
var symbol = regexp.MustCompile(`\p{L}[\p{L}\p{Nd}′]*(?:_(?:\{[^}]*\}|[\p{L}\p{Nd}]+))?`)

// Symbols returns the names in the expression, functions and π among them.
func (f Formula) Symbols() []string { return symbol.FindAllString(f.Expression, -1) }

// Fill replaces each symbol that number knows by its text.
func (f Formula) Fill(number func(symbol string) (string, bool)) string {
	return symbol.ReplaceAllStringFunc(f.Expression, func(s string) string {
		if text, ok := number(s); ok {
			return text
		}
		return s
	})
}

// Formulas holds every formula by id.
var Formulas = map[string]Formula{
	"fin_od":         {"D_f", "d + 2 h_f", "source.geometry", "valid.any"},
	"root_od":        {"D_r", "d + 2 t_foot", "source.geometry", "valid.any"},
	"pitch":          {"p", "1 / n", "source.geometry", "valid.any"},
	"gap":            {"s", "1 / n − t", "source.geometry", "valid.gap"},
	"helix":          {"α", "arctan(1 / (π n d))", "source.geometry", "valid.any"},
	"stretch":        {"e", "D_f / d", "source.forming", "valid.stretch"},
	"obstruction":    {"a_o", "D_r + n (D_f − D_r) t_m", "source.geometry", "valid.any"},
	"tip_rolled":     {"t_t", "t d / D_f", "source.rolled", "valid.rolled"},
	"tip_uniform":    {"t_t", "t", "source.geometry", "valid.uniform"},
	"tip_linear":     {"t_t", "t_given", "source.measured", "valid.linear"},
	"bare_area":      {"A_b0", "π d", "source.geometry", "valid.bare"},
	"side_area":      {"A_side", "n π/2 (D_f² − D_r²)", "source.disc", "valid.disc"},
	"tip_area":       {"A_tip", "n π D_f t_t", "source.tip_area", "valid.any"},
	"between_area":   {"A_prime", "π D_r (1 − n t)", "source.geometry", "valid.gap"},
	"total_area":     {"A", "A_side + A_tip + A_prime", "source.area_table", "valid.any"},
	"area_ratio":     {"AR", "A / A_b0", "source.area_table", "valid.any"},
	"inside_area":    {"A_i", "π (d − 2 w_m)", "source.geometry", "valid.any"},
	"fin_parameter":  {"mL", "√(2 h / (k t)) (D_f − D_r) / 2", "source.fin_parameter", "valid.thin_fin"},
	"eta_rolled":     {"η", "2√r_o / (β (r_e² − r_o²)) · [I_{2/3}(z_e) I_{−2/3}(z_o) − I_{−2/3}(z_e) I_{2/3}(z_o)] / [I_{−2/3}(z_e) I_{−1/3}(z_o) − I_{2/3}(z_e) I_{1/3}(z_o)]", "source.eta_rolled", "valid.eta_rolled"},
	"eta_uniform":    {"η", "2r_o / (m (r_e² − r_o²)) · [I_1(m·r_e) K_1(m·r_o) − K_1(m·r_e) I_1(m·r_o)] / [I_0(m·r_o) K_1(m·r_e) + I_1(m·r_e) K_0(m·r_o)]", "source.eta_uniform", "valid.thin_fin"},
	"eta_linear":     {"η", "Q / (2π h (r_e² − r_o²) ϑ_o)", "source.eta_linear", "valid.thin_fin"},
	"tip_ratio":      {"ϑ_e/ϑ_o", "ϑ(r_e) / ϑ(r_o)", "source.tip_ratio", "valid.thin_fin"},
	"surface_eta":    {"η_o", "1 − (A_fin / A) (1 − η)", "source.surface_eta", "valid.any"},
	"used_area":      {"A_used", "A η_o", "source.surface_eta", "valid.any"},
	"taper_cost":     {"Δ", "η_uniform / η − 1", "source.eta_rolled", "valid.eta_rolled"},
	"foot_reach":     {"b", "1 / n + lap", "source.foot_reach", "valid.foot_reach"},
	"width_foot":     {"w", "b + h_f − 3 t + π/2 t", "source.width_foot", "valid.one_pitch"},
	"width_groove":   {"w", "h_f + g", "source.width_groove", "valid.any"},
	"width_edge":     {"w", "h_f", "source.width_edge", "valid.any"},
	"strip_run":      {"ℓ", "n π d", "source.strip_run", "valid.strip_run"},
	"fin_mass":       {"m_f", "n π d w t ρ_f", "source.strip_mass", "valid.any"},
	"muff_mass":      {"m_f", "(V_muff + n V_fin) ρ_f", "source.geometry", "valid.any"},
	"tube_mass":      {"m_t", "π (d − w_m) w_m ρ_t", "source.tube_mass", "valid.any"},
	"metre_mass":     {"m", "m_t + m_f", "source.geometry", "valid.any"},
	"finned_length":  {"L_f", "L − e_A − e_B − b_s", "source.geometry", "valid.any"},
	"fins_per_tube":  {"N", "n L_f", "source.geometry", "valid.any"},
	"finned_surface": {"A_Lf", "A L_f", "source.geometry", "valid.any"},
	"plain_surface":  {"A_pl", "A_b0 (L − L_f)", "source.geometry", "valid.any"},
	"tube_surface":   {"A_L", "A_Lf + A_pl", "source.geometry", "valid.any"},
	"strip_per_tube": {"ℓ_L", "ℓ L_f", "source.strip_run", "valid.strip_run"},
	"tube_weight":    {"M", "m_t L + m_f L_f", "source.geometry", "valid.any"},
	"times_quantity": {"Σ", "x q", "source.geometry", "valid.any"},
	"conductivity":   {"k", "k(T)", "source.metal", "valid.metal"},
}
