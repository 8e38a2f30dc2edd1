// Lists the gaps whose closing would settle most verdicts on pairs: npm run species wanted
import { readCollection } from "../collection.mjs";
import { commonName } from "../judge.mjs";
import { importSource } from "../source.mjs";

const { assessPair } = await importSource("compatibility/assess-pair.ts");
const { traitTable } = await importSource("species/index.ts");

const listed = 25;

export default async function wanted() {
  const { records } = await readCollection();
  const profiles = records.map(({ profile }) => profile);
  const gaps = new Map();
  for (const [index, a] of profiles.entries()) {
    for (const b of profiles.slice(index)) count(gaps, [a, b], assessPair({ species: a }, { species: b }));
  }
  const ranked = [...gaps.values()].sort((x, y) => y.undetermined - x.undetermined || y.open - x.open);
  if (ranked.length === 0) console.log("No verdict on a pair waits for a trait.");
  for (const { profile, trait, undetermined, open } of ranked.slice(0, listed)) {
    console.log(
      `${profile.id} (${commonName(profile)}): ${traitTable[trait].label} (${trait}) leaves ${open} pairs open, ${undetermined} of them undetermined`,
    );
  }
  if (ranked.length > listed) console.log(`… and ${ranked.length - listed} gaps more.`);
  return 0;
}

/** Counts each gap of a verdict once. */
function count(gaps, pair, { outcome, open }) {
  const missing = open.filter(({ reason, trait }) => reason === "missing" && trait);
  const once = new Map(
    missing.map(({ of, trait }) => [`${pair[of].id} ${trait}`, { profile: pair[of], trait }]),
  );
  for (const [key, gap] of once) {
    const known = gaps.get(key) ?? { ...gap, undetermined: 0, open: 0 };
    known.open += 1;
    if (outcome === "undetermined") known.undetermined += 1;
    gaps.set(key, known);
  }
}
