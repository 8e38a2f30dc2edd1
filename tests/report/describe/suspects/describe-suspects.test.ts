import { describe, expect, test } from "vitest";
import hoplisomaPanda from "vivary/catalog/hoplisoma-panda";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import pethiaConchonius from "vivary/catalog/pethia-conchonius";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import symphysodonAequifasciatus from "vivary/catalog/symphysodon-aequifasciatus";
import trichopodusLeerii from "vivary/catalog/trichopodus-leerii";
import { type SeenSign, type Suspect, suspects } from "../../../../src/advice";
import type { Plan } from "../../../../src/plan";
import { describeSuspects, describeSuspectsIn } from "../../../../src/report";
import { germanAdvice } from "../../../../src/report/de";
import { englishAdvice } from "../../../../src/report/messages/english-advice";

const plan: Plan = {
  tank: {
    base: { shape: "rectangle", length: 100, width: 40 },
    height: 40,
    cover: 0.3,
    substrate: "coarse-gravel",
  },
  water: { temperature: 25 },
  groups: [
    { species: puntigrusTetrazona, unsexed: 8 },
    { species: trichopodusLeerii, males: 1, females: 2 },
    { species: hoplisomaPanda, unsexed: 6 },
  ],
};
const flat = (text: string) => text.replaceAll(/\s+/g, " ");
const told = (...signs: readonly SeenSign[]) => flat(describeSuspects(suspects(plan, signs), plan));

describe("what may be behind torn fins, in words", () => {
  const text = told("torn-fins");

  test("begins with who bites whom, and says to part them", () => {
    expect(text).toMatch(/^What may be behind torn fins, by what to look at; the likeliest comes first\. /);
    expect(text).toContain(
      "who bites whom? - Tiger barbs bite pieces out of the fins of pearl gouramis: choose company that does not nip. Part them for good, at once.",
    );
    expect(text.indexOf("who bites whom?")).toBeLessThan(text.indexOf("who chases whom?"));
  });

  test("says of what the plan sees to that the tank may not", () => {
    expect(text).toContain(
      "Tiger barbs chase their own kind. The plan sees to it; make sure that the tank does: keep at least 8 tiger barbs.",
    );
  });

  test("says what individuals would have to be like", () => {
    expect(text).toContain("If pearl gouramis are bullies: pearl gouramis chase tiger barbs.");
  });

  test("ends with illness, of which no rule knows", () => {
    expect(text).toContain("It may be illness all the same, of which no rule knows: ask a vet");
  });
});

test("of two groups of a species each is named once", () => {
  const [one, other] = [
    { males: 2, females: 1 },
    { males: 1, females: 2 },
  ];
  const discus = { species: symphysodonAequifasciatus };
  const both: Plan = {
    ...plan,
    groups: [
      { ...discus, ...one, form: "yellow" },
      { ...discus, ...other },
    ],
  };
  const text = flat(describeSuspects(suspects(both, ["chasing"]), both));
  expect(text).toContain("keep at least 5 yellow discus and discus.");
});

test("what a sentence asks for by itself is not asked for twice", () => {
  expect(told("damaged-skin")).toMatch(/- Panda corydoras need [^.]*sand[^.]*\. See to that\./);
});

test("of several signs each suspect names those that it explains, if not all", () => {
  const text = told("hiding", "thin");
  expect(text).toContain("What may be behind hiding all day and thin animals,");
  expect(text).toContain("Tiger barbs have eaten before pearl gouramis get to the food (thin animals).");
  expect(text).toContain("choose company that does not nip (hiding all day). Part them");
  expect(text).not.toContain("(hiding all day; thin animals)");
});

test("where a group lacks room, that a lesser need is met is left out", () => {
  const text = told("hiding");
  expect(text).toContain("Have a floor of at least");
  expect(text).not.toMatch(/floor[^.]*\. The plan sees to it/);
});

describe("what is to be done about what is worth knowing", () => {
  const gasping: Plan = {
    tank: {
      base: { shape: "rectangle", length: 100, width: 40 },
      lid: true,
      filter: { mediaArea: 3, age: 5 },
    },
    water: { temperature: 25 },
    groups: [{ species: pethiaConchonius, unsexed: 8 }],
  };
  const neons = { ...gasping, groups: [{ species: paracheirodonInnesi, unsexed: 10 }] };
  const of = (one: Plan, sign: SeenSign) => flat(describeSuspects(suspects(one, [sign]), one));
  const inGerman = (one: Plan, sign: SeenSign) =>
    flat(describeSuspectsIn(germanAdvice, suspects(one, [sign]), one));

  test("is the water to aim at, and not to bear with it", () => {
    expect(of(gasping, "gasping")).toContain(
      "Rosy barbs do best at 18 to 22 °C; yours is 25 °C. Keep the water at 18 to 22 °C.",
    );
    expect(inGerman(gasping, "gasping")).toContain("Das Wasser bei 18 bis 22 °C halten.");
  });

  test("is never that the plan sees to it, whether the others can be given such water or not", () => {
    expect(of(gasping, "gasping")).not.toMatch(/Rosy barbs[^.]*25 °C\. The plan sees to it/);
    const warm = {
      ...gasping,
      groups: [...gasping.groups, { species: symphysodonAequifasciatus, unsexed: 6 }],
    };
    expect(of(warm, "gasping")).toContain(
      "Rosy barbs do best at 18 to 22 °C; yours is 25 °C. It takes a tank or water that suits.",
    );
    expect(of(warm, "gasping")).not.toMatch(/Rosy barbs[^.]*25 °C\. The plan sees to it/);
  });

  test("is a change of water for those that are in already, not to add them later", () => {
    const text = of(neons, "listless");
    expect(text).toContain(
      "Neon tetras suffer from ammonia and nitrite sooner than others. Change part of the",
    );
    expect(text).not.toContain("o not add");
    expect(inGerman(neons, "listless")).toContain("Täglich einen Teil des Wassers wechseln");
  });

  test("begins with a change of water where a young filter may be behind it, of any animals", () => {
    expect(of(gasping, "gasping")).toMatch(
      /where you find any, change part of the water at once - The filter/,
    );
    expect(inGerman(gasping, "gasping")).toContain("sofort einen Teil des Wassers wechseln - Der Filter");
  });

  test("keeps what others need in sight, which meeting it could take from them", () => {
    const cool = { ...neons, water: { temperature: 22 } };
    const both = { ...cool, groups: [...cool.groups, { species: symphysodonAequifasciatus, unsexed: 6 }] };
    expect(of(both, "gasping")).toMatch(/Discus need [^.]*yours is 22 °C\. See to that\./);
    expect(of(both, "gasping")).toMatch(/Neon tetras need [^.]*yours is 22 °C\. The plan sees to it/);
  });
});

test("where no rule explains it, it sends to a vet, and does not say that all is well", () => {
  expect(told()).toBe(
    "No rule explains it by this plan. Ask a vet: it may be illness, of which no rule knows.",
  );
});

test("the same in German", () => {
  const german = describeSuspectsIn(germanAdvice, suspects(plan, ["torn-fins"]), plan);
  expect(german).toBe(describeSuspects(suspects(plan, ["torn-fins"]), plan, { messages: germanAdvice }));
  expect(flat(german)).toContain("wer beißt wen? - Sumatrabarben verletzen Mosaikfadenfische an den Flossen");
  expect(flat(german)).toContain("Sofort und auf Dauer trennen.");
});

test("a water's figure is in the reader's units", () => {
  const gasping = suspects(plan, ["gasping"]);
  expect(describeSuspects(gasping, plan, { units: "us" })).toContain("°F");
});

describe("what cannot be told is refused, with its place", () => {
  const [one] = suspects(plan, ["torn-fins"]);
  const changed = (change: object) => () => describeSuspects([{ ...one, ...change } as Suspect], plan);

  test.each([
    ["a look that is none", { look: "tea-leaves" }, "suspected[0].look"],
    ["a sign that is none", { explains: ["sneezing"] }, "suspected[0].explains[0]"],
    ["a state that is none", { state: "proven" }, "suspected[0].state"],
    ["an act that is none", { act: { do: "pray" } }, "suspected[0].act.do"],
    [
      "a group of another plan",
      { individual: { group: 3, temper: "bully" } },
      "suspected[0].individual.group",
    ],
    [
      "a temper that is none",
      { individual: { group: 0, temper: "typical" } },
      "suspected[0].individual.temper",
    ],
    [
      "a finding on a group of another plan",
      { finding: { ...one?.finding, from: 7 } },
      "suspected[0].finding.from",
    ],
    ["no list", {}, "suspected"],
  ])("%s", (what, change, at) => {
    const call = what === "no list" ? () => describeSuspects(one as never, plan) : changed(change);
    expect(call).toThrow(at);
  });
});

describe("what a sentence says by itself is not asked for again", () => {
  const unsexed: Plan = {
    tank: { base: { shape: "rectangle", length: 100, width: 40 } },
    groups: [{ species: poeciliaReticulata, unsexed: 6 }],
  };
  const found = suspects(unsexed, ["chasing"]).filter(({ finding }) => finding.rule === "sex-ratio");
  const inWords = (sayWhatToDo: typeof englishAdvice.sayWhatToDo) =>
    flat(describeSuspectsIn({ ...englishAdvice, sayWhatToDo }, found, unsexed));

  test("also where it is only worth knowing, as the words have it", () => {
    expect(found.map(({ finding }) => finding.weight)).toEqual(["advisory"]);
    expect(inWords(englishAdvice.sayWhatToDo).match(/to each male/g)).toHaveLength(1);
    expect(inWords({ "sex-ratio": true }).match(/to each male/g)).toHaveLength(2);
    expect(inWords({}).match(/to each male/g)).toHaveLength(2);
  });
});
