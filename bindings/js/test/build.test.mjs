// A library of another build is refused, and what the package weighs and takes
// to start is told.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { brotliCompressSync, gzipSync } from "node:zlib";

const home = dirname(fileURLToPath(import.meta.resolve("soum")));

test("a library of another build is refused", () => {
  const other = mkdtempSync(join(tmpdir(), "soum-"));
  try {
    cpSync(home, other, { recursive: true });
    const facts = join(other, "manifest.js");
    writeFileSync(facts, readFileSync(facts, "utf8").replace(/manifest = \d+/, "manifest = 7"));
    const script = `import(${JSON.stringify(join(other, "node.js"))}).then(() => console.log("taken"), (wrong) => console.log(wrong.message))`;
    assert.match(execFileSync(process.execPath, ["-e", script], { encoding: "utf8" }), /another build/);
  } finally {
    rmSync(other, { recursive: true });
  }
});

test("size and start", (t) => {
  const wasm = readFileSync(join(home, "soum.wasm"));
  t.diagnostic(`soum.wasm: ${wasm.length} bytes, gzip ${gzipSync(wasm).length}, brotli ${process.env.SOUM_LONG ? brotliCompressSync(wasm).length : "in the long form"}`);
  const script = `const from = performance.now(); await import("soum"); console.log(performance.now() - from)`;
  const times = [1, 2, 3, 4, 5].map(() => Number(execFileSync(process.execPath, ["--input-type=module", "-e", script], { encoding: "utf8" }))).sort((a, b) => a - b);
  t.diagnostic(`start in Node: ${times[2].toFixed(0)} ms, the median of five`);
  assert.ok(times[2] < 5000);
});
