package engine

import (
	"math"

	"lowspot/engine/floor"
)

// Ground is a job's floors, worked out to be looked into: at one spot, or cut along a line.
type Ground struct{ study }

// GroundOf works a job out to be looked into. Pure like MakePlan.
func GroundOf(job *Job, book *Rulebook) *Ground {
	return &Ground{study{work: workOut(job, book)}}
}

// SpotPlan is one spot of a floor. Heights are written as they would be read in the room.
type SpotPlan struct {
	Poured bool   `json:"poured"` // there is a pour at the spot; else there is nothing to say of it
	X      Amount `json:"x"`
	Y      Amount `json:"y"`
	Deck   Amount `json:"deck"`
	Plane  Amount `json:"plane"`
	Depth  Amount `json:"depth"` // below zero where the deck stands above the plane
}

// Spot looks at one spot of a room.
func (g *Ground) Spot(room string, at floor.Point) SpotPlan {
	r := g.poured(room)
	if r == nil || !near(at) {
		return SpotPlan{}
	}
	out := SpotPlan{X: g.length(at.X), Y: g.length(at.Y)}
	for _, cell := range r.allCells() {
		if deck, inside := cell.HeightAt(at); inside {
			plane := r.plane.At(at)
			out.Poured = true
			out.Deck, out.Plane, out.Depth = g.asRead(r, deck), g.asRead(r, plane), g.length(plane-deck)
			return out
		}
	}
	return out
}

// SectionPlan is a floor cut upright along a line. What is drawn is in metres: x along the line, y over the lowest deck on it.
type SectionPlan struct {
	From     floor.Point     `json:"from"`
	To       floor.Point     `json:"to"`
	Length   Amount          `json:"length"`
	High     float64         `json:"high"`     // the highest that is drawn
	Decks    [][]floor.Point `json:"decks"`    // a line for each stretch where the floor is poured
	Planes   [][]floor.Point `json:"planes"`   // the finish plane over each stretch
	Lifts    []SectionLift   `json:"lifts"`    // the last to pour first; those under it are drawn over it
	Stations []SectionPlace  `json:"stations"` // in even steps
	Least    *SectionPlace   `json:"least"`    // nil where nothing of the line is poured
	Greatest *SectionPlace   `json:"greatest"`
}

// SectionLift is one lift, from its top down to the deck.
type SectionLift struct {
	Number int             `json:"number"` // in the order of pouring
	Shapes [][]floor.Point `json:"shapes"`
}

// SectionPlace is a place on the line.
type SectionPlace struct {
	Along Amount `json:"along"`
	Deck  Amount `json:"deck"` // as it would be read
	Plane Amount `json:"plane"`
	Depth Amount `json:"depth"`
}

const sectionSteps = 10 // of a section's table

// Section cuts a room's floor along a line.
func (g *Ground) Section(room string, from, to floor.Point) SectionPlan {
	c := &cut{Ground: g, room: g.poured(room), out: SectionPlan{Decks: [][]floor.Point{}, Planes: [][]floor.Point{}, Lifts: []SectionLift{}, Stations: []SectionPlace{}}}
	if c.room == nil || !near(from) || !near(to) {
		return c.out
	}
	c.line = floor.LineOf(from, to)
	c.out.From, c.out.To, c.out.Length = from, to, g.length(floor.Distance(from, to))
	c.stretches = floor.Section(c.room.allCells(), from, to)
	c.low = c.lowest()
	c.draw()
	c.drawLifts()
	c.tell()
	return c.out
}

// cut is a section in the making.
type cut struct {
	*Ground
	room      *roomWork
	line      floor.Line
	stretches []floor.Profile
	low       float64
	out       SectionPlan
}

func (c *cut) lowest() float64 {
	low := math.Inf(1)
	for _, stretch := range c.stretches {
		for i, deck := range stretch.Deck {
			low = math.Min(low, math.Min(deck, c.planeAt(stretch.Along[i])))
		}
	}
	return low
}

func (c *cut) planeAt(along float64) float64 { return c.room.plane.At(c.line.At(along)) }

func (c *cut) draw() {
	for _, stretch := range c.stretches {
		var deck, plane []floor.Point
		for i, along := range stretch.Along {
			deck = append(deck, floor.Point{X: along, Y: stretch.Deck[i] - c.low})
			plane = append(plane, floor.Point{X: along, Y: c.planeAt(along) - c.low})
			c.out.High = math.Max(c.out.High, math.Max(deck[i].Y, plane[i].Y))
		}
		c.out.Decks, c.out.Planes = append(c.out.Decks, deck), append(c.out.Planes, plane)
	}
}

func (c *cut) drawLifts() {
	way, _ := c.pouredLifts(c.room)
	lifts := way.lifts // none where there can be none: the lifts' own table says why
	for k := len(lifts) - 1; k >= 0; k-- {
		lift := SectionLift{Number: k + 1, Shapes: [][]floor.Point{}}
		for _, stretch := range c.stretches {
			for _, part := range lifts[k].Layer(stretch, c.room.plane, c.line) {
				lift.Shapes = append(lift.Shapes, c.shape(part, lifts[k].Below))
			}
		}
		c.out.Lifts = append(c.out.Lifts, lift)
	}
}

// shape goes out along a lift's top and back along the deck. Where the deck stands above the top there is nothing of the lift.
func (c *cut) shape(part floor.Profile, below float64) []floor.Point {
	var top, deck []floor.Point
	for i, along := range part.Along {
		deck = append(deck, floor.Point{X: along, Y: part.Deck[i] - c.low})
		top = append(top, floor.Point{X: along, Y: math.Max(c.planeAt(along)-below, part.Deck[i]) - c.low})
	}
	for i := len(deck) - 1; i >= 0; i-- {
		top = append(top, deck[i])
	}
	return top
}

// tell writes the table, and the shallowest and the deepest place of the line: these lie at a bend of the deck.
func (c *cut) tell() {
	length := c.out.Length.SI
	for k := 0; k <= sectionSteps; k++ {
		along := length * float64(k) / sectionSteps
		for _, stretch := range c.stretches {
			if deck, on := stretch.At(along); on {
				c.out.Stations = append(c.out.Stations, c.place(along, deck))
				break
			}
		}
	}
	for _, stretch := range c.stretches {
		for i, along := range stretch.Along {
			place := c.place(along, stretch.Deck[i])
			if c.out.Least == nil || place.Depth.SI < c.out.Least.Depth.SI {
				c.out.Least = &place
			}
			if c.out.Greatest == nil || place.Depth.SI > c.out.Greatest.Depth.SI {
				c.out.Greatest = &place
			}
		}
	}
}

func (c *cut) place(along, deck float64) SectionPlace {
	plane := c.planeAt(along)
	return SectionPlace{Along: c.length(along), Deck: c.asRead(c.room, deck), Plane: c.asRead(c.room, plane), Depth: c.length(plane - deck)}
}

// near tells a spot that may lie in some room from nonsense.
func near(p floor.Point) bool {
	return math.Abs(p.X) < 1e5 && math.Abs(p.Y) < 1e5
}

// poured is the room of that identifier; nil where it has no pour to look into.
func (g *Ground) poured(id string) *roomWork {
	for _, r := range g.rooms {
		if r.plan.ID == id && r.hasPour && r.rough == nil {
			return r
		}
	}
	return nil
}
