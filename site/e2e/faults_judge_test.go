//go:build browser

package e2e

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/units"
	"finwright/site/browser"
	"finwright/wasm/bridge"
)

// sight is what stands on the page, as faults.js reads it.
type sight struct {
	State, Section, Title, Summary, Status, Trouble string
	Half, Stale                                     bool
	Units                                           units.System
	Headline, Listed                                []figureInSight
	Fields                                          []fieldInSight
	Spans                                           []struct{ Centre, Width entryInSight }
	Verdicts                                        [][]string
	Grips                                           []struct{ ID, Value string }
	Shop, Saved                                     string
	Said, Notes, Refused                            []string
}

type figureInSight struct{ ID, Value, Unit, Mark string }

// entryInSight shows Value; Typed is what was typed.
type entryInSight struct{ Value, Typed, Error string }

type fieldInSight struct {
	ID, Value, Typed, Error, Watch string
	Used                           bool
	Origin                         document.Origin
}

// field finds one of the form, where they stand by groups.
func (s *sight) field(id string) fieldInSight {
	for _, f := range s.Fields {
		if f.ID == id {
			return f
		}
	}
	return fieldInSight{ID: id}
}

// fresh is the engine's answer, evaluated here.
type fresh struct {
	Document document.Document
	View     struct {
		Title, Summary string
		Valid          bool
		Headline       []figureAnswered
		Groups         []struct{ Figures []figureAnswered }
		Fields         []struct {
			ID, Text, Typed, Error, Watch string
			Used                          bool
			Origin                        document.Origin
		}
		Spans  []struct{ Centre, Width struct{ Text, Error string } }
		Ruling *struct {
			Text   string
			Change *struct{ Text, Effect string }
		}
		Making *struct {
			Verdicts []struct{ Label, Value, Limit, Margin string }
		}
		Scene *struct {
			Grips []struct {
				ID        string
				ValueText string `json:"value_text"`
			}
		}
	}
}

type figureAnswered struct{ ID, Value, Unit, Mark, State, Absent string }

func (f figureAnswered) inSight() figureInSight {
	shown := figureInSight{f.ID, f.Value, f.Unit, f.Mark}
	if f.Absent != "" {
		shown.Value = f.Absent
	}
	if f.State == "none" {
		shown.Mark = ""
	}
	return shown
}

func init() { bridge.Whole() }

// evaluate asks the engine's own code, outside of the browser.
func evaluate(d document.Document, commands []json.RawMessage, section, shop string) (fresh, error) {
	wanted := map[string]any{"document": d, "commands": commands, "shop": shop, "sheet": map[string]any{"width": 1000, "height": 400}}
	if section != "surface" {
		wanted["section"] = section
	}
	args, err := json.Marshal(wanted)
	if err != nil {
		return fresh{}, err
	}
	var reply struct {
		Data  fresh
		Error *struct{ Message string }
	}
	if err := json.Unmarshal(bridge.Call("edit", args), &reply); err != nil {
		return fresh{}, err
	}
	if reply.Error != nil {
		return fresh{}, fmt.Errorf("%s", reply.Error.Message)
	}
	return reply.Data, nil
}

// entered is the document in the fields, with the commands that the working copy waits with: as the browser keeps it,
// or where it keeps nothing as the page shows it.
func (s sight) entered() (document.Document, []json.RawMessage, error) {
	if s.Saved == "" {
		d := document.Document{Title: s.Title, Units: s.Units, Fields: map[string]document.Entry{}, Spans: []document.Span{}}
		for _, f := range s.Fields {
			d.Fields[f.ID] = document.Entry{Text: f.Typed, Origin: f.Origin}
		}
		for _, span := range s.Spans {
			d.Spans = append(d.Spans, document.Span{Centre: document.Entry{Text: span.Centre.Typed, Origin: document.Assumed}, Width: document.Entry{Text: span.Width.Typed, Origin: document.Assumed}})
		}
		return d, nil, nil
	}
	var kept struct {
		document.Job
		Pending []struct {
			Command json.RawMessage
			Reason  string
		}
	}
	if err := json.Unmarshal([]byte(s.Saved), &kept); err != nil {
		return document.Document{}, nil, err
	}
	var commands []json.RawMessage
	for _, p := range kept.Pending {
		if p.Reason == "" {
			commands = append(commands, p.Command)
		}
	}
	return kept.Design(0), commands, nil
}

// text of the catalogue that the page is built with.
var text = message.English().Text

// judge says what on the page is false: figures that are not of the entries and not marked, or a mark without a reason.
func judge(page *browser.Page, s sight, typed map[string]string) []string {
	if s.State == "answered" {
		return s.judgeAnswered(typed)
	}
	var wrong []string
	if !s.Stale {
		wrong = append(wrong, "the figures are not greyed")
	}
	if copied := browser.Eval[string](page, "day.copy()"); copied != "" && !strings.Contains(copied, text("page.unanswered")) {
		wrong = append(wrong, fmt.Sprintf("a figure is copied as %q", copied))
	}
	reasons := s.Trouble
	for _, f := range s.Fields {
		reasons += f.Error
	}
	for _, span := range s.Spans {
		reasons += span.Centre.Error + span.Width.Error
	}
	if s.State != "entered" && reasons == "" && len(s.Said) == 0 && !slices.Contains(s.Refused, s.Status) {
		wrong = append(wrong, "nothing says why there is no answer")
	}
	for _, well := range []string{"verdict.good", "verdict.kept", "verdict.making_open"} {
		if strings.HasSuffix(s.Status, text(well)) {
			wrong = append(wrong, "all is said to be well")
		}
	}
	return wrong
}

func (s sight) judgeAnswered(typed map[string]string) (wrong []string) {
	say := func(what string, got, want any) {
		if fmt.Sprint(got) != fmt.Sprint(want) {
			wrong = append(wrong, fmt.Sprintf("%s: %q in sight, %q evaluated", what, fmt.Sprint(got), fmt.Sprint(want)))
		}
	}
	d, commands, err := s.entered()
	if err != nil {
		return []string{err.Error()}
	}
	want, err := evaluate(d, commands, s.Section, s.Shop)
	if err != nil {
		return []string{"the engine refuses what is in the fields: " + err.Error()}
	}
	if !want.View.Valid {
		return []string{"what is in the fields has no figures: " + want.View.Summary}
	}
	say("greyed", s.Stale, false)
	say("title", s.Title, want.View.Title)
	say("units", s.Units, want.Document.Units)
	for i, f := range want.View.Headline {
		if i >= len(s.Headline) {
			say("headline", len(s.Headline), len(want.View.Headline))
			break
		}
		say("headline "+f.ID, s.Headline[i], f.inSight())
	}
	listed := map[string]figureInSight{}
	for _, group := range want.View.Groups {
		for _, f := range group.Figures {
			listed[f.ID] = f.inSight()
		}
	}
	for _, f := range s.Listed {
		say("listed "+f.ID, f, listed[f.ID])
	}
	for _, f := range want.View.Fields {
		got := s.field(f.ID)
		say("field "+f.ID+" used", got.Used, f.Used)
		if got.Value != f.Text && got.Value != typed[f.ID] {
			say("field "+f.ID, got.Value, f.Text)
		}
		say("error of "+f.ID, got.Error, f.Error)
		say("remark on "+f.ID, got.Watch, f.Watch)
		say("origin of "+f.ID, got.Origin, f.Origin)
	}
	say("spans", len(s.Spans), len(want.View.Spans))
	for i := range min(len(s.Spans), len(want.View.Spans)) {
		got, span := s.Spans[i], want.View.Spans[i]
		if got.Centre.Value != typed[spanKey(i, "centre")] {
			say("centre of span", got.Centre.Value, span.Centre.Text)
		}
		if got.Width.Value != typed[spanKey(i, "width")] {
			say("width of span", got.Width.Value, span.Width.Text)
		}
		say("errors of span", got.Centre.Error+got.Width.Error, span.Centre.Error+span.Width.Error)
	}
	if m := want.View.Making; m != nil {
		say("rules", len(s.Verdicts), len(m.Verdicts))
		for i := range min(len(s.Verdicts), len(m.Verdicts)) {
			v := m.Verdicts[i]
			say("rule", s.Verdicts[i], []string{v.Label, v.Value, v.Limit, v.Margin})
		}
	}
	for _, got := range s.Grips {
		for _, grip := range want.View.Scene.Grips {
			if grip.ID == got.ID {
				say("grip "+got.ID, got.Value, grip.ValueText)
			}
		}
	}
	status := want.View.Ruling.Text
	if change := want.View.Ruling.Change; change != nil {
		status += " " + message.English().Render(message.New("page.apply_change", "change", change.Text), units.SI)
		if change.Effect != "" {
			status += " " + change.Effect
		}
	}
	if !strings.HasSuffix(s.Status, status) && !slices.Contains(s.Refused, s.Status) {
		say("status", s.Status, status)
	}
	if len(commands) == 0 && !s.Half { // a glimpse is not announced
		say("summary", s.Summary, want.View.Summary)
	}
	return wrong
}

func spanKey(index int, part string) string { return fmt.Sprintf("span %d %s", index, part) }
