package engine

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func begun(batches ...BatchRecord) *Job {
	job := DemoJob("demo")
	job.Record = []PourRecord{{Room: "room-1", Started: "2026-05-05T10:00:00Z", Batches: batches}}
	return job
}

func TestALateBatchMovesTheRestAndNothingIsPlannedInThePast(t *testing.T) {
	book := ShippedRulebook()
	planned := MakePour(DemoJob("demo"), book).Rooms[0].Clock.Timeline.Finish
	job := begun(
		BatchRecord{Batch: 1, Started: "2026-05-05T10:00:00Z", Poured: "2026-05-05T10:14:00Z"}, // ten minutes late
		BatchRecord{Batch: 2, Started: "2026-05-05T10:05:00Z"},
	)
	rest, err := ReplanPour(job, book, "room-1", "", "2026-05-05T10:15:00.000Z")
	require.NoError(t, err)
	assert.Equal(t, 900.0, rest.Now)
	assert.Greater(t, rest.Clock.Timeline.Finish, planned)
	for _, task := range rest.Clock.Timeline.Tasks {
		if task.Kind != "rest" {
			assert.GreaterOrEqual(t, task.End, rest.Now)
		}
		assert.NotEqual(t, 1, task.Batch, "what is poured is not poured again")
	}
	assert.Equal(t, BatchPoured, rest.Batches[0].State)
	assert.Equal(t, BatchBegun, rest.Batches[1].State)
	assert.Equal(t, BatchToCome, rest.Batches[2].State)
	assert.Equal(t, 300.0+30+45+120+120, rest.Batches[1].Ready, "water, powder, mix and rest after its start")
	require.NotEmpty(t, rest.Edges)
	assert.Equal(t, 1, rest.Edges[0].From)
	assert.InDelta(t, 840+MakePour(job, book).Setting.WetEdge.SI, rest.Edges[0].Closes, 1e-6, "an edge joins for the wet-edge time from its pour")
}

func TestASkippedBatchIsLeftOutAndItsEdgesNoLongerCount(t *testing.T) {
	job := begun(BatchRecord{Batch: 1, Started: "2026-05-05T10:00:00Z", Poured: "2026-05-05T10:06:00Z", Done: "2026-05-05T10:07:00Z"}, BatchRecord{Batch: 2, Skipped: true})
	rest, err := ReplanPour(job, ShippedRulebook(), "room-1", "", "2026-05-05T10:08:00Z")
	require.NoError(t, err)
	assert.Equal(t, BatchSkipped, rest.Batches[1].State)
	for _, edge := range rest.Edges {
		assert.NotEqual(t, 2, edge.To)
	}
	for _, task := range rest.Clock.Timeline.Tasks {
		assert.NotEqual(t, 2, task.Batch)
	}
}

func TestARecordThatMakesNoSenseIsRefusedInWords(t *testing.T) {
	book := ShippedRulebook()
	_, err := ReplanPour(DemoJob("demo"), book, "room-1", "", "2026-05-05T10:00:00Z")
	require.ErrorContains(t, err, "has not begun")
	_, err = ReplanPour(begun(BatchRecord{Batch: 99}), book, "room-1", "", "2026-05-05T10:00:00Z")
	require.ErrorContains(t, err, "batches 1 to")
	_, err = ReplanPour(begun(BatchRecord{Batch: 1, Started: "noon"}), book, "room-1", "", "2026-05-05T10:00:00Z")
	require.ErrorContains(t, err, "can't be read")
	_, err = ReplanPour(begun(BatchRecord{Batch: 1, Poured: "2026-05-05T10:10:00Z"}), book, "room-1", "", "2026-05-05T10:01:00Z")
	require.ErrorContains(t, err, "not after now")
	_, err = ReplanPour(begun(), book, "kitchen", "", "2026-05-05T10:01:00Z")
	require.Error(t, err)
}

func TestTheRecordIsKeptInTheJobAndAJobWithoutOneStillReads(t *testing.T) {
	job := begun(BatchRecord{Batch: 1, Started: "2026-05-05T10:00:00Z", Bags: 1, Water: "5 L"})
	job.Start = "2026-05-04T08:00"
	document, err := json.Marshal(job)
	require.NoError(t, err)
	again, err := ReadJob(document)
	require.NoError(t, err)
	assert.Equal(t, job, again)
	document, err = json.Marshal(DemoJob("demo"))
	require.NoError(t, err)
	assert.NotContains(t, string(document), "record")
	_, err = ReadJob(document)
	require.NoError(t, err)
}
