// Prints a profile and the verdicts on it that differ from those held in tests/judgements: npm run species show <id>
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { readCollection } from "../collection.mjs";
import { lineOf, pairName } from "../judge.mjs";
import { importSource, root } from "../source.mjs";

const { assessPair } = await importSource("compatibility/assess-pair.ts");
const { profileMarkdown } = await importSource("report/profile-markdown.ts");

export default async function show([id]) {
  const { records } = await readCollection();
  const profiles = records.map(({ profile }) => profile).sort((a, b) => (a.id < b.id ? -1 : 1));
  const shown = profiles.find((profile) => profile.id === id);
  if (!shown) {
    console.error(`No well-formed record has the id ${id}: npm run species check ${id ?? ""}`);
    return 1;
  }
  console.log(profileMarkdown(shown));
  const held = new Set((await readFile(join(root, "tests/judgements/pairs.txt"), "utf8")).split("\n"));
  const verdicts = profiles.map((other) => {
    const [a, b] = other.id < id ? [other, shown] : [shown, other];
    return lineOf(pairName(a, b), assessPair({ species: a }, { species: b }));
  });
  const changed = verdicts.filter((line) => !held.has(line));
  console.log(`${changed.length} of ${verdicts.length} verdicts differ from tests/judgements/pairs.txt.`);
  for (const line of changed) console.log(line);
  return 0;
}
