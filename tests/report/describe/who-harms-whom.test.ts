import { expect, test } from "vitest";
import { speciesById } from "vivary/catalog";
import { assessPlan } from "../../../src/compatibility";
import type { Group, Plan } from "../../../src/plan";
import { english, describe as inWords } from "../../../src/report";
import { german } from "../../../src/report/de";

const group = (id: string, numbers: Omit<Group, "species">): Group => {
  const species = speciesById(id);
  if (!species) throw new Error(id);
  return { species, ...numbers };
};

/** What a report says of some animals in a tank of a floor in cm, in one line. */
function told(groups: readonly Group[], [length, width]: readonly [number, number], messages = english) {
  const plan: Plan = {
    tank: { base: { shape: "rectangle", length, width }, cover: 0.6, sightBreaks: 9 },
    groups,
  };
  return inWords(assessPlan(plan), { messages }).replaceAll(/\n? +/g, " ");
}

const kribensis = [
  group("pelvicachromis-pulcher", { males: 1, females: 1 }),
  group("osteogaster-aenea", { unsexed: 6 }),
  group("hyphessobrycon-amandae", { unsexed: 10 }),
];
const bites = "Kribensis bite bronze corydoras and ember tetras while they guard eggs or young.";

test("who bites whom is told where the sum of what all need asks for more room", () => {
  const text = told(kribensis, [80, 35]);
  expect(text).toContain(bites);
  expect(text.split(bites)).toHaveLength(2);
  expect(told(kribensis, [80, 35], german)).toContain("Purpurprachtbarsche beißen");
});

test("who bites whom is told where the tank is far too small", () => {
  expect(told(kribensis, [40, 25])).toContain(bites);
});

test("who chases the other is told, not only who is chased back", () => {
  const mbunas = [
    group("melanochromis-auratus", { males: 1, females: 5 }),
    group("labidochromis-caeruleus", { males: 1, females: 4 }),
  ];
  expect(told(mbunas, [120, 40])).toContain("Golden mbunas chase electric yellow cichlids");
});

test("of who is chased for its build nobody says that it looks like the pursuer", () => {
  const shark = group("epalzeorhynchos-bicolor", { unsexed: 1 });
  const stock = [shark, group("puntius-titteya", { females: 8 })];
  expect(told(stock, [150, 60])).toContain("cherry barbs, which are built like its own kind");
  expect(told(stock, [150, 60], german)).toContain("wegen ähnlicher Gestalt");
});

test("who is bitten for a brood, and kept from it by room alone, does not go well with the parents", () => {
  const peaceful: Plan = {
    tank: {
      base: { shape: "rectangle", length: 200, width: 70 },
      height: 60,
      lid: true,
      cover: 0.35,
      openWater: 0.6,
      openSurface: 0.6,
      plants: "planted",
      substrate: "sand",
      sightBreaks: 6,
      hides: { caves: 6, wood: 6, rocks: 6 },
      flow: { calmest: "still", strongest: "moderate" },
      filter: { mediaArea: 20, age: 120 },
    },
    water: { temperature: 25, pH: 7.4, generalHardness: 12, hottest: 26, coolest: 24, salinity: 0 },
    groups: [
      group("rocio-octofasciata", { males: 1, females: 1 }),
      group("melanotaenia-boesemani", { males: 3, females: 5 }),
    ],
  };
  const verdict = assessPlan(peaceful);
  expect(verdict.outcome).toBe("suitable");
  expect(inWords(verdict).replaceAll(/\s+/g, " ")).toContain("can live together. At worst");
});
