package main

import (
	"fmt"

	"cel.dev/cel-go/cel"
	"cel.dev/cel-go/ext"

	"lowspot/tests/bench/measure"
)

const (
	celFigure  = `deck.wood ? math.greatest(has(sheet.least_depth_wood) ? sheet.least_depth_wood : 0.01, %s) : math.least(has(sheet.least_depth) ? sheet.least_depth : 0.003, pour.volume / deck.area + 0.0254 / 8.0)`
	celApplies = `deck.wood && deck.kind in ["plywood", "osb"] && deck.area > 1.0`
	celHolds   = `depth.least >= figure_%d && depth.greatest <= 0.03 && math.ceil(pour.volume * 1.03 / bag.yield) * bag.mass < 2000.0 && air.temperature - water.temperature < 15.0 || depth.least > 0.04`
)

// celRules are the rules as CEL programs, run one after another; each figure's value is given to those after it.
func celRules(count int) measure.Side {
	half := count / 2
	environment := celEnvironment(half)
	figures, applies, holds := make([]cel.Program, half), make([]cel.Program, half), make([]cel.Program, half)
	names := make([]string, half)
	for i := range half {
		names[i] = fmt.Sprintf("figure_%d", i)
		figures[i] = celProgram(environment, fmt.Sprintf(celFigure, before(i, "figure_%d", "0.003")))
		applies[i] = celProgram(environment, celApplies)
		holds[i] = celProgram(environment, fmt.Sprintf(celHolds, i))
	}
	var kept int
	var sum float64
	return measure.Side{
		Run: func() {
			given := celFacts()
			kept, sum = 0, 0
			for i, figure := range figures {
				value := celValue(figure, given)
				given[names[i]] = value
				sum += value.(float64)
			}
			for i := range applies {
				if celValue(applies[i], given) == true && celValue(holds[i], given) == true {
					kept++
				}
			}
		},
		Result: func() float64 { return total(kept, sum) },
	}
}

func celValue(program cel.Program, given map[string]any) any {
	value, _, err := program.Eval(given)
	must(err)
	return value.Value()
}

func celEnvironment(figures int) *cel.Env {
	options := []cel.EnvOption{
		ext.Math(),
		cel.Variable("deck.wood", cel.BoolType),
		cel.Variable("deck.kind", cel.StringType),
		cel.Variable("sheet", cel.MapType(cel.StringType, cel.DoubleType)),
	}
	for name := range celNumbers() {
		options = append(options, cel.Variable(name, cel.DoubleType))
	}
	for i := range figures {
		options = append(options, cel.Variable(fmt.Sprintf("figure_%d", i), cel.DoubleType))
	}
	environment, err := cel.NewEnv(options...)
	must(err)
	return environment
}

func celProgram(environment *cel.Env, text string) cel.Program {
	tree, issues := environment.Compile(text)
	must(issues.Err())
	program, err := environment.Program(tree, cel.EvalOptions(cel.OptOptimize))
	must(err)
	return program
}

// celNumbers are the numbers by name; the sheet's are under another, since a sheet is a map that may lack some.
func celNumbers() map[string]float64 {
	renamed := map[string]float64{"bag.yield": numbers["sheet.bag_yield"], "bag.mass": numbers["sheet.bag_mass"]}
	for name, number := range numbers {
		if name != "sheet.bag_yield" && name != "sheet.bag_mass" {
			renamed[name] = number
		}
	}
	return renamed
}

func celFacts() map[string]any {
	given := map[string]any{"deck.wood": true, "deck.kind": "plywood", "sheet": map[string]float64{}}
	for name, number := range celNumbers() {
		given[name] = number
	}
	return given
}
