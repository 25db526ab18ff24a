package rules

// The limits that keep a stranger's rulebook from costing more than it may. Deep nesting is refused on the tokens, before the parser,
// because the parser recurses and a deep enough expression would overflow the stack of a WebAssembly instance.
const (
	LimitBook     = 256 << 10 // bytes of a rulebook
	LimitRules    = 500       // rules in it
	LimitField    = 4 << 10   // bytes of one field
	LimitExamples = 40        // examples of a rule, and lines of its history
	LimitName     = 60        // bytes of a rule's name
	limitDepth    = 64        // brackets inside brackets
	limitTokens   = 800       // of one expression
	limitNodes    = 500       // of one expression's syntax tree
	limitLoops    = 2         // loops over lists inside one another: their turns multiply
	limitPieces   = 20        // values put into one sentence
	limitErrors   = 100       // told at once
	limitMemory   = 10_000    // what one run of the expression machine may allocate, in its own count
)
