// Command routines offers the engine's routines to be timed, native and in a browser: each alone, without messages to and fro.
package main

import "lowspot/tests/bench/measure"

func main() {
	measure.Serve(measure.Sides{
		"plan":       plan,
		"plan-demo":  demo,
		"rooms":      rooms,
		"plane":      plane,
		"triangles":  triangles,
		"march":      march,
		"pour":       hall,
		"pour-round": roundIsland,
	})
}
