// Pieces of high ground that touch are one spot to cut.
package floor

import "sort"

// joinSpots adds up the pieces of each connected spot, in the order of their first pieces from left to right.
func joinSpots(pieces []proud) []HighSpot {
	sort.SliceStable(pieces, func(i, j int) bool { return pieces[i].low.X < pieces[j].low.X })
	parent := make([]int, len(pieces))
	for i := range parent {
		parent[i] = i
	}
	root := func(i int) int {
		for parent[i] != i {
			parent[i] = parent[parent[i]]
			i = parent[i]
		}
		return i
	}
	for i, a := range pieces {
		for j := i + 1; j < len(pieces) && pieces[j].low.X <= a.high.X+touching; j++ {
			if p, q := root(i), root(j); p != q && touch(a, pieces[j]) {
				if q < p {
					p, q = q, p
				}
				parent[q] = p
			}
		}
	}
	var spots []HighSpot
	number := make([]int, len(pieces))
	for i, piece := range pieces {
		r := root(i)
		if r == i {
			number[i] = len(spots)
			spots = append(spots, HighSpot{})
		}
		spots[number[r]].add(piece.spot)
	}
	return spots
}

func (s *HighSpot) add(piece HighSpot) {
	s.Area += piece.Area
	s.Volume += piece.Volume
	if piece.Height > s.Height {
		s.Height, s.At = piece.Height, piece.At
	}
}

// touch tells whether a corner of either piece lies on the other.
func touch(a, b proud) bool {
	if a.low.Y > b.high.Y+touching || b.low.Y > a.high.Y+touching {
		return false
	}
	return cornerOn(a.corners, b.corners) || cornerOn(b.corners, a.corners)
}

func cornerOn(corners, other Ring) bool {
	for _, p := range corners {
		if _, _, off := other.NearestWall(p); off <= touching {
			return true
		}
	}
	return false
}
