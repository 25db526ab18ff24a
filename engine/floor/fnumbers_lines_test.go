package floor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestEveryLineOfAGridIsFoundOnce(t *testing.T) {
	var points []Point
	for i := range 13 * 13 {
		points = append(points, Point{float64(i%13) * foot, float64(i/13) * foot})
	}
	lines, err := FLines(points)
	require.NoError(t, err)
	assert.Len(t, lines, 26, "thirteen each way; the diagonals' readings stand further apart")
	for _, line := range lines {
		assert.Len(t, line, 13)
	}
}

func TestAScannedCloudIsNotLookedThroughForLines(t *testing.T) {
	_, err := FLines(make([]Point, mostFReadings+1))
	assert.Equal(t, "f-too-many", err.(*Error).Code)
}
