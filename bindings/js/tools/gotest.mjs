// Runs a Go test that was built for wasm, so that the arithmetic is tested as
// browsers compute it:
//
//   GOOS=wasip1 GOARCH=wasm go test -exec "node --no-warnings --liftoff-only $PWD/bindings/js/tools/gotest.mjs" ./units ./herd ./forage ./rainfall
//
// --liftoff-only: Node 20 fell over one run in four of TestStepsHold, on Linux, while it
// compiled hot functions a second time. The module that users load is tested without it.
import { readFileSync } from "node:fs";
import { dirname, relative } from "node:path";
import { cwd, env, argv } from "node:process";
import { fileURLToPath } from "node:url";
import { WASI } from "node:wasi";

// A test reads printed tables beside it, and some look for the module's root.
const root = dirname(dirname(dirname(dirname(fileURLToPath(import.meta.url)))));
const here = `/module/${relative(root, cwd())}`;
const [, , file, ...rest] = argv;
const wasi = new WASI({
  version: "preview1",
  args: [file, ...rest],
  env: { ...env, PWD: here },
  preopens: { "/module": root, "/tmp": "/tmp" },
  returnOnExit: false, // Node 20 can fall over the exception by which a program would return
});
const { instance } = await WebAssembly.instantiate(readFileSync(file), wasi.getImportObject());
wasi.start(instance);
