# What this folder can do. `make` alone lists it.

# One compiler and one instruction set everywhere, so that the same readings give the same bits.
export GOTOOLCHAIN := local
export GOAMD64 := v1

BUILD := build
DEMO ?= testdata/builds/demo.json
PURE := yokebook/measure/... yokebook/checks/... yokebook/sync/...
SHARED := yokebook/measure/store/... yokebook/sync/... yokebook/app/logbook/... yokebook/app/places/...

GOLDENS := findings texts drawings sheet pages parts

.DEFAULT_GOAL := help
.PHONY: help run ready test build headless lint vet race test-servers test-android apk aab icon same-bits golden $(addprefix golden-,$(GOLDENS)) bench soak pictures picture clean

help: ## list what can be made
	@awk -F ':.*## ' '/^[a-z-]+:.*## /{printf "  make %-10s %s\n", $$1, $$2}' $(MAKEFILE_LIST)

run: ## open the window; without a display, check the demo build on the terminal
	@.ci/start $(DEMO)

ready: ## install what build and tests need and is missing, and nothing else
	@.ci/need window test

test: ## everything that must hold, set-up included
	@.ci/need window test
	$(MAKE) --no-print-directory vet
	$(MAKE) --no-print-directory same-bits
	go test $$(go list ./... | grep -v '/app/screen$$')
	go test -timeout 20m ./app/screen # alone: it presses keys of real windows, which wants a machine that keeps up

build: ## build/yokebook, window and command line in one
	@.ci/need window
	go build -o $(BUILD)/yokebook ./app

headless: ## build/yokebook-headless, the command line alone: no C compiler, no display
	CGO_ENABLED=0 go build -tags headless -o $(BUILD)/yokebook-headless ./app

lint: ## go vet and staticcheck, at the version that go.mod pins
	@.ci/need window
	go vet ./...
	go tool staticcheck ./...

vet: headless ## go vet for this machine, for the command line alone and for Android
	go vet ./...
	CGO_ENABLED=0 go vet -tags headless ./app
	GOOS=android GOARCH=arm64 CGO_ENABLED=0 go vet $(PURE)

race: ## the packages in which goroutines meet, under the race detector
	@.ci/need window
	go test -race $(SHARED)
	go test -race ./checks -run Workers

test-servers: ## sync against real WebDAV servers, started on loopback; one that is missing is installed
	@.ci/servers

test-android: ## gloves on the phone's driver; compile and vet for Android, rehearse the package, compare what it asks for
	@.ci/need window android
	go test -tags mobile,migrated_fynedo ./app/screen -run 'EveryKeyOfEveryPage|RestingFinger|GlovesType'
	@.ci/android/check
	@.ci/android/rehearse

apk: ## build/yokebook.apk, to be tried on a phone; ANDROID_NDK_HOME and ANDROID_HOME say where NDK and SDK are
	@.ci/android/package apk

aab: ## build/yokebook.aab, signed for a store; needs ANDROID_KEYSTORE and bundletool besides
	@.ci/android/package aab

icon: ## redraw the icon in app/icon
	go run ./app/icon app/icon

same-bits: headless ## the findings of testdata/builds on amd64 and arm64 against testdata/golden
	@.ci/need test
	@.ci/same-bits

golden: $(addprefix golden-,$(or $(WHAT),$(GOLDENS))) ## rewrite the goldens, the diff is what to review; WHAT picks from findings texts drawings sheet pages parts

golden-findings: headless
	@.ci/same-bits --write

golden-texts:
	go test -count=1 -run AsReviewed ./app/cli -args -rewrite

golden-drawings:
	go test -count=1 -run AsTheyWere ./app/draw -args -rewrite

golden-sheet:
	go test -count=1 -run AsReviewed ./app/sheet -args -rewrite

golden-pages:
	go test -count=1 -run PagesAre ./app/screen -args -rewrite

golden-parts:
	go test -count=1 -run Drawn ./app/screen/part -args -rewrite

bench: ## one table: every figure beside what it is held against, its budget, and build/growth.svg; WHAT picks
	@.ci/need window test
	@cd app/bench && YOKEBOOK_BENCH="$(or $(WHAT),all)" go test -count=1 -timeout 60m -run Table
	go test -run '^$$' -bench . -benchtime 5x ./checks/remedy

soak: ## the long form of what must be survived: kills, damage, lost power, 10,000 schedules, each fuzz target FUZZTIME
	@.ci/need test
	@.ci/soak

pictures: ## every page at every size, light and dark, as pictures in build/pictures
	@.ci/need window test
	rm -rf $(BUILD)/pictures
	go test -count=1 -timeout 30m ./app/screen -run Pictures -pictures $(CURDIR)/$(BUILD)/pictures

PAGES := keypad-typed result-ride findings
picture: ## redraw the picture of README.md from the screens as they are
	@.ci/need window test
	rm -rf $(BUILD)/pictures
	go test -count=1 ./app/screen -run Pictures -pictures $(CURDIR)/$(BUILD)/pictures
	@mkdir -p testdata/pictures
	cd $(BUILD)/pictures/411x914-light && convert $(PAGES:%=*-%.png) +append -strip +dither -colors 128 $(CURDIR)/testdata/pictures/take.png

clean: ## remove what was built here; the caches of Go stay
	rm -rf $(BUILD)
