// Imports and requires each module named on the command line: both must give the same things, and some.
import assert from "node:assert/strict";
import { createRequire } from "node:module";

const require = createRequire(import.meta.url);

for (const name of process.argv.slice(2)) {
  const imported = await import(name);
  const required = require(name);
  assert.ok(Object.keys(imported).length > 0, `${name} exports nothing`);
  for (const key of Object.keys(imported)) {
    assert.equal(required[key], imported[key], `${key} of ${name} is another one when required`);
  }
}
