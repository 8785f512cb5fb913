package report

import (
	"slices"
	"strconv"
	"strings"

	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/tube"
)

// Choice is one of a list.
type Choice struct {
	ID   string `json:"id"`
	Text string `json:"text"`
}

func isIndex(step string) bool { _, err := strconv.Atoi(step); return err == nil }

// itemLabel names what the last step leads to: by its key, or by its number in a list.
func (w Writer) itemLabel(steps []string) string {
	last := steps[len(steps)-1]
	if n, err := strconv.Atoi(last); err == nil {
		return w.say(message.New("making.count", "count", n+1))
	}
	return w.Texts.Text("shop.field." + last)
}

func carriesName(path string) bool {
	switch path[strings.LastIndex(path, "/")+1:] {
	case "name", "type", "metal", "form", "looked_at", "finned_type":
		return true
	}
	return false
}

func (w Writer) shopChoices(f shop.Leaf) []Choice {
	var out []Choice
	add := func(id, key string) { out = append(out, Choice{id, w.Texts.Text(key)}) }
	metals := func(list []material.Metal) {
		for _, m := range list {
			add(m.ID, "metal."+m.ID)
		}
	}
	switch {
	case f.Kind != "":
	case f.YesNo:
		add("true", "making.yes")
		add("false", "making.no")
	case f.Key == "type":
		for _, t := range tube.FinTypes() {
			if t.Wound() {
				add(string(t), "choice.fin_type."+string(t))
			}
		}
	case f.Key == "finned_type":
		for _, t := range tube.FinTypes() {
			if !t.Wound() {
				add(string(t), "choice.fin_type."+string(t))
			}
		}
	case f.Key == "form":
		add(string(shop.Pancake), "shop.coil.pancake")
		add(string(shop.Traverse), "shop.coil.traverse")
	case f.Key == "fin_metals", strings.HasPrefix(f.Path, "rates/fin_metals"):
		metals(material.FinMetals)
	case f.Key == "tube_metals", strings.HasPrefix(f.Path, "rates/tube_metals"):
		metals(material.TubeMetals)
	case f.Key == "metal" && strings.HasPrefix(f.Path, "buying/"):
		metals(material.TubeMetals)
	case f.Key == "metal" && strings.Contains(f.Path, "/weld/"):
		metals(material.FinMetals)
	case f.Key == "cut_by":
		chosen(add, tube.FootRules)
	case f.Key == "metal" && strings.HasPrefix(f.Path, "forming"):
		for _, m := range material.FinMetals {
			if id := string(m.Family); !slices.ContainsFunc(out, func(c Choice) bool { return c.ID == id }) {
				add(id, "family."+id)
			}
		}
	case f.Key == "tubes_bought", f.Key == "bought":
		chosen(add, shop.TubeWays)
	case f.Key == "work_days":
		chosen(add, shop.WeekDays)
	case f.Key == "metal" && strings.HasPrefix(f.Path, "calendar/tube_leads"):
		metals(material.TubeMetals)
	case f.Key == "metal" && strings.HasPrefix(f.Path, "calendar/strip_leads"):
		metals(material.FinMetals)
	case f.Key == "kind":
		chosen(add, shop.StepKinds)
	case f.Key == "when":
		chosen(add, shop.StepTimes)
	case f.Key == "of_tubes":
		chosen(add, shop.WhoseTubes)
	case f.Key == "who":
		chosen(add, shop.DoersOfSteps)
	case f.Key == "tube_families":
		chosen(add, shop.StepFamilies())
	case f.Key == "looked_at":
		for _, k := range shop.CheckKinds {
			add(string(k), "check."+string(k))
		}
	case f.Key == "fin_types":
		for _, t := range tube.FinTypes() {
			add(string(t), "choice.fin_type."+string(t))
		}
	case f.Key == "coil_used":
		chosen(add, shop.CoilChoices)
	case f.Key == "strip_left":
		chosen(add, shop.StripUses)
	case f.Key == "spoilt":
		chosen(add, shop.Bearers)
	}
	return out
}

// chosen adds the choices of a list, each named by its text "shop.choice.<id>".
func chosen[T ~string](add func(id, key string), list []T) {
	for _, id := range list {
		add(string(id), "shop.choice."+string(id))
	}
}

// Lifted says what has another meaning than in the version that a capability file was saved by.
func (w Writer) Lifted(c shop.Capability) []string {
	said := []string{}
	for _, m := range c.Lifted() {
		said = append(said, w.say(m))
	}
	return said
}

// Faults puts what is wrong with a capability file in words, in the units of each value.
func (w Writer) Faults(list []shop.Fault) []ShopFault {
	out := make([]ShopFault, len(list))
	for i, f := range list {
		if f.System != "" {
			w.System = f.System
		}
		why := f.Why
		if f.Of != "" && f.Of != f.Path && !strings.Contains(f.Path, "/"+shop.Member) {
			steps := strings.Split(f.Of, "/")
			why = message.New("shop.file.of", "place", w.itemLabel(steps), "why", f.Why)
		}
		out[i] = ShopFault{f.Path, w.Place(f.Path), w.say(why)}
	}
	return out
}

// Place names where a path leads, from the top of the file down.
func (w Writer) Place(path string) string {
	var said []string
	for i, steps := 0, strings.Split(path, "/"); i < len(steps); i++ {
		name := steps[i]
		if isIndex(name) || w.Texts.Has("shop.field."+name) {
			name = w.itemLabel(steps[:i+1])
		}
		said = append(said, name)
	}
	return strings.Join(said, ", ")
}

// ShopFault is one thing wrong, at its path.
type ShopFault struct {
	Field   string `json:"field"`
	Place   string `json:"place"` // in words
	Message string `json:"message"`
}
