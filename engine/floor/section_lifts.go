// The lifts of a pour in a section.
package floor

// Layer is the parts of a stretch that a lift covers, under the finish plane and along the line that was cut.
func (l *Lift) Layer(p Profile, plane Plane, line Line) []Profile {
	if l.Whole {
		return []Profile{p}
	}
	depth := func(i int) float64 { return plane.At(line.At(p.Along[i])) - p.Deck[i] }
	var parts []Profile
	var part Profile
	for i := range p.Along {
		covered := depth(i) >= l.From
		if i > 0 && covered != (depth(i-1) >= l.From) {
			share := (l.From - depth(i-1)) / (depth(i) - depth(i-1))
			part.add(p.Along[i-1]+share*(p.Along[i]-p.Along[i-1]), p.Deck[i-1]+share*(p.Deck[i]-p.Deck[i-1]))
		}
		if covered {
			part.add(p.Along[i], p.Deck[i])
		}
		if !covered || i == len(p.Along)-1 {
			if len(part.Along) > 1 {
				parts = append(parts, part)
			}
			part = Profile{}
		}
	}
	return parts
}

func (p *Profile) add(along, deck float64) {
	p.Along, p.Deck = append(p.Along, along), append(p.Deck, deck)
}

// Line is a line in plan, by the distance along it.
type Line struct{ From, Ahead Point }

// LineOf is the line from one spot towards another.
func LineOf(from, to Point) Line {
	length := Distance(from, to)
	return Line{from, Point{(to.X - from.X) / length, (to.Y - from.Y) / length}}
}

// At is the spot that far along the line, metres.
func (l Line) At(along float64) Point {
	return Point{l.From.X + along*l.Ahead.X, l.From.Y + along*l.Ahead.Y}
}
