package enquiry

import "strings"

// metalOf are what the words for a metal mean of a tube and of a fin, and what else of a tube.
var metalOf = map[string]struct{ tube, fin, other string }{
	"steel":     {"cs", "cs1010", ""},
	"copper":    {"c12200", "c11000", ""},
	"stainless": {"tp304", "ss304", "tp316"},
	"ss304":     {"tp304", "ss304", ""},
	"ss316":     {"tp316", "ss304", ""},
}

// choices reads the words that say a choice.
func (r *reader) choices() {
	for i := range r.list {
		if r.list[i].sort != aWord || r.used[i] && r.list[i].says.kind != "field" {
			continue
		}
		s, at := r.list[i].says, r.list[i].Span
		if s.kind == "field" && strings.HasPrefix(folds(r.text[at.From:at.To]), "water") {
			r.add("inside_fluid", "water", at)
		}
		switch s.kind {
		case "is":
			if s.a == "tube_metal" && r.ofFin(i) && (s.b == "tp304" || s.b == "tp316") {
				r.add("fin_metal", "ss304", at)
				continue
			}
			r.add(s.a, s.b, at)
			if s.more != "" {
				r.add(Seam, s.more, at)
			}
		case "maybe":
			if _, ok := r.out.Find(s.a); !ok {
				r.add(s.a, s.b, at).doubt("one_of", s.a, s.more)
			}
		case "metal":
			r.metal(i, metalOf[s.a].tube, metalOf[s.a].fin, metalOf[s.a].other)
		case "no":
			r.out.NotMade = append(r.out.NotMade, Refused{s.a, at})
		case "word":
			if s.a == "welded" && (r.ofFin(i) || r.side[i] == "fin" && !r.says(i+1, "tube", "")) {
				r.add("fin_type", "welded", at)
			}
		}
	}
}

// metal reads a metal of which only the words about it tell whether it is the tube's or the fin's.
func (r *reader) metal(i int, tube, fin, other string) {
	at := r.list[i].Span
	_, hasFin := r.out.Find("fin_metal")
	if fromWords := r.wordsOfFin(i); fromWords == "fin" || fromWords == "" && r.side[i] == "fin" && !hasFin {
		r.add("fin_metal", fin, at)
		return
	}
	if _, ok := r.out.Find("tube_metal"); ok && other != "" {
		return // a grade was told besides
	}
	x := r.add("tube_metal", tube, at)
	if other != "" {
		x.doubt("one_of", "tube_metal", other)
	}
}

// ofFin reports whether a metal is the fin's: by the words beside it, or by what was spoken of last.
func (r *reader) ofFin(i int) bool {
	if by := r.wordsOfFin(i); by != "" {
		return by == "fin"
	}
	return r.side[i] == "fin"
}

// wordsOfFin tells whose a metal is, "tube" or "fin": by the word right before it, or by the next that speaks of tube or fin in its part
// before any number; empty where none does.
func (r *reader) wordsOfFin(i int) string {
	back := i - 1
	for back >= 0 && (r.list[back].sort == colon || r.list[back].sort == bracket || r.list[back].sort == nothing || r.says(back, "field", "metal")) {
		back--
	}
	if back >= 0 && r.part[back] == r.part[i] {
		if side := sideOf(&r.list[back]); side != "" && r.list[back].sort == aWord && (r.list[back].says.kind != "is" || side == "fin") && !r.says(back, "is", "wall_basis") {
			if r.thenTube(i) {
				return "tube"
			}
			return side
		}
	}
	for j := i + 1; j < len(r.list) && r.part[j] == r.part[i] && r.list[j].sort != aNumber && r.list[j].sort != slash; j++ {
		if r.list[j].sort == aWord && r.list[j].says.kind == "unit" && r.list[j].says.a == "off" {
			return "tube" // copper finned tubes
		}
		if side := sideOf(&r.list[j]); side != "" && !r.says(j, "is", "wall_basis") && !r.says(j, "is", "tube_metal") {
			return side
		}
	}
	return ""
}

// thenTube reports whether the word right behind is the tube.
func (r *reader) thenTube(i int) bool { return r.says(i+1, "tube", "") }

// pipes reads sizes of pipes and schedules.
func (r *reader) pipes() {
	schedule := -1
	for i := range r.list {
		if j := r.over(i + 1); r.says(i, "word", "sch") && r.isFree(j) && r.list[j].unit == "" {
			schedule = j
			r.used[j] = true
		}
	}
	for i := range r.list {
		switch j := r.over(i + 1); {
		case r.says(i, "word", "dn") && r.isFree(j):
			if p, ok := pipeOfDN(r.list[j].n.value); ok {
				r.take(j, "tube_od")
				r.add("tube_od", numberText(trimmed(p.metre), "mm"), r.list[i].Span, r.list[j].Span).doubt("pipe", "tube_od", numberText(r.list[j].n.text, "mm"))
				r.schedule(p, schedule)
			}
		case r.says(i, "word", "pipe") || r.says(i, "word", "sch"):
			r.pipe(i, schedule)
		}
	}
}

func (r *reader) pipe(i, schedule int) {
	if _, ok := r.out.Find("tube_od"); ok {
		return
	}
	for _, j := range []int{i - 1, i - 2, i - 3, i + 1} {
		if !r.isFree(j) || r.list[j].unit != "in" && !(r.list[j].unit == "" && r.list[j].n.inch) || r.part[j] != r.part[i] {
			continue
		}
		p, ok := pipeOf(r.list[j].n.value)
		if !ok {
			continue
		}
		r.take(j, "tube_od")
		x := r.add("tube_od", inches(p.od), r.list[j].Span, r.list[i].Span)
		if word := strings.ToLower(r.text[r.list[i].From:r.list[i].To]); !strings.HasPrefix(word, "n") {
			x.doubt("pipe", "tube_od", numberText(r.list[j].n.text, "in"))
		}
		r.schedule(p, schedule)
		return
	}
}

func (r *reader) schedule(p *pipe, at int) {
	if at < 0 {
		return
	}
	if wall, ok := p.walls[r.list[at].n.text]; ok {
		r.add("tube_wall", inches(wall), r.list[at].Span)
		return
	}
	r.used[at] = false
}

// settle adds what the words leave open, and weighs a height against the tube.
func (r *reader) settle() {
	if wall, ok := r.out.Find("tube_wall"); ok {
		if _, told := r.out.Find("wall_basis"); !told {
			basis := r.prior.basis
			x := r.add("wall_basis", cmpOr(basis, "average"), wall.From...)
			if basis == "" {
				x.doubt("basis", "wall_basis", "minimum")
			}
		}
	}
	height, ok := r.out.Find("fin_height")
	if !ok || len(height.Doubts) == 0 || !hasDoubt(height, "height") {
		return
	}
	high, _, _ := si("fin_height", height.Text)
	od := 0.0
	if tube, ok := r.out.Find("tube_od"); ok {
		od, _, _ = si("tube_od", tube.Text)
	}
	switch {
	case od > 0 && high <= od:
		height.drop("height")
	case od > 0 || high >= 0.035:
		height.drop("height")
		second := Doubt{"height", "fin_height", height.Text}
		height.Field = FinOD
		height.Doubts = append(height.Doubts, second)
	}
}

func hasDoubt(x *Reading, kind string) bool {
	for _, d := range x.Doubts {
		if d.Kind == kind {
			return true
		}
	}
	return false
}

func (x *Reading) drop(kind string) {
	var left []Doubt
	for _, d := range x.Doubts {
		if d.Kind != kind {
			left = append(left, d)
		}
	}
	x.Doubts = left
}
