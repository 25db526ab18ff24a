package engine

// Reading and writing one field of a job by its path. Writing makes a copy: the job that was given stays as it is.

import (
	"slices"
	"strconv"
	"strings"
)

// answersField is the path of a word's answer where a subject, or what it is in, has it.
func (j *Job) answersField(word *Word, s Subject) (string, bool) {
	for _, kind := range SheetKinds {
		if word.Step == kind {
			_, given := j.Sheets[kind]
			return "sheets/" + kind + "/values/" + word.Name, given
		}
	}
	if word.Scope == ScopeJob {
		return "answers/" + word.Name, true
	}
	for i := range j.Rooms {
		if room := &j.Rooms[i]; room.ID == s.Room {
			place, found := room.place(word.Scope, s)
			return "rooms/" + strconv.Itoa(i) + place + "/answers/" + word.Name, found
		}
	}
	return "", false
}

func (r *Room) place(scope string, s Subject) (string, bool) {
	i := -1
	switch scope {
	case ScopeRoom:
		return "", true
	case ScopeDeck:
		i = slices.IndexFunc(r.Decks, func(d DeckArea) bool { return d.ID == s.ID })
	case ScopeDoor:
		i = slices.IndexFunc(r.Doors, func(d Door) bool { return d.ID == s.ID })
	case ScopePenetration:
		i = slices.IndexFunc(r.Penetrations, func(p Penetration) bool { return p.ID == s.ID })
	}
	return "/" + scope + "s/" + strconv.Itoa(i), i >= 0
}

// at gives what stands in a field of answers.
func (j *Job) at(field string) (string, bool) {
	found := ""
	_, ok := j.change(field, func(typed string) string { found = typed; return typed })
	return found, ok
}

// with gives a copy of the job with one field changed. False where there is no such field.
func (j *Job) with(s FieldSet) (*Job, bool) {
	return j.change(s.Field, func(string) string { return s.To })
}

// change puts what becomes of a field's text into a copy of the job.
func (j *Job) change(field string, become func(string) string) (*Job, bool) {
	copied := *j
	parts := strings.SplitN(field, "/", 3)
	switch {
	case parts[0] == "answers" && len(parts) == 2:
		copied.Answers = changed(j.Answers, parts[1], become)
		return &copied, true
	case parts[0] == "sheets" && len(parts) == 3:
		sheet, given := j.Sheets[parts[1]]
		word, values := strings.CutPrefix(parts[2], "values/")
		if !given || !values {
			return nil, false
		}
		sheet.Values = changed(sheet.Values, word, become)
		copied.Sheets = map[string]Sheet{}
		for kind, one := range j.Sheets {
			copied.Sheets[kind] = one
		}
		copied.Sheets[parts[1]] = sheet
		return &copied, true
	case parts[0] == "rooms" && len(parts) == 3:
		i, err := strconv.Atoi(parts[1])
		if err != nil || i < 0 || i >= len(j.Rooms) {
			return nil, false
		}
		copied.Rooms = slices.Clone(j.Rooms)
		return &copied, copied.Rooms[i].change(strings.Split(parts[2], "/"), become)
	}
	return nil, false
}

func changed(answers Answers, word string, become func(string) string) Answers {
	copied := copyAnswers(answers)
	copied[word] = become(copied[word])
	return copied
}

// change works on a copy of the room, whose lists are still those of the one before.
func (r *Room) change(path []string, become func(string) string) bool {
	switch {
	case path[0] == "plane" && len(path) == 2:
		return r.Plane.change(path[1], become)
	case path[0] == "answers" && len(path) == 2:
		r.Answers = changed(r.Answers, path[1], become)
		return true
	case len(path) < 3:
		return false
	}
	i, err := strconv.Atoi(path[1])
	if err != nil || i < 0 {
		return false
	}
	var answers *Answers
	switch path[0] {
	case "decks":
		if r.Decks = slices.Clone(r.Decks); i < len(r.Decks) {
			answers = &r.Decks[i].Answers
		}
	case "penetrations":
		r.Penetrations = slices.Clone(r.Penetrations)
		if i < len(r.Penetrations) && path[2] == "height" {
			r.Penetrations[i].Height = become(r.Penetrations[i].Height)
			return true
		}
		if i < len(r.Penetrations) {
			answers = &r.Penetrations[i].Answers
		}
	case "doors":
		r.Doors = slices.Clone(r.Doors)
		if i < len(r.Doors) && path[2] == "exit" {
			r.Doors[i].Exit = become(yesOrNo(r.Doors[i].Exit)) == "yes"
			return true
		}
		if i < len(r.Doors) {
			answers = &r.Doors[i].Answers
		}
	}
	if answers == nil || path[2] != "answers" || len(path) != 4 {
		return false
	}
	*answers = changed(*answers, path[3], become)
	return true
}

func (p *PlaneChoice) change(name string, become func(string) string) bool {
	fields := map[string]*string{"how": &p.How, "slopeLimit": &p.SlopeLimit, "door": &p.Door, "height": &p.Height, "raise": &p.Raise}
	field := fields[name]
	if field != nil {
		*field = become(*field)
	}
	return field != nil
}
