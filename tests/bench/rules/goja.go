package main

import (
	"fmt"
	"strings"

	"github.com/dop251/goja"

	"lowspot/tests/bench/measure"
)

const (
	gojaFigure = "f[%d] = deck.wood ? Math.max(sheet.least_depth_wood ?? 0.01, %s) : Math.min(sheet.least_depth ?? 0.003, pour.volume / deck.area + 0.0254 / 8);\n"
	gojaCheck  = `if (deck.wood && ["plywood", "osb"].includes(deck.kind) && deck.area > 1)
	if (depth.least >= f[%d] && depth.greatest <= 0.03 && Math.ceil(pour.volume * 1.03 / sheet.bag_yield) * sheet.bag_mass < 2000 && air.temperature - water.temperature < 15 || depth.least > 0.04) kept++;
`
)

// gojaRules are the rules as one function of JavaScript, compiled once.
func gojaRules(count int) measure.Side {
	var figures, checks strings.Builder
	for i := range count / 2 {
		fmt.Fprintf(&figures, gojaFigure, i, before(i, "f[%d]", "0.003"))
		fmt.Fprintf(&checks, gojaCheck, i)
	}
	machine := goja.New()
	for scope, values := range gojaFacts() {
		must(machine.Set(scope, values))
	}
	function, err := machine.RunString("(function (deck, depth, pour, sheet, air, water) { let kept = 0; const f = [];\n" + figures.String() + checks.String() +
		"return kept + f.reduce((a, b) => a + b, 0); })")
	must(err)
	call, _ := goja.AssertFunction(function)
	var arguments []goja.Value
	for _, scope := range []string{"deck", "depth", "pour", "sheet", "air", "water"} {
		// An object of the machine's own: a Go map would be asked by reflection at every property.
		object := machine.NewObject()
		for name, value := range gojaFacts()[scope] {
			must(object.Set(name, value))
		}
		arguments = append(arguments, object)
	}
	var result goja.Value
	return measure.Side{
		Run: func() {
			result, err = call(goja.Undefined(), arguments...)
			must(err)
		},
		Result: func() float64 { return result.ToFloat() },
	}
}

func gojaFacts() map[string]map[string]any {
	given := map[string]map[string]any{"deck": {"wood": true, "kind": "plywood"}}
	for name, number := range numbers {
		scope, word, _ := strings.Cut(name, ".")
		if given[scope] == nil {
			given[scope] = map[string]any{}
		}
		given[scope][word] = number
	}
	return given
}
