package main

import (
	"fmt"
	"reflect"
	"strings"
)

// types are the named Go types that the messages use, in the order in which they are met.
type types struct {
	source *source
	order  []reflect.Type
	names  map[reflect.Type]string
}

// collect finds every named type under t.
func (ts *types) collect(t reflect.Type) {
	if ts.names == nil {
		ts.names = map[reflect.Type]string{}
	}
	if named(t) {
		if _, met := ts.names[t]; met {
			return
		}
		ts.names[t] = t.Name()
		ts.order = append(ts.order, t)
	}
	switch t.Kind() {
	case reflect.Pointer, reflect.Slice, reflect.Array, reflect.Map:
		ts.collect(t.Elem())
	case reflect.Struct:
		for _, f := range fields(t) {
			ts.collect(f.typ)
		}
	}
}

// nameThem tells types of one name and several packages apart: the engine's keeps the name, the others get their package's before it.
func (ts *types) nameThem() {
	count := map[string]int{}
	for _, t := range ts.order {
		count[t.Name()]++
	}
	for _, t := range ts.order {
		if pack := t.PkgPath()[strings.LastIndex(t.PkgPath(), "/")+1:]; count[t.Name()] > 1 && pack != "engine" {
			ts.names[t] = strings.ToUpper(pack[:1]) + pack[1:] + t.Name()
		}
	}
}

func named(t reflect.Type) bool { return t.Name() != "" && t.PkgPath() != "" }

// text is a use of a type in TypeScript.
func (ts *types) text(t reflect.Type) string {
	if name, ok := ts.names[t]; ok {
		return name
	}
	return ts.shape(t)
}

// shape is what a type is made of.
func (ts *types) shape(t reflect.Type) string {
	switch t.Kind() {
	case reflect.Bool:
		return "boolean"
	case reflect.String:
		return "string"
	case reflect.Pointer:
		return ts.text(t.Elem()) + " | null"
	case reflect.Slice, reflect.Array:
		return listOf(ts.text(present(t.Elem())))
	case reflect.Map:
		return "Record<string, " + ts.text(t.Elem()) + ">"
	case reflect.Interface:
		return "unknown"
	}
	return "number"
}

// present is what a pointer points to: a reply's body and a list's items are never nil.
func present(t reflect.Type) reflect.Type {
	if t.Kind() == reflect.Pointer {
		return t.Elem()
	}
	return t
}

func listOf(item string) string {
	if strings.Contains(item, " ") && !strings.HasSuffix(item, ">") {
		return "(" + item + ")[]"
	}
	return item + "[]"
}

// declare writes one named type.
func (ts *types) declare(t reflect.Type) (string, error) {
	comments, err := ts.source.of(t.PkgPath())
	if err != nil {
		return "", err
	}
	text := comment(comments.docs[t.Name()], "")
	switch {
	case t.Kind() == reflect.Struct:
		return text + ts.declareStruct(t, comments), nil
	case t.Kind() == reflect.String && len(comments.constants[t.Name()]) > 0:
		return text + "export type " + ts.names[t] + " = " + strings.Join(comments.constants[t.Name()], " | ") + ";\n", nil
	}
	return text + "export type " + ts.names[t] + " = " + ts.shape(t) + ";\n", nil
}

func (ts *types) declareStruct(t reflect.Type, comments *comments) string {
	all := fields(t)
	if len(all) == 0 {
		return "export type " + ts.names[t] + " = Record<string, never>;\n"
	}
	var b strings.Builder
	fmt.Fprintf(&b, "export interface %s {\n", ts.names[t])
	for _, f := range all {
		optional, typed := "", ts.text(f.typ)
		if f.optional {
			optional, typed = "?", strings.TrimSuffix(typed, " | null")
		}
		b.WriteString(comment(comments.docs[f.owner.Name()+"."+f.goName], "\t"))
		fmt.Fprintf(&b, "\t%s%s: %s;\n", f.name, optional, typed)
	}
	return b.String() + "}\n"
}

func comment(text, indent string) string {
	if text == "" {
		return ""
	}
	return indent + "/** " + strings.ReplaceAll(strings.TrimSpace(text), "\n", "\n"+indent+" * ") + " */\n"
}

// field is a struct's field as encoding/json writes it.
type field struct {
	name, goName string
	owner        reflect.Type
	typ          reflect.Type
	optional     bool
}

func fields(t reflect.Type) []field {
	var all []field
	for i := range t.NumField() {
		f := t.Field(i)
		tag, rest, _ := strings.Cut(f.Tag.Get("json"), ",")
		switch {
		case f.Anonymous && tag == "":
			all = append(all, fields(f.Type)...)
		case !f.IsExported() || tag == "-":
		default:
			if tag == "" {
				tag = f.Name
			}
			all = append(all, field{tag, f.Name, t, f.Type, strings.Contains(rest, "omitempty")})
		}
	}
	return all
}
