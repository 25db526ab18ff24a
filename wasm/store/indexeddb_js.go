package store

import (
	"context"
	"errors"
	"sync"
	"syscall/js"

	"github.com/hack-pad/go-indexeddb/idb"
)

const (
	drawer  = "documents"
	version = 1
)

// IndexedDB is a store in the browser's database of this name, opened when first used.
type IndexedDB struct {
	Name string

	lock     sync.Mutex
	database *idb.Database
}

// Read runs steps in a read-only transaction.
func (s *IndexedDB) Read(ctx context.Context, steps func(Reader) error) error {
	return s.within(ctx, idb.TransactionReadOnly, func(t *transaction) error { return steps(t) })
}

// Write runs steps in a transaction that the browser confirms only once it is on the disk.
func (s *IndexedDB) Write(ctx context.Context, steps func(Writer) error) error {
	return s.within(ctx, idb.TransactionReadWrite, func(t *transaction) error { return steps(t) })
}

func (s *IndexedDB) within(ctx context.Context, mode idb.TransactionMode, steps func(*transaction) error) error {
	if ctx.Err() != nil {
		return ctx.Err()
	}
	begun, err := s.begin(ctx, mode)
	if err != nil {
		return told(ctx, err)
	}
	documents, err := begun.ObjectStore(drawer)
	if err != nil {
		return told(ctx, err)
	}
	if err := errors.Join(steps(&transaction{ctx, documents}), ctx.Err()); err != nil {
		_ = begun.Abort() // it may have ended by itself, which is as good
		return told(ctx, err)
	}
	if mode == idb.TransactionReadOnly {
		return told(ctx, nil)
	}
	return told(ctx, begun.Await(ctx))
}

// begin starts a transaction. The browser closes a connection when another tab asks for the database or its files go away: then once more, afresh.
func (s *IndexedDB) begin(ctx context.Context, mode idb.TransactionMode) (*idb.Transaction, error) {
	s.lock.Lock()
	defer s.lock.Unlock()
	options := idb.TransactionOptions{Mode: mode, Durability: idb.DurabilityStrict}
	if s.database != nil {
		if begun, err := s.database.TransactionWithOptions(options, drawer); err == nil {
			return begun, nil
		}
		_ = s.database.Close()
	}
	var err error
	if s.database, err = open(ctx, s.Name); err != nil {
		s.database = nil
		return nil, err
	}
	return s.database.TransactionWithOptions(options, drawer)
}

func open(ctx context.Context, name string) (*idb.Database, error) {
	if !js.Global().Get("indexedDB").Truthy() {
		return nil, ErrUnavailable
	}
	// The upgrade outlives ctx: it must not be cut in two. Creating a drawer that isn't there can't fail, and an error here would end the program.
	request, err := idb.Global().Open(context.WithoutCancel(ctx), name, version, func(db *idb.Database, _, _ uint) error {
		_, _ = db.CreateObjectStore(drawer, idb.ObjectStoreOptions{})
		return nil
	})
	if err != nil {
		return nil, err
	}
	database, err := request.Await(ctx)
	if ctx.Err() != nil {
		return nil, ctx.Err()
	}
	return database, err
}

// transaction checks ctx after every wait, for a wait that ctx ends gives neither a value nor an error.
type transaction struct {
	ctx       context.Context
	documents *idb.ObjectStore
}

func (t *transaction) Get(key string) ([]byte, error) {
	request, err := t.documents.Get(js.ValueOf(key))
	if err != nil {
		return nil, err
	}
	value, err := request.Await(t.ctx)
	if err := errors.Join(err, t.ctx.Err()); err != nil || value.IsUndefined() {
		return nil, err
	}
	content := make([]byte, value.Length())
	js.CopyBytesToGo(content, value)
	return content, nil
}

// last is above every character that a key may hold.
const last = "\uffff"

func (t *transaction) Keys(prefix string) ([]string, error) {
	span, err := idb.NewKeyRangeBound(js.ValueOf(prefix), js.ValueOf(prefix+last), false, true)
	if err != nil {
		return nil, err
	}
	request, err := t.documents.GetAllKeysRange(span, 0)
	if err != nil {
		return nil, err
	}
	values, err := request.Await(t.ctx)
	if err := errors.Join(err, t.ctx.Err()); err != nil {
		return nil, err
	}
	keys := make([]string, len(values))
	for i, value := range values {
		keys[i] = value.String()
	}
	return keys, nil
}

// All asks for every value before it waits for the first, so that many take little longer than one.
func (t *transaction) All(prefix string) ([]Item, error) {
	keys, err := t.Keys(prefix)
	if err != nil {
		return nil, err
	}
	items := make([]Item, len(keys))
	failures := make([]error, len(keys))
	var asked sync.WaitGroup
	for i, key := range keys {
		asked.Go(func() {
			items[i].Key = key
			items[i].Value, failures[i] = t.Get(key)
		})
	}
	asked.Wait()
	return items, errors.Join(failures...)
}

// Put doesn't wait: what goes wrong ends the transaction, which says so.
func (t *transaction) Put(key string, value []byte) error {
	content := js.Global().Get("Uint8Array").New(len(value))
	js.CopyBytesToJS(content, value)
	_, err := t.documents.PutKey(js.ValueOf(key), content)
	return err
}

func (t *transaction) Delete(key string) error {
	_, err := t.documents.Delete(js.ValueOf(key))
	return err
}

// told puts the browser's errors that a person can act on into our own.
func told(ctx context.Context, err error) error {
	switch {
	case errors.Is(err, idb.NewDOMException("QuotaExceededError")):
		return ErrFull
	case errors.Is(err, idb.NewDOMException("InvalidStateError")), errors.Is(err, idb.NewDOMException("SecurityError")):
		return errors.Join(ErrUnavailable, err)
	}
	return errors.Join(err, ctx.Err())
}
