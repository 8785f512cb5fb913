# Finwright. `make` lists the targets.

SHELL := /bin/bash
.DEFAULT_GOAL := help

gofumpt     := mvdan.cc/gofumpt@v0.12.0
staticcheck := honnef.co/go/tools/cmd/staticcheck@v0.8.2
tools       := $(CURDIR)/site/.tools
packages    := site/node_modules/.package-lock.json
wasm        := GOOS=js GOARCH=wasm
programs    := ./wasm/first ./wasm/engine ./wasm/canvas
sources      = $(shell find core wasm site -name '*.go' -not -path '*/node_modules/*')
FUZZTIME    ?= 20s

# $(call need,command,what to install) ends with one line when a command is missing.
need = @command -v $(1) >/dev/null || { echo "$(1) is missing: install $(2)"; exit 1; }

.PHONY: help run test unit long browser fmt fmtcheck vet lint dist size bench fuzz golden shots chromium firefox poppler clean

help: ## list the targets
	@awk -F ':.*## ' '/^[a-z]+:.*## / {printf "make %-9s %s\n", $$1, $$2}' $(MAKEFILE_LIST)

run: dist ## build everything and serve it on localhost; prints the address
	@go run ./site/server

test: fmtcheck vet lint unit browser ## everything that must pass before a change lands

unit: $(packages) ## Go tests, no browser: what to run on save
	go test ./...

long: dist chromium ## every property, fuzz and fault test at full count, one table at the end
	@set -o pipefail; export FINWRIGHT_LONG=1; { \
		go test -v -p 1 -count=1 -timeout 0 ./core/... ./wasm/... ./site/links; \
		go test -tags browser -v -count=1 -timeout 0 -run 'TestDayOfFaults|TestLabelsKeepApartInTheBrowser' ./site/e2e; \
	} | go run ./core/proof/table

browser: dist chromium firefox poppler ## tests of the built page in headless Chromium, and the main job in Firefox
	go test -tags browser -count=1 -timeout 60m ./site/e2e

fmt: $(tools)/gofumpt ## format the Go sources
	$(tools)/gofumpt -w $(sources)

fmtcheck: $(tools)/gofumpt
	@found=$$($(tools)/gofumpt -l $(sources)); [ -z "$$found" ] || { echo "not formatted (make fmt):"; echo "$$found"; exit 1; }

vet:
	go vet -tags browser ./...
	$(wasm) go vet $(programs)

lint: $(tools)/staticcheck $(packages) ## staticcheck, native and WebAssembly, and the types of the scripts
	$(tools)/staticcheck -tags browser ./...
	$(wasm) $(tools)/staticcheck $(programs)
	cd site && node_modules/.bin/tsc && node_modules/.bin/tsc -p tsconfig.workers.json

dist: $(packages) ## build the static folder site/dist, ready for any host
	$(call need,go,Go 1.26 or newer)
	go run ./site/build

size: dist ## weigh the first load
	go run ./site/bench sizes

bench: dist chromium ## benchmarks: Go natively, then the page in Chromium
	go test -run '^$$' -bench . -benchmem ./core/... ./wasm/bridge ./wasm/plots
	go run ./site/bench

fuzz: ## run every fuzz test for FUZZTIME (20s)
	@set -e; for package in $$(go list ./core/... ./wasm/...); do \
		for name in $$(go test -list '^Fuzz' $$package | grep '^Fuzz' || true); do \
			go test -run '^$$' -fuzz "^$$name$$" -fuzztime $(FUZZTIME) $$package; \
		done; \
	done

golden: ## rewrite the golden files; look at the difference before you commit it
	go test -tags ungenerated -run TestAPI ./wasm/bridge -update
	go test $$(grep -rl 'flag.Bool("update"' --include='*_test.go' core wasm testdata | xargs -n1 dirname | sort -u | sed 's|^|./|') -update
	@$(MAKE) --no-print-directory fmt

shots: dist chromium ## take the screenshots again, README's among them
	go test -tags browser -count=1 -run Shot ./site/e2e
	cp site/shots/desk.png site/shot.png

clean: ## remove what was built and installed here
	rm -rf site/dist site/shots site/node_modules site/.tools

$(packages): site/package.json site/package-lock.json
	$(call need,npm,Node.js 20 or newer with npm)
	cd site && npm ci --ignore-scripts --loglevel=error
	@touch $@

$(tools)/gofumpt $(tools)/staticcheck: Makefile
	$(call need,go,Go 1.26 or newer)
	GOBIN=$(tools) go install $($(notdir $@))

chromium:
	@command -v chromium chromium-browser google-chrome >/dev/null && exit 0; \
	if [ "$$(id -u)" = 0 ] && command -v apt-get >/dev/null; \
	then apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -qqy chromium; \
	else echo "Chromium is missing: install your system's package chromium"; exit 1; fi

poppler:
	@command -v pdftotext >/dev/null && exit 0; \
	if [ "$$(id -u)" = 0 ] && command -v apt-get >/dev/null; \
	then apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -qqy poppler-utils; \
	else echo "pdftotext is missing: install your system's package poppler-utils"; exit 1; fi

firefox:
	@command -v firefox-esr firefox >/dev/null && exit 0; \
	if [ "$$(id -u)" = 0 ] && command -v apt-get >/dev/null; \
	then apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -qqy firefox-esr; \
	else echo "Firefox is missing: install your system's package firefox or firefox-esr"; exit 1; fi
