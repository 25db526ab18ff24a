package engine

// What a check hangs on that a person may change: the answers to the words that it reads, and the finish plane behind the depths.

import (
	"math"
	"strconv"
	"strings"

	"lowspot/engine/quantity"
	"lowspot/rules"
)

// lever is one thing that may be changed: a quantity (unit is set) or one of some options.
type lever struct {
	label, from, sort string
	options           []option
	sets              func(typed string) []FieldSet
	unit              *quantity.Unit
	step              float64 // of the grid of values, in the unit
	present           float64 // SI
	least, most       float64 // SI
}

type option struct {
	to   string
	sets []FieldSet
}

// behind tells what a worked-out word follows from: words, and the finish plane.
var behind = map[string][]string{
	"depth.least": {thePlane}, "depth.greatest": {thePlane}, "depth.mean": {thePlane}, "pour.volume": {thePlane}, "pour.dry_area": {thePlane},
	"plane.fall": {thePlane}, "plane.drop": {thePlane}, "door.pour_depth": {thePlane},
	"door.step": {thePlane, "finish.thickness"}, "door.rise": {thePlane, "finish.thickness"}, "stair.variation": {thePlane, "finish.thickness"},
	"penetration.proud": {thePlane, "finish.thickness", theTop},
	"job.volume":        {thePlane}, "job.bags": {thePlane, "sheet.bag_yield"}, "job.powder": {thePlane, "sheet.bag_yield"}, "job.water": {thePlane},
	"mix.temperature": {"water.temperature", "powder.temperature"},
	"exits.count":     {theExits},
}

// What is behind a word and is no word itself.
const (
	thePlane = "plane"
	theExits = "exits"
	theTop   = "top" // of a drain, flange or pipe
)

// levers lists what may be changed, in the order of the vocabulary, the plane first.
func (c *clearing) levers() []lever {
	wanted := map[string]bool{}
	for _, name := range c.book.Compiled.Needs(c.rule) {
		wanted[name] = true
		for _, source := range behind[name] {
			wanted[source] = true
		}
	}
	var list []lever
	for i := range c.job.Rooms {
		room := &c.job.Rooms[i]
		if c.subject.Room != "" && room.ID != c.subject.Room {
			continue
		}
		if wanted[thePlane] {
			list = append(list, c.planeLevers(room, "rooms/"+strconv.Itoa(i))...)
		}
		if wanted[theExits] {
			list = append(list, exitLever(room, "rooms/"+strconv.Itoa(i)))
		}
		if place, found := room.place(ScopePenetration, c.subject); found && wanted[theTop] {
			list = append(list, c.topLever(room, "rooms/"+strconv.Itoa(i)+place+"/height")...)
		}
	}
	for i := range vocabulary {
		if word := &vocabulary[i]; wanted[word.Name] && word.Asked && word.Step != stepPourDay && !whatItIs[word.Name] {
			if l, ok := c.wordLever(word); ok {
				list = append(list, l)
			}
		}
	}
	return list
}

// whatItIs are the words that say what is there: a floor doesn't become another one.
var whatItIs = map[string]bool{
	"deck.kind": true, "stair.place": true, "room.occupied_below": true, "room.wet": true, "slab.age": true, "finish.tolerance": true,
}

// sortOf tells whose a word's value is.
func sortOf(word *Word) string {
	for _, kind := range SheetKinds {
		if word.Step == kind {
			return SortSheet
		}
	}
	switch word.Step {
	case "crew", "finish", "lifting", "dust", "people":
		return SortDecided
	}
	if word.Name == "water.temperature" || word.Name == "prime.wait" || word.Scope == ScopeRoom && word.Step == "edges" {
		return SortDecided
	}
	return SortMeasured
}

// wordLever is the answer to a word where the finding's subject has it.
func (c *clearing) wordLever(word *Word) (lever, bool) {
	field, ok := c.job.answersField(word, c.subject)
	if !ok {
		return lever{}, false
	}
	from, _ := c.job.at(field)
	l := lever{label: strings.TrimSuffix(word.Meaning, "."), from: from, sort: sortOf(word)}
	l.sets = func(typed string) []FieldSet { return []FieldSet{{field, typed}} }
	switch word.Type.Kind {
	case rules.Truth:
		for _, to := range []string{"yes", "no"} {
			if !strings.EqualFold(from, to) {
				l.options = append(l.options, option{to, l.sets(to)})
			}
		}
	case rules.Choice:
		for _, to := range word.Type.Choices {
			if !strings.EqualFold(from, to) {
				l.options = append(l.options, option{to, l.sets(to)})
			}
		}
	case rules.Quantity:
		present, err := quantity.Read(from, word.Type.Dimension)
		if err != nil {
			return lever{}, false
		}
		l.present = present
		l.grid(word.Type.Dimension, word.Bare, c.before.units)
	default:
		return lever{}, false
	}
	return l, true
}

// grid gives a quantity its unit, its steps and its bounds.
func (l *lever) grid(d quantity.Dimension, bare Bare, units quantity.System) {
	symbol := bare.Metric
	if units == quantity.US {
		symbol = bare.US
	}
	unit, known := quantity.UnitNamed(symbol)
	if !known {
		unit, _ = quantity.UnitNamed("")
	}
	l.unit, l.step = &unit, stepIn(symbol)
	l.least, l.most = 0, math.Inf(1)
	switch {
	case d.Point:
		l.least, l.most = 273.15-20, 273.15+60
	case symbol == "%":
		l.most = 1
	case symbol == "":
		l.least, l.most = 1, 1000
	}
}

// stepIn is the step in which a person would change a value of that unit (common practice: what a tape, a bucket or a clock is read to).
func stepIn(symbol string) float64 {
	switch symbol {
	case "in":
		return 1.0 / 16
	case "m", "ft":
		return 0.05
	case "L", "qt", "kPa", "m²/L":
		return 0.5
	case "kg/m³", "psi":
		return 50
	case "lb/ft³", "sq ft/gal", "psf":
		return 5
	}
	return 1
}

// planeLevers are the ways to put the finish plane elsewhere in one room.
func (c *clearing) planeLevers(room *Room, field string) []lever {
	var list []lever
	plane := room.Plane
	field += "/plane"
	switch plane.How {
	case PlaneLevel, "":
		list = c.fieldLever("Raise the plane above the lowest that will do", field+"/raise", orElse(plane.Raise, "0 mm"), quantity.Length, "")
	case PlaneLeastVolume:
		list = c.fieldLever("Steepest slope of the plane", field+"/slopeLimit", orElse(plane.SlopeLimit, "1 %"), quantity.Number, "")
		for i := range list {
			list[i].step, list[i].most = 0.1, 0.1
		}
	case PlaneHand:
		list = c.fieldLever("Reading on the finished pour", field+"/height", plane.Height, quantity.Length, room.Readings.HeightUnit)
	}
	return append(list, placings(room, field))
}

func orElse(typed, usual string) string {
	if strings.TrimSpace(typed) == "" {
		return usual
	}
	return typed
}

// fieldLever is a quantity of the job's own; none where what stands there can't be read.
func (c *clearing) fieldLever(label, field, typed string, d quantity.Dimension, unit string) []lever {
	present, err := quantity.ReadIn(typed, d, unit)
	if err != nil {
		return nil
	}
	l := lever{label: label, from: typed, sort: SortDecided, present: present}
	l.sets = func(to string) []FieldSet { return []FieldSet{{field, to}} }
	bare := depths
	if d == quantity.Number {
		bare = percents
	}
	l.grid(d, bare, c.before.units)
	return []lever{l}
}

// topLever is the top of a drain, flange or pipe: an extension or a cut moves it.
func (c *clearing) topLever(room *Room, field string) []lever {
	typed, _ := c.job.at(field)
	return c.fieldLever("Reading on its top, once it is extended or cut", field, typed, quantity.Length, room.Readings.HeightUnit)
}

// placings are the other ways to place the plane.
func placings(room *Room, field string) lever {
	how := room.Plane.How
	if how == "" {
		how = PlaneLevel
	}
	l := lever{label: "Where the finish plane goes", from: how, sort: SortDecided}
	offer := func(to string, sets ...FieldSet) { l.options = append(l.options, option{to, sets}) }
	if how != PlaneLevel {
		offer(PlaneLevel, FieldSet{field + "/how", PlaneLevel}, FieldSet{field + "/raise", ""})
	}
	if how != PlaneLeastVolume {
		offer(PlaneLeastVolume, FieldSet{field + "/how", PlaneLeastVolume})
	}
	for _, door := range room.Doors {
		if strings.TrimSpace(door.Neighbour) != "" && !(how == PlaneDoor && room.Plane.Door == door.ID) {
			offer(PlaneDoor+": "+door.Name, FieldSet{field + "/how", PlaneDoor}, FieldSet{field + "/door", door.ID})
		}
	}
	return l
}

// exitLever marks one door as the only way out.
func exitLever(room *Room, field string) lever {
	l := lever{label: "The way out on pour day", sort: SortDecided}
	for i, door := range room.Doors {
		var sets []FieldSet
		for j := range room.Doors {
			sets = append(sets, FieldSet{field + "/doors/" + strconv.Itoa(j) + "/exit", yesOrNo(i == j)})
		}
		l.options = append(l.options, option{door.Name, sets})
	}
	return l
}

func yesOrNo(yes bool) string {
	if yes {
		return "yes"
	}
	return "no"
}
