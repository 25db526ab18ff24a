// Package kept is what the browser keeps for a person: jobs with their revisions, sheets, rulebooks and settings. It knows how a document is
// wrapped, listed, brought up from older formats, written to a file and read back, and leaves the keeping of bytes to a store.
//
// Keys: "job/ID", "revision/ID/000001", "list/00" to "list/3f" (what the list of jobs shows), "sheet/ID", "book/ID", "settings/all", "shop/shop".
package kept

import (
	"math/rand/v2"
	"strconv"
	"time"

	"lowspot/engine"
	"lowspot/wasm/store"
)

// Keeper keeps documents in a store. Now is the clock; NewID names what needs a new name.
type Keeper struct {
	Store store.Store
	Now   func() time.Time
	NewID func() string

	list listing
}

// New is a keeper with the system's clock and random names.
func New(s store.Store) *Keeper { return &Keeper{Store: s, Now: time.Now, NewID: randomID} }

func randomID() string {
	return strconv.FormatUint(rand.Uint64(), 36) + strconv.FormatUint(rand.Uint64(), 36)
}

// stamp is a time as it is kept: UTC, to the millisecond.
const stamp = "2006-01-02T15:04:05.000Z"

func (k *Keeper) now() string { return k.Now().UTC().Format(stamp) }

// checkID refuses a name that could not be a key's part.
func checkID(field, id string) error {
	if id != "" && len(id) <= 64 && plain(id) {
		return nil
	}
	return engine.Problem{Code: "bad-id", Field: field, Given: id, Message: "This is not an identifier.", Remedy: "Use up to 64 letters, digits, hyphens and underscores."}
}

func plain(id string) bool {
	for _, c := range []byte(id) {
		letter := 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z'
		if !letter && (c < '0' || c > '9') && c != '-' && c != '_' {
			return false
		}
	}
	return true
}
