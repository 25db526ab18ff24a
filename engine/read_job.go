package engine

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"strconv"
)

// MostJobBytes bounds a job document: 200,000 readings fit, a stranger's endless file doesn't.
const MostJobBytes = 32 << 20

// ReadJob reads a job document. One of a later format is refused without harm; fields that this build doesn't know are an error too, since
// dropping them on the next keeping would lose what somebody entered.
func ReadJob(document []byte) (*Job, error) {
	if len(document) > MostJobBytes {
		return nil, errors.New("this job file is larger than 32 MB; a job with 200,000 readings is smaller")
	}
	if !Shallow(document) {
		return nil, errors.New("this isn't a job file: its brackets are nested too deep")
	}
	var head struct {
		Format int `json:"format"`
	}
	if err := json.Unmarshal(document, &head); err != nil {
		return nil, errors.New("this isn't a job file: " + err.Error())
	}
	if head.Format < 1 {
		return nil, errors.New("this isn't a job file: it says no format; choose a file that was exported here")
	}
	if head.Format > JobFormat {
		return nil, errors.New("this job was kept by a later version (format " + strconv.Itoa(head.Format) + ", this one reads " + strconv.Itoa(JobFormat) + "); open it there, or update")
	}
	decoder := json.NewDecoder(bytes.NewReader(document))
	decoder.DisallowUnknownFields()
	job := new(Job)
	if err := decoder.Decode(job); err != nil {
		return nil, errors.New("this job file can't be read: " + err.Error())
	}
	if _, err := decoder.Token(); err != io.EOF {
		return nil, errors.New("this job file has something behind its end")
	}
	if excess := job.Excess(); excess != "" {
		return nil, errors.New("this job file has " + excess + "; split the job")
	}
	job.fill()
	return job, nil
}

// fill gives empty lists and maps where a document left them out, so that nobody has to ask.
func (j *Job) fill() {
	if j.Answers == nil {
		j.Answers = Answers{}
	}
	if j.Sheets == nil {
		j.Sheets = map[string]Sheet{}
	}
	if j.Rooms == nil {
		j.Rooms = []Room{}
	}
	if j.Offer != nil && j.Offer.Lines == nil {
		j.Offer.Lines = map[string]bool{}
	}
	for i := range j.Rooms {
		j.Rooms[i].fill()
	}
	for i := range j.Record {
		j.Record[i].Batches = some(j.Record[i].Batches)
	}
}

func (r *Room) fill() {
	r.Answers = filled(r.Answers)
	r.KeepOuts, r.Doors, r.Penetrations, r.Decks = some(r.KeepOuts), some(r.Doors), some(r.Penetrations), some(r.Decks)
	r.Readings.Rows = some(r.Readings.Rows)
	for i := range r.Doors {
		r.Doors[i].Answers = filled(r.Doors[i].Answers)
	}
	for i := range r.Penetrations {
		r.Penetrations[i].Answers = filled(r.Penetrations[i].Answers)
	}
	for i := range r.Decks {
		r.Decks[i].Answers = filled(r.Decks[i].Answers)
	}
}

func filled(answers Answers) Answers {
	if answers == nil {
		return Answers{}
	}
	return answers
}

func some[T any](list []T) []T {
	if list == nil {
		return []T{}
	}
	return list
}
