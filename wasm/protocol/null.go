package protocol

import "reflect"

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
	if flat(v.Type().Elem().Kind()) {
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
	if flat(v.Type().Elem().Kind()) {
		return
	}
	for _, key := range v.MapKeys() {
		item := reflect.New(v.Type().Elem()).Elem()
		item.Set(v.MapIndex(key))
		fill(item)
		v.SetMapIndex(key, item)
	}
}

// flat tells that values of a kind hold no list.
func flat(k reflect.Kind) bool { return k <= reflect.Complex128 || k == reflect.String }
