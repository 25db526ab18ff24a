package measure

import (
	"runtime/debug"
	"syscall/js"
	"time"
)

// Serve answers requests by a function of the page's, text for text.
func Serve(sides Sides) {
	debug.SetGCPercent(400) // as the page's engine has it (wasm/main.go)
	respond := responder(sides)
	js.Global().Set("benchAsk", js.FuncOf(func(_ js.Value, args []js.Value) any {
		return string(respond([]byte(args[0].String())))
	}))
	select {}
}

// processorTime is nothing in a browser: a program there can't tell. The page's own thread is asked from outside.
func processorTime() time.Duration { return 0 }
