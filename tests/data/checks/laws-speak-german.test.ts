import { expect, test } from "vitest";
import { lawsSpeakGerman } from "../../../data/checks/laws-speak-german";
import { readCollection } from "../../../data/reading/collection";
import type { Listings } from "../../../src/schema";
import { project } from "../project";

const law = "data/legal/germany.json";

type Instrument = { readonly requirements: readonly object[] };

/** What the check finds where files are as well, or instead, what `change` makes of those that are there. */
async function slipsWhere(change: (json: (path: string) => object) => Readonly<Record<string, object>>) {
  const { root, read, write } = project();
  const files = change((path) => JSON.parse(read(path)));
  for (const [path, json] of Object.entries(files)) write(path, JSON.stringify(json));
  return (await lawsSpeakGerman.find(await readCollection(root))).map(
    ({ file, at, found }) => `${file} ${Array.isArray(at) ? at.join(".") : ""}: ${found}`,
  );
}

test("all laws and standards have their German", async () => {
  expect(await slipsWhere(() => ({}))).toStrictEqual([]);
});

test("a new lawgiver needs its name in both languages, its place and what it does in German", async () => {
  const slips = await slipsWhere((json) => {
    const { listings } = json(law) as Listings;
    const there = { ...listings[0], jurisdiction: "Atlantis", effect: "Dragons may not be kept." };
    return { "data/legal/atlantis.json": { ...json(law), jurisdiction: "Atlantis", listings: [there] } };
  });
  expect(slips).toStrictEqual([
    "data/legal/atlantis.json : the lawgiver atlantis, of which English has no name",
    "data/legal/atlantis.json : the lawgiver atlantis, of which German has no name",
    "data/legal/atlantis.json jurisdiction: the place Atlantis in English alone",
    "data/legal/atlantis.json listings.0.effect: what a law does in English alone",
  ]);
});

test("what a standard asks, its notes and its caution need theirs", async () => {
  const path = "data/standards/switzerland.json";
  const slips = await slipsWhere((json) => {
    const { instruments } = json(path) as { readonly instruments: readonly Instrument[] };
    const [instrument, ...others] = instruments;
    const [requirement, ...rest] = instrument?.requirements ?? [];
    const asked = { ...requirement, asks: "Whales are not kept.", note: "Nor are dragons." };
    const changed = { ...instrument, caution: "Ask a whale.", requirements: [asked, ...rest] };
    return { [path]: { ...json(path), instruments: [changed, ...others] } };
  });
  expect(slips).toStrictEqual([
    `${path} instruments.0.caution: what a standard says in English alone`,
    `${path} instruments.0.requirements.0.asks: what a standard says in English alone`,
    `${path} instruments.0.requirements.0.note: what a standard says in English alone`,
  ]);
});
