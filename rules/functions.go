package rules

// The functions that expressions may call, with the line of help that an editor shows.

// Function is one function's help.
type Function struct {
	Name string `json:"name"`
	Call string `json:"call"` // how it is written
	Help string `json:"help"`
}

var ownFunctions = []Function{
	{"min", "min(a, b, ...)", "The smallest of several quantities of one dimension."},
	{"max", "max(a, b, ...)", "The largest of several quantities of one dimension."},
	{"abs", "abs(a)", "The quantity without its sign."},
	{"round", "round(a) or round(a, step)", "The nearest whole number, or the nearest whole multiple of the step; halves go away from zero."},
	{"ceil", "ceil(a) or ceil(a, step)", "The next whole number up, or the next whole multiple of the step. What is whole but for rounding stays."},
	{"floor", "floor(a) or floor(a, step)", "The next whole number down, or the next whole multiple of the step. What is whole but for rounding stays."},
	{"sqrt", "sqrt(a)", "The square root: of an area, a length."},
	{"known", "known(word)", "Whether a word has a value; a rule that asks this does not need one."},
	{"money", "money(12.5)", "An amount of money in the job's currency."},
	{"all", "all([a, b], # > c)", "Whether the condition holds for every value of the list; # is the value."},
	{"any", "any([a, b], # > c)", "Whether the condition holds for at least one value of the list."},
	{"none", "none([a, b], # > c)", "Whether the condition holds for no value of the list."},
	{"one", "one([a, b], # > c)", "Whether the condition holds for exactly one value of the list."},
	{"count", "count([a, b], # > c)", "For how many values of the list the condition holds."},
	{"sum", "sum([a, b])", "The list's values added up."},
}

// Functions lists every function that an expression may call.
func Functions() []Function {
	list := append([]Function{}, ownFunctions...)
	for _, n := range unitNames {
		if unit, known := unitByName[n.name]; known {
			list = append(list, Function{n.name, n.name + "(10)", "A number of " + unit.Symbol + ": " + withArticle(unit.Dimension.Name()) + "."})
		}
	}
	for _, n := range []struct{ name, symbol string }{{"kelvin", "K"}, {"celsius_degrees", "°C"}, {"fahrenheit_degrees", "°F"}} {
		list = append(list, Function{n.name, n.name + "(3)", "A temperature difference in " + n.symbol + "."})
	}
	return list
}

// functionNames are all names that may be called, for finding the nearest.
func functionNames() []string {
	var names []string
	for _, f := range Functions() {
		names = append(names, f.Name)
	}
	return names
}
