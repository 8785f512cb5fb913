package figure

import (
	"strings"
	"unicode"
)

// Formula is how a figure is computed. Expression is written in the symbols of
// the arguments; Source and Valid are message keys.
type Formula struct {
	Result     string // symbol of the result
	Expression string
	Source     string // "source.<id>"
	Valid      string // "valid.<id>"
}

// Symbols returns the names in the expression, functions and π among them.
func (f Formula) Symbols() []string {
	var symbols []string
	f.Fill(func(symbol string) (string, bool) {
		symbols = append(symbols, symbol)
		return "", false
	})
	return symbols
}

// Fill replaces each symbol that number knows by its text.
func (f Formula) Fill(number func(symbol string) (string, bool)) string {
	var filled strings.Builder
	rest := f.Expression
	for {
		start := strings.IndexFunc(rest, unicode.IsLetter)
		if start < 0 {
			return filled.String() + rest
		}
		filled.WriteString(rest[:start])
		var symbol string
		symbol, rest = cutSymbol(rest[start:])
		if text, ok := number(symbol); ok {
			symbol = text
		}
		filled.WriteString(symbol)
	}
}

// cutSymbol splits a name from the front of t, with an index after an underscore: D_f, I_{2/3}.
func cutSymbol(t string) (symbol, rest string) {
	rest = strings.TrimLeftFunc(t, func(r rune) bool { return inName(r) || r == '′' })
	if index, ok := strings.CutPrefix(rest, "_"); ok {
		if _, after, closed := strings.Cut(index, "}"); closed && index[0] == '{' {
			rest = after
		} else if after := strings.TrimLeftFunc(index, inName); after != index {
			rest = after
		}
	}
	return strings.TrimSuffix(t, rest), rest
}

func inName(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }

// Formulas holds the formulas by id, but those that stand beside a method of their own.
var Formulas = map[string]Formula{
	"fin_od":           {"D_f", "d + 2 h_f", "source.geometry", "valid.any"},
	"root_od":          {"D_r", "d + 2 t_foot", "source.geometry", "valid.any"},
	"pitch":            {"p", "1 / n", "source.geometry", "valid.any"},
	"gap":              {"s", "1 / n − t", "source.geometry", "valid.gap"},
	"helix":            {"α", "arctan(1 / (π n d))", "source.geometry", "valid.any"},
	"stretch":          {"e", "D_f / d", "source.forming", "valid.stretch"},
	"obstruction":      {"a_o", "D_r + n (D_f − D_r) t_m", "source.geometry", "valid.any"},
	"tip_rolled":       {"t_t", "t d / D_f", "source.rolled", "valid.rolled"},
	"tip_uniform":      {"t_t", "t", "source.geometry", "valid.uniform"},
	"tip_linear":       {"t_t", "t_given", "source.measured", "valid.linear"},
	"bare_area":        {"A_b0", "π d", "source.geometry", "valid.bare"},
	"side_area":        {"A_side", "n π/2 (D_f² − D_r²)", "source.disc", "valid.disc"},
	"tip_area":         {"A_tip", "n π D_f t_t", "source.tip_area", "valid.any"},
	"between_area":     {"A_prime", "π D_r (1 − n t)", "source.geometry", "valid.gap"},
	"total_area":       {"A", "A_side + A_tip + A_prime", "source.area_table", "valid.any"},
	"area_ratio":       {"AR", "A / A_b0", "source.area_table", "valid.any"},
	"inside_area":      {"A_i", "π (d − 2 w_m)", "source.geometry", "valid.any"},
	"fin_parameter":    {"mL", "√(2 h / (k t)) (D_f − D_r) / 2", "source.fin_parameter", "valid.thin_fin"},
	"eta_rolled":       {"η", "2√r_o / (β (r_e² − r_o²)) · [I_{2/3}(z_e) I_{−2/3}(z_o) − I_{−2/3}(z_e) I_{2/3}(z_o)] / [I_{−2/3}(z_e) I_{−1/3}(z_o) − I_{2/3}(z_e) I_{1/3}(z_o)]", "source.eta_rolled", "valid.eta_rolled"},
	"eta_uniform":      {"η", "2r_o / (m (r_e² − r_o²)) · [I_1(m·r_e) K_1(m·r_o) − K_1(m·r_e) I_1(m·r_o)] / [I_0(m·r_o) K_1(m·r_e) + I_1(m·r_e) K_0(m·r_o)]", "source.eta_uniform", "valid.thin_fin"},
	"eta_linear":       {"η", "march_linear(h, k, t, t_t, r_o, r_e)", "source.eta_linear", "valid.thin_fin"},
	"ratio_rolled":     {"ϑ_e/ϑ_o", "march_rolled(h, k, t, t_t, r_o, r_e)", "source.tip_ratio", "valid.thin_fin"},
	"ratio_uniform":    {"ϑ_e/ϑ_o", "march_uniform(h, k, t, t_t, r_o, r_e)", "source.tip_ratio", "valid.thin_fin"},
	"ratio_linear":     {"ϑ_e/ϑ_o", "march_linear(h, k, t, t_t, r_o, r_e)", "source.tip_ratio", "valid.thin_fin"},
	"surface_eta":      {"η_o", "1 − (A_fin / A) (1 − η)", "source.surface_eta", "valid.any"},
	"used_area":        {"A_used", "A η_o", "source.surface_eta", "valid.any"},
	"taper_cost":       {"Δ", "η_uniform / η − 1", "source.eta_rolled", "valid.eta_rolled"},
	"foot_reach":       {"b", "1 / n + lap", "source.foot_reach", "valid.foot_reach"},
	"foot_reach_given": {"b", "1 / n + lap", "source.foot_reach_given", "valid.any"},
	"width_fibre":      {"w", "b + h_f − 2 t + π/2 k_b t", "source.width_fibre", "valid.one_pitch"},
	"width_foot":       {"w", "b + h_f − 3 t + π/2 t", "source.width_foot", "valid.one_pitch"},
	"width_groove":     {"w", "h_f + g", "source.width_groove", "valid.any"},
	"width_edge":       {"w", "h_f", "source.width_edge", "valid.any"},
	"strip_run":        {"ℓ", "n π d_n", "source.strip_run", "valid.strip_run"},
	"fin_mass":         {"m_f", "n π d_n w t ρ_f", "source.strip_mass", "valid.any"},
	"muff_mass":        {"m_f", "(V_muff + n V_fin) ρ_f", "source.geometry", "valid.any"},
	"tube_mass":        {"m_t", "π (d − w_m) w_m ρ_t", "source.tube_mass", "valid.any"},
	"metre_mass":       {"m", "m_t + m_f", "source.geometry", "valid.any"},
	"finned_length":    {"L_f", "L − e_A − e_B − b_s", "source.geometry", "valid.any"},
	"fins_per_tube":    {"N", "n L_f", "source.geometry", "valid.any"},
	"finned_surface":   {"A_Lf", "A L_f", "source.geometry", "valid.any"},
	"plain_surface":    {"A_pl", "A_b0 (L − L_f)", "source.geometry", "valid.any"},
	"tube_surface":     {"A_L", "A_Lf + A_pl", "source.geometry", "valid.any"},
	"strip_per_tube":   {"ℓ_L", "ℓ L_f", "source.strip_run", "valid.strip_run"},
	"tube_weight":      {"M", "m_t L + m_f L_f", "source.geometry", "valid.any"},
	"times_quantity":   {"Σ", "x q", "source.geometry", "valid.any"},
	"conductivity":     {"k", "table(T)", "source.metal", "valid.metal"},

	"film":        {"h", "Nu k_g / D_r", "source.film", "valid.any"},
	"film_dirty":  {"h′", "1 / (1 / h + R_o)", "source.u_bare", "valid.any"},
	"film_given":  {"h", "h_given", "source.given", "valid.any"},
	"spread_low":  {"x_low", "lowest(n_in)", "source.spread", "valid.spread"},
	"spread_high": {"x_high", "highest(n_in)", "source.spread", "valid.spread"},

	"reynolds":          {"Re", "(G / σ) D_r / μ", "source.reynolds", "valid.any"},
	"free_in_line":      {"σ", "(P_T − a_o) / P_T", "source.free_ratio", "valid.free_ratio"},
	"free_staggered":    {"σ", "min(P_T − a_o, 2 (P_D − a_o)) / P_T", "source.free_ratio", "valid.free_ratio"},
	"prandtl":           {"Pr", "c_p μ / k_g", "source.gas", "valid.gas"},
	"u_bare":            {"U_b", "1 / (R_1 + R_2 + R_3 + R_4 + R_5 + R_6)", "source.u_bare", "valid.any"},
	"root_constriction": {"ξ", "U_b π d / (n K_2) − 1", "source.root_constriction", "valid.root_constriction"},
	"u_total":           {"U", "U_b / AR", "source.u_bare", "valid.any"},
	"share":             {"ϕ", "R_x U_b", "source.u_bare", "valid.any"},

	"hausen_1943":     {"h_i", "Nu k_i / d_i", "source.hausen_1943", "valid.hausen_1943"},
	"gnielinski_1976": {"h_i", "Nu k_i / d_i", "source.gnielinski_1976", "valid.gnielinski_1976"},
	"gnielinski_2013": {"h_i", "Nu k_i / d_i", "source.gnielinski_2013", "valid.gnielinski_2013"},
	"chato_shah":      {"h_i", "Nu k_i / d_i", "source.chato_shah", "valid.chato_shah"},
	"breber_1980":     {"h_i", "Nu k_i / d_i", "source.breber_1980", "valid.chato_shah"},
	"vapour_velocity": {"j_g", "G_i / √(9.80665 d_i ρ_v (ρ_l − ρ_v))", "source.vapour_velocity", "valid.vapour_velocity"},

	"duty":             {"Q", "C_air P |T_p − T_a|", "source.rows", "valid.rows"},
	"effectiveness":    {"P", "rows(NTU, R_c, N_r, N_p)", "source.rows", "valid.rows"},
	"air_out":          {"T_ao", "T_a + P (T_p − T_a)", "source.balance", "valid.any"},
	"process_out":      {"T_po", "T_p − P R_c (T_p − T_a)", "source.balance", "valid.any"},
	"factor":           {"F", "P |T_p − T_a| / (NTU ΔT_lm)", "source.factor", "valid.rows"},
	"duty_per_weight":  {"q_m", "Q / m_fins", "source.yield", "valid.any"},
	"duty_per_face":    {"q_A", "Q / A_face", "source.yield", "valid.any"},
	"bank_tubes":       {"N", "N_r N_t", "source.geometry", "valid.any"},
	"condensed":        {"M", "Q / h_fg", "source.condensed", "valid.condensed"},
	"tubes_wanted":     {"N", "N_r fewest(0.9995 Q_w)", "source.inverse", "valid.inverse"},
	"velocity_allowed": {"V", "trial(Δp_w)", "source.inverse", "valid.inverse"},
	"fan_bank":         {"Δp_b", "Δp + (1 + σ²) (G / σ)² / 2 (1 / ρ_2 − 1 / ρ_1)", "source.acceleration", "valid.any"},
	"fan_entry":        {"Δp_e", "x_e Δp_b", "source.fan_entry", "valid.any"},
	"fan_volume":       {"V_f", "G A_face / ρ_d", "source.balance", "valid.any"},
	"fan_head":         {"Δp_v", "ρ_d (V_f / A_fan)² / 2", "source.fan_power", "valid.any"},
	"fan_pressure":     {"Δp_f", "Δp_b + Δp_e + Δp_v", "source.fan_power", "valid.any"},
	"fan_power":        {"W_f", "V_f Δp_f / η_fan", "source.fan_power", "valid.any"},
	"fan_power_cold":   {"W_c", "W_f ρ_c / ρ_d", "source.fan_power", "valid.same_volume"},
	"face_velocity":    {"V", "G / ρ_x", "source.face_velocity", "valid.any"},
	"face_area":        {"A_face", "N_t P_T L_f", "source.face_area", "valid.any"},
	"tube_pitch":       {"P_T", "D_f + c", "source.geometry", "valid.any"},
	"inside_velocity":  {"v", "M / (ρ_i A_pass)", "source.geometry", "valid.any"},
	"bank_width":       {"B", "N_t P_T", "source.geometry", "valid.any"},
	"bank_depth":       {"H_b", "(N_r − 1) P_L + D_f", "source.geometry", "valid.any"},
	"mass_dry":         {"M_d", "N_r N_t M_T", "source.geometry", "valid.tubes_alone"},
	"mass_full":        {"M_w", "M_d + N_r N_t 1000 π/4 d_i² L", "source.geometry", "valid.tubes_alone"},
	"mass_lifted":      {"M_h", "M_d (1 + x_r)", "source.frame", "valid.any"},
	"order_bank":       {"N", "N_r N_t N_a", "source.geometry", "valid.any"},
	"order_difference": {"Δ", "q − N", "source.geometry", "valid.any"},
	"ua":               {"UA", "U_b π d L_f N", "source.u_bare", "valid.any"},
	"surplus":          {"s_Q", "Q / Q_w − 1", "source.balance", "valid.any"},
	"flow_given":       {"M", "M_given", "source.given", "valid.any"},
	"flow_wanted":      {"M", "Q_w / (c_i |T_p − T_w|)", "source.closing", "valid.half_way"},
	"duty_wanted":      {"Q_w", "M c_i |T_p − T_w|", "source.closing", "valid.half_way"},
	"out_cooled":       {"T_w", "T_p − Q_w / (M c_i)", "source.closing", "valid.half_way"},
	"out_warmed":       {"T_w", "T_p + Q_w / (M c_i)", "source.closing", "valid.half_way"},
	"inside_volume":    {"V_1", "M / ρ_1", "source.geometry", "valid.any"},
	"outlet_pressure":  {"p_2", "p_1 − Δp_i", "source.balance", "valid.inside_loss"},
	"boiling_ratio":    {"π_v", "p_2 / p_v", "source.vapour", "valid.boiling"},
	"inside_loss":      {"Δp_i", "Δp_s + Δp_t", "source.inside_loss", "valid.inside_loss"},
	"tested":           {"T_t", "max(T_case, T_r)", "source.limits", "valid.any"},
	"tested_mean":      {"T_t", "max(T_case, T_r, T_m)", "source.limits", "valid.any"},
	"hottest_root":     {"T_r", "T_i − x_i (T_i − T_g)", "source.rows", "valid.mean_round"},
	"root_case":        {"T_r", "T_a + x_c (T_case − T_a)", "source.root_case", "valid.mean_round"},
	"water_dew":        {"T_w", "saturation(p_w)", "source.saturation", "valid.any"},
	"acid_dew":         {"T_s", "1000 / (2.276 − 0.0294 ln(p_w / 133.322) − 0.0858 ln(p_s / 133.322) + 0.0062 ln(p_w / 133.322) ln(p_s / 133.322)) − 273.15", "source.acid_dew", "valid.acid_dew"},
	"hottest_tip":      {"T_t", "T_g + (T_r − T_g) ϑ_r", "source.tip_ratio", "valid.thin_fin"},
	"coldest_metal":    {"T_c", "T_i − x_i (T_i − T_g)", "source.rows", "valid.mean_round"},
	"bond_loss":        {"T_loss", "20 + e_0 / (α_f − α_t)", "source.bond_loss", "valid.order"},
	"bond_gap":         {"g_b", "((α_f − α_t) (T_r − 20) − e_0) d / 2", "source.bond_loss", "valid.order"},
	"bond_jump":        {"j_b", "7/3 (2 − a_c) / a_c √(π / (2 p_g ρ_g)) μ / Pr", "source.bond_jump", "valid.bond_jump"},
	"bond_open":        {"R_open", "(g_b + j_b g_b / (g_b + j_b)) / k_g + R_b", "source.bond_open", "valid.order"},

	"slit":               {"w_s", "δ_s round(w / δ_s)", "source.slit", "valid.any"},
	"strip_wound":        {"ℓ_T", "(N_k + N_l) π d_n r_s", "source.strip_ratio", "valid.any"},
	"tubes_made":         {"N_m", "q + N_f + N_j", "source.expected", "valid.any"},
	"strip_bought":       {"L_b", "X_c L_c", "source.winding", "valid.any"},
	"strip_bought_mass":  {"m_b", "L_b w_s t ρ_f", "source.density", "valid.any"},
	"strip_good":         {"L_g", "q ℓ_k", "source.winding", "valid.any"},
	"strip_scrap":        {"S", "S_1 + S_2 + S_3 + S_4 + S_5 + S_6 + S_7 + S_8", "source.winding", "valid.any"},
	"scrap_share":        {"x", "S / (L_b + L_z − L_r − L_y)", "source.winding", "valid.any"},
	"strip_remainder":    {"L_r", "L_b + L_z − L_g − S − L_y", "source.winding", "valid.any"},
	"coil_by_mass":       {"L_c", "m_c / (w_s t ρ_f)", "source.coil_mass", "valid.any"},
	"coil_by_size":       {"L_c", "ϕ π/4 (D_o² − D_i²) W / (w_s t)", "source.coil_size", "valid.coil_size"},
	"coil_mass":          {"m_c", "L_c w_s t ρ_f", "source.density", "valid.any"},
	"coils":              {"X_c", "(L_g + S + L_r + L_y − L_z) / L_c", "source.winding", "valid.any"},
	"coil_tubes":         {"n_c", "(L_c − a_s − a_e) / ℓ_T", "source.winding", "valid.any"},
	"joints_tube":        {"j", "J / N_m", "source.winding", "valid.any"},
	"whole_tubes":        {"n_w", "⌊(L_c − a_s − a_e) / ℓ_T⌋", "source.winding", "valid.no_joint"},
	"stranded":           {"S_w", "L_c − a_s − a_e − n_w ℓ_T", "source.winding", "valid.no_joint"},
	"coil_to_order":      {"L_o", "n_w ℓ_T + a_s + a_e", "source.winding", "valid.no_joint"},
	"coil_replaces":      {"f", "L_c / L_x", "source.winding", "valid.same_strip"},
	"changes_other":      {"ΔX", "X_x − X", "source.winding", "valid.same_strip"},
	"changes_more":       {"ΔX", "X − X_x", "source.winding", "valid.same_strip"},
	"joints_other":       {"ΔJ", "J_x − J", "source.winding", "valid.same_strip"},
	"joints_more":        {"ΔJ", "J − J_x", "source.winding", "valid.same_strip"},
	"hours_other":        {"ΔH", "H_x − H", "source.hours", "valid.same_strip"},
	"hours_more":         {"ΔH", "H − H_x", "source.hours", "valid.same_strip"},
	"growth":             {"g", "g_L", "source.growth", "valid.growth"},
	"scatter":            {"s", "g_s", "source.growth", "valid.growth"},
	"grown":              {"ΔL", "L_w g_L / (1 + g_L)", "source.grown", "valid.growth"},
	"cut_length":         {"L_cut", "L + b_A + b_B − ΔL", "source.grown", "valid.any"},
	"tolerable":          {"e", "δ / L_e", "source.proportion", "valid.any"},
	"strip_back":         {"b_d", "N_d / n", "source.run_down", "valid.any"},
	"mill_length":        {"L_st", "stock(L_cut, N_g)", "source.sawing", "valid.any"},
	"mill_tubes":         {"N_b", "⌈N_g / n_p⌉", "source.sawing", "valid.any"},
	"ordered_length":     {"L_st", "L_cut + δ_L", "source.sawing", "valid.any"},
	"tube_bought":        {"L_t", "N_b L_st", "source.sawing", "valid.any"},
	"tube_used":          {"L_u", "q (L_cut − b_A − b_B)", "source.sawing", "valid.any"},
	"tube_trim":          {"L_z", "q (b_A + b_B) + k_f + N_g δ_L", "source.sawing", "valid.any"},
	"tube_spoilt":        {"L_q", "(N_f + N_j) L_cut", "source.sawing", "valid.any"},
	"other_way":          {"ΔK", "K_y − K_z", "source.rates", "valid.any"},
	"offcut":             {"O", "N_b L_st − N_g L_cut − k_f", "source.sawing", "valid.any"},
	"spindle":            {"Ω", "min(Ω_1, Ω_2, Ω_3)", "source.speeds", "valid.steady"},
	"spindle_welded":     {"Ω", "min(Ω_1, Ω_2, Ω_4, Ω_5)", "source.speeds", "valid.steady"},
	"weld_speed":         {"v_e", "Ω π d", "source.weld_edge", "valid.steady"},
	"weld_power":         {"P_w", "q_w t v_e", "source.weld_power", "valid.steady"},
	"spindle_undriven":   {"Ω", "min(Ω_1, Ω_2)", "source.speeds", "valid.steady"},
	"feed":               {"v", "Ω / n", "source.feed", "valid.steady"},
	"strip_run_speed":    {"v_s", "Ω π d_n", "source.strip_run", "valid.steady"},
	"rolling_power":      {"P", "P_0 + P_r", "source.rolling", "valid.steady"},
	"tube_time":          {"τ_T", "τ_w + τ_j + τ_s + τ_l + τ_ph", "source.times", "valid.any"},
	"set_up_time":        {"τ", "τ_u + τ_c", "source.change_over", "valid.change_over"},
	"coil_interval":      {"τ", "(n_c τ_T + τ_x) / ε", "source.hours", "valid.any"},
	"line_hours":         {"H", "(τ_u + τ_c + τ_f + τ_x + τ_r) / ε", "source.hours", "valid.any"},
	"shifts":             {"N_s", "H / H_s", "source.hours", "valid.any"},
	"tubes_shift":        {"N", "N_m H_s ε / τ_R", "source.hours", "valid.running"},
	"saw_hours":          {"τ_saw", "n_cut τ_1", "source.times", "valid.any"},
	"crew_hours":         {"H_p", "n_crew H + (τ_saw + τ_p + τ_g) / ε", "source.hours", "valid.any"},
	"bundle_tubes":       {"N", "1 + 3 k_r (k_r + 1)", "source.geometry", "valid.hexagon"},
	"bundle_width":       {"b", "(2 k_r + 1) d", "source.geometry", "valid.hexagon"},
	"bundle_height":      {"h", "(1 + √3 k_r) d", "source.geometry", "valid.hexagon"},
	"per_crate":          {"n_k", "⌈q / N_c⌉", "source.crate", "valid.tip_on_tip"},
	"layers":             {"N", "layers(n_k)", "source.crate", "valid.tip_on_tip"},
	"crates":             {"N_c", "⌈q / min(room, ⌊M_max / (M_1 (1 + x_t))⌋)⌉", "source.crate", "valid.any"},
	"crate_mass":         {"M_k", "n_k M_1 (1 + x_t)", "source.crate", "valid.any"},
	"order_gross":        {"M_o", "q M_1 (1 + x_t)", "source.crate", "valid.any"},
	"trucks_bed":         {"N", "⌈N_c / min(⌊M_p / M_k⌋, N_v)⌉", "source.crate", "valid.by_mass"},
	"trucks":             {"N", "⌈N_c / ⌊M_p / M_k⌋⌉", "source.crate", "valid.by_mass"},
	"tube_heaviest":      {"M_1", "π (d − w_h) w_h ρ_t L + (1 + x_h) m_f L_f", "source.heaviest", "valid.any"},
	"crate_length":       {"L_k", "L + c_k", "source.geometry", "valid.any"},
	"bearer_spacing":     {"a", "L_k / (N_u − 1)", "source.crate", "valid.any"},
	"bearers":            {"N", "1 + ⌈L_k / a_b⌉", "source.crate", "valid.any"},
	"balance_point":      {"x_b", "(m_t L² / 2 + m_f L_f x_f) / M_T", "source.moments", "valid.any"},
	"sling":              {"x", "x_s L_k", "source.slings", "valid.any"},
	"sling_leg":          {"ℓ", "(L_k − 2 s_1) / (2 sin(ψ))", "source.legs", "valid.two_slings"},
	"leg_leaning":        {"M", "M_k / (2 cos(ψ))", "source.legs", "valid.two_slings"},
	"leg_upright":        {"M", "M_k / 2", "source.legs", "valid.spreader"},
	"price_tube":         {"P_t", "P_o / q", "source.rates", "valid.any"},
	"price_metre":        {"p", "P_t / L", "source.rates", "valid.any"},
	"price":              {"P_o", "K + m_K", "source.rates", "valid.any"},
	"cost_total":         {"K", "K_i + K_t + K_k + K_b + K_q + K_s + K_l + K_w + K_f + K_u + K_n + K_ph + K_c + K_g + K_j + K_d + K_p + K_o + K_h", "source.rates", "valid.any"},
	"price_raised":       {"P_o", "max(K + m_K, P_min)", "source.rates", "valid.any"},
	"price_margin":       {"y_m", "(P_o − K) / P_o", "source.rates", "valid.any"},
	"cost_mark_up_sub":   {"m_K", "(K − K_j) x_m + m_j", "source.rates", "valid.any"},
	"cost_surcharge":     {"K_f", "L_t m_t f_t + (L_b − L_r) w_s t ρ_f f_s", "source.rates", "valid.any"},
	"cost_bought_in":     {"K_i", "q L p_i", "source.rates", "valid.any"},
	"cost_fixed_bought":  {"K_x", "K_0", "source.rates", "valid.any"},
	"strip_cut_back":     {"S_8", "n_b s_c", "source.winding", "valid.any"},
	"coils_cut":          {"n_b", "S_8 / s_c", "source.winding", "valid.any"},
	"strip_drawn":        {"L_z", "m_z / (w_s t ρ_f)", "source.density", "valid.any"},
	"strip_returned":     {"L_y", "L_b + L_z − L_g − S − L_r", "source.winding", "valid.any"},
	"cost_strip_on_hand": {"K_l", "(L_z − L_y) w_s t ρ_f p_a", "source.rates", "valid.any"},
	"cost_preheat":       {"K_ph", "N_m p_ph", "source.rates", "valid.any"},
	"cost_on_hand":       {"K_k", "N_h p_u", "source.rates", "valid.any"},
	"tubes_drawn":        {"N_z", "N_m − N_g", "source.sawing", "valid.any"},
	"cost_tooling":       {"K_d", "K_r + K_e", "source.rates", "valid.any"},
	"budget_low":         {"P_b", "P_o (1 − x_d)", "source.rates", "valid.any"},
	"budget_high":        {"P_b", "P_o (1 + x_d)", "source.rates", "valid.any"},
	"work_days":          {"D_w", "max(1, ⌈(H + (τ_saw + τ_g + τ_p) / ε) / (n_s H_s)⌉)", "source.hours", "valid.any"},
	"cost_steps":         {"K_g", "τ_g r_p / ε + K_m", "source.rates", "valid.any"},
	"cost_sub_let":       {"K_j", "N_m y_b + q y_a + y_o", "source.rates", "valid.any"},
	"step_hours":         {"τ_g", "N_m τ_b + q τ_a + τ_o", "source.times", "valid.any"},
	"cost_mark_up":       {"m_K", "K x_m", "source.rates", "valid.any"},
	"cost_tube_cut":      {"K_t", "L_t m_t p_t (1 + x_l)", "source.rates", "valid.any"},
	"cost_tube_run":      {"K_t", "L_t p_l", "source.rates", "valid.any"},
	"cost_tube_each":     {"K_t", "N_b p_e", "source.rates", "valid.any"},
	"cost_offcut":        {"K_b", "−x_b K_t O / L_t", "source.rates", "valid.any"},
	"cost_spoilt":        {"K_q", "(N_f + N_j) p_q", "source.rates", "valid.any"},
	"cost_overhead":      {"K_o", "x_o (K_u + K_n + K_c + (τ_p + τ_g) r_p / ε)", "source.rates", "valid.any"},
	"cost_freight":       {"K_h", "M_o p_h", "source.rates", "valid.any"},
	"cost_tube":          {"K_t", "L_t m_t p_t", "source.rates", "valid.any"},
	"cost_strip":         {"K_s", "(L_b − L_r) w_s t ρ_f p_f", "source.rates", "valid.any"},
	"cost_scrap":         {"K_w", "−S w_s t ρ_f p_f x_w", "source.rates", "valid.any"},
	"cost_set_up":        {"K_u", "(τ_u + τ_c) (r_l + n_crew r_p) / ε", "source.rates", "valid.any"},
	"cost_finning":       {"K_n", "τ_R (r_l + n_crew r_p) / ε", "source.rates", "valid.any"},
	"cost_saw":           {"K_c", "τ_saw r_p / ε", "source.rates", "valid.any"},
	"cost_packing":       {"K_p", "τ_p r_p / ε + N_c (p_c + L_k p_k)", "source.rates", "valid.any"},
	"cost_fixed":         {"K_x", "K_u + K_0 + N_f (K − K_u − K_0) / N_m", "source.rates", "valid.break_even"},
	"cost_variable":      {"K_v", "(K − K_x) / q", "source.rates", "valid.break_even"},
	"break_even":         {"N", "⌈K_x / (P_t − K_v)⌉", "source.rates", "valid.break_even"},
}
