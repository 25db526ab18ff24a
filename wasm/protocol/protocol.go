// Package protocol is the one way into the engine from the page: a request comes in as bytes, a reply goes out as bytes, both JSON in UTF-8. A request
// is a line that tells what it is, then its body, so that no body is read twice.
//
//	request  {"id": 7, "kind": "jobs.open"}
//	         {"id": "job-3fa9"}
//	reply    {"id": 7, "ok": true, "body": {...}}
//	reply    {"id": 7, "ok": false, "error": {"code": "missing", "field": "id", "message": "...", "remedy": "..."}}
//
// Every request gets exactly one reply. The kinds, their bodies and their replies stand in kinds.go; the page's types are made from them
// (wasm/contract). Lists and maps are never null in a reply. Kinds that use storage are answered in the order in which they came; the others
// are answered at once, so that no plan waits for a disk.
package protocol

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"runtime/debug"
	"time"

	"lowspot/engine"
	"lowspot/wasm/kept"
)

// Request is a message from the page.
type Request struct {
	ID   int64  `json:"id"`
	Kind string `json:"kind"`

	body []byte
}

// Reply is the answer to the request of the same ID: a body or an error.
type Reply struct {
	ID    int64           `json:"id"`
	OK    bool            `json:"ok"`
	Body  any             `json:"body,omitempty"`
	Error *engine.Problem `json:"error,omitempty"`
}

// CodeFault is the code of an error of the engine's own: the page ends this engine and starts a fresh one.
const CodeFault = "fault"

// How long the browser's storage may take over one request: over one document, or over everything that is kept. The page waits a little longer.
const (
	storageAnswers = 20 * time.Second
	storageSweeps  = 2 * time.Minute
)

// Bridge answers requests.
type Bridge struct {
	Keeper *kept.Keeper
	Build  string // names the build that page and engine must share

	waiting chan func()
	shipped *engine.Rulebook
	books   []compiledBook // the last others, the latest last
	looked  lookedAt
}

type compiledBook struct {
	text string
	book *engine.Rulebook
}

// mostBooks is how many books are kept compiled: a person's own, and one that is being looked at.
const mostBooks = 3

// New is a bridge that is ready to answer.
func New(keeper *kept.Keeper, build string) *Bridge {
	b := &Bridge{Keeper: keeper, Build: build, waiting: make(chan func(), 1024)}
	go func() {
		for next := range b.waiting {
			next()
		}
	}()
	return b
}

// Answer takes a request and hands its reply to send: before it returns, or later where storage is needed.
func (b *Bridge) Answer(message []byte, send func([]byte)) {
	request, kind, err := open(message)
	switch {
	case err != nil:
		send(encode(Reply{ID: request.ID}, err))
	case kind.patience > 0:
		b.waiting <- func() {
			ctx, cancel := context.WithTimeout(context.Background(), kind.patience)
			defer cancel()
			send(b.answer(ctx, request, kind))
		}
	default:
		send(b.answer(context.Background(), request, kind))
	}
}

func open(message []byte) (Request, kind, error) {
	var request Request
	if !engine.Shallow(message) {
		return request, kind{}, malformed("its brackets are nested too deep")
	}
	head, body, _ := bytes.Cut(message, []byte("\n"))
	request.body = body
	if err := json.Unmarshal(head, &request); err != nil {
		return request, kind{}, malformed(err.Error())
	}
	found, known := kindsByName[request.Kind]
	if !known {
		return request, kind{}, engine.Problem{Code: "unknown-kind", Field: "kind", Given: request.Kind, Message: "The engine knows no such request.", Remedy: "Reload the page: it and its engine may be of different versions."}
	}
	return request, found, nil
}

func malformed(why string) error {
	return engine.Problem{Code: "message", Message: "The engine could not read a message: " + why + ".", Remedy: "Reload the page. What was kept is still there."}
}

func (b *Bridge) answer(ctx context.Context, request Request, kind kind) (message []byte) {
	defer func() {
		if fault := recover(); fault != nil {
			message = encode(Reply{ID: request.ID}, faulty(fmt.Sprint(fault)+"\n"+string(debug.Stack())))
		}
	}()
	body, err := kind.answer(ctx, b, request.body)
	return encode(Reply{ID: request.ID, OK: err == nil, Body: body}, err)
}

// faulty is an error of the engine's own, with the report that a person may copy.
func faulty(report string) error {
	return engine.Problem{Code: CodeFault, Given: report, Message: "The engine failed on this request.", Remedy: "Nothing that was kept is lost. Undo the last change; if it happens again, copy the report."}
}

func encode(reply Reply, err error) []byte {
	if err != nil {
		reply.OK, reply.Body, reply.Error = false, nil, problemOf(err)
	}
	reply.Body = withoutNull(reply.Body)
	message, bad := json.Marshal(reply)
	if bad != nil {
		return encode(Reply{ID: reply.ID}, faulty("the reply could not be written: "+bad.Error()))
	}
	return plain(message)
}

func problemOf(err error) *engine.Problem {
	var problem engine.Problem
	if !errors.As(err, &problem) {
		problem = engine.Problem{Code: "error", Message: err.Error()}
	}
	return &problem
}
