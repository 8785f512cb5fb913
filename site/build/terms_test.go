package main

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"finwright/core/glossary"
)

// plain are labels of what stands beside the trade, and says all of itself: how the page looks, is searched, or gives something out.
var plain = []string{
	"page.show_figure", "page.picture_of", "page.map_shows", "page.papers_units", "page.papers_size", "page.papers_table",
	"page.theme", "page.shop_search", "page.glossary_search", "page.enquiry_find", "page.enquiry_only", "page.enquiry_sort", "page.enquiry_turned",
}

// Every label of a control that the page comes with leads to a term, but for plain ones and for those that a list fills: ticks of figures,
// and the number that an exercise asks for. What leads to a term there is a term of.
func TestLabelsOfThePageLeadToTerms(t *testing.T) {
	page, err := os.ReadFile("../index.html")
	if err != nil {
		t.Fatal(err)
	}
	leads := regexp.MustCompile(`data-(?:means|term)="(\w+) ([\w.]+)"`)
	for _, found := range leads.FindAllStringSubmatch(string(page), -1) {
		if _, ok := glossary.Of(found[1], found[2]); !ok {
			t.Errorf("%s %s leads to no term", found[1], found[2])
		}
	}
	says := regexp.MustCompile(`{{msg "([\w.]+)"}}`)
	labels := regexp.MustCompile(`(?s)<label\b.*?</label>`).FindAllString(string(page), -1)
	used := map[string]bool{}
	for _, label := range labels {
		head, _, _ := strings.Cut(label, ">")
		key := says.FindStringSubmatch(label)
		switch {
		case strings.Contains(head, "data-means"):
		case key == nil && (strings.Contains(label, "{{.Label}}") || strings.Contains(label, `data-part="asked"`)):
		case key != nil && slices.Contains(plain, key[1]):
			used[key[1]] = true
		default:
			t.Errorf("leads to no term: %s", label)
		}
	}
	for _, key := range plain {
		if !used[key] {
			t.Errorf("%s labels nothing that leads to no term", key)
		}
	}
	if len(labels) < 40 {
		t.Errorf("%d labels", len(labels))
	}
}
