package sheet

// advances are the widths of the letters from space to tilde, in thousandths of the text's height: of the regular and the
// bold cut the wider, and of figures the widest, since they stand in columns.
//
// Source: the files of the family that the page ships; a browser test holds them against what it sets.
var advances = [...]uint16{
	200, 302, 315, 642, 501, 815, 635, 153, 298, 298, 380, 471, 232, 364, 242, 417,
	figure, figure, figure, figure, figure, figure, figure, figure, figure, figure, 304, 275, 471, 471, 471, 456,
	794, 552, 542, 533, 545, 517, 489, 537, 563, 243, 512, 549, 493, 627, 588, 544,
	526, 521, 537, 513, 516, 562, 540, 771, 538, 528, 480, 366, 417, 366, 439, 457,
	213, 478, 498, 477, 498, 484, 333, 490, 491, 235, 232, 478, 219, 747, 491, 490,
	502, 502, 342, 446, 328, 489, 460, 677, 466, 446, 412, 334, 180, 334, 501,
}

// Widths of figures and of letters that the table leaves out. Letters with a mark are as wide as without; of other
// scripts the family has none, and another takes its place. Engineering judgement.
const (
	figure = 522
	marked = 600
	other  = 700
	full   = 1000
)

// spare is the room of a text over what its letters take, for another family and another machine's rounding.
const spare = 1.1

func advance(letter rune) int {
	switch {
	case letter >= ' ' && int(letter-' ') < len(advances):
		return int(advances[letter-' '])
	case letter == 'Ø':
		return 609
	case letter < 0x250, letter >= 0x2010 && letter < 0x2060:
		return marked
	case letter < 0x2e80:
		return other
	}
	return full
}

// TextWidth is what a text takes of its line [mm].
func TextWidth(text string) float64 {
	sum := 0
	for _, letter := range text {
		sum += advance(letter)
	}
	return float64(sum) * (spare * TextHeight / 1000)
}
