//go:build js && wasm

// The engine as the page's worker runs it: takes requests as Uint8Arrays, hands replies back the same way. See package protocol.
package main

import (
	"syscall/js"

	"lowspot/wasm/kept"
	"lowspot/wasm/protocol"
	"lowspot/wasm/store"
)

// build names this build; the linker sets it.
var build = "unnamed"

func main() {
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
