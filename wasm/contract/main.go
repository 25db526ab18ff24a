// Command contract writes the page's types from the engine's: one TypeScript interface a Go struct that a request or a reply uses, and the
// table of requests. Run it in the module's root (make contract); it reads the Go sources for comments and constants.
package main

import (
	"bufio"
	"fmt"
	"os"
	"reflect"

	"lowspot/wasm/protocol"
)

const head = `// Made from the Go sources by "make contract". Don't edit: change the Go types, then make it again.

`

func main() {
	if err := write(); err != nil {
		fmt.Fprintln(os.Stderr, "contract:", err)
		os.Exit(1)
	}
}

func write() error {
	types := &types{source: newSource()}
	table := "/** Every request: what it carries and what its reply brings. */\nexport interface Contract {\n"
	protocol.Kinds(func(name string, body, reply reflect.Type) {
		types.collect(body)
		types.collect(reply)
	})
	types.nameThem()
	protocol.Kinds(func(name string, body, reply reflect.Type) {
		table += fmt.Sprintf("\t%q: { body: %s; reply: %s };\n", name, types.text(body), types.text(present(reply)))
	})
	out := bufio.NewWriter(os.Stdout)
	fmt.Fprint(out, head, table, "}\n")
	for _, t := range types.order {
		declared, err := types.declare(t)
		if err != nil {
			return err
		}
		fmt.Fprint(out, "\n", declared)
	}
	return out.Flush()
}
