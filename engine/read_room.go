package engine

import (
	"math"
	"strconv"
	"strings"

	"lowspot/engine/floor"
	"lowspot/engine/quantity"
)

// site is a room as the arithmetic takes it: metres, in plan, heights going up.
type site struct {
	room         *Room
	field        string // path of the room in the job document
	outline      floor.Outline
	path         []floor.Point // of an outline that can't be
	closing      *floor.Closing
	decks        []deckSite
	doors        []doorSite
	penetrations []penetrationSite
	points       []floor.Point
	heights      []float64
	rows         []int // points[i] was typed in row rows[i]
}

type deckSite struct {
	area    *DeckArea
	field   string
	outline floor.Outline // of the area alone; the first area's is the room's
	whole   bool
}

type doorSite struct {
	door         *Door
	field        string
	from, to     floor.Point
	neighbour    float64
	hasNeighbour bool
}

type penetrationSite struct {
	penetration *Penetration
	field       string
	at          floor.Point
	radius      float64
	top         float64
	hasTop      bool
}

// readRoom reads a room's geometry. It reports false where the outline can't be: all that there is then is its path, to show where it goes wrong.
func (r *reader) readRoom(room *Room, field string) (*site, bool) {
	s := &site{room: room, field: field}
	ring, ok := r.readShape(&room.Outline, field+"/outline", s)
	if !ok {
		return s, false
	}
	s.outline.Outer = ring
	if err := s.outline.Check(); err != nil {
		r.failShape(field+"/outline", err)
		s.path = append(append([]floor.Point{}, ring...), ring[0])
		return s, false
	}
	r.readKeepOuts(s)
	r.readReadings(s)
	r.readDoors(s)
	r.readPenetrations(s)
	r.readDecks(s)
	return s, true
}

func (r *reader) readShape(shape *Shape, field string, s *site) (floor.Ring, bool) {
	switch shape.How {
	case ShapeRectangle:
		return r.readRectangle(shape, field)
	case ShapeWalk:
		return r.readWalk(shape, field, s)
	case ShapeCorners:
		return r.readCorners(shape, field)
	case ShapeArea:
		return r.readArea(shape, field)
	}
	r.fail(Problem{Code: "unknown-shape", Field: field + "/how", Given: shape.How, Message: "This way of entering an outline isn't known.", Remedy: "Use rectangle, walk, corners or area."})
	return nil, false
}

func (r *reader) readRectangle(shape *Shape, field string) (floor.Ring, bool) {
	length, okLength := r.span(field+"/length", shape.Length, false)
	width, okWidth := r.span(field+"/width", shape.Width, false)
	corner, okCorner := floor.Point{}, true
	if shape.At != nil {
		corner, okCorner = r.readSpot(*shape.At, field+"/at", "")
	}
	if !okLength || !okWidth || !okCorner {
		return nil, false
	}
	ring := floor.Rectangle(length, width)
	for i := range ring {
		ring[i].X += corner.X
		ring[i].Y += corner.Y
	}
	return ring, true
}

// readArea takes a room of which only the area is known as a square: of all rectangles the one with the shortest walls. Where length × width is typed
// for the area, it is that rectangle.
func (r *reader) readArea(shape *Shape, field string) (floor.Ring, bool) {
	if length, width, ok := sides(shape.Area); ok {
		return r.readRectangle(&Shape{Length: length, Width: width}, field)
	}
	area, ok := r.quantity(field+"/area", shape.Area, quantity.Area)
	if !ok {
		return nil, false
	}
	if !(area > 0) {
		r.fail(Problem{Code: "not-positive", Field: field + "/area", Given: shape.Area, Message: "This area must be more than zero.", Remedy: "Give it for example as 40 m² or 430 sq ft."})
		return nil, false
	}
	side := math.Sqrt(area)
	return floor.Rectangle(side, side), true
}

// sides parts "5 × 8 m" into its two lengths; a unit behind the second holds for both.
func sides(typed string) (length, width string, ok bool) {
	cut := strings.IndexAny(typed, "x×*")
	if cut < 0 {
		return "", "", false
	}
	length, width = strings.TrimSpace(typed[:cut]), strings.TrimSpace(strings.TrimLeft(typed[cut:], "x×*"))
	if digits := "0123456789.,/ "; strings.Trim(length, digits) == "" {
		length += " " + strings.TrimLeft(width, digits)
	}
	return length, width, true
}

func (r *reader) readWalk(shape *Shape, field string, s *site) (floor.Ring, bool) {
	legs, good := make([]floor.Leg, 0, len(shape.Walk)), true
	for i, leg := range shape.Walk {
		at := field + "/walk/" + strconv.Itoa(i)
		length, okLength := r.span(at+"/length", leg.Length, false)
		turn, okTurn := r.readTurn(at+"/turn", leg.Turn)
		good = good && okLength && okTurn
		legs = append(legs, floor.Leg{Length: length, Turn: turn})
	}
	if !good {
		return nil, false
	}
	ring, closing, err := floor.WalkRound(legs)
	if s != nil {
		s.closing = &closing
	}
	if err != nil {
		r.failShape(field+"/walk", err)
		if s != nil {
			s.path = floor.WalkPath(legs)
		}
		return nil, false
	}
	return ring, true
}

// readTurn gives a turn in radians to the left.
func (r *reader) readTurn(field, typed string) (float64, bool) {
	switch word := strings.ToLower(strings.TrimSpace(typed)); word {
	case "left", "l":
		return math.Pi / 2, true
	case "right", "r":
		return -math.Pi / 2, true
	default:
		degrees, err := strconv.ParseFloat(strings.TrimSuffix(word, "°"), 64)
		if err == nil && degrees > -180 && degrees < 180 {
			return degrees * math.Pi / 180, true
		}
	}
	r.fail(Problem{Code: "turn", Field: field, Given: typed, Message: "This turn can't be read.", Remedy: "Give left, right, or degrees to the left between -180 and 180, for example 45."})
	return 0, false
}

func (r *reader) readCorners(shape *Shape, field string) (floor.Ring, bool) {
	ring, good := make(floor.Ring, len(shape.Corners)), true
	for i, corner := range shape.Corners {
		p, ok := r.readSpot(corner, field+"/corners/"+strconv.Itoa(i), "")
		ring[i], good = p, good && ok
	}
	return ring, good
}

func (r *reader) readSpot(spot Spot, field, bareUnit string) (floor.Point, bool) {
	x, okX := r.quantityIn(field+"/x", spot.X, quantity.Length, bareUnit)
	y, okY := r.quantityIn(field+"/y", spot.Y, quantity.Length, bareUnit)
	return floor.Point{X: x, Y: y}, okX && okY
}

// flush is how near a keep-out's corner counts as against the wall, metres. A tape is not better than that in a room's corner, and a strip of
// floor that thin behind a bath would be nobody's to pour, yet could hold up the finish plane.
const flush = 0.020

func (r *reader) readKeepOuts(s *site) {
	for i := range upTo(r, s.room.KeepOuts, mostKeepOuts, s.field+"/keepOuts", "There are more than 200 keep-outs in this room; the rest are left out.", "Leave out the small ones, or split the room.") {
		keepOut := &s.room.KeepOuts[i]
		field := s.field + "/keepOuts/" + strconv.Itoa(i) + "/shape"
		ring, ok := r.readShape(&keepOut.Shape, field, nil)
		if !ok {
			continue
		}
		ring = ring.Against(s.outline.Outer, flush)
		// A keep-out is tried alone first, so that a bad one is named and left out and the room still drawn.
		trial := floor.Outline{Outer: s.outline.Outer, Holes: append(append([]floor.Ring{}, s.outline.Holes...), ring)}
		if err := trial.Check(); err != nil {
			r.failShape(field, err)
			continue
		}
		s.outline = trial
	}
}

// readReadings reads every row; a bad one is named and the others kept. A spot outside the outline is kept too: it still says how the deck lies.
func (r *reader) readReadings(s *site) {
	readings := &s.room.Readings
	for i, row := range readings.Rows {
		if row.Off {
			continue
		}
		if len(s.points) == mostReadings {
			r.fail(Problem{Code: "too-many", Field: s.field + "/readings/rows", Message: "There are more than 200,000 readings in this room; the rest are left out.", Remedy: "Thin them out or split the room."})
			return
		}
		field := s.field + "/readings/rows/" + strconv.Itoa(i)
		p, okSpot := r.readSpot(Spot{row.X, row.Y}, field, readings.PositionUnit)
		height, okHeight := r.readHeight(readings, field+"/height", row.Height)
		if okSpot && okHeight {
			s.points = append(s.points, p)
			s.heights = append(s.heights, height)
			s.rows = append(s.rows, i)
		}
	}
}

// readHeight gives a height that goes up, whichever way it was read.
func (r *reader) readHeight(readings *Readings, field, typed string) (float64, bool) {
	height, ok := r.quantityIn(field, typed, quantity.Length, readings.HeightUnit)
	if readings.Sense == ReadBelowLine {
		height = -height
	}
	return height, ok
}

func (r *reader) readDoors(s *site) {
	for i := range upTo(r, s.room.Doors, mostDoors, s.field+"/doors", "There are more than 200 doors in this room; the rest are left out.", "Split the room.") {
		door := &s.room.Doors[i]
		d := doorSite{door: door, field: s.field + "/doors/" + strconv.Itoa(i)}
		if door.Wall < 0 || door.Wall >= len(s.outline.Outer) {
			r.fail(Problem{Code: "no-wall", Field: d.field + "/wall", Given: strconv.Itoa(door.Wall + 1), Message: "The room has no such wall.", Remedy: "Choose a wall from 1 to " + strconv.Itoa(len(s.outline.Outer)) + "."})
			continue
		}
		at, okAt := r.span(d.field+"/at", door.At, true)
		width, okWidth := r.span(d.field+"/width", door.Width, false)
		if !okAt || !okWidth {
			continue
		}
		wall := s.outline.Outer.WallLength(door.Wall)
		if at+width > wall+1e-6 {
			r.fail(Problem{Code: "door-too-wide", Field: d.field + "/width", Given: door.Width, Message: "The door reaches past the end of its wall, which is " + quantity.Write(wall, quantity.Length, quantity.Metric) + " long.", Remedy: "Check the wall, the distance along it and the door's width."})
			continue
		}
		d.from = s.outline.Outer.PointAlong(door.Wall, at)
		d.to = s.outline.Outer.PointAlong(door.Wall, at+width)
		if door.Neighbour != "" {
			d.neighbour, d.hasNeighbour = r.readHeight(&s.room.Readings, d.field+"/neighbour", door.Neighbour)
		}
		s.doors = append(s.doors, d)
	}
}

func (r *reader) readPenetrations(s *site) {
	for i := range upTo(r, s.room.Penetrations, mostPenetrations, s.field+"/penetrations", "There are more than 500 penetrations in this room; the rest are left out.", "Split the room.") {
		penetration := &s.room.Penetrations[i]
		p := penetrationSite{penetration: penetration, field: s.field + "/penetrations/" + strconv.Itoa(i)}
		at, ok := r.readSpot(penetration.At, p.field+"/at", "")
		if !ok {
			continue
		}
		if !s.outline.Outer.Contains(at) {
			spot := at
			r.fail(Problem{Code: "outside", Field: p.field + "/at", Message: "This stands outside the room.", Remedy: "Check its two distances.", At: &spot})
			continue
		}
		p.at = at
		if penetration.Diameter != "" {
			diameter, _ := r.span(p.field+"/diameter", penetration.Diameter, false)
			p.radius = diameter / 2
		}
		if penetration.Height != "" {
			p.top, p.hasTop = r.readHeight(&s.room.Readings, p.field+"/height", penetration.Height)
		}
		s.penetrations = append(s.penetrations, p)
	}
}

func (r *reader) readDecks(s *site) {
	for i := range upTo(r, s.room.Decks, mostDecks, s.field+"/decks", "There are more than 100 deck areas in this room; the rest are left out.", "Make one area of those of one kind, or split the room.") {
		area := &s.room.Decks[i]
		d := deckSite{area: area, field: s.field + "/decks/" + strconv.Itoa(i)}
		if area.Shape == nil {
			d.outline, d.whole = s.outline, true
			s.decks = append(s.decks, d)
			continue
		}
		ring, ok := r.readShape(area.Shape, d.field+"/shape", nil)
		if !ok {
			continue
		}
		d.outline = floor.Outline{Outer: ring}
		if err := d.outline.Check(); err != nil {
			r.failShape(d.field+"/shape", err)
			continue
		}
		s.decks = append(s.decks, d)
	}
}
