# make run    builds the page and serves it at http://127.0.0.1:8080/ (PORT=... for another port)
# make test   checks everything: Go, the engine's storage in a real browser, types, style, the page in a real browser, its main path in three
# make test-engines   the main path in Chromium, Firefox and WebKitGTK (installs what is missing)
# make bench      measures what the tool promises, each figure beside its reference in one run (QUICK=1: only that it all runs)
# make pictures   takes the README's pictures of the real page afresh
# make looks      takes a picture of every page and state into tests/artefacts/looks, and accepts their shapes, with which the tests compare
# make lighthouse holds the built page against Lighthouse, whose packages are fetched for it alone
# make contract   writes the page's types afresh from the Go types
SHELL := /bin/bash
.SHELLFLAGS := -euo pipefail -c
.DEFAULT_GOAL := run

PORT ?= 8080
QUICK ?=
# Debian's own, for which Debian packs scipy.
PYTHON ?= /usr/bin/python3
ROOT_DO := $(if $(filter 0,$(shell id -u)),,sudo)
GO_BIN := $(shell go env GOPATH)/bin
CHROMIUM = $(shell command -v chromium || command -v chromium-browser || command -v google-chrome)
BROWSER_TEST := $(GO_BIN)/wasmbrowsertest
CONTRACT := site/src/engine/contract.ts

.PHONY: run build serve test test-go test-storage test-site test-browser test-engines engines contract bench pictures looks lighthouse chromium scipy clean

run: build serve

build: site/node_modules
	node site/build.mjs

serve:
	go run ./site/serve -dir site/dist -port $(PORT)

test: test-go test-site test-storage test-browser test-engines
	@echo "all kept"

test-go: site/node_modules
	unformatted=$$(gofmt -l engine rules wasm site/serve tests); test -z "$$unformatted" || { echo "not formatted: $$unformatted (gofmt -w)"; exit 1; }
	go vet ./...
	GOOS=js GOARCH=wasm go vet ./wasm/... ./tests/bench/...
	go test ./...

test-site: site/node_modules
	fresh=$$(mktemp); trap 'rm -f $$fresh' EXIT; go run ./wasm/contract > $$fresh; diff -u $(CONTRACT) $$fresh || { echo "$(CONTRACT) is not what the Go types say: make contract"; exit 1; }
	cd site && npx tsc -p . && npx tsc -p tsconfig.worker.json
	cd site && npx biome check --error-on-warnings .
	cd site && node --test src/

# The environment is emptied because the browser's test runner hands all of it to the program under test and there is little room for it.
test-storage: chromium $(BROWSER_TEST)
	env -i PATH="$(PATH)" HOME="$(HOME)" GOOS=js GOARCH=wasm go test -exec $(BROWSER_TEST) ./wasm/store

test-browser: build tests/node_modules chromium
	cd tests && CHROMIUM="$(CHROMIUM)" node --test --test-timeout=1200000 browser/ hostile/

# Firefox and WebKitGTK beside Chromium. WebKitGTK has no windowless mode, so it gets a screen that nobody sees.
test-engines: build tests/node_modules chromium engines
	cd tests && CHROMIUM="$(CHROMIUM)" xvfb-run -a node --experimental-websocket --test --test-timeout=600000 engines/

bench: build tests/node_modules chromium scipy
	cd tests && CHROMIUM="$(CHROMIUM)" PYTHON="$(PYTHON)" QUICK="$(QUICK)" node bench/bench.mjs

pictures: build tests/node_modules chromium
	cd tests && CHROMIUM="$(CHROMIUM)" node pictures.mjs

looks: build tests/node_modules chromium
	cd tests && CHROMIUM="$(CHROMIUM)" node looks.mjs && CHROMIUM="$(CHROMIUM)" RENEW=yes node --test --test-timeout=1200000 browser/looks.test.mjs

lighthouse: build tests/node_modules tests/lighthouse/node_modules chromium
	cd tests/lighthouse && CHROMIUM="$(CHROMIUM)" node run.mjs

contract:
	fresh=$$(mktemp); go run ./wasm/contract > $$fresh && mv $$fresh $(CONTRACT) && chmod 644 $(CONTRACT)

site/node_modules: site/package-lock.json
	cd site && npm ci --ignore-scripts --no-audit --no-fund
	touch site/node_modules

tests/node_modules: tests/package-lock.json
	cd tests && npm ci --ignore-scripts --no-audit --no-fund
	touch tests/node_modules

tests/lighthouse/node_modules: tests/lighthouse/package-lock.json
	cd tests/lighthouse && npm ci --ignore-scripts --no-audit --no-fund
	touch tests/lighthouse/node_modules

$(BROWSER_TEST):
	go install github.com/agnivade/wasmbrowsertest@v0.11.0

chromium:
	@command -v chromium chromium-browser google-chrome > /dev/null || { $(ROOT_DO) apt-get update -q && $(ROOT_DO) apt-get install -y -q --no-install-recommends chromium; }

engines:
	@command -v firefox-esr > /dev/null && command -v WebKitWebDriver > /dev/null && command -v xvfb-run > /dev/null || { $(ROOT_DO) apt-get update -q && $(ROOT_DO) apt-get install -y -q --no-install-recommends firefox-esr webkit2gtk-driver xvfb xauth; }

scipy:
	@$(PYTHON) -c "import scipy" 2> /dev/null || { $(ROOT_DO) apt-get update -q && $(ROOT_DO) apt-get install -y -q --no-install-recommends python3-scipy; }

clean:
	rm -rf site/dist tests/artefacts
