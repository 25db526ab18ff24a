// How high the deck stands at a spot.
package floor

// HeightAt is the deck's height at p, metres; false where p lies beyond the surface. It looks at every triangle.
func (s *Surface) HeightAt(p Point) (float64, bool) {
	for t := range s.Triangles {
		if height, inside := s.heightIn(t, p); inside {
			return height, true
		}
	}
	return 0, false
}

// heightIn is the height at p by triangle t; false where p lies outside it. A spot on a side lies in the triangles on both hands.
func (s *Surface) heightIn(t int, p Point) (float64, bool) {
	i, j, k := s.Triangles[t][0], s.Triangles[t][1], s.Triangles[t][2]
	a, b, c := s.Points[i], s.Points[j], s.Points[k]
	whole := turn(a, b, c)
	if whole <= 0 {
		return 0, false
	}
	shareA, shareB, shareC := turn(b, c, p)/whole, turn(c, a, p)/whole, turn(a, b, p)/whole
	if shareA < -rounding || shareB < -rounding || shareC < -rounding {
		return 0, false
	}
	return shareA*s.Heights[i] + shareB*s.Heights[j] + shareC*s.Heights[k], true
}

// rounding is how far outside a triangle a spot may seem to lie, as a share of its height, when it lies on a side.
const rounding = 1e-9
