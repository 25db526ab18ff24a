package store

import (
	"context"
	"maps"
	"slices"
	"strings"
	"sync"
)

// Memory is a store that lasts as long as the program. Its zero value is empty and ready.
type Memory struct {
	lock  sync.Mutex
	items map[string][]byte
}

// Read runs steps on the store as it is.
func (m *Memory) Read(ctx context.Context, steps func(Reader) error) error {
	m.lock.Lock()
	defer m.lock.Unlock()
	if err := ctx.Err(); err != nil {
		return err
	}
	return steps(&memoryTransaction{m.items})
}

// Write runs steps on a copy that takes the store's place when all went well.
func (m *Memory) Write(ctx context.Context, steps func(Writer) error) error {
	m.lock.Lock()
	defer m.lock.Unlock()
	if err := ctx.Err(); err != nil {
		return err
	}
	changed := maps.Clone(m.items)
	if changed == nil {
		changed = map[string][]byte{}
	}
	if err := steps(&memoryTransaction{changed}); err != nil {
		return err
	}
	if err := ctx.Err(); err != nil {
		return err
	}
	m.items = changed
	return nil
}

type memoryTransaction struct{ items map[string][]byte }

func (t *memoryTransaction) Get(key string) ([]byte, error) { return slices.Clone(t.items[key]), nil }

func (t *memoryTransaction) Keys(prefix string) ([]string, error) {
	keys := []string{}
	for key := range t.items {
		if strings.HasPrefix(key, prefix) {
			keys = append(keys, key)
		}
	}
	slices.Sort(keys)
	return keys, nil
}

func (t *memoryTransaction) All(prefix string) ([]Item, error) {
	keys, _ := t.Keys(prefix)
	items := make([]Item, len(keys))
	for i, key := range keys {
		items[i] = Item{key, slices.Clone(t.items[key])}
	}
	return items, nil
}

func (t *memoryTransaction) Put(key string, value []byte) error {
	t.items[key] = slices.Clone(value)
	return nil
}

func (t *memoryTransaction) Delete(key string) error {
	delete(t.items, key)
	return nil
}
