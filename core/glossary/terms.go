package glossary

// Terms lists them, those of a group together.
var Terms = []Term{
	{
		ID: "finned_tube", Group: "tube", Picture: "dimensions", See: []string{"helical_fin"},
		Figures: []string{"order_weight", "tube_weight", "metre_mass"},
	},
	{ID: "helical_fin", Group: "tube", Picture: "footed", See: []string{"fin_pitch", "strip"}},
	{
		ID: "tube_od", Group: "tube", Picture: "dimensions", See: []string{"bare_area"},
		Fields:  []string{"tube_od", "od_tolerance"},
		Symbols: []string{"d"},
		Shop:    []string{"tube_od"},
	},
	{
		ID: "tube_wall", Group: "tube", Picture: "dimensions", See: []string{"gauge", "wall_left"},
		Fields: []string{"tube_wall", "wall_basis", "least_wall"},
		Shop:   []string{"types/least_wall"},
	},
	{ID: "wall_left", Group: "tube", Picture: "embedded", See: []string{"tube_wall", "groove"}},
	{ID: "gauge", Group: "tube", See: []string{"tube_wall"}},
	{
		ID: "tube_metal", Group: "tube", See: []string{"conductivity", "expansion"},
		Fields:  []string{"tube_metal", "own_tube_name", "own_tube_conductivity", "own_tube_density", "own_tube_expansion"},
		Figures: []string{"tube_mass"},
		Shop:    []string{"types/tube_metals", "tube_families"},
		Texts:   []string{"paper.ask.tube_standard", "enquiry.field.seam"},
	},
	{
		ID: "bore", Group: "tube", See: []string{"inside_film"},
		Figures: []string{"inside_velocity"},
	},
	{
		ID: "length", Group: "tube", See: []string{"plain_end", "bare_span"},
		Fields:  []string{"tube_length"},
		Figures: []string{"finned_length"},
		Shop:    []string{"tube_length"},
		Texts:   []string{"search.measure.tube_length", "enquiry.field.between_faces", "enquiry.field.finned_length"},
	},
	{
		ID: "plain_end", Group: "tube", See: []string{"bare_span"},
		Fields:  []string{"plain_end_a", "plain_end_b", "rolled_length"},
		Figures: []string{"strip_back"},
		Shop:    []string{"rolled_end"},
	},
	{
		ID: "bare_span", Group: "tube", See: []string{"growth", "plain_end"},
		Fields:  []string{"support_spacing", "position_tolerance"},
		Figures: []string{"tolerable"},
		Shop:    []string{"placing", "least_bare", "least_finned", "supports_apart"},
		Texts:   []string{"page.even_spans", "page.bare_span", "page.span_centre", "page.span_width", "compare.spans", "shop.rule.span_place", "shop.rule.span_width"},
	},
	{
		ID: "straightness", Group: "tube", See: []string{"tube_wall"},
		Fields: []string{"tube_bow", "tube_bow_over", "tube_hardness"},
		Shop:   []string{"straightness", "od_out", "tube_hardest"},
	},
	{
		ID: "fin_metal", Group: "fin", See: []string{"conductivity", "expansion", "strip"},
		Fields: []string{"fin_metal", "own_fin_name", "own_fin_conductivity", "own_fin_density", "own_fin_expansion"},
		Shop:   []string{"types/fin_metals", "forming"},
	},
	{
		ID: "strip", Group: "fin", See: []string{"strip_width", "taper"},
		Fields:  []string{"strip_thickness"},
		Figures: []string{"strip_bought", "strip_bought_mass", "strip_drawn", "strip_good", "strip_wound", "order_strip", "order_strip_mass"},
		Symbols: []string{"t"},
		Shop:    []string{"types/strip", "strip_burr", "strip_demands", "oiler", "strip_on_hand"},
	},
	{
		ID: "strip_width", Group: "fin", See: []string{"foot", "strip"},
		Figures: []string{"strip_width", "slit_width"},
		Symbols: []string{"w"},
		Shop:    []string{"strip_width", "cut_by"},
	},
	{
		ID: "strip_length", Group: "fin", See: []string{"strip"},
		Figures: []string{"strip_per_metre", "strip_per_tube"},
		Shop:    []string{"strip_ratio"},
	},
	{
		ID: "strip_mass", Group: "fin", See: []string{"strip", "taper"},
		Figures: []string{"fin_mass", "fin_mass_least"},
		Texts:   []string{"convention.mass"},
	},
	{
		ID: "fin_height", Group: "fin", Picture: "dimensions", See: []string{"fin_od", "efficiency"},
		Fields:  []string{"fin_height"},
		Symbols: []string{"h_f"},
		Shop:    []string{"fin_height", "fin_height_by_od"},
	},
	{
		ID: "fin_od", Group: "fin", Picture: "dimensions", See: []string{"fin_height"},
		Fields:  []string{"fin_od_most"},
		Figures: []string{"fin_od"},
		Symbols: []string{"D_f"},
		Texts:   []string{"enquiry.field.fin_od"},
	},
	{
		ID: "fin_pitch", Group: "fin", Picture: "dimensions", See: []string{"fpi", "gap"},
		Fields:  []string{"fin_pitch"},
		Figures: []string{"pitch", "fins_per_tube"},
		Symbols: []string{"n", "p"},
		Shop:    []string{"fin_count", "fin_count_by_od"},
	},
	{ID: "fpi", Group: "fin", See: []string{"fin_pitch"}},
	{
		ID: "gap", Group: "fin", Picture: "dimensions", See: []string{"fin_pitch"},
		Figures: []string{"gap"},
		Symbols: []string{"s"},
		Texts:   []string{"enquiry.field.fin_gap"},
	},
	{
		ID: "helix", Group: "fin", See: []string{"helical_fin"},
		Figures: []string{"helix"},
	},
	{
		ID: "taper", Group: "fin", Picture: "dimensions", See: []string{"tip_thickness", "stretch"},
		Fields:  []string{"fin_profile"},
		Figures: []string{"taper_cost"},
	},
	{
		ID: "tip_thickness", Group: "fin", Picture: "dimensions", See: []string{"taper"},
		Fields:  []string{"tip_thickness"},
		Figures: []string{"tip_thickness"},
		Symbols: []string{"t_t"},
		Shop:    []string{"forming/tip"},
	},
	{
		ID: "stretch", Group: "fin", See: []string{"taper"},
		Figures: []string{"stretch"},
		Shop:    []string{"forming/stretch"},
	},
	{
		ID: "foot", Group: "fin", Picture: "footed", See: []string{"footed", "strip_width"},
		Symbols: []string{"t_foot"},
		Shop:    []string{"foot"},
	},
	{
		ID: "foot_lap", Group: "fin", Picture: "overlap_footed", See: []string{"overlap_footed"},
		Fields:  []string{"foot_lap"},
		Figures: []string{"foot_reach"},
		Shop:    []string{"foot/lap"},
	},
	{
		ID: "root", Group: "fin", Picture: "dimensions", See: []string{"root_constriction"},
		Fields:  []string{"root_basis"},
		Figures: []string{"root_od"},
		Symbols: []string{"D_r"},
	},
	{
		ID: "groove", Group: "fin", Picture: "embedded", See: []string{"embedded", "wall_left"},
		Fields: []string{"groove_depth"},
		Shop:   []string{"groover"},
		Texts:  []string{"shop.rule.groove_end", "shop.rule.groove_span"},
	},
	{
		ID: "knurl", Group: "fin", Picture: "knurled_footed", See: []string{"knurled_footed"},
		Shop: []string{"knurl", "knurl_reach"},
	},
	{
		ID: "sleeve", Group: "fin", Picture: "extruded", See: []string{"extruded"},
		Fields: []string{"sleeve_thickness"},
	},
	{
		ID: "fin_type", Group: "fin", See: []string{"footed", "embedded", "welded", "extruded"},
		Fields: []string{"fin_type"},
		Shop:   []string{"types", "finned_type"},
	},
	{ID: "footed", Group: "type", Picture: "footed", See: []string{"foot", "tension"}},
	{ID: "overlap_footed", Group: "type", Picture: "overlap_footed", See: []string{"foot_lap", "footed"}},
	{ID: "knurled_footed", Group: "type", Picture: "knurled_footed", See: []string{"knurl", "footed"}},
	{ID: "knurled_overlap", Group: "type", Picture: "knurled_overlap", See: []string{"knurl", "foot_lap"}},
	{ID: "embedded", Group: "type", Picture: "embedded", See: []string{"groove"}},
	{ID: "edge_wound", Group: "type", Picture: "edge_wound", See: []string{"tension"}},
	{ID: "welded", Group: "type", Picture: "welded", See: []string{"weld"}},
	{ID: "extruded", Group: "type", Picture: "extruded", See: []string{"sleeve"}},
	{
		ID: "bare_area", Group: "area", See: []string{"area_ratio", "u_bare"},
		Figures: []string{"bare_area", "plain_surface"},
		Symbols: []string{"A_b0"},
	},
	{
		ID: "outside_surface", Group: "area", See: []string{"area_ratio"},
		Figures: []string{"total_area", "side_area", "tip_area", "between_area", "finned_surface", "tube_surface", "order_surface"},
		Symbols: []string{"A", "A_side", "A_tip", "A_prime"},
		Texts:   []string{"convention.surface"},
	},
	{
		ID: "area_ratio", Group: "area", See: []string{"bare_area", "u_total"},
		Figures: []string{"area_ratio"},
		Symbols: []string{"AR"},
		Texts:   []string{"convention.ratio"},
	},
	{
		ID: "inside_area", Group: "area", See: []string{"bore"},
		Figures: []string{"inside_area"},
	},
	{
		ID: "used_area", Group: "area", See: []string{"surface_efficiency", "outside_surface"},
		Figures: []string{"used_area"},
	},
	{
		ID: "conductivity", Group: "heat", See: []string{"fin_metal", "efficiency"},
		Figures: []string{"conductivity"},
		Symbols: []string{"k"},
	},
	{
		ID: "root_constriction", Group: "heat", See: []string{"root"},
		Figures: []string{"root_constriction"},
	},
	{
		ID: "bond", Group: "heat", Picture: "footed", See: []string{"tension", "expansion"},
		Fields:  []string{"bond_resistance"},
		Figures: []string{"bond_loss", "bond_gap", "bond_jump", "bond_open", "share_bond"},
	},
	{
		ID: "efficiency", Group: "heat", See: []string{"ml", "conductivity", "used_area"},
		Figures: []string{"fin_efficiency", "tip_ratio"},
		Symbols: []string{"η"},
	},
	{
		ID: "surface_efficiency", Group: "heat", See: []string{"efficiency", "used_area"},
		Figures: []string{"surface_efficiency"},
		Symbols: []string{"η_o"},
	},
	{
		ID: "ml", Group: "heat", See: []string{"efficiency", "film", "conductivity", "strip", "fin_height"},
		Figures: []string{"fin_parameter"},
		Symbols: []string{"mL", "m"},
		Letters: []Letter{{"m", ""}, {"L", "fin_height"}, {"h", "film"}, {"k", "conductivity"}, {"t", "strip"}},
	},
	{
		ID: "film", Group: "heat", See: []string{"correlation", "ml"},
		Fields:  []string{"film_source", "film_coefficient", "metal_temperature"},
		Figures: []string{"film", "film_low", "film_high", "film_dirty", "share_outside_film"},
		Symbols: []string{"h"},
	},
	{
		ID: "still_film", Group: "heat", See: []string{"film"},
		Figures: []string{"film_still"},
	},
	{
		ID: "inside_film", Group: "heat", See: []string{"film", "bore"},
		Figures: []string{"inside_film", "inside_film_second", "share_inside_film"},
	},
	{
		ID: "correlation", Group: "heat", See: []string{"range_of", "reynolds"},
		Fields:  []string{"film_method", "drop_method"},
		Figures: []string{"drop_low", "drop_high"},
	},
	{
		ID: "range_of", Group: "heat", See: []string{"correlation"},
		Texts: []string{"page.find_outside", "search.must.lower_end"},
	},
	{
		ID: "reynolds", Group: "heat", See: []string{"film"},
		Figures: []string{"reynolds"},
		Symbols: []string{"Re"},
	},
	{
		ID: "nusselt", Group: "heat", See: []string{"film", "reynolds"},
		Figures: []string{"nusselt"},
		Symbols: []string{"Nu"},
	},
	{
		ID: "prandtl", Group: "heat", See: []string{"film"},
		Figures: []string{"prandtl"},
		Symbols: []string{"Pr"},
	},
	{
		ID: "u_bare", Group: "heat", See: []string{"resistance", "bare_area", "u_total"},
		Figures: []string{"u_bare", "u_closed"},
		Symbols: []string{"U_b"},
	},
	{
		ID: "u_total", Group: "heat", See: []string{"u_bare", "area_ratio"},
		Figures: []string{"u_total", "ua"},
		Symbols: []string{"U"},
		Texts:   []string{"convention.overall"},
	},
	{
		ID: "resistance", Group: "heat", See: []string{"u_bare"},
		Figures: []string{"share_wall"},
	},
	{
		ID: "fouling", Group: "heat", See: []string{"resistance"},
		Fields:  []string{"fouling_inside", "fouling_outside"},
		Figures: []string{"share_inside_fouling", "share_outside_fouling", "duty_clean", "surplus_clean"},
	},
	{
		ID: "viscosity", Group: "heat", See: []string{"reynolds", "inside_film"},
		Fields: []string{"own_fluid_viscosity", "own_fluid_viscosity_2", "own_fluid_viscosity_3", "own_fluid_pour"},
	},
	{
		ID: "vapour", Group: "heat", See: []string{"steam"},
		Fields:  []string{"own_fluid_vapour"},
		Figures: []string{"boiling_ratio"},
	},
	{
		ID: "briggs_young", Group: "method", See: []string{"correlation", "film"},
		Methods: []string{"briggs_young_1963", "briggs_young_1963_high_fin"},
	},
	{
		ID: "esdu", Group: "method", See: []string{"correlation", "film"},
		Methods: []string{"esdu_86022", "esdu_86022_drop"},
	},
	{
		ID: "ganguli", Group: "method", See: []string{"correlation", "film"},
		Methods: []string{"ganguli_1985", "ganguli_1985_drop"},
	},
	{
		ID: "schmidt", Group: "method", See: []string{"correlation", "in_line"},
		Methods: []string{"schmidt_1963"},
	},
	{
		ID: "weierman", Group: "method", See: []string{"correlation", "welded"},
		Methods: []string{"weierman_1976", "weierman_1976_drop"},
	},
	{
		ID: "robinson_briggs", Group: "method", See: []string{"correlation", "pressure_drop"},
		Methods: []string{"robinson_briggs_1966"},
	},
	{
		ID: "edwards_chaddock", Group: "method", See: []string{"still_film"},
		Methods: []string{"edwards_chaddock_1963"},
	},
	{
		ID: "gnielinski", Group: "method", See: []string{"inside_film", "reynolds"},
		Methods: []string{"gnielinski_1976", "gnielinski_2013"},
	},
	{
		ID: "hausen", Group: "method", See: []string{"inside_film", "reynolds"},
		Methods: []string{"hausen_1943"},
	},
	{
		ID: "chato_shah", Group: "method", See: []string{"inside_film", "vapour"},
		Methods: []string{"chato_shah"},
	},
	{
		ID: "free_ratio", Group: "bank", See: []string{"face_velocity"},
		Figures: []string{"free_ratio", "obstruction"},
		Symbols: []string{"σ"},
	},
	{
		ID: "duty", Group: "bank", See: []string{"effectiveness"},
		Fields:  []string{"duty_wanted"},
		Figures: []string{"duty", "duty_in", "duty_out", "duty_closed", "duty_hard", "duty_soft", "duty_per_tube", "wanted_duty", "surplus", "tubes_wanted"},
		Symbols: []string{"Q"},
		Texts:   []string{"search.must.surplus"},
	},
	{
		ID: "yield", Group: "bank", See: []string{"duty", "fin_height"},
		Figures: []string{"duty_per_face", "duty_per_weight"},
	},
	{
		ID: "effectiveness", Group: "bank", See: []string{"duty"},
		Figures: []string{"effectiveness", "effectiveness_gas"},
		Symbols: []string{"P", "NTU"},
	},
	{
		ID: "correction", Group: "bank", See: []string{"effectiveness"},
		Figures: []string{"factor"},
		Symbols: []string{"F"},
	},
	{
		ID: "retube", Group: "bank", See: []string{"duty"},
		Fields: []string{"job_kind", "old_ua", "old_pitch", "old_tubes", "old_length"},
	},
	{
		ID: "bank", Group: "bank", See: []string{"layout", "row"},
		Fields:  []string{"tubes_per_row", "bundles", "frame_share"},
		Figures: []string{"bank_tubes", "bank_width", "bank_depth", "order_bank", "order_difference", "mass_dry", "mass_full", "mass_lifted"},
	},
	{
		ID: "layout", Group: "bank", See: []string{"in_line", "bank"},
		Fields: []string{"layout"},
	},
	{ID: "in_line", Group: "bank", See: []string{"layout"}},
	{
		ID: "row", Group: "bank", See: []string{"pass", "bank"},
		Fields: []string{"rows", "row_pitch"},
	},
	{
		ID: "pass", Group: "bank", See: []string{"row"},
		Fields: []string{"passes"},
	},
	{
		ID: "tube_pitch", Group: "bank", Picture: "dimensions", See: []string{"fin_od"},
		Fields:  []string{"tube_pitch", "tip_clearance"},
		Figures: []string{"tube_pitch"},
		Symbols: []string{"P_T"},
	},
	{
		ID: "face", Group: "bank", See: []string{"face_velocity"},
		Figures: []string{"face_area"},
	},
	{
		ID: "face_velocity", Group: "bank", See: []string{"face", "standard_air"},
		Fields:  []string{"face_velocity", "velocity_basis"},
		Figures: []string{"face_actual", "face_normal", "face_standard", "velocity_allowed"},
	},
	{ID: "standard_air", Group: "bank", See: []string{"face_velocity"}},
	{
		ID: "gas", Group: "bank", See: []string{"air", "flue_gas"},
		Fields:  []string{"gas", "own_gas_density", "own_gas_heat", "own_gas_viscosity", "own_gas_conductivity"},
		Figures: []string{"gas_out"},
		Texts:   []string{"enquiry.field.gas_flow"},
	},
	{
		ID: "air", Group: "bank", See: []string{"gas"},
		Fields:  []string{"air_in", "air_humidity", "altitude", "air_summer", "air_winter"},
		Figures: []string{"air_out"},
	},
	{
		ID: "flue_gas", Group: "bank", See: []string{"dew_point"},
		Fields: []string{"flue_by", "flue_basis", "flue_water", "share_co2", "share_h2o", "share_o2", "share_n2", "share_so2", "fuel_carbon", "fuel_hydrogen", "fuel_oxygen", "fuel_nitrogen", "fuel_sulphur", "burnt_by", "excess_air", "oxygen_left", "burning_air_water"},
	},
	{
		ID: "pressure_drop", Group: "bank", See: []string{"fan", "correlation"},
		Fields:  []string{"drop_allowed"},
		Figures: []string{"air_drop", "air_drop_foot", "air_drop_tube"},
	},
	{
		ID: "fan", Group: "bank", See: []string{"pressure_drop"},
		Fields:  []string{"fan_efficiency", "draught", "fan_entry", "fan_area", "coldest_air", "fan_bears"},
		Figures: []string{"fan_bank", "fan_entry_drop", "fan_head", "fan_power", "fan_power_cold", "fan_pressure", "fan_volume"},
	},
	{
		ID: "stream", Group: "bank", See: []string{"pass", "inside_film"},
		Fields:  []string{"inside_fluid", "glycol_share", "inside_in", "inside_out", "inside_flow", "inside_pressure", "own_fluid_phase", "own_fluid_points", "own_fluid_at", "own_fluid_at_2", "own_fluid_at_3", "own_fluid_density", "own_fluid_density_2", "own_fluid_density_3", "own_fluid_heat", "own_fluid_heat_2", "own_fluid_heat_3", "own_fluid_conductivity", "own_fluid_conductivity_2", "own_fluid_conductivity_3", "own_fluid_pressure"},
		Figures: []string{"inside_flow", "inside_volume", "process_out", "wanted_out"},
	},
	{ID: "gauge_pressure", Group: "bank", See: []string{"stream"}},
	{
		ID: "steam", Group: "bank", See: []string{"vapour", "stream"},
		Fields:  []string{"steam_by"},
		Figures: []string{"condensed", "vapour_velocity", "vapour_between", "vapour_sheared", "vapour_stratified"},
	},
	{
		ID: "loss_inside", Group: "bank", See: []string{"pass", "stream"},
		Fields:  []string{"inside_drop_allowed"},
		Figures: []string{"inside_loss", "outlet_pressure"},
	},
	{
		ID: "hold", Group: "bank", See: []string{"face"},
		Fields: []string{"hold_space", "hold_air", "hold_process"},
		Texts:  []string{"page.options_held"},
	},
	{
		ID: "expansion", Group: "metal", See: []string{"bond", "fin_metal"},
		Shop:  []string{"mismatch"},
		Texts: []string{"shop.rule.expansion"},
	},
	{
		ID: "tension", Group: "metal", See: []string{"bond", "footed"},
		Shop: []string{"strain"},
	},
	{
		ID: "dew_point", Group: "metal", See: []string{"flue_gas"},
		Fields:  []string{"to_trioxide"},
		Figures: []string{"water_dew", "acid_dew", "coldest_metal"},
	},
	{
		ID: "cases", Group: "metal", See: []string{"limit"},
		Fields:  []string{"start_up", "upset", "air_start_up", "air_upset", "flow_lost", "turndown"},
		Figures: []string{"tested_normal", "tested_start_up", "tested_upset", "tested_flow_lost", "root_start_up", "root_upset", "root_flow_lost"},
	},
	{
		ID: "limit", Group: "metal", See: []string{"cases", "fin_type"},
		Fields:  []string{"house_limit", "tube_metal_limit"},
		Figures: []string{"hottest_root", "hottest_tip"},
		Texts:   []string{"search.must.limits"},
	},
	{
		ID: "weld", Group: "making", Picture: "welded", See: []string{"welded"},
		Fields:  []string{"bead_inside", "bead_outside"},
		Figures: []string{"weld_power", "weld_speed"},
		Shop:    []string{"weld", "weld_outside", "weld_inside"},
	},
	{
		ID: "order", Group: "making", See: []string{"price"},
		Fields:  []string{"quantity", "supply", "spares", "line", "margin", "ordered", "drawing_approved"},
		Figures: []string{"tubes_made", "tubes_to_send", "tubes_drawn", "line"},
		Texts:   []string{"paper.ask.quantity_tolerance", "paper.ask.order", "paper.ask.order_revision", "paper.ask.order_date", "paper.ask.differences", "paper.ask.object_by", "enquiry.field.spare", "enquiry.field.spare_bare"},
	},
	{
		ID: "growth", Group: "making", Picture: "embedded", See: []string{"bare_span"},
		Figures: []string{"growth", "growth_scatter", "grown", "cut_length"},
		Symbols: []string{"g_L"},
		Shop:    []string{"growth", "growth_scatter", "measured"},
		Texts:   []string{"shop.rule.growth"},
	},
	{
		ID: "end_security", Group: "making", See: []string{"plain_end"},
		Fields: []string{"end_security"},
		Shop:   []string{"securing"},
	},
	{
		ID: "coil", Group: "making", See: []string{"strip", "joints"},
		Fields:  []string{"joints_allowed"},
		Figures: []string{"coil_length", "coil_mass", "coils", "coil_tubes", "coil_interval", "coil_replaces", "coil_to_order", "changes_other", "changes_more", "hours_other", "hours_more", "joints_other", "joints_more", "joints_tube", "whole_tubes", "stranded", "coils_cut"},
		Shop:    []string{"coils", "coil_used"},
	},
	{
		ID: "joints", Group: "making", See: []string{"coil"},
		Shop:  []string{"joints"},
		Texts: []string{"shop.rule.joints_place"},
	},
	{
		ID: "scrap", Group: "making", See: []string{"strip"},
		Figures: []string{"strip_scrap", "scrap_share", "strip_remainder", "strip_returned", "strip_cut_back"},
		Shop:    []string{"losses", "scrap", "spoilt", "strip_left", "offcut_share"},
		Texts:   []string{"paper.ask.good", "paper.ask.scrapped"},
	},
	{
		ID: "tube_stock", Group: "making", See: []string{"order"},
		Figures: []string{"mill_length", "mill_tubes", "tube_bought", "tube_used", "tube_trim", "tube_spoilt", "offcut", "tube_heaviest"},
		Shop:    []string{"buying", "stock"},
		Texts:   []string{"shop.rule.stock"},
	},
	{
		ID: "spindle", Group: "making", See: []string{"winding"},
		Figures: []string{"spindle", "feed", "strip_run_speed", "rolling_power"},
		Symbols: []string{"Ω"},
		Shop:    []string{"strip_speed", "drive", "idle", "run_up", "run_down", "jog", "spindle", "speed_share", "forming/work"},
	},
	{ID: "winding", Group: "making", See: []string{"spindle", "strip", "growth"}},
	{
		ID: "set_up", Group: "making", See: []string{"order"},
		Figures: []string{"set_up_time", "tube_time", "line_hours", "shifts", "tubes_shift", "saw_hours", "crew_hours", "step_hours", "work_days"},
		Shop:    []string{"racks", "times", "change_over", "first_off", "crew"},
	},
	{
		ID: "packing", Group: "making", See: []string{"lifting"},
		Figures: []string{"per_crate", "layers", "crates", "crate_mass", "crate_length", "bundle_tubes", "bundle_width", "bundle_height", "bearers", "bearer_spacing", "order_gross", "trucks"},
		Shop:    []string{"mill_bundle", "crate"},
		Texts:   []string{"paper.ask.address"},
	},
	{
		ID: "lifting", Group: "making", See: []string{"packing"},
		Figures: []string{"balance_point", "sling_from", "sling_to", "sling_leg", "leg_load"},
		Shop:    []string{"crane", "tackle", "slings", "layer_load"},
	},
	{
		ID: "inspection", Group: "making", See: []string{"order"},
		Fields: []string{"ask_certificate", "ask_eddy_current", "ask_gauge", "ask_identify", "ask_inspect", "ask_pressure_test"},
		Shop:   []string{"steps", "steps/name", "checks"},
		Texts:  []string{"paper.ask.documents", "paper.ask.test_pressure", "paper.ask.measured", "paper.ask.rejected", "paper.ask.concessions"},
	},
	{
		ID: "price", Group: "making", See: []string{"cost"},
		Figures: []string{"price", "price_tube", "price_metre", "price_margin", "break_even", "budget_low", "budget_high", "cut_instead", "stock_instead", "cost_total", "cost_mark_up"},
		Shop:    []string{"mark_up", "breaks", "budget_band", "budget_days", "least_charge"},
		Texts:   []string{"search.measure.price_per_kw", "page.show_price", "page.show_until", "page.options_money", "paper.ask.metal_basis", "paper.ask.extras", "paper.ask.money", "page.enquiry_price", "page.enquiry_breaks"},
	},
	{
		ID: "cost", Group: "making", See: []string{"price"},
		Figures: []string{"cost_bought_in", "cost_finning", "cost_fixed", "cost_variable", "cost_freight", "cost_offcut", "cost_on_hand", "cost_overhead", "cost_packing", "cost_preheat", "cost_saw", "cost_scrap", "cost_set_up", "cost_spoilt", "cost_steps", "cost_strip", "cost_strip_on_hand", "cost_sub_let", "cost_surcharge", "cost_tooling", "cost_tube"},
		Shop:    []string{"rates", "cost", "surcharge", "step_mark_up"},
	},
	{
		ID: "line", Group: "making", See: []string{"set_up", "tooling"},
		Shop:  []string{"lines", "lines/name"},
		Texts: []string{"search.must.line", "page.enquiry_verdict"},
	},
	{
		ID: "tooling", Group: "making", See: []string{"line", "set_up"},
		Shop:  []string{"tube_sizes", "new_tools", "tools", "tool_height", "tool_strip"},
		Texts: []string{"shop.rule.tool", "shop.rule.tube_size"},
	},
	{
		ID: "saw", Group: "making", See: []string{"tube_stock"},
		Shop: []string{"cutting"},
	},
	{
		ID: "lead_time", Group: "making", See: []string{"order", "tooling"},
		Shop:  []string{"calendar", "rolls_days", "size_days"},
		Texts: []string{"search.measure.ready", "paper.ask.promise_from", "paper.ask.delivery", "paper.ask.starts_when", "paper.ask.due", "page.due"},
	},
	{
		ID: "bought_in", Group: "making", See: []string{"line"},
		Shop: []string{"bought_in"},
	},
	{
		ID: "shop_file", Group: "making", See: []string{"line", "cost"},
		Shop:  []string{"", "name", "note", "currency"},
		Texts: []string{"paper.ask.learned_by"},
	},
	{
		ID: "paper", Group: "papers", See: []string{"offer", "revision"},
		Texts: []string{"page.papers_kind", "paper.ask.number", "paper.ask.date", "paper.ask.purpose"},
	},
	{
		ID: "offer", Group: "papers", See: []string{"paper", "price"},
		Texts: []string{"page.papers_extent", "paper.ask.form", "paper.ask.alternatives", "paper.ask.standing", "paper.ask.valid", "paper.ask.taxes", "paper.ask.delivery_term", "paper.ask.payment", "paper.ask.deviations", "paper.ask.open_questions", "paper.ask.not_included", "paper.ask.terms", "paper.ask.offer"},
	},
	{
		ID: "revision", Group: "papers", See: []string{"paper", "fingerprint"},
		Texts: []string{"page.revision", "page.papers_issued", "paper.ask.revision", "paper.ask.status", "paper.ask.prepared", "paper.ask.checked", "paper.ask.approved", "paper.ask.drawing_revision"},
	},
	{
		ID: "fingerprint", Group: "papers", See: []string{"paper", "revision"},
		Texts: []string{"page.papers_find"},
	},
	{
		ID: "guarantee", Group: "papers", See: []string{"duty", "offer"},
		Texts: []string{"paper.ask.guarantee"},
	},
	{
		ID: "hold_point", Group: "papers", See: []string{"inspection"},
		Texts: []string{"paper.ask.hold_points"},
	},
	{
		ID: "traceability", Group: "papers", See: []string{"inspection"},
		Texts: []string{"paper.ask.marking", "paper.ask.tube_heats", "paper.ask.coil_numbers"},
	},
	{
		ID: "kept_enquiry", Group: "options", See: []string{"enquiry", "revision"},
		Texts: []string{"page.enquiry_search", "page.enquiry_state", "page.enquiry_as"},
	},
	{
		ID: "enquiry", Group: "options", See: []string{"item", "kept_enquiry"},
		Texts: []string{"page.enquiry_text"},
	},
	{
		ID: "item", Group: "options", See: []string{"enquiry", "order"},
		Texts: []string{"page.mark", "page.reference", "page.received", "paper.ask.customer", "paper.ask.reference", "paper.ask.item", "enquiry.field.mark"},
	},
	{
		ID: "ladder", Group: "options", See: []string{"hold"},
		Texts: []string{"page.options_beside", "page.show_slide"},
	},
	{
		ID: "search", Group: "options", See: []string{"front", "ladder"},
		Texts: []string{"page.find", "page.find_axes", "page.find_must", "search.measure.miss"},
	},
	{
		ID: "front", Group: "options", See: []string{"search"},
		Texts: []string{"page.find_wanted", "page.find_wanted_more", "page.find_x", "page.find_y"},
	},
	{
		ID: "sure", Group: "options", See: []string{"correlation", "guarantee"},
		Texts: []string{"page.sure", "page.sure_figure", "page.sure_seed"},
	},
	{
		ID: "convention", Group: "options", See: []string{"outside_surface", "area_ratio"},
		Texts: []string{"page.theirs", "page.theirs_quantity", "page.theirs_text"},
	},
}
