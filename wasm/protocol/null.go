package protocol

import (
	"reflect"
	"sync"
)

// withoutNull gives a value in which every nil list and map is an empty one, so that the page never has to ask.
func withoutNull(value any) any {
	if value == nil {
		return nil
	}
	given := reflect.ValueOf(value)
	settable := reflect.New(given.Type()).Elem()
	settable.Set(given)
	fill(settable)
	return settable.Interface()
}

func fill(v reflect.Value) {
	if flat(v.Type()) {
		return
	}
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			fill(v.Elem())
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				fill(v.Field(i))
			}
		}
	case reflect.Slice:
		fillSlice(v)
	case reflect.Map:
		fillMap(v)
	}
}

func fillSlice(v reflect.Value) {
	if v.IsNil() {
		v.Set(reflect.MakeSlice(v.Type(), 0, 0))
	}
	if flat(v.Type().Elem()) {
		return
	}
	for i := range v.Len() {
		fill(v.Index(i))
	}
}

func fillMap(v reflect.Value) {
	if v.IsNil() {
		v.Set(reflect.MakeMap(v.Type()))
	}
	if flat(v.Type().Elem()) {
		return
	}
	for _, key := range v.MapKeys() {
		item := reflect.New(v.Type().Elem()).Elem()
		item.Set(v.MapIndex(key))
		fill(item)
		v.SetMapIndex(key, item)
	}
}

// flats keeps what flat found, since it is asked of the same few types on every reply.
var flats sync.Map

// flat tells that no value of a type holds a list or a map.
func flat(t reflect.Type) bool {
	if known, is := flats.Load(t); is {
		return known.(bool)
	}
	flats.Store(t, false) // of a type that holds itself
	found := looksFlat(t)
	flats.Store(t, found)
	return found
}

func looksFlat(t reflect.Type) bool {
	switch t.Kind() {
	case reflect.Pointer:
		return flat(t.Elem())
	case reflect.Struct:
		for i := range t.NumField() {
			if t.Field(i).IsExported() && !flat(t.Field(i).Type) {
				return false
			}
		}
		return true
	}
	return t.Kind() <= reflect.Complex128 || t.Kind() == reflect.String
}
