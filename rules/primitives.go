package rules

// The primitives that lowered expressions call. Each gets the frame that runs, the number of its node and its arguments. What can't be worked
// out stops the run and is told at its node. The machine knows one function for each node, so that the number costs no argument.

import (
	"errors"
	"math"
	"reflect"

	"github.com/expr-lang/expr/builtin"

	"lowspot/engine/steady"
)

var errStopped = errors.New("stopped")

// nearlyEqual is the share by which two quantities may differ and still count as equal: 3/8 in and 9.525 mm differ in their last bit.
const (
	nearlyEqual  = 1e-9
	nearlyNought = 1e-13 // the same in SI units, next to zero
)

var (
	toNumber = reflect.TypeOf(func(any) float64 { return 0 })
	toTruth  = reflect.TypeOf(func(any) bool { return false })
	toText   = reflect.TypeOf(func(any) string { return "" })
	toAny    = reflect.TypeOf(func(any) any { return nil })
	seeing   = reflect.TypeOf(func(any, any) any { return nil })
	one      = reflect.TypeOf(func(any, float64) float64 { return 0 })
	ofAny    = reflect.TypeOf(func(any, any) float64 { return 0 })
	two      = reflect.TypeOf(func(any, float64, float64) float64 { return 0 })
	several  = reflect.TypeOf(func(any, ...float64) float64 { return 0 })
	ofUnit   = reflect.TypeOf(func(any, int, float64) float64 { return 0 })
	judging  = reflect.TypeOf(func(any, float64, float64) bool { return false })
)

// primitive is what a lowered expression may call: how it runs and what it takes and gives.
type primitive struct {
	run  func(f *frame, id int, arguments []any) (any, error)
	kind reflect.Type
}

var primitives map[string]primitive

func init() { // not in the declaration, because reading a figure runs primitives again
	primitives = map[string]primitive{
		"·number": {readName, toNumber}, "·truth": {readName, toTruth}, "·text": {readName, toText}, "·maybe": {readMaybe, toAny}, "·known": {isKnown, toTruth},
		"·see": {see, seeing}, "·float": {float, ofAny}, "·unit": {inUnit, ofUnit}, "·compare": {compare, judging},
		"·divide": {divide, two}, "·power": {power, two}, "·min": {smallest, several}, "·max": {largest, several}, "·abs": {absolute, one},
		"·sqrt": {root, one}, "·round": {rounded, two}, "·ceil": {roundedUp, two}, "·floor": {roundedDown, two},
	}
}

// at is the primitive as a function of one node: the machine passes it the frame and the arguments.
func (p primitive) at(name string, id int) *builtin.Function {
	run := p.run
	return &builtin.Function{Name: name, Types: []reflect.Type{p.kind}, Func: func(arguments ...any) (any, error) {
		return run(arguments[0].(*frame), id, arguments[1:])
	}}
}

func readName(f *frame, id int, _ []any) (any, error) {
	a := f.run.answer(f.code.nodes[id].slot)
	switch a.state {
	case Known:
		return a.value, nil
	case Unanswered:
		f.missing = id
	default:
		f.fault = a.fault
	}
	return nil, errStopped
}

func readMaybe(f *frame, id int, arguments []any) (any, error) {
	if f.run.answer(f.code.nodes[id].slot).state == Unanswered {
		return nil, nil
	}
	return readName(f, id, arguments)
}

func isKnown(f *frame, id int, arguments []any) (any, error) {
	a := f.run.answer(f.code.nodes[id].slot)
	if a.state == Faulty {
		return readName(f, id, arguments)
	}
	return a.state == Known, nil
}

// see records a sub-expression for the trace.
func see(f *frame, id int, arguments []any) (any, error) {
	f.seen[id] = sighting{reached: true, value: arguments[0]}
	return arguments[0], nil
}

func float(f *frame, id int, arguments []any) (any, error) {
	switch n := arguments[0].(type) {
	case float64:
		return n, nil
	case int:
		return float64(n), nil
	}
	return f.fail(id, "comes to no number", "")
}

// fail stops the run with a fault at a node.
func (f *frame) fail(id int, message, remedy string) (any, error) {
	f.fault = f.code.source.fail(f.code.nodes[id].at, CodeFault, "“"+f.code.text(id)+"” "+message+".", remedy)
	return nil, errStopped
}

// finite tells whether every argument is a number that can be counted on; where not, it stops the run.
func (f *frame) finite(id int, arguments []any) bool {
	for _, a := range arguments {
		if n, is := a.(float64); !is || math.IsNaN(n) || math.IsInf(n, 0) {
			f.fail(id, "meets a number that is too large or undefined", "Look at what it is made of; the values put in may be far out of range.")
			return false
		}
	}
	return true
}

// checked is a result, unless it can't be counted on.
func (f *frame) checked(id int, value float64) (any, error) {
	if math.IsNaN(value) || math.IsInf(value, 0) {
		return f.fail(id, "comes to a number that is too large or undefined", "Look at what it is made of; the values put in may be far out of range.")
	}
	return value, nil
}

func divide(f *frame, id int, arguments []any) (any, error) {
	if !f.finite(id, arguments) {
		return nil, errStopped
	}
	a, b := arguments[0].(float64), arguments[1].(float64)
	if b == 0 {
		return f.fail(id, "divides by zero", "Say what holds when the divisor is zero, with ? :.")
	}
	return f.checked(id, a/b)
}

func power(f *frame, id int, arguments []any) (any, error) {
	if !f.finite(id, arguments) {
		return nil, errStopped
	}
	base, exponent := arguments[0].(float64), arguments[1].(float64)
	if base == 0 && exponent < 0 {
		return f.fail(id, "divides by zero", "Say what holds when the base is zero, with ? :.")
	}
	if exponent != math.Trunc(exponent) || math.Abs(exponent) > 64 {
		return f.checked(id, steady.Pow(base, exponent))
	}
	product := 1.0
	for n := math.Abs(exponent); n > 0; n-- {
		product *= base
	}
	if exponent < 0 {
		product = 1 / product
	}
	return f.checked(id, product)
}

func inUnit(f *frame, id int, arguments []any) (any, error) {
	if !f.finite(id, arguments[1:]) {
		return nil, errStopped
	}
	return f.checked(id, f.code.units[arguments[0].(int)].SI(arguments[1].(float64)))
}

func smallest(f *frame, id int, arguments []any) (any, error) { return f.extreme(id, arguments, -1) }

func largest(f *frame, id int, arguments []any) (any, error) { return f.extreme(id, arguments, 1) }

func (f *frame) extreme(id int, arguments []any, sign float64) (any, error) {
	if !f.finite(id, arguments) {
		return nil, errStopped
	}
	best := arguments[0].(float64)
	for _, a := range arguments[1:] {
		if n := a.(float64); n*sign > best*sign {
			best = n
		}
	}
	return best, nil
}

func absolute(f *frame, id int, arguments []any) (any, error) {
	if !f.finite(id, arguments) {
		return nil, errStopped
	}
	return math.Abs(arguments[0].(float64)), nil
}

func root(f *frame, id int, arguments []any) (any, error) {
	if !f.finite(id, arguments) {
		return nil, errStopped
	}
	if arguments[0].(float64) < 0 {
		return f.fail(id, "takes the root of something below zero", "Say what holds below zero, with ? :.")
	}
	return math.Sqrt(arguments[0].(float64)), nil
}

func rounded(f *frame, id int, arguments []any) (any, error) {
	return f.step(id, arguments, math.Round)
}

func roundedUp(f *frame, id int, arguments []any) (any, error) {
	return f.step(id, arguments, math.Ceil)
}

func roundedDown(f *frame, id int, arguments []any) (any, error) {
	return f.step(id, arguments, math.Floor)
}

// step rounds to whole steps; what is whole but for rounding stays as it is, so that ten bags never become eleven by their last bit.
func (f *frame) step(id int, arguments []any, round func(float64) float64) (any, error) {
	if !f.finite(id, arguments) {
		return nil, errStopped
	}
	value, step := arguments[0].(float64), math.Abs(arguments[1].(float64))
	if step == 0 {
		return f.fail(id, "rounds by a step of zero", "Give a step above zero.")
	}
	steps := value / step
	if whole := math.Round(steps); equal(steps, whole) {
		return f.checked(id, whole*step)
	}
	return f.checked(id, round(steps)*step)
}

func equal(a, b float64) bool {
	difference := math.Abs(a - b)
	return difference <= nearlyNought || difference <= nearlyEqual*math.Max(math.Abs(a), math.Abs(b))
}

// compare judges two quantities and keeps them for the margin. Quantities that are equal but for rounding count as equal.
func compare(f *frame, id int, arguments []any) (any, error) {
	if !f.finite(id, arguments) {
		return nil, errStopped
	}
	a, b := arguments[0].(float64), arguments[1].(float64)
	n := &f.code.nodes[id]
	f.compared[n.limit] = comparison{reached: true, a: a, b: b}
	same := equal(a, b)
	switch n.op {
	case "==":
		return same, nil
	case "!=":
		return !same, nil
	case "<":
		return a < b && !same, nil
	case "<=":
		return a < b || same, nil
	case ">":
		return a > b && !same, nil
	}
	return a > b || same, nil
}
