package pour

import (
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
)

// everyTurn tries every way to take chains in turn and returns the least longest wait, in batches.
func everyTurn(chains []chain, volumes []float64, c course, batch int) int {
	if batch == len(volumes) {
		return c.longest
	}
	best := 1 << 30
	for first := range chains {
		if c.open(chains, first, 1e-9) {
			best = min(best, everyTurn(chains, volumes, c.pour(chains, batch, first, volumes[batch], 1e-9), batch+1))
		}
	}
	return best
}

// Two or three arms that meet in a trunk, or an island's two sides.
func TestArmsArePouredInTurnAsWellAsTryingEveryTurn(t *testing.T) {
	random := rand.New(rand.NewSource(4))
	shapes := [][]chain{
		{{}, {}, {after: []int{0, 1}}},
		{{}, {after: []int{0}}, {after: []int{0}}, {after: []int{1, 2}}},
		{{}, {}, {}, {after: []int{0, 1}}, {after: []int{2, 3}}},
	}
	for n := range 60 {
		chains := append([]chain{}, shapes[n%3]...)
		start := course{}
		whole := 0.0
		for i := range chains {
			chains[i].volume = 0.3 + 2.5*random.Float64()
			whole += chains[i].volume
			start.left, start.last = append(start.left, chains[i].volume), append(start.last, -1)
		}
		volumes := batchesOf(whole, 1)
		assert.Equal(t, everyTurn(chains, volumes, start, 0), interleave(chains, volumes).longest, "case %d", n)
	}
}

// A T whose arms are poured one after the other would leave the first arm's edge to wait for the whole of the second.
func TestALongArmStartsFirstAndThenTheyTakeTurns(t *testing.T) {
	chains := []chain{{volume: 10}, {volume: 4}, {volume: 3, after: []int{0, 1}}}
	assert.Equal(t, 2, interleave(chains, batchesOf(17, 1)).longest)
}

func TestADoorThatHalfTheFloorIsCutOffFromStillServesItsHalf(t *testing.T) {
	room := testRooms[7]
	room.outline.Holes = append(room.outline.Holes, box(6, 0, 0.1, 3))
	cells := cellsOf(t, room.outline)
	volumes := batchesOf(roomVolume(t, cells), 0.0275)
	s, err := Order(Room{room.outline, room.exits, cells}, volumes, 0)
	assert.NoError(t, err)
	assert.Equal(t, []int{0, 1}, s.Exits)
	wayOutStaysDry(t, room, s)
}
