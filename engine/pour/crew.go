package pour

// FewestHands is the smallest crew within the given most that keeps the flow time and the wet edge: fewest people first, then buckets, then mixers,
// then barrows. Where none does, it is the best that the most can do, with Kept false.
func FewestHands(loads []Load, most Crew, pace Pace) (Timeline, error) {
	if err := checkClock(loads, most, pace); err != nil {
		return Timeline{}, err
	}
	for people := 1; people <= most.People; people++ {
		for buckets := 1; buckets <= min(most.Buckets, 2*people+2); buckets++ {
			for mixers := 1; mixers <= min(most.Mixers, people); mixers++ {
				for barrows := min(1, most.Barrows); barrows <= min(most.Barrows, people); barrows++ {
					if t, _ := plan(Crew{people, mixers, buckets, barrows}, pace, fresh(loads)); t.Kept {
						sortTasks(t.Tasks)
						return t, nil
					}
				}
			}
		}
	}
	return bestOf(most, pace, fresh(loads)), nil
}
