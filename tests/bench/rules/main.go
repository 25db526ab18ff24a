// Command rules times the same heavy rules on three machines: the engine's, CEL's and a JavaScript interpreter's. It is a module of its own so that
// the latter two are nothing that the tool depends on.
package main

import "lowspot/tests/bench/measure"

func main() {
	measure.Serve(measure.Sides{"lowspot": lowspot, "compile": compile, "cel": celRules, "goja": gojaRules})
}

func must(err error) {
	if err != nil {
		panic(err)
	}
}
