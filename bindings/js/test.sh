#!/bin/sh
# Tests the JavaScript package as it is installed: Node, types, a bundle and a
# plain page in a headless browser. Needs Go, Node 20, npm and Chromium; 77 says
# that one is missing.
set -eu

cd "$(dirname "$0")"
here=$PWD
for tool in go node npm chromium; do
	command -v "$tool" >/dev/null 2>&1 || { echo "skipped: $tool is not installed"; exit 77; }
done

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
trap 'exit 130' INT TERM

echo "js: soum.wasm"
./build
echo "js: the package, packed and installed into a fresh project"
npm pack --silent --pack-destination "$work" --ignore-scripts >/dev/null
mkdir "$work/project" "$work/data"
cp ../api.json ../calls.json "$work/data/"
(cd ../.. && go run ./bindings/internal/bindgen/checks -lines "$work/data/checks.jsonl")
cp ../../examples/season/data/farm.json "$work/data/"
cd "$work/project"
echo '{"type": "module", "private": true}' >package.json
npm install --silent --no-audit --no-fund --no-package-lock --offline "$work"/soum-*.tgz
cp "$here"/test/*.test.mjs "$here"/examples/*.mjs .

echo "js: Node"
SOUM_DATA=$work/data node --test --test-reporter=spec ./*.test.mjs

echo "js: the worked question"
node strip.mjs | tee answer.txt
printf '%s\n' "They want 67.5 lb/day; 1,000 lb/ac stand above what is left, of which 80 % are eaten in a day." \
	"That is 0.0844 ac: a strip of 36.8 ft." | cmp - answer.txt

# What every formula gives in wasm stands in the check lines above; the Go tests, whose
# compiling takes longer than all else here, are of the long form.
gotest() {
	(cd "$here/../.." && SOUM_LONG='' CGO_ENABLED=0 GOOS=wasip1 GOARCH=wasm go test -exec "node --no-warnings --liftoff-only '$here/tools/gotest.mjs'" "$@")
}
if [ -n "${SOUM_LONG:-}" ]; then
	echo "js: the Go tests, built for wasm"
	# A compiler cannot be started from wasm, the walk over bad arguments says the same of
	# any machine, and Node 20 dies of a signal in TestStepsHold, whose steps the tests of
	# the package above show through soum.wasm.
	gotest -skip TestTheCompiler ./units ./herd ./forage ./rainfall
	gotest -skip 'TestStepsHold|TestOneGrammarOfErrors|TestGrammarIsHeld' ./bindings/internal/door
fi

echo "js: tools for types, a bundle and a browser"
npm install --silent --no-audit --no-fund --no-package-lock --no-save typescript@5.9.3 vite@8.3.8 playwright-core@1.64.1 || {
	echo "skipped: npm could not install typescript, vite and playwright-core"
	exit 77
}

echo "js: types"
cp "$here/test/types.ts" .
npx tsc --noEmit --strict --module nodenext --target es2022 --lib es2022,dom types.ts

echo "js: a bundle in the browser"
mkdir bundle
cp "$here"/test/page/* bundle/
(cd bundle && npx vite build --logLevel warn --target esnext)
node "$here/test/browser.mjs" "$work/project/bundle/dist" "$(command -v chromium)" "$work/project/node_modules/playwright-core"

echo "js: a plain page in the browser"
mkdir plain
cp "$here"/test/page/* plain/
cp -r node_modules/soum plain/soum
sed -i 's|<script type="module"|<script type="importmap">{"imports": {"soum": "./soum/index.js"}}</script>\n    &|' plain/index.html
node "$here/test/browser.mjs" "$work/project/plain" "$(command -v chromium)" "$work/project/node_modules/playwright-core" untyped
echo "js: good"
