package rules

// The fields of a rule by their keys, in the order in which they are written.

import (
	"strconv"
	"strings"
)

var (
	figureKeys = []string{"for", "kind", "dimension", "choices", "words", "applies", "value", "source", "caution", "example", "off", "was"}
	checkKeys  = []string{"weight", "for", "words", "applies", "holds", "says", "remedy", "asks", "caution", "source", "example", "off", "was"}
)

func (r *Rule) keys() []string {
	if r.Check {
		return checkKeys
	}
	return figureKeys
}

func (r *Rule) sort() string {
	if r.Check {
		return "check"
	}
	return "figure"
}

func (r *Rule) allows(key string) bool { return contains(r.keys(), key) }

// single is the field of that key where it stands once, or nil.
func (r *Rule) single(key string) *string {
	switch key {
	case "for":
		return &r.For
	case "kind":
		return (*string)(&r.Kind)
	case "dimension":
		return &r.Dimension
	case "words":
		return &r.Words
	case "value":
		return &r.Value
	case "weight":
		return &r.Weight
	case "applies":
		return &r.Applies
	case "holds":
		return &r.Holds
	case "says":
		return &r.Says
	case "remedy":
		return &r.Remedy
	case "asks":
		return &r.Asks
	case "caution":
		return &r.Caution
	case "source":
		return &r.Source
	case "off":
		return &r.Off
	}
	return nil
}

// list is the field of that key where it may stand several times, or nil.
func (r *Rule) list(key string) *[]string {
	switch key {
	case "example":
		return &r.Examples
	case "was":
		return &r.History
	}
	return nil
}

// times is how often the field stands in the rule.
func (r *Rule) times(key string) int {
	if list := r.list(key); list != nil {
		return len(*list)
	}
	if _, stands := r.places[key]; stands {
		return 1
	}
	return 0
}

// full tells that the field may not stand there once more.
func (r *Rule) full(key string) bool {
	if r.list(key) != nil {
		return r.times(key) >= LimitExamples
	}
	return r.times(key) > 0
}

// add sets a field, or appends to it where it may stand several times.
func (r *Rule) add(key, text string, places []place) {
	r.places[label(key, r.times(key))] = places
	switch {
	case key == "choices":
		r.Choices = splitChoices(text)
	case r.list(key) != nil:
		list := r.list(key)
		*list = append(*list, text)
	default:
		*r.single(key) = text
	}
}

// texts are the field's texts, none where it is empty.
func (r *Rule) texts(key string) []string {
	if list := r.list(key); list != nil {
		return *list
	}
	text := strings.Join(r.Choices, ", ")
	if key != "choices" {
		text = *r.single(key)
	}
	if text == "" {
		return nil
	}
	return []string{text}
}

func splitChoices(text string) []string {
	var choices []string
	for _, choice := range strings.Split(text, ",") {
		if choice = strings.Join(strings.Fields(choice), " "); choice != "" {
			choices = append(choices, choice)
		}
	}
	return choices
}

// label is a repeated field's own label: "example" for the first, "example 2" for the second.
func label(key string, n int) string {
	if n == 0 {
		return key
	}
	return key + " " + strconv.Itoa(n+1)
}

func contains(list []string, item string) bool {
	for _, i := range list {
		if i == item {
			return true
		}
	}
	return false
}
