// Follows facts chosen at random to their sources, as whoever reads a profile would. Prints the choice if it fails.
import assert from "node:assert/strict";
import { randomInt } from "node:crypto";
import { allRecords, bibtex, citationsOf, sources } from "vivary/evidence";
import { factAt, resolve, traitPaths } from "vivary/species";

const facts = allRecords.flatMap((record) => {
  const profile = resolve(record);
  return traitPaths.flatMap((path) => {
    const fact = factAt(profile, path);
    return fact ? [{ record, path, fact }] : [];
  });
});

for (let left = 300; left > 0; left -= 1) {
  const { record, path, fact } = facts[randomInt(facts.length)];
  const where = `${record.id} ${path}`;
  assert.ok(fact.said.length > 0, `${where}: nobody said it`);
  const cited = citationsOf(record, path);
  for (const by of fact.said) {
    if (by === "common-practice" || by === "curator") continue;
    const rows = cited.filter((citation) => citation.by === by);
    assert.ok(rows.length > 0, `${where}: ${by} has no citation`);
    for (const { used, cite, source, at, memory, observed } of rows) {
      assert.ok(used, `${where}: ${by} is said not to be used`);
      assert.ok(at ?? memory ?? observed, `${where}: ${by} names no place`);
      assert.ok(source.title, `${where}: ${by} has no reference`);
      assert.equal(source, sources[cite]);
      assert.match(bibtex([cite]), new RegExp(`^@\\w+\\{${cite},\n`), `${where}: ${cite}`);
    }
  }
}
