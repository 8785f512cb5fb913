package shop

import (
	"testing"
	"time"
)

// By a second route: every day of the years that are taken is that of the library's calendar.
func TestDaysAreThoseOfTheCalendar(t *testing.T) {
	day, at := dayOf(1900, 1, 1), time.Date(1900, 1, 1, 0, 0, 0, 0, time.UTC)
	for ; at.Year() < 2200; day, at = day+1, at.AddDate(0, 0, 1) {
		text := at.Format("2006-01-02")
		if got, ok := ParseDay(text); !ok || got != day || got.String() != text {
			t.Fatalf("%s is read as %d, counted %d", text, got, day)
		}
	}
	for _, text := range []string{"", "2026-11-31", "2027-02-29", "2026-13-01", "2026-00-10", "26-11-27", "2026-11-7", "2026/11/27", "1899-12-31", "2200-01-01", "2026-11--7", "+026-11-27"} {
		if d, ok := ParseDay(text); ok {
			t.Errorf("%q is read as %s", text, d)
		}
	}
}

// 27 November 2026 was a Friday.
func TestWorkingDays(t *testing.T) {
	c := Calendar{WorkDays: []string{"mon", "fri"}, Holidays: []string{"2026-11-30"}}
	friday, _ := ParseDay("2026-11-27")
	for n, want := range []string{"2026-11-27", "2026-12-04", "2026-12-07"} {
		if got := c.Working(friday, n).String(); got != want {
			t.Errorf("%d working days on: %s, want %s", n, got, want)
		}
	}
	if got := c.Working(friday+1, 0).String(); got != "2026-12-04" {
		t.Errorf("after Friday: %s", got)
	}
}
