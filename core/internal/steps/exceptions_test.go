package steps

// exception is what lets a figure step, and where the page shows that it switched: at one of the figures named, or in words
// (the line in use, the coil's form, a mark of the list of correlations).
type exception struct {
	why     string
	figures []string // that may step
	shown   []string // figures of which one must have changed at the same place
	words   bool     // or the words must have
}

// exceptions lists all that may step.
var exceptions = []exception{
	{
		why: "whole pieces: sets of tooling, working days, coils, joints that are moved, crates, layers, bearers, trucks, tubes and bars are counted, and a price list has rows",
		figures: []string{
			"tubes_wanted", "break_even", "coils", "whole_tubes", "changes_other", "joints_other", "coil_tubes", "coil_interval", "coil_to_order", "joints_tube", "stranded",
			"strip_bought", "strip_bought_mass", "strip_scrap", "strip_remainder", "scrap_share", "strip_cut_back", "coils_cut",
			"crates", "per_crate", "layers", "crate_mass", "bearers", "bearer_spacing", "leg_load", "trucks", "bundle_tubes", "bundle_width", "bundle_height", "mill_tubes", "offcut", "tube_bought", "tube_used", "tube_trim", "tube_spoilt", "tubes_to_send", "stock_instead", "cut_instead",
			"line_hours", "crew_hours", "hours_other", "shifts", "tubes_shift",
			"cost_tube", "cost_bought_in", "cost_strip", "cost_scrap", "cost_finning", "cost_packing", "cost_fixed", "cost_variable", "cost_total", "cost_mark_up", "price_margin",
			"price", "price_tube", "price_metre", "budget_low", "budget_high", "cost_surcharge", "cost_tooling", "work_days",
		},
		shown: []string{
			"tubes_wanted", "cost_tooling", "work_days", "break_even", "coils", "whole_tubes", "changes_other", "joints_other", "crates", "per_crate", "layers", "trucks", "bundle_tubes", "mill_tubes",
			"joints_tube", "coil_tubes", "coils_cut", "strip_cut_back", "slit_width", "cut_length", "mill_length", "bearers", "sling_leg", // which there is none of on a beam
		},
		words: true,
	},
	{
		why:     "rounded sizes: strip is slit, tubes are cut and bought in steps",
		figures: []string{"slit_width", "cut_length", "mill_length", "coil_mass", "coil_length", "coil_replaces", "tube_time"},
		shown:   []string{"slit_width", "cut_length", "mill_length"},
		words:   true, // or another coil or line
	},
	{
		why:     "range marks: the spread is that of the correlations in range",
		figures: []string{"film_low", "film_high", "drop_low", "drop_high"},
		words:   true,
	},
	{
		why:     "no bank: where it cannot be rated, the fins are taken half-way between the inlets, and the duty says why there is none",
		figures: []string{"conductivity", "fin_parameter", "fin_efficiency", "tip_ratio", "surface_efficiency", "used_area", "taper_cost"},
		shown:   []string{"duty"},
	},
}

// excepted returns the exception of a figure, nil where there is none.
func excepted(id string) *exception {
	for i := range exceptions {
		for _, f := range exceptions[i].figures {
			if f == id {
				return &exceptions[i]
			}
		}
	}
	return nil
}

// seen reports whether the page shows that something switched between two answers.
func (e *exception) seen(a, b *answer) bool {
	if e.words && a.words != b.words {
		return true
	}
	for _, id := range e.shown {
		x, ok := a.of(id)
		y, also := b.of(id)
		if ok != also || ok && differ(a, id, x, y) > allowed {
			return true
		}
	}
	return false
}
