//go:build !ungenerated

// Code generated from the structs of this package by make golden; DO NOT EDIT.

package bridge

import (
	"fmt"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/drawing/finned"
	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/enquiry"
	"finwright/core/glossary"
	"finwright/core/lesson"
	"finwright/core/outgoing"
	"finwright/core/paper"
	"finwright/core/quotes"
	"finwright/core/report"
	"finwright/core/search"
	"finwright/wasm/plots"
)

// encode writes what a method of the first program answers.
func encode(e *encoder, answer any) {
	switch v := answer.(type) {
	case report.Card:
		encodeCard(e, &v)
	case compared:
		encodeCompared(e, &v)
	case reply:
		encodeReply(e, &v)
	case named:
		encodeNamed(e, &v)
	case line:
		encodeLine(e, &v)
	case plots.Map:
		encodeMap(e, &v)
	case movedBy:
		encodeMovedBy(e, &v)
	case opened:
		encodeOpened(e, &v)
	case listed:
		encodeListed(e, &v)
	case saved:
		encodeSaved(e, &v)
	case started:
		encodeStarted(e, &v)
	case drawn:
		encodeDrawn(e, &v)
	case report.Working:
		encodeWorking(e, &v)
	case refusal:
		encodeRefusal(e, &v)
	default:
		encodeMore(e, answer)
	}
}

// encodeWhole writes what only the whole program answers.
func encodeWhole(e *encoder, answer any) {
	switch v := answer.(type) {
	case standing:
		encodeStanding(e, &v)
	case report.Comparison:
		encodeComparison(e, &v)
	case report.ShownConventions:
		encodeShownConventions(e, &v)
	case report.ShownQuotes:
		encodeShownQuotes(e, &v)
	case enquiryBeside:
		encodeEnquiryBeside(e, &v)
	case enquiryBreaks:
		encodeEnquiryBreaks(e, &v)
	case report.ShownComparison:
		encodeShownComparison(e, &v)
	case report.ShownGroups:
		encodeShownGroups(e, &v)
	case enquiryImport:
		encodeEnquiryImport(e, &v)
	case keptText:
		encodeKeptText(e, &v)
	case keptEnquiry:
		encodeKeptEnquiry(e, &v)
	case enquiryList:
		encodeEnquiryList(e, &v)
	case quotes.Letterhead:
		encodeLetterhead(e, &v)
	case report.ShownEnquiry:
		encodeShownEnquiry(e, &v)
	case enquiryRows:
		encodeEnquiryRows(e, &v)
	case enquirySheet:
		encodeEnquirySheet(e, &v)
	case report.EnquiryTable:
		encodeEnquiryTable(e, &v)
	case enquiryTotals:
		encodeEnquiryTotals(e, &v)
	case lesson.WorkedAnswer:
		encodeWorkedAnswer(e, &v)
	case lesson.ToldTry:
		encodeToldTry(e, &v)
	case lesson.ToldGuess:
		encodeToldGuess(e, &v)
	case lessons:
		encodeLessons(e, &v)
	case outlined:
		encodeOutlined(e, &v)
	case papered:
		encodePapered(e, &v)
	case drawingOut:
		encodeDrawingOut(e, &v)
	case markedAt:
		encodeMarkedAt(e, &v)
	case learned:
		encodeLearned(e, &v)
	case issuedPaper:
		encodeIssuedPaper(e, &v)
	case paperSaved:
		encodePaperSaved(e, &v)
	case tabled:
		encodeTabled(e, &v)
	case received:
		encodeReceived(e, &v)
	case searchBinds:
		encodeSearchBinds(e, &v)
	case foundPart:
		encodeFoundPart(e, &v)
	case searchDesigns:
		encodeSearchDesigns(e, &v)
	case report.SearchForm:
		encodeSearchForm(e, &v)
	case paper.Paper:
		encodePaper(e, &v)
	case sized:
		encodeSized(e, &v)
	case searchStarted:
		encodeSearchStarted(e, &v)
	case report.SearchTold:
		encodeSearchTold(e, &v)
	case sent:
		encodeSent(e, &v)
	case shopReply:
		encodeShopReply(e, &v)
	case report.ShopEffect:
		encodeShopEffect(e, &v)
	case stepped:
		encodeStepped(e, &v)
	case stories:
		encodeStories(e, &v)
	case report.ShownSure:
		encodeShownSure(e, &v)
	case draws:
		encodeDraws(e, &v)
	case termOf:
		encodeTermOf(e, &v)
	case terms:
		encodeTerms(e, &v)
	default:
		panic(fmt.Errorf("bridge: nothing writes %T", answer))
	}
}

func encodeCard(e *encoder, v *report.Card) {
	e.open('{')
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodeCardRow(e, &v.Rows[i])
	}
	e.close(']')
	e.key("line")
	e.string(v.Line)
	e.key("totals")
	e.open('[')
	for i := range v.Totals {
		encodeCardRow(e, &v.Totals[i])
	}
	e.close(']')
	e.key("told")
	e.string(v.Told)
	e.close('}')
}

func encodeCompared(e *encoder, v *compared) {
	e.open('{')
	e.key("changed")
	e.open('[')
	for i := range v.Changed {
		encodeOtherwise(e, &v.Changed[i])
	}
	e.close(']')
	e.key("basis")
	encodeBasis(e, &v.Basis)
	e.close('}')
}

func encodeReply(e *encoder, v *reply) {
	e.open('{')
	e.key("document")
	encodeDocument(e, &v.Document)
	if len(v.Steps) > 0 {
		e.key("steps")
		e.open('[')
		for i := range v.Steps {
			encodeDocument(e, &v.Steps[i])
		}
		e.close(']')
	}
	e.key("view")
	encodePage(e, &v.View)
	e.close('}')
}

func encodeNamed(e *encoder, v *named) {
	e.open('{')
	e.key("filename")
	e.string(v.Filename)
	e.close('}')
}

func encodeLine(e *encoder, v *line) {
	e.open('{')
	e.key("line")
	e.string(v.Line)
	e.close('}')
}

func encodeMap(e *encoder, v *plots.Map) {
	e.open('{')
	e.key("quantity")
	e.string(v.Quantity)
	e.key("columns")
	e.whole(v.Columns)
	e.key("rows")
	e.whole(v.Rows)
	e.key("bands")
	e.bytes(v.Bands)
	e.key("colours")
	e.open('[')
	for _, v0 := range v.Colours {
		e.string(v0)
	}
	e.close(']')
	e.key("area")
	e.open('[')
	for _, v0 := range v.Area {
		e.number(v0)
	}
	e.close(']')
	e.key("id")
	e.string(v.ID)
	e.key("patch")
	encodeOption(e, &v.Patch)
	e.key("loose")
	e.flag(v.Loose)
	e.key("x")
	if v.X == nil {
		e.null()
	} else {
		encodePlace(e, v.X)
	}
	e.key("y")
	if v.Y == nil {
		e.null()
	} else {
		encodePlace(e, v.Y)
	}
	e.key("label")
	e.string(v.Label)
	e.key("rings")
	e.open('[')
	for _, v0 := range v.Rings {
		if v0 == nil {
			e.null()
		} else {
			encodeSpot(e, v0)
		}
	}
	e.close(']')
	e.key("held")
	e.string(v.Held)
	if len(v.Readings) > 0 {
		e.key("readings")
		e.open('[')
		for _, v0 := range v.Readings {
			e.string(v0)
		}
		e.close(']')
	}
	e.close('}')
}

func encodeMovedBy(e *encoder, v *movedBy) {
	e.open('{')
	e.key("moves")
	e.open('[')
	for i := range v.Moves {
		encodeShownMove(e, &v.Moves[i])
	}
	e.close(']')
	e.close('}')
}

func encodeOpened(e *encoder, v *opened) {
	e.open('{')
	e.key("document")
	encodeDocument(e, &v.Document)
	if len(v.Steps) > 0 {
		e.key("steps")
		e.open('[')
		for i := range v.Steps {
			encodeDocument(e, &v.Steps[i])
		}
		e.close(']')
	}
	e.key("view")
	encodePage(e, &v.View)
	e.key("job")
	encodeJob(e, &v.Job)
	e.key("item")
	e.string(v.Item)
	e.close('}')
}

func encodeListed(e *encoder, v *listed) {
	e.open('{')
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodeShownRow(e, &v.Rows[i])
	}
	e.close(']')
	e.key("shown")
	e.open('[')
	for i := range v.Shown {
		encodeShown(e, &v.Shown[i])
	}
	e.close(']')
	e.key("basis")
	encodeBasis(e, &v.Basis)
	e.close('}')
}

func encodeSaved(e *encoder, v *saved) {
	e.open('{')
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeStarted(e *encoder, v *started) {
	e.open('{')
	e.key("document")
	encodeDocument(e, &v.Document)
	if len(v.Steps) > 0 {
		e.key("steps")
		e.open('[')
		for i := range v.Steps {
			encodeDocument(e, &v.Steps[i])
		}
		e.close(']')
	}
	e.key("view")
	encodePage(e, &v.View)
	e.key("job")
	encodeJob(e, &v.Job)
	e.key("item")
	e.string(v.Item)
	e.key("notice")
	e.string(v.Notice)
	e.close('}')
}

func encodeDrawn(e *encoder, v *drawn) {
	e.open('{')
	e.key("svg")
	e.string(v.SVG)
	e.close('}')
}

func encodeWorking(e *encoder, v *report.Working) {
	e.open('{')
	e.key("title")
	e.string(v.Title)
	e.key("symbols")
	e.string(v.Symbols)
	e.key("numbers")
	e.string(v.Numbers)
	e.key("result")
	e.string(v.Result)
	e.key("meaning")
	e.string(v.Meaning)
	e.key("basis")
	e.string(v.Basis)
	if v.Where != nil {
		e.key("where")
		e.open('[')
		for i := range v.Where {
			encodeWhere(e, &v.Where[i])
		}
		e.close(']')
	}
	e.key("source")
	e.string(v.Source)
	e.key("valid")
	e.string(v.Valid)
	if v.Remarks != nil {
		e.key("remarks")
		e.open('[')
		for _, v0 := range v.Remarks {
			e.string(v0)
		}
		e.close(']')
	}
	e.key("absent")
	e.string(v.Absent)
	e.close('}')
}

func encodeStanding(e *encoder, v *standing) {
	e.open('{')
	e.key("plots")
	e.open('[')
	for i := range v.Plots {
		encodeBesidePlot(e, &v.Plots[i])
	}
	e.close(']')
	e.close('}')
}

func encodeComparison(e *encoder, v *report.Comparison) {
	e.open('{')
	e.key("held")
	e.string(v.Held)
	e.key("columns")
	e.open('[')
	for i := range v.Columns {
		encodeComparedColumn(e, &v.Columns[i])
	}
	e.close(']')
	e.key("entries")
	e.open('[')
	for i := range v.Entries {
		encodeComparedLine(e, &v.Entries[i])
	}
	e.close(']')
	e.key("figures")
	e.open('[')
	for i := range v.Figures {
		encodeComparedLine(e, &v.Figures[i])
	}
	e.close(']')
	e.close('}')
}

func encodeShownConventions(e *encoder, v *report.ShownConventions) {
	e.open('{')
	e.key("quantities")
	e.open('[')
	for i := range v.Quantities {
		encodeNamedFigure(e, &v.Quantities[i])
	}
	e.close(']')
	e.key("wrong")
	e.string(v.Wrong)
	e.key("said")
	e.string(v.Said)
	e.key("readings")
	e.open('[')
	for i := range v.Readings {
		encodeShownReading(e, &v.Readings[i])
	}
	e.close(']')
	e.close('}')
}

func encodeShownQuotes(e *encoder, v *report.ShownQuotes) {
	e.open('{')
	e.key("said")
	e.string(v.Said)
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodeShownBefore(e, &v.Rows[i])
	}
	e.close(']')
	e.close('}')
}

func encodeEnquiryBeside(e *encoder, v *enquiryBeside) {
	e.open('{')
	e.key("said")
	e.open('[')
	for _, v0 := range v.Said {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeEnquiryBreaks(e *encoder, v *enquiryBreaks) {
	e.open('{')
	e.key("breaks")
	e.open('[')
	for _, v0 := range v.Breaks {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeShownComparison(e *encoder, v *report.ShownComparison) {
	e.open('{')
	e.key("said")
	e.string(v.Said)
	e.key("before")
	e.string(v.Before)
	e.key("after")
	e.string(v.After)
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodeShownChange(e, &v.Rows[i])
	}
	e.close(']')
	e.close('}')
}

func encodeShownGroups(e *encoder, v *report.ShownGroups) {
	e.open('{')
	e.key("said")
	e.open('[')
	for _, v0 := range v.Said {
		e.string(v0)
	}
	e.close(']')
	e.key("batches")
	e.open('[')
	for i := range v.Batches {
		encodeShownBatch(e, &v.Batches[i])
	}
	e.close(']')
	e.key("adds")
	e.open('[')
	for _, v0 := range v.Adds {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeEnquiryImport(e *encoder, v *enquiryImport) {
	e.open('{')
	e.key("added")
	e.open('[')
	for i := range v.Added {
		encodeKeptText(e, &v.Added[i])
	}
	e.close(']')
	e.key("said")
	e.string(v.Said)
	e.close('}')
}

func encodeKeptText(e *encoder, v *keptText) {
	e.open('{')
	e.key("text")
	e.string(v.Text)
	e.key("summary")
	encodeSummary(e, &v.Summary)
	e.key("told")
	e.string(v.Told)
	e.key("same")
	e.flag(v.Same)
	e.close('}')
}

func encodeKeptEnquiry(e *encoder, v *keptEnquiry) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("of")
	e.string(v.Of)
	e.key("time")
	e.string(v.Time)
	e.key("customer")
	e.string(v.Customer)
	e.key("reference")
	e.string(v.Reference)
	e.key("revision")
	e.string(v.Revision)
	e.key("due")
	e.string(v.Due)
	e.key("state")
	e.string(string(v.State))
	e.key("units")
	e.string(string(v.Units))
	e.key("text")
	e.string(v.Text)
	if len(v.Columns) > 0 {
		e.key("columns")
		e.open('[')
		for i := range v.Columns {
			encodeHeadColumn(e, &v.Columns[i])
		}
		e.close(']')
	}
	if len(v.Decided) > 0 {
		e.key("decided")
		e.open('[')
		for i := range v.Decided {
			encodeDecision(e, &v.Decided[i])
		}
		e.close(']')
	}
	if len(v.Edits) > 0 {
		e.key("edits")
		e.open('[')
		for i := range v.Edits {
			encodeEdit(e, &v.Edits[i])
		}
		e.close(']')
	}
	e.close('}')
}

func encodeEnquiryList(e *encoder, v *enquiryList) {
	e.open('{')
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodeShownListed(e, &v.Rows[i])
	}
	e.close(']')
	e.key("said")
	e.string(v.Said)
	e.close('}')
}

func encodeLetterhead(e *encoder, v *quotes.Letterhead) {
	e.open('{')
	e.key("customer")
	e.string(v.Customer)
	e.key("reference")
	e.string(v.Reference)
	e.key("revision")
	e.string(v.Revision)
	e.key("due")
	e.string(v.Due)
	e.key("state")
	e.string(string(v.State))
	e.close('}')
}

func encodeShownEnquiry(e *encoder, v *report.ShownEnquiry) {
	e.open('{')
	e.key("columns")
	e.open('[')
	for i := range v.Columns {
		encodeShownHead(e, &v.Columns[i])
	}
	e.close(']')
	e.key("names")
	e.open('[')
	for i := range v.Names {
		encodeEnquiryName(e, &v.Names[i])
	}
	e.close(']')
	e.key("heads")
	e.open('[')
	for i := range v.Heads {
		encodeEnquiryName(e, &v.Heads[i])
	}
	e.close(']')
	e.key("items")
	e.open('[')
	for i := range v.Items {
		encodeShownEntry(e, &v.Items[i])
	}
	e.close(']')
	e.key("cells")
	e.open('[')
	for i := range v.Cells {
		encodeEnquiryCell(e, &v.Cells[i])
	}
	e.close(']')
	e.key("entries")
	e.open('[')
	for i := range v.Entries {
		encodeEnquiryEntry(e, &v.Entries[i])
	}
	e.close(']')
	e.key("designs")
	e.open('[')
	for _, v0 := range v.Designs {
		e.open('[')
		for _, v1 := range v0 {
			e.whole(v1)
		}
		e.close(']')
	}
	e.close(']')
	e.key("doubts")
	e.open('[')
	for i := range v.Doubts {
		encodeShownDoubt(e, &v.Doubts[i])
	}
	e.close(']')
	e.key("asks")
	e.open('[')
	for i := range v.Asks {
		encodeShownAsk(e, &v.Asks[i])
	}
	e.close(']')
	e.key("left")
	e.open('[')
	for i := range v.Left {
		encodeLeftover(e, &v.Left[i])
	}
	e.close(']')
	e.key("said")
	e.string(v.Said)
	e.key("base")
	encodeDocument(e, &v.Base)
	e.key("letter")
	e.string(v.Letter)
	e.close('}')
}

func encodeEnquiryRows(e *encoder, v *enquiryRows) {
	e.open('{')
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodeShownPriced(e, &v.Rows[i])
	}
	e.close(']')
	e.key("tallies")
	e.open('[')
	for i := range v.Tallies {
		encodeTally(e, &v.Tallies[i])
	}
	e.close(']')
	e.key("currency")
	e.string(v.Currency)
	e.close('}')
}

func encodeEnquirySheet(e *encoder, v *enquirySheet) {
	e.open('{')
	e.key("text")
	e.string(v.Text)
	e.key("notes")
	e.open('[')
	for _, v0 := range v.Notes {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeEnquiryTable(e *encoder, v *report.EnquiryTable) {
	e.open('{')
	e.key("heads")
	e.open('[')
	for _, v0 := range v.Heads {
		e.string(v0)
	}
	e.close(']')
	e.key("cells")
	e.open('[')
	for i := range v.Cells {
		encodeTableCell(e, &v.Cells[i])
	}
	e.close(']')
	e.key("rows")
	e.open('[')
	for _, v0 := range v.Rows {
		e.open('[')
		for _, v1 := range v0 {
			e.whole(v1)
		}
		e.close(']')
	}
	e.close(']')
	e.close('}')
}

func encodeEnquiryTotals(e *encoder, v *enquiryTotals) {
	e.open('{')
	e.key("totals")
	e.open('[')
	for i := range v.Totals {
		encodeShownTotal(e, &v.Totals[i])
	}
	e.close(']')
	e.close('}')
}

func encodeWorkedAnswer(e *encoder, v *lesson.WorkedAnswer) {
	e.open('{')
	e.key("text")
	e.string(v.Text)
	e.key("document")
	encodeDocument(e, &v.Document)
	e.key("number")
	e.string(v.Number)
	e.key("workings")
	e.open('[')
	for i := range v.Workings {
		encodeWorkedLine(e, &v.Workings[i])
	}
	e.close(']')
	e.close('}')
}

func encodeToldTry(e *encoder, v *lesson.ToldTry) {
	e.open('{')
	e.key("solved")
	e.flag(v.Solved)
	e.key("lines")
	e.open('[')
	for i := range v.Lines {
		encodeTriedLine(e, &v.Lines[i])
	}
	e.close(']')
	e.key("film")
	e.string(v.Film)
	e.close('}')
}

func encodeToldGuess(e *encoder, v *lesson.ToldGuess) {
	e.open('{')
	e.key("how")
	e.string(v.How)
	e.key("said")
	e.string(v.Said)
	e.key("place")
	e.whole(v.Place)
	e.key("told")
	e.string(v.Told)
	e.close('}')
}

func encodeLessons(e *encoder, v *lessons) {
	e.open('{')
	e.key("lessons")
	e.open('[')
	for i := range v.Lessons {
		encodeShownLesson(e, &v.Lessons[i])
	}
	e.close(']')
	e.close('}')
}

func encodeOutlined(e *encoder, v *outlined) {
	e.open('{')
	e.key("ghosts")
	e.open('[')
	for i := range v.Ghosts {
		encodeGhost(e, &v.Ghosts[i])
	}
	e.close(']')
	e.close('}')
}

func encodePapered(e *encoder, v *papered) {
	e.open('{')
	e.key("paper")
	encodePaper(e, &v.Paper)
	e.key("asks")
	e.open('[')
	for i := range v.Asks {
		encodeShownQuestion(e, &v.Asks[i])
	}
	e.close(']')
	e.key("mark")
	e.string(v.Mark)
	if v.NotYet != "" {
		e.key("not_yet")
		e.string(v.NotYet)
	}
	if len(v.Proposals) > 0 {
		e.key("proposals")
		e.open('[')
		for i := range v.Proposals {
			encodeShownProposal(e, &v.Proposals[i])
		}
		e.close(']')
	}
	e.close('}')
}

func encodeDrawingOut(e *encoder, v *drawingOut) {
	e.open('{')
	e.key("name")
	e.string(v.Name)
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeMarkedAt(e *encoder, v *markedAt) {
	e.open('{')
	e.key("at")
	e.whole(v.At)
	e.key("said")
	e.string(v.Said)
	if v.Found {
		e.key("found")
		e.flag(v.Found)
	}
	if v.Read {
		e.key("read")
		e.flag(v.Read)
	}
	e.close('}')
}

func encodeLearned(e *encoder, v *learned) {
	e.open('{')
	e.key("shop")
	e.string(v.Shop)
	e.close('}')
}

func encodeIssuedPaper(e *encoder, v *issuedPaper) {
	e.open('{')
	e.key("item")
	e.string(v.Item)
	e.key("kind")
	e.string(string(v.Kind))
	e.key("name")
	e.string(v.Name)
	e.key("time")
	e.string(v.Time)
	e.key("mark")
	e.string(v.Mark)
	e.key("program")
	e.string(v.Program)
	e.key("paper")
	encodePaper(e, &v.Paper)
	e.key("document")
	encodeDocument(e, &v.Document)
	if v.Several != nil {
		e.key("several")
		encodeSeveralArgs(e, v.Several)
	}
	e.key("shop")
	e.string(v.Shop)
	e.key("answers")
	e.open('{')
	for _, k := range keys(v.Answers) {
		v0 := v.Answers[k]
		e.name(k)
		e.string(v0)
	}
	e.close('}')
	e.close('}')
}

func encodePaperSaved(e *encoder, v *paperSaved) {
	e.open('{')
	e.key("name")
	e.string(v.Name)
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeTabled(e *encoder, v *tabled) {
	e.open('{')
	e.key("name")
	e.string(v.Name)
	e.key("csv")
	e.string(v.CSV)
	if v.Sheet != nil {
		e.key("sheet")
		encodeEnquiryTable(e, v.Sheet)
	}
	e.close('}')
}

func encodeReceived(e *encoder, v *received) {
	e.open('{')
	e.key("document")
	encodeDocument(e, &v.Document)
	if len(v.Steps) > 0 {
		e.key("steps")
		e.open('[')
		for i := range v.Steps {
			encodeDocument(e, &v.Steps[i])
		}
		e.close(']')
	}
	e.key("view")
	encodePage(e, &v.View)
	e.key("job")
	encodeJob(e, &v.Job)
	e.key("item")
	e.string(v.Item)
	e.key("told")
	encodeTold(e, &v.Told)
	e.key("shop")
	e.string(v.Shop)
	e.close('}')
}

func encodeSearchBinds(e *encoder, v *searchBinds) {
	e.open('{')
	e.key("said")
	e.string(v.Said)
	e.close('}')
}

func encodeFoundPart(e *encoder, v *foundPart) {
	e.open('{')
	e.key("seen")
	e.whole(v.Seen)
	e.key("passed")
	e.whole(v.Passed)
	e.key("cuts")
	e.open('{')
	for _, k := range keys(v.Cuts) {
		v0 := v.Cuts[k]
		e.name(k)
		e.whole(v0)
	}
	e.close('}')
	e.key("best")
	e.open('[')
	for i := range v.Best {
		encodeFoundDesign(e, &v.Best[i])
	}
	e.close(']')
	e.key("front")
	e.open('[')
	for i := range v.Front {
		encodeFoundDesign(e, &v.Front[i])
	}
	e.close(']')
	if v.Thinned != 0 {
		e.key("thinned")
		e.number(v.Thinned)
	}
	e.close('}')
}

func encodeSearchDesigns(e *encoder, v *searchDesigns) {
	e.open('{')
	e.key("documents")
	e.open('[')
	for i := range v.Documents {
		encodeDocument(e, &v.Documents[i])
	}
	e.close(']')
	e.close('}')
}

func encodeSearchForm(e *encoder, v *report.SearchForm) {
	e.open('{')
	e.key("axes")
	e.open('[')
	for i := range v.Axes {
		encodeSearchAxis(e, &v.Axes[i])
	}
	e.close(']')
	e.key("musts")
	e.open('[')
	for i := range v.Musts {
		encodeSearchMust(e, &v.Musts[i])
	}
	e.close(']')
	e.key("wanted")
	e.open('[')
	for i := range v.Wanted {
		encodeNamedFigure(e, &v.Wanted[i])
	}
	e.close(']')
	e.close('}')
}

func encodePaper(e *encoder, v *paper.Paper) {
	e.open('{')
	e.key("kind")
	e.string(string(v.Kind))
	e.key("title")
	e.string(v.Title)
	e.key("status")
	e.string(v.Status)
	e.key("across")
	e.string(v.Across)
	e.key("foot")
	e.string(v.Foot)
	e.key("head")
	e.open('[')
	for i := range v.Head {
		encodePair(e, &v.Head[i])
	}
	e.close(']')
	e.key("blocks")
	e.open('[')
	for i := range v.Blocks {
		encodeBlock(e, &v.Blocks[i])
	}
	e.close(']')
	e.close('}')
}

func encodeSized(e *encoder, v *sized) {
	e.open('{')
	e.key("count")
	e.whole(v.Count)
	e.key("said")
	e.string(v.Said)
	e.key("gives")
	e.open('[')
	for _, v0 := range v.Gives {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeSearchStarted(e *encoder, v *searchStarted) {
	e.open('{')
	e.key("hurdle")
	encodeHurdle(e, &v.Hurdle)
	e.key("first")
	encodeFoundPart(e, &v.First)
	e.close('}')
}

func encodeSearchTold(e *encoder, v *report.SearchTold) {
	e.open('{')
	e.key("said")
	e.open('[')
	for _, v0 := range v.Said {
		e.string(v0)
	}
	e.close(']')
	e.key("columns")
	e.open('[')
	for i := range v.Columns {
		encodeSearchHead(e, &v.Columns[i])
	}
	e.close(']')
	e.key("measures")
	e.whole(v.Measures)
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodeSearchRow(e, &v.Rows[i])
	}
	e.close(']')
	e.key("beyond")
	e.open('[')
	for i := range v.Beyond {
		encodeSearchRow(e, &v.Beyond[i])
	}
	e.close(']')
	e.key("picture")
	encodeSearchChart(e, &v.Picture)
	e.close('}')
}

func encodeSent(e *encoder, v *sent) {
	e.open('{')
	e.key("told")
	encodeTold(e, &v.Told)
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeShopReply(e *encoder, v *shopReply) {
	e.open('{')
	e.key("shop")
	e.string(v.Shop)
	e.key("form")
	encodeShopTables(e, &v.Form)
	e.key("lifted")
	e.open('[')
	for _, v0 := range v.Lifted {
		e.string(v0)
	}
	e.close(']')
	e.key("refused")
	e.open('[')
	for i := range v.Refused {
		encodeShopFault(e, &v.Refused[i])
	}
	e.close(']')
	e.close('}')
}

func encodeShopEffect(e *encoder, v *report.ShopEffect) {
	e.open('{')
	e.key("columns")
	e.open('[')
	for _, v0 := range v.Columns {
		e.string(v0)
	}
	e.close(']')
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodeShopEffectRow(e, &v.Rows[i])
	}
	e.close(']')
	e.key("note")
	e.string(v.Note)
	e.close('}')
}

func encodeStepped(e *encoder, v *stepped) {
	e.open('{')
	e.key("entries")
	e.open('[')
	for i := range v.Entries {
		encodeSteps(e, &v.Entries[i])
	}
	e.close(']')
	e.close('}')
}

func encodeStories(e *encoder, v *stories) {
	e.open('{')
	e.key("stories")
	e.open('[')
	for i := range v.Stories {
		encodeShownStory(e, &v.Stories[i])
	}
	e.close(']')
	e.close('}')
}

func encodeShownSure(e *encoder, v *report.ShownSure) {
	e.open('{')
	e.key("absent")
	e.string(v.Absent)
	e.key("draws")
	e.whole(v.Draws)
	e.key("part")
	e.whole(v.Part)
	e.key("bands")
	e.open('[')
	for i := range v.Bands {
		encodeShownBand(e, &v.Bands[i])
	}
	e.close(']')
	e.key("figures")
	e.open('[')
	for i := range v.Figures {
		encodeNamedFigure(e, &v.Figures[i])
	}
	e.close(']')
	e.key("widths")
	e.open('[')
	for i := range v.Widths {
		encodeShownWidth(e, &v.Widths[i])
	}
	e.close(']')
	e.key("meets")
	e.string(v.Meets)
	e.key("said")
	e.open('[')
	for _, v0 := range v.Said {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeDraws(e *encoder, v *draws) {
	e.open('{')
	e.key("outcomes")
	e.bytes(v.Outcomes)
	e.close('}')
}

func encodeTermOf(e *encoder, v *termOf) {
	e.open('{')
	e.key("term")
	e.string(v.Term)
	e.close('}')
}

func encodeTerms(e *encoder, v *terms) {
	e.open('{')
	e.key("terms")
	e.open('[')
	for i := range v.Terms {
		encodeShownTerm(e, &v.Terms[i])
	}
	e.close(']')
	e.close('}')
}

func encodeRefusal(e *encoder, v *refusal) {
	e.open('{')
	e.key("message")
	e.string(v.Message)
	e.key("key")
	e.string(v.Key)
	if len(v.Fields) > 0 {
		e.key("fields")
		e.open('[')
		for i := range v.Fields {
			encodeShopFault(e, &v.Fields[i])
		}
		e.close(']')
	}
	if len(v.Readings) > 0 {
		e.key("readings")
		e.open('[')
		for _, v0 := range v.Readings {
			e.string(v0)
		}
		e.close(']')
	}
	if v.Elsewhere {
		e.key("elsewhere")
		e.flag(v.Elsewhere)
	}
	e.close('}')
}

func encodeCardRow(e *encoder, v *report.CardRow) {
	e.open('{')
	e.key("label")
	e.string(v.Label)
	e.key("si")
	e.string(v.SI)
	e.key("us")
	e.string(v.US)
	if v.Gauge != "" {
		e.key("gauge")
		e.string(v.Gauge)
	}
	e.close('}')
}

func encodeOtherwise(e *encoder, v *otherwise) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("name")
	e.string(v.Name)
	e.key("why")
	e.string(v.Why)
	e.key("lines")
	e.open('[')
	for _, v0 := range v.Lines {
		e.string(v0)
	}
	e.close(']')
	e.key("shown")
	encodeShown(e, &v.Shown)
	e.close('}')
}

func encodeBasis(e *encoder, v *document.Basis) {
	e.open('{')
	e.key("build")
	e.string(v.Build)
	e.key("shop")
	e.string(v.Shop)
	if v.Named != "" {
		e.key("named")
		e.string(v.Named)
	}
	if v.Dated != "" {
		e.key("dated")
		e.string(v.Dated)
	}
	e.key("figures")
	e.open('[')
	for _, v0 := range v.Figures {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeDocument(e *encoder, v *document.Document) {
	e.open('{')
	e.key("title")
	e.string(v.Title)
	if v.Mark != "" {
		e.key("mark")
		e.string(v.Mark)
	}
	e.key("units")
	e.string(string(v.Units))
	e.key("fields")
	e.open('{')
	for _, k := range keys(v.Fields) {
		v0 := v.Fields[k]
		e.name(k)
		encodeEntry(e, &v0)
	}
	e.close('}')
	e.key("spans")
	e.open('[')
	for i := range v.Spans {
		encodeSpan(e, &v.Spans[i])
	}
	e.close(']')
	e.close('}')
}

func encodePage(e *encoder, v *page) {
	e.open('{')
	e.key("title")
	e.string(v.Title)
	e.key("units")
	e.string(string(v.Units))
	e.key("valid")
	e.flag(v.Valid)
	e.key("fields")
	e.open('[')
	for i := range v.Fields {
		encodeFormField(e, &v.Fields[i])
	}
	e.close(']')
	e.key("spans")
	e.open('[')
	for i := range v.Spans {
		encodeFormSpan(e, &v.Spans[i])
	}
	e.close(']')
	e.key("even")
	e.string(v.Even)
	if v.Headline != nil {
		e.key("headline")
		e.open('[')
		for i := range v.Headline {
			encodeShownFigure(e, &v.Headline[i])
		}
		e.close(']')
	}
	if v.Groups != nil {
		e.key("groups")
		e.open('[')
		for i := range v.Groups {
			encodeShownGroup(e, &v.Groups[i])
		}
		e.close(']')
	}
	if v.Methods != nil {
		e.key("methods")
		e.open('[')
		for i := range v.Methods {
			encodeShownMethod(e, &v.Methods[i])
		}
		e.close(']')
	}
	if v.ByMethods != "" {
		e.key("by_methods")
		e.string(v.ByMethods)
	}
	if v.Bars != nil {
		e.key("bars")
		e.open('[')
		for i := range v.Bars {
			encodeBar(e, &v.Bars[i])
		}
		e.close(']')
	}
	e.key("cases")
	if v.Cases == nil {
		e.null()
	} else {
		encodeShownCases(e, v.Cases)
	}
	e.key("making")
	if v.Making == nil {
		e.null()
	} else {
		encodeMakingSection(e, v.Making)
	}
	e.key("ruling")
	if v.Ruling == nil {
		e.null()
	} else {
		encodeRuling(e, v.Ruling)
	}
	if v.Survivors != nil {
		e.key("survivors")
		e.open('[')
		for i := range v.Survivors {
			encodeShownSurvivor(e, &v.Survivors[i])
		}
		e.close(']')
	}
	if v.Notices != nil {
		e.key("notices")
		e.open('[')
		for i := range v.Notices {
			encodeShownNotice(e, &v.Notices[i])
		}
		e.close(']')
	}
	e.key("remarks")
	e.string(v.Remarks)
	e.key("summary")
	e.string(v.Summary)
	if v.Pairs != nil {
		e.key("pairs")
		e.open('[')
		for i := range v.Pairs {
			encodeShownAsked(e, &v.Pairs[i])
		}
		e.close(']')
	}
	e.key("followed")
	e.string(v.Followed)
	e.key("glimpse")
	e.flag(v.Glimpse)
	if v.Whose != "" {
		e.key("whose")
		e.string(v.Whose)
	}
	e.key("scene")
	if v.Scene == nil {
		e.null()
	} else {
		encodeScene(e, v.Scene)
	}
	if v.Plots != nil {
		e.key("plots")
		e.open('[')
		for i := range v.Plots {
			encodeUpdate(e, &v.Plots[i])
		}
		e.close(']')
	}
	if v.Rings != nil {
		e.key("rings")
		e.open('[')
		for i := range v.Rings {
			encodeRings(e, &v.Rings[i])
		}
		e.close(']')
	}
	e.close('}')
}

func encodeOption(e *encoder, v *plots.Option) {
	e.open('{')
	e.key("title")
	encodeHeading(e, &v.Title)
	if len(v.X) > 0 {
		e.key("xAxis")
		e.open('[')
		for i := range v.X {
			encodeAxisRange(e, &v.X[i])
		}
		e.close(']')
	}
	if len(v.Y) > 0 {
		e.key("yAxis")
		e.open('[')
		for i := range v.Y {
			encodeAxisRange(e, &v.Y[i])
		}
		e.close(']')
	}
	e.key("series")
	e.open('[')
	for i := range v.Series {
		encodeSeriesPatch(e, &v.Series[i])
	}
	e.close(']')
	e.close('}')
}

func encodePlace(e *encoder, v *plots.Place) {
	e.open('{')
	e.key("field")
	e.string(v.Field)
	e.key("unit")
	e.string(v.Unit)
	e.key("at")
	e.number(v.At)
	e.key("said")
	e.string(v.Said)
	e.key("steps")
	if v.Steps == nil {
		e.null()
	} else {
		e.open('[')
		for _, v0 := range *v.Steps {
			e.number(v0)
		}
		e.close(']')
	}
	e.close('}')
}

func encodeSpot(e *encoder, v *plots.Spot) {
	e.open('{')
	e.key("x")
	e.number(v.X)
	e.key("y")
	e.number(v.Y)
	e.close('}')
}

func encodeShownMove(e *encoder, v *report.ShownMove) {
	e.open('{')
	e.key("field")
	e.string(v.Field)
	e.key("label")
	e.string(v.Label)
	e.key("change")
	e.string(v.Change)
	e.key("effect")
	e.string(v.Effect)
	e.close('}')
}

func encodeJob(e *encoder, v *document.Job) {
	e.open('{')
	e.key("head")
	encodeHead(e, &v.Head)
	e.key("base")
	encodeDocument(e, &v.Base)
	e.key("items")
	e.open('[')
	for i := range v.Items {
		encodeItem(e, &v.Items[i])
	}
	e.close(']')
	if len(v.By) > 0 {
		e.key("by")
		e.open('[')
		for i := range v.By {
			encodeBasis(e, &v.By[i])
		}
		e.close(']')
	}
	e.close('}')
}

func encodeShownRow(e *encoder, v *report.ShownRow) {
	e.open('{')
	e.key("cells")
	e.open('[')
	for i := range v.Cells {
		encodeShownCell(e, &v.Cells[i])
	}
	e.close(']')
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.key("why")
	e.string(v.Why)
	e.key("line")
	e.string(v.Line)
	e.key("refused")
	e.string(v.Refused)
	e.close('}')
}

func encodeShown(e *encoder, v *document.Shown) {
	e.open('{')
	e.key("by")
	e.whole(v.By)
	e.key("day")
	e.string(v.Day)
	e.key("cells")
	e.open('[')
	for _, v0 := range v.Cells {
		if v0 == nil {
			e.null()
		} else {
			e.number(*v0)
		}
	}
	e.close(']')
	e.close('}')
}

func encodeWhere(e *encoder, v *report.Where) {
	e.open('{')
	e.key("symbol")
	e.string(v.Symbol)
	e.key("name")
	e.string(v.Name)
	e.key("value")
	e.string(v.Value)
	e.key("si")
	e.string(v.SI)
	e.close('}')
}

func encodeBesidePlot(e *encoder, v *plots.BesidePlot) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("panels")
	e.open('[')
	for i := range v.Panels {
		encodeBesidePanel(e, &v.Panels[i])
	}
	e.close(']')
	e.close('}')
}

func encodeComparedColumn(e *encoder, v *report.ComparedColumn) {
	e.open('{')
	e.key("name")
	e.string(v.Name)
	e.key("base")
	e.flag(v.Base)
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.key("why")
	e.string(v.Why)
	e.key("line")
	e.string(v.Line)
	e.key("followed")
	e.open('[')
	for _, v0 := range v.Followed {
		e.string(v0)
	}
	e.close(']')
	e.key("outside")
	e.string(v.Outside)
	e.key("refused")
	e.string(v.Refused)
	e.key("said")
	e.string(v.Said)
	e.key("instead")
	e.string(v.Instead)
	e.key("document")
	encodeDocument(e, &v.Document)
	e.close('}')
}

func encodeComparedLine(e *encoder, v *report.ComparedLine) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("unit")
	e.string(v.Unit)
	e.key("same")
	e.flag(v.Same)
	e.key("means")
	e.string(v.Means)
	e.key("worked")
	e.string(v.Worked)
	e.key("cells")
	e.open('[')
	for i := range v.Cells {
		encodeComparedCell(e, &v.Cells[i])
	}
	e.close(']')
	e.close('}')
}

func encodeNamedFigure(e *encoder, v *report.NamedFigure) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.close('}')
}

func encodeShownReading(e *encoder, v *report.ShownReading) {
	e.open('{')
	e.key("fits")
	e.flag(v.Fits)
	e.key("value")
	e.string(v.Value)
	e.key("by")
	e.string(v.By)
	e.key("miss")
	e.string(v.Miss)
	e.close('}')
}

func encodeShownBefore(e *encoder, v *report.ShownBefore) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("kind")
	e.string(v.Kind)
	e.key("enquiry")
	e.string(v.Enquiry)
	e.key("item")
	e.string(v.Item)
	e.key("state")
	e.string(v.State)
	e.key("day")
	e.string(v.Day)
	e.key("quantity")
	e.string(v.Quantity)
	e.key("price")
	e.string(v.Price)
	e.key("each")
	e.string(v.Each)
	e.key("differs")
	e.string(v.Differs)
	e.close('}')
}

func encodeShownChange(e *encoder, v *report.ShownChange) {
	e.open('{')
	e.key("kind")
	e.string(v.Kind)
	e.key("item")
	e.string(v.Item)
	e.key("what")
	e.string(v.What)
	e.key("before")
	e.string(v.Before)
	e.key("after")
	e.string(v.After)
	e.key("quantity")
	e.string(v.Quantity)
	e.key("price")
	e.string(v.Price)
	e.close('}')
}

func encodeShownBatch(e *encoder, v *report.ShownBatch) {
	e.open('{')
	e.key("line")
	e.string(v.Line)
	e.key("set_up")
	e.string(v.SetUp)
	e.key("items")
	e.string(v.Items)
	e.key("change")
	e.string(v.Change)
	e.key("saved")
	e.string(v.Saved)
	e.close('}')
}

func encodeSummary(e *encoder, v *quotes.Summary) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("of")
	e.string(v.Of)
	e.key("time")
	e.string(v.Time)
	e.key("customer")
	e.string(v.Customer)
	e.key("reference")
	e.string(v.Reference)
	e.key("revision")
	e.string(v.Revision)
	e.key("due")
	e.string(v.Due)
	e.key("state")
	e.string(string(v.State))
	e.key("items")
	e.whole(v.Items)
	e.key("unpriced")
	e.whole(v.Unpriced)
	e.key("provisional")
	e.whole(v.Provisional)
	e.key("price")
	e.number(v.Price)
	e.key("currency")
	e.string(v.Currency)
	e.key("day")
	e.string(v.Day)
	e.key("words")
	e.string(v.Words)
	e.key("lengths")
	e.open('[')
	for _, v0 := range v.Lengths {
		e.number(v0)
	}
	e.close(']')
	e.key("counts")
	e.open('[')
	for _, v0 := range v.Counts {
		e.number(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeHeadColumn(e *encoder, v *enquiry.HeadColumn) {
	e.open('{')
	e.key("field")
	e.string(v.Field)
	if v.Unit != "" {
		e.key("unit")
		e.string(v.Unit)
	}
	if v.Side != "" {
		e.key("side")
		e.string(v.Side)
	}
	if v.Basis != "" {
		e.key("basis")
		e.string(v.Basis)
	}
	e.key("head")
	e.string(v.Head)
	e.key("examples")
	e.open('[')
	for _, v0 := range v.Examples {
		e.string(v0)
	}
	e.close(']')
	if v.Guessed {
		e.key("guessed")
		e.flag(v.Guessed)
	}
	if v.Skipped {
		e.key("skipped")
		e.flag(v.Skipped)
	}
	e.close('}')
}

func encodeDecision(e *encoder, v *enquiry.Decision) {
	e.open('{')
	e.key("items")
	e.open('[')
	for _, v0 := range v.Items {
		e.whole(v0)
	}
	e.close(']')
	e.key("field")
	e.string(v.Field)
	e.key("kind")
	e.string(v.Kind)
	e.key("second")
	e.flag(v.Second)
	if v.Text != "" {
		e.key("text")
		e.string(v.Text)
	}
	e.close('}')
}

func encodeEdit(e *encoder, v *enquiry.Edit) {
	e.open('{')
	e.key("item")
	e.whole(v.Item)
	e.key("field")
	e.string(v.Field)
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeShownListed(e *encoder, v *report.ShownListed) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("of")
	e.string(v.Of)
	e.key("name")
	e.string(v.Name)
	e.key("customer")
	e.string(v.Customer)
	e.key("reference")
	e.string(v.Reference)
	e.key("revision")
	e.string(v.Revision)
	e.key("due")
	e.string(v.Due)
	e.key("state")
	e.string(v.State)
	e.key("items")
	e.string(v.Items)
	e.key("price")
	e.string(v.Price)
	e.key("day")
	e.string(v.Day)
	e.close('}')
}

func encodeShownHead(e *encoder, v *report.ShownHead) {
	e.open('{')
	e.key("field")
	e.string(v.Field)
	if v.Unit != "" {
		e.key("unit")
		e.string(v.Unit)
	}
	if v.Side != "" {
		e.key("side")
		e.string(v.Side)
	}
	if v.Basis != "" {
		e.key("basis")
		e.string(v.Basis)
	}
	e.key("head")
	e.string(v.Head)
	e.key("examples")
	e.open('[')
	for _, v0 := range v.Examples {
		e.string(v0)
	}
	e.close(']')
	if v.Guessed {
		e.key("guessed")
		e.flag(v.Guessed)
	}
	if v.Skipped {
		e.key("skipped")
		e.flag(v.Skipped)
	}
	e.key("said")
	e.string(v.Said)
	e.close('}')
}

func encodeEnquiryName(e *encoder, v *report.EnquiryName) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("means")
	e.string(v.Means)
	e.key("choices")
	e.open('[')
	for i := range v.Choices {
		encodeCarriedLabel(e, &v.Choices[i])
	}
	e.close(']')
	e.close('}')
}

func encodeShownEntry(e *encoder, v *report.ShownEntry) {
	e.open('{')
	e.key("mark")
	e.string(v.Mark)
	e.key("title")
	e.string(v.Title)
	e.key("source")
	e.string(v.Source)
	e.key("cells")
	e.open('[')
	for _, v0 := range v.Cells {
		e.whole(v0)
	}
	e.close(']')
	e.key("open")
	e.whole(v.Open)
	e.key("unread")
	e.open('[')
	for _, v0 := range v.Unread {
		e.string(v0)
	}
	e.close(']')
	e.key("refused")
	e.string(v.Refused)
	e.key("design")
	e.whole(v.Design)
	e.close('}')
}

func encodeEnquiryCell(e *encoder, v *report.EnquiryCell) {
	e.open('{')
	e.key("field")
	e.string(v.Field)
	e.key("text")
	e.string(v.Text)
	e.key("shown")
	e.string(v.Shown)
	if v.SI != nil {
		e.key("si")
		e.number(*v.SI)
	}
	e.key("why")
	e.string(v.Why)
	e.close('}')
}

func encodeEnquiryEntry(e *encoder, v *report.EnquiryEntry) {
	e.open('{')
	e.key("field")
	e.string(v.Field)
	e.key("text")
	e.string(v.Text)
	e.key("origin")
	e.string(string(v.Origin))
	e.close('}')
}

func encodeShownDoubt(e *encoder, v *report.ShownDoubt) {
	e.open('{')
	e.key("kind")
	e.string(v.Kind)
	e.key("field")
	e.string(v.Field)
	e.key("items")
	e.open('[')
	for _, v0 := range v.Items {
		e.whole(v0)
	}
	e.close(']')
	e.key("said")
	e.string(v.Said)
	e.key("first")
	e.string(v.First)
	e.key("second")
	e.string(v.Second)
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeShownAsk(e *encoder, v *report.ShownAsk) {
	e.open('{')
	e.key("kind")
	e.string(v.Kind)
	e.key("said")
	e.string(v.Said)
	e.key("items")
	e.open('[')
	for _, v0 := range v.Items {
		e.whole(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeLeftover(e *encoder, v *enquiry.Leftover) {
	e.open('{')
	e.key("row")
	e.whole(v.Row)
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeShownPriced(e *encoder, v *report.ShownPriced) {
	e.open('{')
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.key("why")
	e.string(v.Why)
	e.key("refused")
	e.string(v.Refused)
	e.key("price")
	e.number(v.Price)
	e.key("shown")
	e.string(v.Shown)
	e.close('}')
}

func encodeTally(e *encoder, v *design.Tally) {
	e.open('{')
	e.key("tubes")
	e.whole(v.Tubes)
	e.key("metres")
	e.number(v.Metres)
	e.key("finned")
	e.number(v.Finned)
	if v.Strip != nil {
		e.key("strip")
		encodeBought(e, v.Strip)
	}
	e.key("hours")
	e.number(v.Hours)
	e.key("crates")
	e.whole(v.Crates)
	e.key("trucks")
	e.number(v.Trucks)
	e.key("weight")
	e.number(v.Weight)
	e.key("price")
	e.number(v.Price)
	if v.Refused {
		e.key("refused")
		e.flag(v.Refused)
	}
	if v.Unpriced {
		e.key("unpriced")
		e.flag(v.Unpriced)
	}
	if v.Work != nil {
		e.key("work")
		encodeWork(e, v.Work)
	}
	e.close('}')
}

func encodeTableCell(e *encoder, v *report.TableCell) {
	e.open('{')
	e.key("text")
	e.string(v.Text)
	if v.Number != nil {
		e.key("number")
		e.number(*v.Number)
	}
	e.close('}')
}

func encodeShownTotal(e *encoder, v *report.ShownTotal) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("value")
	e.string(v.Value)
	e.key("unit")
	e.string(v.Unit)
	e.key("note")
	e.string(v.Note)
	e.close('}')
}

func encodeWorkedLine(e *encoder, v *lesson.WorkedLine) {
	e.open('{')
	e.key("figure")
	e.string(v.Figure)
	e.key("label")
	e.string(v.Label)
	e.key("symbols")
	e.string(v.Symbols)
	e.key("numbers")
	e.string(v.Numbers)
	e.key("result")
	e.string(v.Result)
	e.close('}')
}

func encodeTriedLine(e *encoder, v *lesson.TriedLine) {
	e.open('{')
	e.key("holds")
	e.flag(v.Holds)
	e.key("text")
	e.string(v.Text)
	e.key("found")
	e.string(v.Found)
	e.close('}')
}

func encodeShownLesson(e *encoder, v *lesson.ShownLesson) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("section")
	e.string(v.Section)
	e.key("title")
	e.string(v.Title)
	e.key("question")
	e.string(v.Question)
	e.key("guess")
	e.string(v.Guess)
	e.key("choices")
	e.open('[')
	for _, v0 := range v.Choices {
		e.string(v0)
	}
	e.close(']')
	e.key("task")
	e.string(v.Task)
	e.key("asked")
	e.string(v.Asked)
	e.key("unit")
	e.string(v.Unit)
	e.key("hints")
	e.open('[')
	for _, v0 := range v.Hints {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeGhost(e *encoder, v *finned.Ghost) {
	e.open('{')
	e.key("od")
	e.number(v.OD)
	e.key("fin_od")
	e.number(v.FinOD)
	e.close('}')
}

func encodeShownQuestion(e *encoder, v *report.ShownQuestion) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("of")
	e.string(string(v.Of))
	if v.Many {
		e.key("many")
		e.flag(v.Many)
	}
	if v.Day {
		e.key("day")
		e.flag(v.Day)
	}
	if len(v.Choices) > 0 {
		e.key("choices")
		e.open('[')
		for i := range v.Choices {
			encodeNamedFigure(e, &v.Choices[i])
		}
		e.close(']')
	}
	if v.Else != "" {
		e.key("else")
		e.string(v.Else)
	}
	e.close('}')
}

func encodeShownProposal(e *encoder, v *report.ShownProposal) {
	e.open('{')
	e.key("thing")
	e.string(string(v.Thing))
	e.key("said")
	e.string(v.Said)
	e.key("why")
	e.string(v.Why)
	e.close('}')
}

func encodeSeveralArgs(e *encoder, v *severalArgs) {
	e.open('{')
	e.key("base")
	encodeDocument(e, &v.Base)
	e.key("items")
	e.open('[')
	for i := range v.Items {
		encodePaperItem(e, &v.Items[i])
	}
	e.close(']')
	e.close('}')
}

func encodeTold(e *encoder, v *outgoing.Told) {
	e.open('{')
	e.key("day")
	e.string(v.Day)
	e.key("tube")
	e.string(v.Tube)
	e.key("figures")
	e.open('[')
	for i := range v.Figures {
		encodeFigure(e, &v.Figures[i])
	}
	e.close(']')
	e.key("price")
	e.open('[')
	for i := range v.Price {
		encodeFigure(e, &v.Price[i])
	}
	e.close(']')
	e.key("term")
	e.string(v.Term)
	e.key("refused")
	e.open('[')
	for _, v0 := range v.Refused {
		e.string(v0)
	}
	e.close(']')
	e.key("held")
	e.string(v.Held)
	e.key("beside")
	e.open('[')
	for i := range v.Beside {
		encodeBeside(e, &v.Beside[i])
	}
	e.close(']')
	e.key("entries")
	e.open('[')
	for _, v0 := range v.Entries {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeFoundDesign(e *encoder, v *foundDesign) {
	e.open('{')
	e.key("place")
	e.whole(v.Place)
	if v.Outside {
		e.key("outside")
		e.flag(v.Outside)
	}
	e.key("values")
	e.open('[')
	for _, v0 := range v.Values {
		if v0 == nil {
			e.null()
		} else {
			e.number(*v0)
		}
	}
	e.close(']')
	e.close('}')
}

func encodeSearchAxis(e *encoder, v *report.SearchAxis) {
	e.open('{')
	e.key("field")
	e.string(v.Field)
	e.key("label")
	e.string(v.Label)
	e.key("typed")
	e.string(v.Typed)
	if len(v.Choices) > 0 {
		e.key("choices")
		e.open('[')
		for i := range v.Choices {
			encodeNamedFigure(e, &v.Choices[i])
		}
		e.close(']')
	}
	e.key("on")
	e.flag(v.On)
	e.close('}')
}

func encodeSearchMust(e *encoder, v *report.SearchMust) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("means")
	e.string(v.Means)
	e.key("typed")
	e.string(v.Typed)
	if len(v.Choices) > 0 {
		e.key("choices")
		e.open('[')
		for i := range v.Choices {
			encodeNamedFigure(e, &v.Choices[i])
		}
		e.close(']')
	}
	e.close('}')
}

func encodePair(e *encoder, v *paper.Pair) {
	e.open('{')
	e.key("label")
	e.string(v.Label)
	e.key("value")
	e.string(v.Value)
	if v.Note != "" {
		e.key("note")
		e.string(v.Note)
	}
	if v.Figure != "" {
		e.key("figure")
		e.string(v.Figure)
	}
	e.close('}')
}

func encodeBlock(e *encoder, v *paper.Block) {
	e.open('{')
	e.key("form")
	e.string(string(v.Form))
	if v.Text != "" {
		e.key("text")
		e.string(v.Text)
	}
	if len(v.Lines) > 0 {
		e.key("lines")
		e.open('[')
		for _, v0 := range v.Lines {
			e.string(v0)
		}
		e.close(']')
	}
	if len(v.Pairs) > 0 {
		e.key("pairs")
		e.open('[')
		for i := range v.Pairs {
			encodePair(e, &v.Pairs[i])
		}
		e.close(']')
	}
	if v.Table != nil {
		e.key("table")
		encodeTable(e, v.Table)
	}
	if v.Drawing != nil {
		e.key("drawing")
		encodeDrawing(e, v.Drawing)
	}
	e.close('}')
}

func encodeHurdle(e *encoder, v *search.Hurdle) {
	e.open('{')
	e.key("full")
	e.flag(v.Full)
	e.key("last")
	e.number(v.Last)
	e.key("place")
	e.whole(v.Place)
	e.key("front")
	e.open('[')
	for i := range v.Front {
		encodeHurdlePoint(e, &v.Front[i])
	}
	e.close(']')
	e.close('}')
}

func encodeSearchHead(e *encoder, v *report.SearchHead) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("unit")
	e.string(v.Unit)
	e.close('}')
}

func encodeSearchRow(e *encoder, v *report.SearchRow) {
	e.open('{')
	e.key("place")
	e.whole(v.Place)
	e.key("name")
	e.string(v.Name)
	e.key("cells")
	e.open('[')
	for _, v0 := range v.Cells {
		e.string(v0)
	}
	e.close(']')
	e.key("orders")
	e.open('[')
	for _, v0 := range v.Orders {
		e.whole(v0)
	}
	e.close(']')
	e.key("front")
	e.flag(v.Front)
	e.key("outside")
	e.string(v.Outside)
	e.close('}')
}

func encodeSearchChart(e *encoder, v *report.SearchChart) {
	e.open('{')
	e.key("x")
	encodeSearchScale(e, &v.X)
	e.key("y")
	encodeSearchScale(e, &v.Y)
	e.key("points")
	e.open('[')
	for i := range v.Points {
		encodeSearchPoint(e, &v.Points[i])
	}
	e.close(']')
	e.close('}')
}

func encodeShopTables(e *encoder, v *report.ShopTables) {
	e.open('{')
	e.key("name")
	e.string(v.Name)
	e.key("tables")
	e.open('[')
	for i := range v.Tables {
		encodeShopTable(e, &v.Tables[i])
	}
	e.close(']')
	e.close('}')
}

func encodeShopFault(e *encoder, v *report.ShopFault) {
	e.open('{')
	e.key("field")
	e.string(v.Field)
	e.key("place")
	e.string(v.Place)
	e.key("message")
	e.string(v.Message)
	e.close('}')
}

func encodeShopEffectRow(e *encoder, v *report.ShopEffectRow) {
	e.open('{')
	e.key("label")
	e.string(v.Label)
	e.key("unit")
	e.string(v.Unit)
	e.key("cells")
	e.open('[')
	for i := range v.Cells {
		encodeShopEffectCell(e, &v.Cells[i])
	}
	e.close(']')
	e.close('}')
}

func encodeSteps(e *encoder, v *report.Steps) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("texts")
	e.open('[')
	for _, v0 := range v.Texts {
		e.string(v0)
	}
	e.close(']')
	e.key("shown")
	e.open('[')
	for _, v0 := range v.Shown {
		e.string(v0)
	}
	e.close(']')
	e.key("at")
	e.whole(v.At)
	e.close('}')
}

func encodeShownStory(e *encoder, v *lesson.ShownStory) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("section")
	e.string(v.Section)
	e.key("title")
	e.string(v.Title)
	e.key("paragraphs")
	e.open('[')
	for i := range v.Paragraphs {
		encodeParagraph(e, &v.Paragraphs[i])
	}
	e.close(']')
	e.key("curve")
	if v.Curve == nil {
		e.null()
	} else {
		encodeFinCurve(e, v.Curve)
	}
	e.key("bars")
	e.open('[')
	for i := range v.Bars {
		encodeShareBar(e, &v.Bars[i])
	}
	e.close(']')
	e.key("winding")
	if v.Winding == nil {
		e.null()
	} else {
		encodeWinding(e, v.Winding)
	}
	e.close('}')
}

func encodeShownBand(e *encoder, v *report.ShownBand) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("limit")
	e.string(v.Limit)
	e.key("unit")
	e.string(v.Unit)
	e.key("wrong")
	e.string(v.Wrong)
	e.key("note")
	e.string(v.Note)
	e.key("low")
	e.string(v.Low)
	e.key("high")
	e.string(v.High)
	e.key("left")
	e.number(v.Left)
	e.key("right")
	e.number(v.Right)
	e.key("absent")
	e.flag(v.Absent)
	e.close('}')
}

func encodeShownWidth(e *encoder, v *report.ShownWidth) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("unit")
	e.string(v.Unit)
	e.key("as")
	e.string(v.As)
	e.key("low")
	e.string(v.Low)
	e.key("mid")
	e.string(v.Mid)
	e.key("high")
	e.string(v.High)
	e.close('}')
}

func encodeShownTerm(e *encoder, v *glossary.ShownTerm) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("group")
	e.string(v.Group)
	e.key("name")
	e.string(v.Name)
	e.key("is")
	e.string(v.Is)
	e.key("picture")
	e.flag(v.Picture)
	e.key("see")
	e.open('[')
	for _, v0 := range v.See {
		e.string(v0)
	}
	e.close(']')
	e.key("letters")
	e.open('[')
	for i := range v.Letters {
		encodeShownLetter(e, &v.Letters[i])
	}
	e.close(']')
	e.key("symbols")
	e.open('[')
	for _, v0 := range v.Symbols {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeEntry(e *encoder, v *document.Entry) {
	e.open('{')
	e.key("text")
	e.string(v.Text)
	e.key("origin")
	e.string(string(v.Origin))
	e.close('}')
}

func encodeSpan(e *encoder, v *document.Span) {
	e.open('{')
	e.key("centre")
	encodeEntry(e, &v.Centre)
	e.key("width")
	encodeEntry(e, &v.Width)
	e.close('}')
}

func encodeFormField(e *encoder, v *report.FormField) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("text")
	e.string(v.Text)
	e.key("typed")
	e.string(v.Typed)
	e.key("error")
	e.string(v.Error)
	e.key("watch")
	e.string(v.Watch)
	e.key("origin")
	e.string(string(v.Origin))
	e.key("used")
	e.flag(v.Used)
	e.key("auto")
	e.string(v.Auto)
	if v.Unit != "" {
		e.key("unit")
		e.string(v.Unit)
	}
	if v.Beside != "" {
		e.key("beside")
		e.string(v.Beside)
	}
	e.close('}')
}

func encodeFormSpan(e *encoder, v *report.FormSpan) {
	e.open('{')
	e.key("number")
	e.string(v.Number)
	e.key("centre")
	encodeSpanEntry(e, &v.Centre)
	e.key("width")
	encodeSpanEntry(e, &v.Width)
	e.close('}')
}

func encodeShownFigure(e *encoder, v *report.ShownFigure) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("value")
	e.string(v.Value)
	e.key("unit")
	e.string(v.Unit)
	e.key("basis")
	e.string(v.Basis)
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.key("tests")
	e.string(v.Tests)
	e.key("full")
	e.string(v.Full)
	e.key("beside")
	e.string(v.Beside)
	e.key("absent")
	e.string(v.Absent)
	e.close('}')
}

func encodeShownGroup(e *encoder, v *report.ShownGroup) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("section")
	e.string(v.Section)
	e.key("title")
	e.string(v.Title)
	e.key("figures")
	e.open('[')
	for i := range v.Figures {
		encodeShownFigure(e, &v.Figures[i])
	}
	e.close(']')
	e.close('}')
}

func encodeShownMethod(e *encoder, v *report.ShownMethod) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("text")
	e.string(v.Text)
	e.key("of")
	e.string(v.Of)
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.key("used")
	e.flag(v.Used)
	e.key("why")
	e.string(v.Why)
	e.key("take")
	if v.Take == nil {
		e.null()
	} else {
		encodeChange(e, v.Take)
	}
	e.close('}')
}

func encodeBar(e *encoder, v *report.Bar) {
	e.open('{')
	e.key("figure")
	e.string(v.Figure)
	e.key("label")
	e.string(v.Label)
	e.key("text")
	e.string(v.Text)
	e.key("share")
	e.number(v.Share)
	e.close('}')
}

func encodeShownCases(e *encoder, v *report.ShownCases) {
	e.open('{')
	e.key("duty")
	e.string(v.Duty)
	e.key("drop")
	e.string(v.Drop)
	e.key("metal")
	e.string(v.Metal)
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodeShownCase(e, &v.Rows[i])
	}
	e.close(']')
	e.close('}')
}

func encodeMakingSection(e *encoder, v *report.MakingSection) {
	e.open('{')
	e.key("shop")
	e.string(v.Shop)
	e.key("answer")
	e.string(v.Answer)
	e.key("lines")
	e.open('[')
	for i := range v.Lines {
		encodeMakingLine(e, &v.Lines[i])
	}
	e.close(']')
	e.key("auto")
	e.flag(v.Auto)
	e.key("verdicts")
	e.open('[')
	for i := range v.Verdicts {
		encodeShownVerdict(e, &v.Verdicts[i])
	}
	e.close(']')
	e.key("cautions")
	e.open('[')
	for i := range v.Cautions {
		encodeShownCaution(e, &v.Cautions[i])
	}
	e.close(']')
	e.key("pictures")
	e.open('[')
	for i := range v.Pictures {
		encodePicture(e, &v.Pictures[i])
	}
	e.close(']')
	e.key("breaks")
	encodeMakingBreaks(e, &v.Breaks)
	e.key("work_steps")
	e.open('[')
	for i := range v.Steps {
		encodeMakingStep(e, &v.Steps[i])
	}
	e.close(']')
	e.key("checks")
	e.open('[')
	for i := range v.Checks {
		encodeMakingCheck(e, &v.Checks[i])
	}
	e.close(']')
	e.key("budget")
	e.string(v.Budget)
	e.key("promise")
	encodeMakingPromise(e, &v.Promise)
	e.close('}')
}

func encodeRuling(e *encoder, v *report.Ruling) {
	e.open('{')
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.key("text")
	e.string(v.Text)
	e.key("section")
	e.string(v.Section)
	e.key("field")
	e.string(v.Field)
	e.key("figure")
	e.string(v.Figure)
	e.key("change")
	if v.Change == nil {
		e.null()
	} else {
		encodeChange(e, v.Change)
	}
	e.close('}')
}

func encodeShownSurvivor(e *encoder, v *report.ShownSurvivor) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("text")
	e.string(v.Text)
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.key("change")
	encodeChange(e, &v.Change)
	e.close('}')
}

func encodeShownNotice(e *encoder, v *report.ShownNotice) {
	e.open('{')
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.key("text")
	e.string(v.Text)
	e.key("field")
	e.string(v.Field)
	e.key("figure")
	e.string(v.Figure)
	e.key("change")
	if v.Change == nil {
		e.null()
	} else {
		encodeChange(e, v.Change)
	}
	e.close('}')
}

func encodeShownAsked(e *encoder, v *report.ShownAsked) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("found")
	e.string(v.Found)
	e.key("wanted")
	e.string(v.Wanted)
	e.key("over")
	e.string(v.Over)
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.close('}')
}

func encodeScene(e *encoder, v *sheet.Scene) {
	e.open('{')
	e.key("width")
	e.number(v.Width)
	e.key("height")
	e.number(v.Height)
	e.key("letters")
	e.number(v.Letters)
	e.key("views")
	e.open('[')
	for i := range v.Views {
		encodeView(e, &v.Views[i])
	}
	e.close(']')
	if len(v.Ink) > 0 {
		e.key("ink")
		e.bytes(v.Ink)
	}
	e.key("texts")
	e.open('[')
	for i := range v.Texts {
		encodeText(e, &v.Texts[i])
	}
	e.close(']')
	e.key("grips")
	e.open('[')
	for i := range v.Grips {
		encodeGrip(e, &v.Grips[i])
	}
	e.close(']')
	e.key("scales")
	encodeScales(e, &v.Scales)
	if len(v.Traces) > 0 {
		e.key("traces")
		e.open('[')
		for i := range v.Traces {
			encodeTrace(e, &v.Traces[i])
		}
		e.close(']')
	}
	e.close('}')
}

func encodeUpdate(e *encoder, v *plots.Update) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("patch")
	encodeOption(e, &v.Patch)
	e.key("loose")
	e.flag(v.Loose)
	e.key("x")
	if v.X == nil {
		e.null()
	} else {
		encodePlace(e, v.X)
	}
	e.key("y")
	if v.Y == nil {
		e.null()
	} else {
		encodePlace(e, v.Y)
	}
	e.key("label")
	e.string(v.Label)
	e.key("rings")
	e.open('[')
	for _, v0 := range v.Rings {
		if v0 == nil {
			e.null()
		} else {
			encodeSpot(e, v0)
		}
	}
	e.close(']')
	e.key("held")
	e.string(v.Held)
	if len(v.Readings) > 0 {
		e.key("readings")
		e.open('[')
		for _, v0 := range v.Readings {
			e.string(v0)
		}
		e.close(']')
	}
	e.close('}')
}

func encodeRings(e *encoder, v *plots.Rings) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("rings")
	e.open('[')
	for _, v0 := range v.Rings {
		if v0 == nil {
			e.null()
		} else {
			encodeSpot(e, v0)
		}
	}
	e.close(']')
	e.close('}')
}

func encodeHeading(e *encoder, v *plots.Heading) {
	e.open('{')
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeAxisRange(e *encoder, v *plots.AxisRange) {
	e.open('{')
	if v.Name != "" {
		e.key("name")
		e.string(v.Name)
	}
	e.key("min")
	e.number(v.Min)
	e.key("max")
	e.number(v.Max)
	e.key("axisTick")
	encodeCustom(e, &v.Tick)
	e.key("axisLabel")
	encodeCustom(e, &v.Label)
	e.key("texts")
	e.open('[')
	for _, v0 := range v.Texts {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeSeriesPatch(e *encoder, v *plots.SeriesPatch) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("data")
	e.json(v.Data)
	e.close('}')
}

func encodeHead(e *encoder, v *document.Head) {
	e.open('{')
	e.key("reference")
	e.string(v.Reference)
	e.key("revision")
	e.string(v.Revision)
	e.key("received")
	e.string(v.Received)
	e.key("due")
	e.string(v.Due)
	e.close('}')
}

func encodeItem(e *encoder, v *document.Item) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("design")
	encodeDifferences(e, &v.Design)
	if len(v.Kept) > 0 {
		e.key("kept")
		e.open('[')
		for i := range v.Kept {
			encodeKept(e, &v.Kept[i])
		}
		e.close(']')
	}
	if v.Shown != nil {
		e.key("shown")
		encodeShown(e, v.Shown)
	}
	e.close('}')
}

func encodeShownCell(e *encoder, v *report.ShownCell) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("si")
	e.number(v.SI)
	e.key("value")
	e.string(v.Value)
	e.key("unit")
	e.string(v.Unit)
	e.key("absent")
	e.string(v.Absent)
	e.close('}')
}

func encodeBesidePanel(e *encoder, v *plots.BesidePanel) {
	e.open('{')
	e.key("spots")
	e.open('[')
	for i := range v.Spots {
		encodeSpot(e, &v.Spots[i])
	}
	e.close(']')
	e.key("paths")
	e.open('[')
	for _, v0 := range v.Paths {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeComparedCell(e *encoder, v *report.ComparedCell) {
	e.open('{')
	e.key("value")
	e.string(v.Value)
	e.key("against")
	e.string(v.Against)
	e.key("best")
	e.flag(v.Best)
	e.key("refused")
	e.flag(v.Refused)
	e.key("moved")
	e.flag(v.Moved)
	e.key("absent")
	e.string(v.Absent)
	e.close('}')
}

func encodeCarriedLabel(e *encoder, v *report.CarriedLabel) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeBought(e *encoder, v *design.Bought) {
	e.open('{')
	e.key("metal")
	e.string(v.Metal)
	e.key("width")
	e.number(v.Width)
	e.key("thickness")
	e.number(v.Thickness)
	e.key("length")
	e.number(v.Length)
	e.key("mass")
	e.number(v.Mass)
	e.key("coils")
	e.whole(v.Coils)
	e.close('}')
}

func encodeWork(e *encoder, v *design.Work) {
	e.open('{')
	e.key("line")
	e.string(v.Line)
	e.key("type")
	e.string(v.Type)
	e.key("od")
	e.number(v.OD)
	e.key("height")
	e.number(v.Height)
	e.key("strip")
	e.number(v.Strip)
	e.key("count")
	e.number(v.Count)
	e.key("set_up")
	e.number(v.SetUp)
	e.key("worth")
	e.number(v.Worth)
	e.key("hours")
	e.number(v.Hours)
	e.key("coil")
	e.number(v.Coil)
	e.key("crate")
	encodeCrate(e, &v.Crate)
	e.key("gate")
	e.whole(v.Gate)
	e.key("after")
	e.whole(v.After)
	e.key("queue")
	e.flag(v.Queue)
	e.close('}')
}

func encodePaperItem(e *encoder, v *paperItem) {
	e.open('{')
	e.key("design")
	encodeDifferences(e, &v.Design)
	e.key("kept")
	e.open('[')
	for i := range v.Kept {
		encodeKept(e, &v.Kept[i])
	}
	e.close(']')
	e.key("answers")
	e.open('{')
	for _, k := range keys(v.Answers) {
		v0 := v.Answers[k]
		e.name(k)
		e.string(v0)
	}
	e.close('}')
	if v.Stale {
		e.key("stale")
		e.flag(v.Stale)
	}
	e.close('}')
}

func encodeFigure(e *encoder, v *outgoing.Figure) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("value")
	e.string(v.Value)
	e.key("unit")
	e.string(v.Unit)
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.close('}')
}

func encodeBeside(e *encoder, v *outgoing.Beside) {
	e.open('{')
	e.key("said")
	e.string(v.Said)
	e.key("values")
	e.open('[')
	for _, v0 := range v.Values {
		e.string(v0)
	}
	e.close(']')
	e.key("od")
	e.number(v.OD)
	e.key("fin_od")
	e.number(v.FinOD)
	e.close('}')
}

func encodeTable(e *encoder, v *paper.Table) {
	e.open('{')
	e.key("columns")
	e.open('[')
	for i := range v.Columns {
		encodeColumn(e, &v.Columns[i])
	}
	e.close(']')
	e.key("rows")
	e.open('[')
	for _, v0 := range v.Rows {
		e.open('[')
		for _, v1 := range v0 {
			e.string(v1)
		}
		e.close(']')
	}
	e.close(']')
	if v.Sum {
		e.key("sum")
		e.flag(v.Sum)
	}
	e.close('}')
}

func encodeDrawing(e *encoder, v *paper.Drawing) {
	e.open('{')
	e.key("svg")
	e.string(v.SVG)
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeHurdlePoint(e *encoder, v *search.HurdlePoint) {
	e.open('{')
	e.key("worth")
	e.open('[')
	for _, v0 := range v.Worth {
		e.number(v0)
	}
	e.close(']')
	e.key("place")
	e.whole(v.Place)
	e.close('}')
}

func encodeSearchScale(e *encoder, v *report.SearchScale) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("ticks")
	e.open('[')
	for i := range v.Ticks {
		encodeSearchTick(e, &v.Ticks[i])
	}
	e.close(']')
	e.close('}')
}

func encodeSearchPoint(e *encoder, v *report.SearchPoint) {
	e.open('{')
	e.key("place")
	e.whole(v.Place)
	e.key("x")
	e.number(v.X)
	e.key("y")
	e.number(v.Y)
	e.key("kind")
	e.string(v.Kind)
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeShopTable(e *encoder, v *report.ShopTable) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("of")
	e.string(v.Of)
	e.key("across")
	e.flag(v.Across)
	e.key("columns")
	e.open('[')
	for i := range v.Columns {
		encodeShopColumn(e, &v.Columns[i])
	}
	e.close(']')
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodeShopRow(e, &v.Rows[i])
	}
	e.close(']')
	e.key("sorts")
	e.open('[')
	for i := range v.Sorts {
		encodeShopSort(e, &v.Sorts[i])
	}
	e.close(']')
	e.close('}')
}

func encodeShopEffectCell(e *encoder, v *report.ShopEffectCell) {
	e.open('{')
	e.key("text")
	e.string(v.Text)
	e.key("state")
	e.string(string(v.State))
	e.key("moved")
	e.flag(v.Moved)
	e.close('}')
}

func encodeParagraph(e *encoder, v *lesson.Paragraph) {
	e.open('{')
	e.key("pieces")
	e.open('[')
	for i := range v.Pieces {
		encodePiece(e, &v.Pieces[i])
	}
	e.close(']')
	e.close('}')
}

func encodeFinCurve(e *encoder, v *lesson.FinCurve) {
	e.open('{')
	e.key("path")
	e.string(v.Path)
	e.key("tip")
	e.number(v.Tip)
	e.key("root")
	e.string(v.Root)
	e.key("edge")
	e.string(v.Edge)
	e.key("gas")
	e.string(v.Gas)
	e.key("said")
	e.string(v.Said)
	e.close('}')
}

func encodeShareBar(e *encoder, v *lesson.ShareBar) {
	e.open('{')
	e.key("label")
	e.string(v.Label)
	e.key("share")
	e.number(v.Share)
	e.key("said")
	e.string(v.Said)
	e.close('}')
}

func encodeWinding(e *encoder, v *lesson.Winding) {
	e.open('{')
	e.key("bore")
	e.number(v.Bore)
	e.key("tube")
	e.number(v.Tube)
	e.key("tip")
	e.number(v.Tip)
	e.key("pitch")
	e.number(v.Pitch)
	e.key("root")
	e.number(v.Root)
	e.key("edge")
	e.number(v.Edge)
	e.key("foot")
	e.number(v.Foot)
	e.key("groove")
	e.number(v.Groove)
	e.key("strip")
	e.number(v.Strip)
	e.key("coil")
	e.number(v.Coil)
	e.key("turn")
	e.number(v.Turn)
	e.key("said")
	e.string(v.Said)
	e.key("grows")
	if v.Grows == nil {
		e.null()
	} else {
		encodeTubeGrows(e, v.Grows)
	}
	e.close('}')
}

func encodeShownLetter(e *encoder, v *glossary.ShownLetter) {
	e.open('{')
	e.key("letter")
	e.string(v.Letter)
	e.key("is")
	e.string(v.Is)
	e.key("term")
	e.string(v.Term)
	e.close('}')
}

func encodeSpanEntry(e *encoder, v *report.SpanEntry) {
	e.open('{')
	e.key("text")
	e.string(v.Text)
	e.key("typed")
	e.string(v.Typed)
	e.key("error")
	e.string(v.Error)
	e.close('}')
}

func encodeChange(e *encoder, v *report.Change) {
	e.open('{')
	e.key("text")
	e.string(v.Text)
	e.key("effect")
	e.string(v.Effect)
	e.key("command")
	encodeCommand(e, &v.Command)
	e.close('}')
}

func encodeShownCase(e *encoder, v *report.ShownCase) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("label")
	e.string(v.Label)
	e.key("differs")
	e.string(v.Differs)
	e.key("duty")
	e.string(v.Duty)
	e.key("drop")
	e.string(v.Drop)
	e.key("coldest")
	e.string(v.Coldest)
	e.key("hottest")
	e.string(v.Hottest)
	e.close('}')
}

func encodeMakingLine(e *encoder, v *report.MakingLine) {
	e.open('{')
	e.key("name")
	e.string(v.Name)
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.key("text")
	e.string(v.Text)
	e.key("used")
	e.flag(v.Used)
	e.key("command")
	encodeCommand(e, &v.Command)
	e.close('}')
}

func encodeShownVerdict(e *encoder, v *report.ShownVerdict) {
	e.open('{')
	e.key("rule")
	e.string(v.Rule)
	e.key("label")
	e.string(v.Label)
	e.key("state")
	e.string(string(v.State))
	e.key("mark")
	e.string(v.Mark)
	e.key("value")
	e.string(v.Value)
	e.key("limit")
	e.string(v.Limit)
	e.key("margin")
	e.string(v.Margin)
	e.key("why")
	e.string(v.Why)
	e.key("change")
	if v.Change == nil {
		e.null()
	} else {
		encodeChange(e, v.Change)
	}
	e.close('}')
}

func encodeShownCaution(e *encoder, v *report.ShownCaution) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("at")
	e.string(v.At)
	e.key("head")
	e.string(v.Head)
	e.key("texts")
	e.open('[')
	for _, v0 := range v.Texts {
		e.string(v0)
	}
	e.close(']')
	e.close('}')
}

func encodePicture(e *encoder, v *report.Picture) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("svg")
	e.string(v.SVG)
	e.key("alt")
	e.string(v.Alt)
	e.close('}')
}

func encodeMakingBreaks(e *encoder, v *report.MakingBreaks) {
	e.open('{')
	e.key("title")
	e.string(v.Title)
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodeMakingBreak(e, &v.Rows[i])
	}
	e.close(']')
	e.close('}')
}

func encodeMakingStep(e *encoder, v *report.MakingStep) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("name")
	e.string(v.Name)
	e.key("tubes")
	e.string(v.Tubes)
	e.key("time")
	e.string(v.Time)
	e.key("cost")
	e.string(v.Cost)
	e.key("when")
	e.string(v.When)
	e.key("note")
	e.string(v.Note)
	e.close('}')
}

func encodeMakingCheck(e *encoder, v *report.MakingCheck) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("name")
	e.string(v.Name)
	e.key("find")
	e.string(v.Find)
	e.close('}')
}

func encodeMakingPromise(e *encoder, v *report.MakingPromise) {
	e.open('{')
	e.key("title")
	e.string(v.Title)
	e.key("rows")
	e.open('[')
	for i := range v.Rows {
		encodePromisePart(e, &v.Rows[i])
	}
	e.close(']')
	e.close('}')
}

func encodeView(e *encoder, v *sheet.View) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("title")
	e.string(v.Title)
	e.key("scale")
	e.number(v.Scale)
	e.key("scale_text")
	e.string(v.ScaleText)
	e.key("x")
	e.number(v.X)
	e.key("y")
	e.number(v.Y)
	e.key("width")
	e.number(v.Width)
	e.key("height")
	e.number(v.Height)
	e.close('}')
}

func encodeText(e *encoder, v *sheet.Text) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("x")
	e.number(v.X)
	e.key("y")
	e.number(v.Y)
	e.key("anchor")
	e.string(string(v.Anchor))
	e.key("rotate")
	e.number(v.Rotate)
	e.key("class")
	e.string(v.Class)
	e.key("width")
	e.number(v.Width)
	e.key("text")
	e.string(v.Text)
	if v.Field != "" {
		e.key("field")
		e.string(v.Field)
	}
	e.close('}')
}

func encodeGrip(e *encoder, v *sheet.Grip) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("field")
	e.string(v.Field)
	e.key("x")
	e.number(v.X)
	e.key("y")
	e.number(v.Y)
	e.key("axis")
	e.open('[')
	for _, v0 := range v.Axis {
		e.number(v0)
	}
	e.close(']')
	e.key("value")
	e.number(v.Value)
	e.key("unit")
	e.string(v.Unit)
	e.key("per_mm")
	e.number(v.PerMM)
	e.key("min")
	e.number(v.Min)
	e.key("max")
	e.number(v.Max)
	e.key("steps")
	e.whole(v.Steps)
	e.key("label")
	e.string(v.Label)
	e.key("value_text")
	e.string(v.ValueText)
	e.close('}')
}

func encodeScales(e *encoder, v *sheet.Scales) {
	e.open('{')
	e.key("main")
	e.number(v.Main)
	e.key("detail")
	e.number(v.Detail)
	e.key("fin")
	e.whole(v.Fin)
	e.close('}')
}

func encodeTrace(e *encoder, v *ink.Trace) {
	e.open('{')
	e.key("tone")
	e.string(v.Tone)
	e.key("fill")
	e.flag(v.Fill)
	e.key("width")
	e.number(v.Width)
	e.key("path")
	e.string(v.Path)
	e.close('}')
}

func encodeCustom(e *encoder, v *plots.Custom) {
	e.open('{')
	e.key("customValues")
	e.open('[')
	for _, v0 := range v.Values {
		e.number(v0)
	}
	e.close(']')
	e.close('}')
}

func encodeDifferences(e *encoder, v *document.Differences) {
	e.open('{')
	if v.Title != nil {
		e.key("title")
		e.string(*v.Title)
	}
	if v.Mark != nil {
		e.key("mark")
		e.string(*v.Mark)
	}
	if v.Units != nil {
		e.key("units")
		e.string(string(*v.Units))
	}
	if len(v.Fields) > 0 {
		e.key("fields")
		e.open('{')
		for _, k := range keys(v.Fields) {
			v0 := v.Fields[k]
			e.name(k)
			encodeEntry(e, &v0)
		}
		e.close('}')
	}
	if v.Spans != nil {
		e.key("spans")
		e.open('[')
		for i := range *v.Spans {
			encodeSpan(e, &(*v.Spans)[i])
		}
		e.close(']')
	}
	e.close('}')
}

func encodeKept(e *encoder, v *document.Kept) {
	e.open('{')
	e.key("name")
	e.string(v.Name)
	e.key("design")
	encodeDifferences(e, &v.Design)
	e.close('}')
}

func encodeCrate(e *encoder, v *design.Crate) {
	e.open('{')
	e.key("fin_od")
	e.number(v.FinOD)
	e.key("length")
	e.number(v.Length)
	e.key("holds")
	e.whole(v.Holds)
	e.key("tubes")
	e.whole(v.Tubes)
	e.key("worth")
	e.number(v.Worth)
	e.close('}')
}

func encodeColumn(e *encoder, v *paper.Column) {
	e.open('{')
	e.key("label")
	e.string(v.Label)
	if v.Number {
		e.key("number")
		e.flag(v.Number)
	}
	if v.Open {
		e.key("open")
		e.flag(v.Open)
	}
	if v.Formula {
		e.key("formula")
		e.flag(v.Formula)
	}
	e.close('}')
}

func encodeSearchTick(e *encoder, v *report.SearchTick) {
	e.open('{')
	e.key("at")
	e.number(v.At)
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeShopColumn(e *encoder, v *report.ShopColumn) {
	e.open('{')
	e.key("parts")
	e.open('[')
	for _, v0 := range v.Parts {
		e.string(v0)
	}
	e.close(']')
	e.key("record")
	if v.Record == nil {
		e.null()
	} else {
		encodeShopRecord(e, v.Record)
	}
	e.close('}')
}

func encodeShopRow(e *encoder, v *report.ShopRow) {
	e.open('{')
	e.key("parts")
	e.open('[')
	for _, v0 := range v.Parts {
		e.string(v0)
	}
	e.close(']')
	e.key("record")
	if v.Record == nil {
		e.null()
	} else {
		encodeShopRecord(e, v.Record)
	}
	e.key("cells")
	e.open('[')
	for i := range v.Cells {
		encodeShopCell(e, &v.Cells[i])
	}
	e.close(']')
	e.close('}')
}

func encodeShopSort(e *encoder, v *report.ShopSort) {
	e.open('{')
	e.key("kind")
	e.string(string(v.Kind))
	e.key("unit")
	e.string(v.Unit)
	e.key("hint")
	e.string(v.Hint)
	e.key("long")
	e.flag(v.Long)
	e.key("choices")
	e.open('[')
	for i := range v.Choices {
		encodeChoice(e, &v.Choices[i])
	}
	e.close(']')
	e.close('}')
}

func encodePiece(e *encoder, v *lesson.Piece) {
	e.open('{')
	e.key("text")
	e.string(v.Text)
	e.key("field")
	e.string(v.Field)
	e.key("label")
	e.string(v.Label)
	e.key("now")
	e.number(v.Now)
	e.key("low")
	e.number(v.Low)
	e.key("high")
	e.number(v.High)
	e.close('}')
}

func encodeTubeGrows(e *encoder, v *lesson.TubeGrows) {
	e.open('{')
	e.key("zones")
	e.open('[')
	for _, v0 := range v.Zones {
		e.string(v0)
	}
	e.close(']')
	e.key("cut")
	e.open('[')
	for _, v0 := range v.Cut {
		e.number(v0)
	}
	e.close(']')
	e.key("states")
	e.open('[')
	for _, v0 := range v.States {
		e.open('[')
		for _, v1 := range v0 {
			e.number(v1)
		}
		e.close(']')
	}
	e.close(']')
	e.key("before")
	e.string(v.Before)
	e.key("after")
	e.string(v.After)
	e.key("said")
	e.string(v.Said)
	e.close('}')
}

func encodeCommand(e *encoder, v *document.Command) {
	e.open('{')
	e.key("op")
	e.string(v.Op)
	if len(v.Values) > 0 {
		e.key("values")
		e.open('[')
		for i := range v.Values {
			encodeValue(e, &v.Values[i])
		}
		e.close(']')
	}
	if v.System != "" {
		e.key("system")
		e.string(string(v.System))
	}
	if v.Field != "" {
		e.key("field")
		e.string(v.Field)
	}
	if v.Origin != "" {
		e.key("origin")
		e.string(string(v.Origin))
	}
	if v.Index != 0 {
		e.key("index")
		e.whole(v.Index)
	}
	if v.Part != "" {
		e.key("part")
		e.string(v.Part)
	}
	if v.Text != "" {
		e.key("text")
		e.string(v.Text)
	}
	if len(v.Commands) > 0 {
		e.key("commands")
		e.open('[')
		for i := range v.Commands {
			encodeCommand(e, &v.Commands[i])
		}
		e.close(']')
	}
	e.close('}')
}

func encodeMakingBreak(e *encoder, v *report.MakingBreak) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("tubes")
	e.string(v.Tubes)
	e.key("per_tube")
	e.string(v.PerTube)
	e.key("price")
	e.string(v.Price)
	e.key("note")
	e.string(v.Note)
	e.key("ordered")
	e.flag(v.Ordered)
	e.close('}')
}

func encodePromisePart(e *encoder, v *report.PromisePart) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("name")
	e.string(v.Name)
	e.key("days")
	e.string(v.Days)
	e.key("day")
	e.string(v.Day)
	e.key("note")
	e.string(v.Note)
	e.close('}')
}

func encodeShopRecord(e *encoder, v *report.ShopRecord) {
	e.open('{')
	e.key("list")
	e.string(v.List)
	e.key("index")
	e.whole(v.Index)
	e.key("new")
	e.flag(v.New)
	e.close('}')
}

func encodeShopCell(e *encoder, v *report.ShopCell) {
	e.open('{')
	e.key("path")
	e.string(v.Path)
	e.key("text")
	e.string(v.Text)
	e.key("sort")
	e.whole(v.Sort)
	e.close('}')
}

func encodeChoice(e *encoder, v *report.Choice) {
	e.open('{')
	e.key("id")
	e.string(v.ID)
	e.key("text")
	e.string(v.Text)
	e.close('}')
}

func encodeValue(e *encoder, v *document.Value) {
	e.open('{')
	e.key("field")
	e.string(v.Field)
	if v.Text != nil {
		e.key("text")
		e.string(*v.Text)
	}
	if v.Number != nil {
		e.key("number")
		e.number(*v.Number)
	}
	if v.Unit != "" {
		e.key("unit")
		e.string(v.Unit)
	}
	if v.Steps != 0 {
		e.key("steps")
		e.whole(v.Steps)
	}
	e.close('}')
}
