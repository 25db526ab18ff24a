// Package store keeps documents as bytes under a key, with transactions. It knows nothing of what they hold. The page's store is IndexedDB;
// Memory is the same in memory, for tests and for browsers that keep nothing.
//
// There is one drawer for everything and keys carry a prefix ("job/…"), since a database's drawers can't be reshaped once it exists.
package store

import (
	"context"
	"errors"
)

// Store runs transactions. All that a transaction puts and deletes is done together or, when steps or Write give an error, not at all.
// Write returns nil only once the browser has acknowledged the whole transaction.
type Store interface {
	Read(ctx context.Context, steps func(Reader) error) error
	Write(ctx context.Context, steps func(Writer) error) error
}

// Reader reads within one transaction. Steps must not wait for anything but the reader itself: the transaction would end.
type Reader interface {
	Get(key string) ([]byte, error)       // nil where there is none
	Keys(prefix string) ([]string, error) // in ascending order
	All(prefix string) ([]Item, error)    // in ascending order of the keys
}

// Item is a key with what is kept under it.
type Item struct {
	Key   string
	Value []byte
}

// Writer reads and writes within one transaction.
type Writer interface {
	Reader
	Put(key string, value []byte) error
	Delete(key string) error // of nothing is no error
}

// What may go wrong that a person can do something about. Other errors come as the browser words them.
var (
	ErrFull        = errors.New("the browser has no room left for this site")
	ErrUnavailable = errors.New("the browser keeps nothing for this site")
)
