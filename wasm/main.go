//go:build js && wasm

// The engine as the page's worker runs it: takes requests as Uint8Arrays, hands replies back the same way. See package protocol.
package main

import (
	"runtime/debug"
	"syscall/js"

	"lowspot/wasm/kept"
	"lowspot/wasm/protocol"
	"lowspot/wasm/store"
)

// build names this build; the linker sets it.
var build = "unnamed"

// The heap may grow to five times what lives before it is swept, since on the one thread a page waits for every sweep; but where very much lives
// memory, which a browser never takes back, comes first.
const (
	sweepAt   = 400       // per cent of what lives
	sparingAt = 512 << 20 // bytes
)

func main() {
	debug.SetGCPercent(sweepAt)
	debug.SetMemoryLimit(sparingAt)
	bridge := protocol.New(kept.New(&store.IndexedDB{Name: "lowspot"}), build)
	js.Global().Set("lowspotRequest", js.FuncOf(func(_ js.Value, args []js.Value) any {
		message := make([]byte, args[0].Length())
		js.CopyBytesToGo(message, args[0])
		bridge.Answer(message, send)
		return nil
	}))
	select {}
}

func send(reply []byte) {
	message := js.Global().Get("Uint8Array").New(len(reply))
	js.CopyBytesToJS(message, reply)
	js.Global().Call("lowspotReply", message)
}
