package engine

import (
	"lowspot/engine/quantity"
	"lowspot/rules"
)

// The scopes: what one value of a word belongs to.
const (
	ScopeJob         = "job"
	ScopeRoom        = "room"
	ScopeDeck        = "deck"
	ScopeDoor        = "door"
	ScopePenetration = "penetration"
)

// Word is a name that rules may use, with what the page needs to ask for it.
type Word struct {
	rules.Word
	Step string // where in the work it is asked: room, heating, old floor, deck, joists, sheets, surface, moisture, priming, edges, leveller, primer, patch, aggregate, barrier, air, crew, lifting, dust, people, finish, pour day
	Bare Bare   // the unit that the page writes behind a bare number
	When string // the word that must be true for it to be asked; empty: always
}

// Bare is a word's usual unit in each system.
type Bare struct{ Metric, US string }

// Vocabulary is every word that rules may use, in the order of the work.
func Vocabulary() []Word { return vocabulary }

var vocabulary = join(
	roomWords, deckWords, timberWords, slabWords, closingWords, doorWords, doorClosingWords, penetrationWords, sheetWords, primerWords, patchWords,
	primingTimeWords, airWords, siteWords, crewWords, peopleWords, workedOutWords, proofWords, pourDayWords,
)

func join(lists ...[]Word) []Word {
	var all []Word
	for _, list := range lists {
		all = append(all, list...)
	}
	return all
}

// ruleVocabulary is the vocabulary as the rules engine takes it.
func ruleVocabulary() rules.Vocabulary {
	words := make(rules.Vocabulary, len(vocabulary))
	for i, w := range vocabulary {
		words[i] = w.Word
	}
	return words
}

var wordByName = func() map[string]*Word {
	byName := make(map[string]*Word, len(vocabulary))
	for i := range vocabulary {
		byName[vocabulary[i].Name] = &vocabulary[i]
	}
	return byName
}()

func of(d quantity.Dimension) rules.Type {
	return rules.Type{Kind: rules.Quantity, Dimension: d}
}

func oneOf(choices ...string) rules.Type { return rules.Type{Kind: rules.Choice, Choices: choices} }

var (
	yesNo = rules.Type{Kind: rules.Truth}
	text  = rules.Type{Kind: rules.Text}
)

// The usual units of what is asked for.
var (
	depths       = Bare{"mm", "in"}
	lengths      = Bare{"m", "ft"}
	areas        = Bare{"m²", "sq ft"}
	masses       = Bare{"kg", "lb"}
	liquids      = Bare{"L", "qt"}
	minutes      = Bare{"min", "min"}
	hours        = Bare{"h", "h"}
	days         = Bare{"d", "d"}
	degrees      = Bare{"°C", "°F"}
	percents     = Bare{"%", "%"}
	counts       = Bare{}
	coverages    = Bare{"m²/L", "sq ft/gal"}
	densities    = Bare{"kg/m³", "lb/ft³"}
	windSpeeds   = Bare{"km/h", "mph"}
	stresses     = Bare{"MPa", "psi"}
	emissions    = Bare{"g/(m2 24 h)", "lb/(1000 ft2 24 h)"}
	areaPressure = Bare{"kPa", "psf"}
	airflows     = Bare{"L/s", "cu ft/min"}
)

// asked makes a word that a person may answer.
func asked(scope, step, name string, t rules.Type, bare Bare, meaning, example, question, why, how string) Word {
	return Word{
		Word: rules.Word{Name: name, Scope: scope, Type: t, Asked: true, Meaning: meaning, Example: example, Question: question, Why: why, How: how},
		Step: step, Bare: bare,
	}
}

// where makes a word that is asked where another one is true.
func (w Word) where(when string) Word {
	w.When = when
	return w
}

// only is where, for several words.
func only(when string, words []Word) []Word {
	for i := range words {
		words[i] = words[i].where(when)
	}
	return words
}

// stated makes a word that a product's sheet states.
func stated(kind, name string, t rules.Type, bare Bare, meaning, example string) Word {
	return Word{Word: rules.Word{Name: name, Scope: ScopeJob, Type: t, Asked: true, Meaning: meaning, Example: example}, Step: kind, Bare: bare}
}

// worked makes a word that the plan works out.
func worked(scope, name string, t rules.Type, meaning, example string) Word {
	return Word{Word: rules.Word{Name: name, Scope: scope, Type: t, Meaning: meaning, Example: example}, Step: "worked out"}
}
