module lowspot

go 1.26.8

require github.com/stretchr/testify v1.12.1

require (
	github.com/arran4/golang-ical v0.3.4 // indirect
	github.com/expr-lang/expr v1.17.8
	github.com/hack-pad/go-indexeddb v0.3.2
	github.com/hack-pad/safejs v0.1.0 // indirect
	go.yaml.in/yaml/v3 v3.0.5 // indirect
	gonum.org/v1/gonum v0.17.0 // indirect
)

ignore (
	./site/dist
	./site/node_modules
	./tests/node_modules
)
