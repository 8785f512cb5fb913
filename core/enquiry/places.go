package enquiry

// What numbers are that no name stands by.

// byUnit reads the numbers whose unit says what they are.
func (r *reader) byUnit() {
	for i := range r.list {
		if !r.isFree(i) || r.list[i].unit == "" || lengthUnit(r.list[i].unit) > 0 {
			continue
		}
		name := ""
		switch r.list[i].unit {
		case "BWG", "SWG", "ga":
			name = "tube_wall"
		case "fpi", "fins/m":
			name = "fin_pitch"
		case "fpm":
			name = "face_velocity"
			if r.side[i] == "fin" {
				name = "fin_pitch"
			}
		case "off":
			name = "quantity"
			if r.inRows(i) {
				name = "tubes_per_row"
			}
		case "spare":
			name = Spare
		case "rows", "tubes_per_row", "passes", "bundles":
			name = r.list[i].unit
		case "°C", "°F", "deg":
			name = "inside_in"
		case "kW", "MW", "W", "MMBtu/h", "Btu/h", "kcal/h", "Gcal/h":
			name = "duty_wanted"
		case "bar", "bar(g)", "bar(a)", "kPa", "kPa(g)", "psi", "psig", "psia", "MPa":
			name = "inside_pressure"
		case "kg/s", "kg/h", "lb/h", "t/h", "gpm", "l/s", "m3/h":
			name = "inside_flow"
		case "Nm3/h":
			name = GasFlow
		case "m/s", "ft/min":
			name = "face_velocity"
		case "%":
			if r.mentions("inside_fluid", "ethylene_glycol") || r.mentions("inside_fluid", "propylene_glycol") {
				name = "glycol_share"
			}
		}
		if name == "" {
			continue
		}
		r.take(i, name)
		x := r.quantity(i, name)
		if name == Spare && x != nil {
			x.doubt("spare", SpareBare, x.Text)
		}
	}
}

// inRows reports whether a number of tubes stands beside one of rows: 6 rows x 40 tubes.
func (r *reader) inRows(i int) bool {
	for j := range r.list {
		if r.part[j] == r.part[i] && r.list[j].unit == "rows" {
			return true
		}
	}
	return false
}

func (r *reader) mentions(field, choice string) bool {
	for i := range r.list {
		if r.says(i, "is", field) && r.list[i].says.b == choice {
			return true
		}
	}
	return false
}

// alone reads sizes and counts by their place.
func (r *reader) alone() {
	r.threes()
	r.endsOfColumn()
	for i := range r.list {
		if !r.isFree(i) {
			continue
		}
		t := &r.list[i]
		switch {
		case t.unit == "" && t.n.whole && r.countsTubes(i):
			r.take(i, "quantity")
			r.quantity(i, "quantity")
		case t.unit == "" && t.n.whole && r.prior.field == "" && r.timesLength(i):
			r.take(i, "quantity")
			r.quantity(i, "quantity").doubt("alone", "", "")
		case t.unit == "" && !t.n.inch && r.prior.field == "" && r.onlyOfPart(i):
			if _, ok := r.out.Find("quantity"); !ok && t.n.whole && len(r.out.Readings) > 0 && len(r.list) > 1 {
				r.take(i, "quantity")
				r.quantity(i, "quantity").doubt("alone", "", "")
			}
		case r.prior.field != "" && r.accepts(r.prior.field, i):
			r.take(i, r.prior.field)
			x := r.quantity(i, r.prior.field)
			if r.prior.field == Spare && x != nil {
				x.doubt("spare", SpareBare, x.Text)
			}
		case t.unit == "" && !t.n.inch && !r.inChain(i) && r.carried(i) == "" && r.prior.side == "":
		case t.unit == "" || lengthUnit(t.unit) > 0:
			r.place(i)
		}
	}
}

// endsOfColumn reads the cell of a column of bare ends: one number is that of both.
func (r *reader) endsOfColumn() {
	if r.prior.field != "ends" {
		return
	}
	var found []int
	for i := range r.list {
		if r.isFree(i) && (lengthUnit(r.list[i].unit) > 0 || r.list[i].unit == "") {
			found = append(found, i)
		}
	}
	if len(found) == 0 {
		return
	}
	first, last := found[0], found[len(found)-1]
	r.take(first, "plain_end_a")
	r.quantity(first, "plain_end_a")
	r.take(last, "plain_end_b")
	r.quantity(last, "plain_end_b")
}

// countsTubes reports whether a number is that of the tubes: in brackets at the front, or before an x and a word.
func (r *reader) countsTubes(i int) bool {
	if _, ok := r.out.Find("quantity"); ok {
		return false
	}
	if i == 1 && r.list[0].sort == bracket {
		return true
	}
	return i+2 < len(r.list) && r.list[i+1].sort == times && r.list[i+2].sort == aWord && i == 0
}

// timesLength reports whether a number stands first in its part, before an x and a length: so many tubes so long.
func (r *reader) timesLength(i int) bool {
	_, ok := r.out.Find("quantity")
	alone := i == 0 || r.part[i-1] != r.part[i] || r.list[i-1].sort == pause || r.list[i-1].sort == colon
	return !ok && alone && i+2 < len(r.list) && r.list[i+1].sort == times && (r.list[i+2].unit == "ft" || r.list[i+2].unit == "m") && r.isLong(i+2)
}

// onlyOfPart reports whether a number is all that stands between two commas.
func (r *reader) onlyOfPart(i int) bool {
	for j := range r.list {
		if j != i && r.part[j] == r.part[i] && r.list[j].sort != pause && r.list[j].sort != bracket {
			return false
		}
	}
	return true
}

// inChain reports whether a number stands between signs for times.
func (r *reader) inChain(i int) bool {
	for j := range r.list {
		if r.part[j] == r.part[i] && r.list[j].sort == times {
			return true
		}
	}
	return false
}

// place reads a size by what is spoken of, and by how large it is.
func (r *reader) place(i int) {
	t := &r.list[i]
	if r.refuses("elliptical") {
		return
	}
	unit := t.unit
	if unit == "" && t.n.inch {
		unit = "in"
	}
	if unit == "" {
		unit = r.prior.unit
	}
	if unit == "" {
		unit = r.carried(i)
	}
	size := t.n.value * lengthUnit(unit)
	missing := func(name string) bool { _, ok := r.out.Find(name); return !ok }
	name := ""
	switch {
	case unit != "" && (size >= 0.3 || unit == "ft" || unit == "m"):
		name = "tube_length"
	case r.side[i] == "fin" && !r.withLength(i):
		name = r.finPlace(i, size)
	case missing("tube_od"):
		name = "tube_od"
	case missing("tube_wall") && (unit == "" || size <= 0.0127):
		name = "tube_wall"
	case unit == "" && missing("tube_length"):
		name = "tube_length"
	case unit != "":
		name = r.finPlace(i, size)
	}
	if name == "" || r.repeated(i, name) {
		return
	}
	r.take(i, name)
	if x := r.quantity(i, name); x != nil && name == "fin_height" {
		x.doubt("height", FinOD, x.Text)
	}
}

// withLength reports whether a size stands in a row of sizes that ends with a length, which is a tube's.
func (r *reader) withLength(i int) bool {
	for j := range r.list {
		if t := &r.list[j]; r.part[j] == r.part[i] && t.sort == aNumber && r.hasTimes(i, j) && (r.isLong(j) || t.unit == "" && t.n.value >= 300) {
			return true
		}
	}
	return false
}

// repeated reports whether a field that was read has another size than this number.
func (r *reader) repeated(i int, name string) bool {
	x, ok := r.out.Find(name)
	if !ok {
		return false
	}
	text, _ := r.readingOf(&r.list[i], i, name)
	return !sameText(name, x.Text, text)
}

// finPlace is what a size [m] of a fin is; one of 0 has no unit.
func (r *reader) finPlace(i int, size float64) string {
	thin := 0.0022
	if size == 0 {
		size, thin = r.list[i].n.value, 2.2
	}
	_, height := r.out.Find("fin_height")
	_, over := r.out.Find(FinOD)
	_, strip := r.out.Find("strip_thickness")
	switch {
	case size <= thin && !strip:
		return "strip_thickness"
	case size > thin && !height && !over:
		return "fin_height"
	}
	return ""
}

// threes reads what is written as 25.4/57/2.5, without a word: each is a guess by its size.
func (r *reader) threes() {
	for i := 0; i+4 < len(r.list); i++ {
		a, b, c := i, i+2, i+4
		if r.list[i+1].sort != slash || r.list[i+3].sort != slash || !r.isBare(a) || !r.isBare(b) || !r.isBare(c) {
			continue
		}
		x, y, z := r.list[a].n.value, r.list[b].n.value, r.list[c].n.value
		var names []string
		switch {
		case x >= 8 && y > x && z < 8:
			names = []string{"tube_od", FinOD, "fin_pitch"}
		case x >= 8 && y >= 0.5 && y < 8 && z >= 1000:
			names = []string{"tube_od", "tube_wall", "tube_length"}
		case x >= 3 && x < 40 && y < 2 && z >= 60:
			names = []string{"fin_height", "strip_thickness", "fin_pitch"}
		case x >= 4 && x <= 20 && y >= 3 && y < 40 && z < 2:
			names = []string{"fin_pitch", "fin_height", "strip_thickness"}
		default:
			continue
		}
		for k, j := range []int{a, b, c} {
			r.take(j, names[k])
			got := r.quantity(j, names[k])
			switch {
			case got == nil:
			case names[k] == FinOD:
				got.doubt("height", "fin_height", got.Text)
			case names[k] == "fin_pitch" && r.list[j].n.value < 8:
				got.doubt("gap", FinGap, got.Text)
			}
		}
	}
}

func (r *reader) isBare(i int) bool {
	return r.isFree(i) && r.list[i].unit == "" && !r.list[i].n.inch
}
