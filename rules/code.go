package rules

import (
	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/checker"
	"github.com/expr-lang/expr/compiler"
	"github.com/expr-lang/expr/conf"
	"github.com/expr-lang/expr/parser"
	"github.com/expr-lang/expr/vm"

	"lowspot/engine/quantity"
)

// code is one expression compiled.
type code struct {
	source  source
	shape   shape
	nodes   []node             // the sub-expressions, in the order in which they are met
	groups  [][]int            // slots that are read together: see lowering.group
	reads   map[int]bool       // every slot that may be read; true where it must have a value
	limits  int                // comparisons of quantities
	margin  *marginOf          // how the comparisons make up the result; nil without any
	units   []quantity.Unit    // of unit functions whose number is worked out
	program *vm.Program        // runs it
	trace   func() *vm.Program // runs it and records every sub-expression
}

// node is one sub-expression as errors and traces tell it.
type node struct {
	at      span
	depth   int
	shape   shape
	slot    int // the word or figure that it names, or -1
	group   int // of a name: the names read together with it
	limit   int // of a comparison of quantities: its number, or -1
	op      string
	literal bool
}

// assemble turns a lowered tree into a program of expr's machine. expr's own checker runs over it too: what it still finds wrong is told.
func assemble(s *source, lowered ast.Node, functions conf.FunctionsTable) (*vm.Program, *Error) {
	tree := &parser.Tree{Node: lowered}
	config := machineConfig(functions)
	if _, err := checker.Check(tree, config); err != nil {
		return nil, s.fail(span{}, CodeKind, "This expression can't be compiled: "+err.Error()+".", "")
	}
	program, err := compiler.Compile(tree, config)
	if err != nil {
		return nil, s.fail(span{}, CodeKind, "This expression can't be compiled.", "Take it apart into figures of their own.")
	}
	return program, nil
}

// machineConfig gives programs nothing but the primitives: no environment, no built-in functions but the loops over lists.
func machineConfig(functions conf.FunctionsTable) *conf.Config {
	return &conf.Config{Functions: functions, ShortCircuit: true}
}
