package bridge

import (
	"maps"

	"finwright/core/design"
	"finwright/core/field"
	"finwright/core/lesson"
	"finwright/core/paper"
	"finwright/core/quotes"
	"finwright/core/report"
)

// Whole adds what the first program is without: call it before any other.
func Whole() {
	maps.Copy(methods, map[string]method{
		"compare":  with[compareArgs, report.Comparison](sideBySide),
		"beside":   with[besideArgs, standing](beside),
		"outlines": with[outlinesArgs, outlined](outlines),

		"send":    with[sendArgs, sent](send),
		"receive": with[receiveArgs, received](receive),
		"steps":   with[stepsArgs, stepped](steps),

		"lessons":       with[lessonsArgs, lessons](listLessons),
		"lesson_begin":  with[lessonBeginArgs, reply](beginLesson),
		"lesson_guess":  with[lessonGuessArgs, lesson.ToldGuess](guessLesson),
		"lesson_check":  with[lessonCheckArgs, lesson.ToldTry](checkLesson),
		"lesson_answer": with[lessonArgs, lesson.WorkedAnswer](answerLesson),
		"stories":       with[storiesArgs, stories](tellStory),
		"terms":         with[termsArgs, terms](listTerms),
		"term_of":       with[termOfArgs, termOf](findTerm),
		"term_picture":  with[termPictureArgs, drawn](drawTerm),

		"enquiry_read":   with[enquiryArgs, report.ShownEnquiry](readEnquiry),
		"enquiry_rows":   with[enquiryRowsArgs, enquiryRows](rateEnquiry),
		"enquiry_sheet":  with[enquirySheetArgs, enquirySheet](sheetOfEnquiry),
		"enquiry_beside": with[enquiryRowsArgs, enquiryBeside](besideItem),
		"enquiry_breaks": with[enquiryRowsArgs, enquiryBreaks](breaksOfItems),
		"enquiry_group":  with[enquiryGroupArgs, report.ShownGroups](groupEnquiry),
		"enquiry_totals": with[enquiryTotalsArgs, enquiryTotals](sumEnquiry),
		"enquiry_table":  with[enquiryTableArgs, report.EnquiryTable](tableOfEnquiry),
		"enquiry_csv":    with[enquiryTableArgs, saved](csvOfEnquiry),
		"enquiry_job":    with[enquiryJobArgs, saved](jobOfEnquiry),

		"enquiry_keep":    with[enquiryKeepArgs, keptText](keepEnquiry),
		"enquiry_kept":    with[enquiryKeptArgs, keptEnquiry](openKept),
		"enquiry_next":    with[enquiryNextArgs, quotes.Letterhead](nextEnquiry),
		"enquiry_list":    with[enquiryListArgs, enquiryList](listEnquiries),
		"enquiry_compare": with[enquiryCompareArgs, report.ShownComparison](compareEnquiries),
		"enquiry_before":  with[enquiryBeforeArgs, report.ShownQuotes](quotedBefore),
		"enquiry_export":  with[enquiryExportArgs, saved](exportEnquiries),
		"enquiry_import":  with[enquiryImportArgs, enquiryImport](importEnquiries),

		"sure":       with[sureArgs, report.ShownSure](sure),
		"sure_draws": with[drawsArgs, draws](sureDraws),

		"conventions": with[conventionsArgs, report.ShownConventions](conventions),

		"search_form":    with[searchableArgs, report.SearchForm](searchForm),
		"search_size":    with[searchArgs, sized](searchSize),
		"search_start":   with[searchStartArgs, searchStarted](searchStart),
		"search_chunk":   with[searchChunkArgs, foundPart](searchChunk),
		"search_merge":   with[searchMergeArgs, foundPart](searchMerge),
		"search_told":    with[searchToldArgs, report.SearchTold](searchTold),
		"search_binds":   with[searchBindsArgs, searchBinds](searchBound),
		"search_paper":   with[searchPaperArgs, paper.Paper](searchPaper),
		"search_designs": with[searchDesignsArgs, searchDesigns](searchDocuments),

		"shop":      with[shopArgs, shopReply](shopForm),
		"shop_edit": with[editShopArgs, shopReply](editShop),

		"shop_effect": with[shopEffectArgs, report.ShopEffect](shopEffect),

		"paper":              with[paperArgs, papered](makePaper),
		"paper_table":        with[tableArgs, tabled](paperTable),
		"paper_draw":         with[drawingArgs, drawingOut](drawOut),
		"paper_learn":        with[learnArgs, learned](learn),
		"paper_find":         with[markArgs, markedAt](findMark),
		"paper_find_earlier": with[earlierMarkArgs, markedAt](findEarlier),
		"paper_save":         with[paperSaveArgs, paperSaved](savePaper),
		"paper_open":         with[paperOpenArgs, issuedPaper](openPaper),
	})
	encodeMore, planWhole, drawPlan = encodeWhole, design.Make, wholeMaking
}

// inPart reports whether this is the first program, which cannot do what the page asks of the whole one.
func inPart() bool { return drawPlan == nil }

// planWhole plans with the other lines, what moves the price and the schedule, as Making alone asks; nil in the first program.
var planWhole func(field.Input, design.Heat) design.Production

// drawPlan shows such a plan, with its pictures; nil in the first program.
var drawPlan func(w *report.Writer, m *design.Production, room report.Room) report.MakingSection

func wholeMaking(w *report.Writer, m *design.Production, room report.Room) report.MakingSection {
	return w.Making(m, room)
}
