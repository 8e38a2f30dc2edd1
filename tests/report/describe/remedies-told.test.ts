import { describe, expect, test } from "vitest";
import { speciesById } from "vivary/catalog";
import { remedies } from "../../../src/advice";
import { assessPlan } from "../../../src/compatibility";
import type { Group, Plan } from "../../../src/plan";
import { english, describe as inWords, reportParts } from "../../../src/report";
import { german } from "../../../src/report/de";
import { someSpecies } from "../../drawn";
import { samplePlans } from "../../plan/arbitrary";
import { expectRefused } from "../../refused";
import { pseudo, unmarked } from "../messages/pseudo";

const species = (id: string) => {
  const found = speciesById(id);
  if (!found) throw new Error(id);
  return found;
};

const tank = {
  base: { shape: "rectangle", length: 60, width: 30 },
  height: 35,
  cover: 0.2,
  openWater: 0.5,
} as const;

const barbs: Plan = {
  tank,
  water: { temperature: 25, pH: 6.8, generalHardness: 8 },
  groups: [
    { species: species("puntigrus-tetrazona"), unsexed: 5 },
    { species: species("pterophyllum-scalare"), unsexed: 2 },
  ],
};

/** The lines of a report below a title. */
function below(report: string, title: string): readonly string[] {
  const [, list = ""] = report.split(`${title}\n`);
  const [items = ""] = list.split("\n\n");
  return items.replaceAll("\n  ", " ").split("\n");
}

describe("remedies that are given", () => {
  const told = inWords(assessPlan(barbs), { remedies: remedies(barbs) });

  test("are told each in a sentence, with the tank, the numbers and who leaves", () => {
    expect(below(told, "What would help: one of these is enough")[0]).toBe(
      "- Have a tank of 80 × 35 cm; keep at least 8 tiger barbs; find another tank for the 2 freshwater angelfish.",
    );
  });

  test("are told in German", () => {
    const report = inWords(assessPlan(barbs), { remedies: remedies(barbs), messages: german });
    expect(below(report, "Was helfen würde: eines davon")[0]).toBe(
      "- Ein Becken von 80 × 35\u202fcm wählen; mindestens 8 Sumatrabarben halten; 2 Tiere (Skalare) in ein anderes Becken umsetzen oder abgeben.",
    );
  });

  test("name the form that would do, in the language of the report", () => {
    const nipped: Plan = {
      ...barbs,
      groups: [
        { species: species("puntigrus-tetrazona"), unsexed: 10 },
        { species: species("poecilia-reticulata"), males: 6 },
      ],
    };
    const [verdict, ways] = [assessPlan(nipped), remedies(nipped)];
    expect(inWords(verdict, { remedies: ways })).toMatch(
      /choose\s+guppies\s+of\s+this\s+form:\s+wild-type\s+guppy/i,
    );
    expect(inWords(verdict, { remedies: ways, messages: german })).toMatch(
      /diese\s+Zuchtform\s+wählen\s+\(Guppys\):\s+Wildguppy/i,
    );
  });

  test("are none where the plan has only to say more", () => {
    const alone: Plan = {
      tank: { ...tank, cover: 0.4 },
      groups: [{ species: species("paracheirodon-innesi"), unsexed: 10 }],
    };
    const report = inWords(assessPlan(alone), { remedies: remedies(alone) });
    expect(report).toContain("Not in your plan yet");
    expect(report).not.toContain("What would help");
  });

  test("say of which sex those are who leave, where the plan knows it", () => {
    const males: Plan = {
      tank: { ...tank, base: { shape: "rectangle", length: 80, width: 35 }, cover: 0.4 },
      water: { temperature: 26, pH: 7, generalHardness: 8 },
      groups: [{ species: species("betta-splendens"), males: 3 }],
    };
    const told = { remedies: remedies(males) };
    expect(below(inWords(assessPlan(males), told), "What would help")[0]).toBe(
      "- Find a tank each for 2 male Siamese fighting fish.",
    );
    expect(below(inWords(assessPlan(males), { ...told, messages: german }), "Was helfen würde")[0]).toBe(
      "- 2 Männchen (Siamesische Kampffische) in je ein eigenes Becken umsetzen oder abgeben, den Rest behalten.",
    );
    const some = { one: "oscar", several: "oscars", moved: 2, all: false, apart: false, lawful: false };
    expect(english.remedy.rehome(some)).toBe("find another tank for 2 oscars");
    expect(english.remedy.rehome({ ...some, moved: 1, who: "females" })).toBe(
      "find another tank for one female oscar",
    );
    expect(german.remedy.rehome({ ...some, who: "juveniles" })).toMatch(/^2 Jungtiere /);
  });

  test("let whom a law of the place names go only as it allows", () => {
    const koi: Plan = {
      tank: { ...tank, base: { shape: "rectangle", length: 150, width: 60 }, cover: 0.4 },
      water: { temperature: 23, pH: 7, generalHardness: 8 },
      groups: [
        { species: species("cyprinus-rubrofuscus"), unsexed: 1 },
        { species: species("paracheirodon-innesi"), unsexed: 12 },
      ],
    };
    const told = (messages: typeof english, jurisdiction: Plan["jurisdiction"]) => {
      const plan = { ...koi, jurisdiction };
      return below(
        inWords(assessPlan(plan), { remedies: remedies(plan), messages }),
        messages.titles.remedy,
      )[0];
    };
    expect(told(english, ["australia-queensland"])).toBe(
      "- Find another tank for the koi, as far as the law allows.",
    );
    expect(told(german, ["australia-queensland"])).toBe(
      "- Ein Tier (Koi) in ein anderes Becken umsetzen oder abgeben, soweit das Recht es erlaubt.",
    );
    expect(told(english, ["germany"])).toBe("- Find another tank for the koi.");
  });

  test("say who stays of a group of both sexes", () => {
    const told = (messages: typeof english, males: number, females: number) => {
      const plan: Plan = {
        tank: { ...tank, base: { shape: "rectangle", length: 60, width: 30 }, cover: 0.4 },
        water: { temperature: 26, pH: 7, generalHardness: 8 },
        groups: [{ species: species("betta-splendens"), males, females }],
      };
      const report = inWords(assessPlan(plan), { remedies: remedies(plan), messages });
      return below(report, messages.titles.remedies);
    };
    expect(told(english, 1, 1)).toEqual([
      "- Find another tank for one female Siamese fighting fish.",
      "- Find another tank for one male Siamese fighting fish.",
    ]);
    expect(told(english, 2, 2)).toContain("- Find a tank each for 3 Siamese fighting fish, and keep 1 male.");
    expect(told(german, 2, 2)).toContain(
      "- 3 Tiere (Siamesische Kampffische) in je ein eigenes Becken umsetzen oder abgeben, 1 Männchen behalten.",
    );
  });

  test("tell a longer and higher tank as one", () => {
    const angels: Plan = {
      tank: { ...tank, cover: 0.4, openWater: 0.4 },
      water: { temperature: 26, pH: 7, generalHardness: 8 },
      groups: [{ species: species("pterophyllum-scalare"), unsexed: 6 }],
    };
    const told = { remedies: remedies(angels) };
    const [first = ""] = below(inWords(assessPlan(angels), told), english.titles.remedy);
    expect(first).toMatch(/tank of \d+ × \d+ cm, at least \d+ cm high/);
    expect(first).not.toMatch(/have a tank .*have a tank/i);
    const [inGerman = ""] = below(
      inWords(assessPlan(angels), { ...told, messages: german }),
      german.titles.remedy,
    );
    expect(inGerman).toMatch(/Becken von \d+ × \d+\u202fcm und mindestens \d+\u202fcm Höhe wählen/);
  });

  test("let some of a number to be avoided go, where fewer belong together too", () => {
    const convicts = (numbers: Omit<Group, "species">): Plan => ({
      tank: { ...tank, base: { shape: "rectangle", length: 200, width: 60 }, cover: 0.4, sightBreaks: 9 },
      water: { temperature: 26, pH: 7.2, generalHardness: 10 },
      groups: [{ species: species("amatitlania-nigrofasciata"), ...numbers }],
    });
    for (const numbers of [{ unsexed: 4 }, { males: 2, females: 2 }]) {
      const plan = convicts(numbers);
      const report = inWords(assessPlan(plan), { remedies: remedies(plan) });
      expect(report).toMatch(/eep at least 6 convict cichlids/);
      expect(report).toMatch(/ind another tank for 2 convict cichlids/);
    }
  });

  test("are asked for by no one else", () => {
    expect(inWords(assessPlan(barbs))).not.toContain("What would help");
  });

  test("that there are none is told with what stands in the way", () => {
    const hunters = [
      "phractocephalus-hemioliopterus",
      "astronotus-ocellatus",
      "pygocentrus-nattereri",
      "parachromis-managuensis",
      "paracheirodon-innesi",
    ];
    const oscars: Plan = { tank, groups: hunters.map((id) => ({ species: species(id), unsexed: 2 })) };
    const found = remedies(oscars);
    expect(found.remedies).toEqual([]);
    const report = inWords(assessPlan(oscars), { remedies: found }).replaceAll(/\s+/g, " ");
    expect(report).toContain("Nothing within three steps helps. In the way stands: ");
  });

  test("have words for every move of many plans, in every language", () => {
    const plans = [barbs, ...samplePlans(8)];
    const kinds = new Set<string>();
    for (const plan of plans) {
      const found = remedies(plan, { company: someSpecies(8, 0) });
      for (const { moves } of found.remedies) for (const { kind } of moves) kinds.add(kind);
      for (const messages of [english, german]) {
        const report = inWords(assessPlan(plan), { messages, remedies: found });
        expect(report.replaceAll("\n  ", " ")).not.toMatch(/undefined|NaN|; ;|: ;| {2}\S/);
      }
      const report = inWords(assessPlan(plan), { messages: pseudo, remedies: found });
      expect(unmarked(report)).not.toMatch(/\p{L}/u);
    }
    expect(kinds.size).toBeGreaterThan(2);
  });

  test("that are none are refused", () => {
    const found = remedies(barbs);
    const [first] = found.remedies;
    const [move] = first?.moves ?? [];
    const meets = [{ on: "tank.longestRun", wanted: { min: Number.NaN } }];
    const answers = [
      0,
      null,
      {},
      { remedies: 3 },
      { remedies: [{ moves: "none", outcome: "suitable" }] },
      { remedies: [{ ...first, outcome: "fine" }] },
      { remedies: [{ ...first, moves: [{ ...move, of: 9 }] }] },
      { remedies: [{ ...first, moves: [{ ...move, meets }] }] },
      { remedies: [], obstacle: { ...assessPlan(barbs).findings[0], from: 9 } },
    ];
    for (const answer of answers)
      for (const write of [inWords, reportParts])
        expectRefused(() => write(assessPlan(barbs), { remedies: answer as never }), /^options\.remedies/);
  });

  test("of another plan are refused", () => {
    const turned: Plan = { ...barbs, groups: [...barbs.groups].reverse() };
    const alone: Plan = { ...barbs, groups: barbs.groups.slice(1) };
    for (const other of [turned, alone])
      expectRefused(() => inWords(assessPlan(other), { remedies: remedies(barbs) }), /^options\.remedies/);
  });
});
