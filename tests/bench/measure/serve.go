//go:build !js

package measure

import (
	"bufio"
	"os"
	"syscall"
	"time"
)

// Serve answers requests, one a line, from standard input to standard output.
func Serve(sides Sides) {
	respond := responder(sides)
	lines := bufio.NewScanner(os.Stdin)
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		os.Stdout.Write(append(respond(lines.Bytes()), '\n'))
	}
}

// processorTime is what the process has used so far.
func processorTime() time.Duration {
	var used syscall.Rusage
	must(syscall.Getrusage(syscall.RUSAGE_SELF, &used))
	return time.Duration(used.Utime.Nano() + used.Stime.Nano())
}
