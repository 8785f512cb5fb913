package shop

import (
	"fmt"
	"strconv"
	"strings"

	"finwright/core/units"
)

// Calendar is when the shop works and what an order waits for.
type Calendar struct {
	WorkDays   []string // of the week
	Shifts     int      // a working day
	Holidays   []string // days as 2026-12-24
	Approval   int      // days until a drawing is approved
	Queue      int      // working days before an order's turn
	TubeLeads  []TubeLead
	StripLeads []StripLead
}

// TubeLead is in how many days tubes of a metal come, bought one way, by their diameter.
type TubeLead struct {
	Metal string
	Way   TubeWay
	OD    Range[units.Length]
	Days  int
}

// StripLead is in how many days strip of a metal comes in a form of coil.
type StripLead struct {
	Metal string
	Form  CoilForm
	Days  int
}

// WeekDays lists the days of a week as a file names them, Monday first.
var WeekDays = []string{"mon", "tue", "wed", "thu", "fri", "sat", "sun"}

// Undated stands for the day of a price of which none is known.
const Undated = "undated"

// Day is a day of the calendar, counted from 1 January 1970.
type Day int

// ParseDay reads a day that is written as 2026-12-24; ok is false if there is no such day from 1900 to 2199.
func ParseDay(text string) (d Day, ok bool) {
	parts := strings.Split(text, "-")
	if len(parts) != 3 || len(text) != len("2026-12-24") {
		return 0, false
	}
	var n [3]int
	for i, part := range parts {
		var err error
		if n[i], err = strconv.Atoi(part); err != nil || n[i] < 1 {
			return 0, false
		}
	}
	if n[0] < 1900 || n[0] >= 2200 || n[1] > 12 {
		return 0, false
	}
	if d = dayOf(n[0], n[1], n[2]); d.String() != text {
		return 0, false
	}
	return d, true
}

// Days of the Gregorian calendar: years begin in March, so that the leap day is the last, and 400 of them have as many days as
// 146,097.
const (
	daysOf400 = 146097
	firstDay  = 719468 // of 1970, from 1 March of the year 0
)

// dayOf counts the days to a date from 1970 on.
//
// Source: the calendar's rule of leap years.
func dayOf(year, month, day int) Day {
	if month <= 2 {
		year--
	}
	era, of := year/400, year%400
	into := (153*((month+9)%12)+2)/5 + day - 1
	return Day(era*daysOf400 + of*365 + of/4 - of/100 + into - firstDay)
}

// String writes a day as 2026-12-24.
func (d Day) String() string {
	n := int(d) + firstDay
	era, of := n/daysOf400, n%daysOf400
	years := (of - of/1460 + of/36524 - of/(daysOf400-1)) / 365
	into := of - (365*years + years/4 - years/100)
	month := (5*into + 2) / 153
	day := into - (153*month+2)/5 + 1
	year := era*400 + years
	if month = (month+2)%12 + 1; month <= 2 {
		year++
	}
	return fmt.Sprintf("%04d-%02d-%02d", year, month, day)
}

// works reports whether the shop works on a day.
func (c *Calendar) works(d Day) bool {
	named := WeekDays[((int(d)+3)%7+7)%7] // 1 January 1970 was a Thursday
	for _, holiday := range c.Holidays {
		if holiday == d.String() {
			return false
		}
	}
	for _, day := range c.WorkDays {
		if day == named {
			return true
		}
	}
	return false
}

// Working returns the n-th working day after the first on or after a day; 0 is that first one itself.
//
// Valid: a checked calendar; n of some thousands at most, since it walks the days.
// Source: counting.
func (c *Calendar) Working(from Day, n int) Day {
	for ; ; from++ {
		if !c.works(from) {
			continue
		}
		if n == 0 {
			return from
		}
		n--
	}
}
