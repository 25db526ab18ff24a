package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"strings"
)

// source reads packages' comments and string constants, each package once.
type source struct{ packages map[string]*comments }

// comments holds what the source says: docs by "Type" or "Type.Field", the values of a string type's constants by "Type".
type comments struct {
	docs      map[string]string
	constants map[string][]string
}

func newSource() *source { return &source{map[string]*comments{}} }

// of reads the package of that import path.
func (s *source) of(path string) (*comments, error) {
	if known := s.packages[path]; known != nil {
		return known, nil
	}
	found := &comments{map[string]string{}, map[string][]string{}}
	s.packages[path] = found
	files, err := filepath.Glob(filepath.Join(strings.TrimPrefix(path, "lowspot/"), "*.go"))
	if err != nil {
		return nil, err
	}
	for _, name := range files {
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ParseComments|parser.SkipObjectResolution)
		if err != nil {
			return nil, err
		}
		for _, declaration := range file.Decls {
			if general, ok := declaration.(*ast.GenDecl); ok {
				found.read(general)
			}
		}
	}
	return found, nil
}

func (c *comments) read(declaration *ast.GenDecl) {
	for _, spec := range declaration.Specs {
		switch spec := spec.(type) {
		case *ast.TypeSpec:
			c.readType(spec, declaration)
		case *ast.ValueSpec:
			c.readConstant(spec)
		}
	}
}

func (c *comments) readType(spec *ast.TypeSpec, declaration *ast.GenDecl) {
	doc := spec.Doc
	if doc == nil {
		doc = declaration.Doc
	}
	c.docs[spec.Name.Name] = doc.Text()
	shape, ok := spec.Type.(*ast.StructType)
	if !ok {
		return
	}
	for _, f := range shape.Fields.List {
		for _, name := range f.Names {
			c.docs[spec.Name.Name+"."+name.Name] = f.Comment.Text()
		}
	}
}

// readConstant takes `Metric System = "metric"`.
func (c *comments) readConstant(spec *ast.ValueSpec) {
	typed, ok := spec.Type.(*ast.Ident)
	if !ok {
		return
	}
	for _, value := range spec.Values {
		if text, ok := value.(*ast.BasicLit); ok && text.Kind == token.STRING {
			c.constants[typed.Name] = append(c.constants[typed.Name], text.Value)
		}
	}
}
