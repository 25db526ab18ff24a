package floor

// shelf keeps many short lists that live together in a few long ones: one piece of memory for hundreds of lists.
type shelf[T any] struct{ free []T }

const shelfRoom = 2048

// keep copies a list.
func (s *shelf[T]) keep(list []T) []T {
	if len(list) > len(s.free) {
		s.free = make([]T, max(shelfRoom, len(list)))
	}
	kept := s.free[:len(list):len(list)]
	s.free = s.free[len(list):]
	copy(kept, list)
	return kept
}
