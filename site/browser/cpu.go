package browser

import (
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"time"
)

// tick is the unit in which Linux counts processor time for programs to read (USER_HZ, 100 a second on every platform).
const tick = 10 * time.Millisecond

// CPU returns the processor time that a process and all its descendants have used so far (Linux).
func CPU(process int) (time.Duration, error) {
	stats, err := filepath.Glob("/proc/[0-9]*/stat")
	if err != nil {
		return 0, err
	}
	used := map[int]int64{}
	children := map[int][]int{}
	for _, file := range stats {
		text, err := os.ReadFile(file)
		if err != nil {
			continue // the process has ended since
		}
		// The second field is a name in brackets that may hold anything; see proc_pid_stat(5).
		end := strings.LastIndexByte(string(text), ')')
		fields := strings.Fields(string(text[end+1:]))
		id, err := strconv.Atoi(filepath.Base(filepath.Dir(file)))
		if err != nil {
			return 0, err
		}
		var parent int
		var user, system int64
		if _, err := fmt.Sscan(fields[1]+" "+fields[11]+" "+fields[12], &parent, &user, &system); err != nil {
			return 0, fmt.Errorf("%s: %w", file, err)
		}
		used[id] = user + system
		children[parent] = append(children[parent], id)
	}
	var sum int64
	for queue := []int{process}; len(queue) > 0; queue = queue[1:] {
		sum += used[queue[0]]
		queue = append(queue, children[queue[0]]...)
	}
	return time.Duration(sum) * tick, nil
}
