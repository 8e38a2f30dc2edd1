import { expect, test } from "vitest";
import ancistrusCirrhosus from "vivary/catalog/ancistrus-cirrhosus";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import hemigrammusErythrozonus from "vivary/catalog/hemigrammus-erythrozonus";
import hyphessobryconFlammeus from "vivary/catalog/hyphessobrycon-flammeus";
import hyphessobryconHerbertaxelrodi from "vivary/catalog/hyphessobrycon-herbertaxelrodi";
import labidochromisCaeruleus from "vivary/catalog/labidochromis-caeruleus";
import maylandiaEstherae from "vivary/catalog/maylandia-estherae";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonAxelrodi from "vivary/catalog/paracheirodon-axelrodi";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import pristellaMaxillaris from "vivary/catalog/pristella-maxillaris";
import rocioOctofasciata from "vivary/catalog/rocio-octofasciata";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import trigonostigmaHeteromorpha from "vivary/catalog/trigonostigma-heteromorpha";
import { zones } from "../../../../src/compatibility/rules/plan/zones";
import type { Group } from "../../../../src/plan";
import type { TraitValue as Value } from "../../../../src/species";
import { animal, inAnyNumber, type Stated } from "../../animals";
import { findingsOf, planBy } from "../../judging";

type Zone = Value<"space.zones">[number];

const dweller = (id: string, where: readonly Zone[], more: Stated = {}) =>
  animal(id, {
    ...inAnyNumber,
    "space.zones": where,
    "space.footprint": [{ least: 2000, for: 4 }],
    "space.furtherFootprint": 500,
    "space.territory": "none",
    ...more,
  });
const asked = (groups: readonly Group[], length = 20) =>
  findingsOf(
    planBy(zones, groups, { tank: { base: { shape: "rectangle", length, width: 100 } } }),
    "zones",
  ).map((finding) =>
    finding.weight === "restricting" && "min" in finding.condition.wanted
      ? [finding.from, finding.measures?.zone, finding.condition.wanted.min]
      : finding.weight,
  );
const bottom = { value: "bottom" };

/** The part of the water of each finding. */
const partsOf = (groups: readonly Group[]) =>
  findingsOf(
    planBy(zones, groups, { tank: { base: { shape: "rectangle", length: 20, width: 100 } } }),
    "zones",
  ).map(({ measures }) => measures?.zone?.value);

test("groups that live on the ground need floor beside each other: the largest, and half of each other", () => {
  const a = { species: dweller("a", ["bottom"]), unsexed: 4 };
  const b = {
    species: dweller("b", ["bottom"], { "space.footprint": [{ least: 3000, for: 6 }] }),
    unsexed: 6,
  };
  expect(asked([a, b])).toEqual([
    [0, bottom, 4000],
    [1, bottom, 4000],
  ]);
  expect(asked([a, b], 40)).toEqual([]);
  const c = { species: dweller("c", ["bottom"]), unsexed: 4 };
  expect(asked([a, b, c], 23)).toContainEqual([2, bottom, 5000]);
});

test("other parts of the tank do not count, nor who can give way to them", () => {
  const a = { species: dweller("a", ["bottom"]), unsexed: 4 };
  expect(asked([a, { species: dweller("b", ["midwater", "surface"]), unsexed: 4 }])).toEqual([]);
  expect(asked([a, { species: dweller("b", ["bottom", "midwater"]), unsexed: 4 }])).toEqual([]);
});

test("open water is parted by moving: the largest floor, and a fifth of each other", () => {
  const [a, b, c] = ["a", "b", "c"].map((id, index) => ({
    species: dweller(id, index === 2 ? ["surface", "midwater"] : ["midwater"]),
    unsexed: 4,
  }));
  const midwater = { value: "midwater" };
  expect(a && b && asked([a, b])).toEqual([
    [0, midwater, 2400],
    [1, midwater, 2400],
  ]);
  expect(a && b && c && asked([a, b, c])).toContainEqual([2, midwater, 2800]);
  expect(a && b && c && asked([a, b, c], 28)).toEqual([]);
  expect(a && asked([a, { species: dweller("d", ["bottom"]), unsexed: 4 }])).toEqual([]);
});

test("in a keeper's tank: forty tetras of four kinds are too many for 54 L, and eighty far too many", () => {
  const shoals = [
    paracheirodonInnesi,
    hyphessobryconHerbertaxelrodi,
    hemigrammusErythrozonus,
    trigonostigmaHeteromorpha,
    pristellaMaxillaris,
    hyphessobryconFlammeus,
    tanichthysAlbonubes,
    paracheirodonAxelrodi,
  ].map((species) => ({ species, unsexed: 10 }));
  expect(asked(shoals.slice(0, 1), 18)).toEqual([]);
  expect(new Set(asked(shoals.slice(0, 4), 18).map((one) => Array.isArray(one)))).toEqual(new Set([true]));
  expect(asked(shoals.slice(0, 4), 32)).toEqual([]);
  expect(new Set(asked(shoals, 18))).toEqual(new Set(["blocking"]));
  expect(asked(shoals, 60)).toEqual([]);
});

const place: Stated = {
  "space.territory": { area: 500, zone: "bottom", holder: "pair" },
  "social.living": "pair",
  "social.group": { least: 1 },
};

test("who holds a place on the ground gives way to none, though it swims above it too", () => {
  const a = { species: dweller("a", ["bottom", "midwater"], place), unsexed: 4 };
  const b = { species: dweller("b", ["midwater", "bottom"], place), unsexed: 4 };
  expect(asked([a, b])).toEqual([
    [0, bottom, 3000],
    [1, bottom, 3000],
  ]);
  const c = { species: dweller("c", ["bottom"]), unsexed: 4 };
  expect(asked([a, c])).toHaveLength(2);
});

test("one alone holds its place before it has a mate", () => {
  const [a, b] = ["a", "b"].map((id) => ({
    species: dweller(id, ["bottom", "midwater"], place),
    unsexed: 1,
  }));
  expect(a && b && asked([a, b], 10)).toHaveLength(2);
});

test("those that live in groups part the ground among them, and a place in the open takes no ground", () => {
  const grouped: Stated = { ...place, "social.living": "harem" };
  const inTheOpen: Stated = { ...place, "space.territory": { area: 500, zone: "midwater", holder: "pair" } };
  for (const stated of [grouped, inTheOpen]) {
    const [a, b] = ["a", "b"].map((id) => ({
      species: dweller(id, ["bottom", "midwater"], stated),
      unsexed: 4,
    }));
    expect(a && b && partsOf([a, b])).toEqual(["midwater", "midwater"]);
  }
});

test("females hold no place that males hold", () => {
  const held: Stated = { ...place, "space.territory": { area: 500, zone: "surface", holder: "male" } };
  const groups = ["a", "b"].map((id) => dweller(id, ["surface", "midwater"], held));
  expect(partsOf(groups.map((species) => ({ species, males: 4 })))).toEqual(["surface", "surface"]);
  expect(partsOf(groups.map((species) => ({ species, females: 4 })))).toEqual(["midwater", "midwater"]);
});

test("in a keeper's tank: an oscar and a Jack Dempsey are short of room in 300 L, labs and red zebras are not", () => {
  const large = [astronotusOcellatus, rocioOctofasciata].map((species) => ({ species, unsexed: 1 }));
  expect(asked(large, 60)).toEqual([
    [0, bottom, 8000],
    [1, bottom, 8000],
  ]);
  const mbuna = [labidochromisCaeruleus, maylandiaEstherae].map((species) => ({ species, unsexed: 6 }));
  expect(asked(mbuna, 60)).toEqual(["advisory", "advisory"]);
});

test("snails and shrimps graze between the others", () => {
  const a = { species: dweller("a", ["bottom"]), unsexed: 4 };
  const snail = animal(
    "snail",
    { "space.zones": ["bottom"], "space.footprint": [{ least: 900, for: 1 }] },
    { kind: "snail" },
  );
  expect(asked([a, { species: snail, unsexed: 10 }])).toEqual([]);
});

test("two groups of one species ask together what one group asks", () => {
  const species = dweller("a", ["bottom"]);
  const halves = [
    { species, unsexed: 4 },
    { species, unsexed: 4 },
  ];
  expect(asked(halves)).toEqual([]);
  // Eight of a: 2000 for four and 500 for each more. One of b: half of what four need, and of that half beside the others.
  const b = { species: dweller("b", ["bottom"]), unsexed: 1 };
  expect(asked([...halves, b], 21)).toEqual([
    [0, bottom, 4500],
    [1, bottom, 4500],
    [2, bottom, 4500],
  ]);
});

test("who grazes panes and wood adds nothing to the floor of those on the ground", () => {
  const a = { species: dweller("a", ["bottom"]), unsexed: 4 };
  const grazer = (foods: Value<"diet.foods">, type: Value<"diet.type"> = "herbivore") => ({
    species: dweller("grazer", ["bottom"], { "diet.type": type, "diet.foods": foods }),
    unsexed: 4,
  });
  expect(asked([a, grazer(["algae", "dry"])])).toEqual([]);
  expect(asked([a, grazer(["wood"], "detritivore")])).toEqual([]);
  expect(asked([a, grazer(["algae"], "omnivore")])).toHaveLength(2);
  expect(asked([a, grazer(["plants"])])).toHaveLength(2);
});

test("hardly less than what all need is worth knowing", () => {
  const groups = ["a", "b"].map((id) => ({ species: dweller(id, ["bottom"]), unsexed: 4 }));
  expect(asked(groups, 25.5)).toEqual(["advisory", "advisory"]);
  expect(asked(groups, 25.4)).toEqual([
    [0, bottom, 3000],
    [1, bottom, 3000],
  ]);
});

test("less than 0.45 of what all on the ground need is far too small", () => {
  const groups = ["a", "b"].map((id) => ({ species: dweller(id, ["bottom"]), unsexed: 4 }));
  expect(asked(groups, 13.5)).toEqual([
    [0, bottom, 3000],
    [1, bottom, 3000],
  ]);
  expect(asked(groups, 13.4)).toEqual(["blocking", "blocking"]);
});

test("each group asks for the number that belongs together", () => {
  const shoal: Stated = { "social.living": "shoal", "social.group": { least: 4 } };
  const groups = ["a", "b"].map((id) => ({ species: dweller(id, ["bottom"], shoal), unsexed: 1 }));
  expect(asked(groups)).toEqual([
    [0, bottom, 3000],
    [1, bottom, 3000],
  ]);
});

test("in a keeper's tank: neons, corydoras and a bristlenose share 60 × 30 cm", () => {
  const groups = [
    { species: paracheirodonInnesi, unsexed: 15 },
    { species: osteogasterAenea, unsexed: 6 },
    { species: ancistrusCirrhosus, unsexed: 1 },
  ];
  expect(asked(groups, 18)).toEqual([]);
});

test("of a kind of which nobody knows how it lives it may be that it holds no place", () => {
  const holder: Stated = { "space.territory": { area: 300, zone: "bottom", holder: "male" } };
  const floor: Stated = { "space.footprint": [{ least: 2000, for: 4 }], "space.furtherFootprint": 500 };
  const known: Stated = { ...inAnyNumber, ...floor, ...holder };
  const { "social.living": _, ...unknown } = known;
  const beside = (stated: Stated) => {
    const species = animal("a", { ...stated, "space.zones": ["bottom", "midwater"] });
    const other = { species: dweller("b", ["bottom"]), unsexed: 4 };
    return planBy(zones, [{ species, unsexed: 2 }, other], {
      tank: { base: { shape: "rectangle", length: 20, width: 20 } },
    }).bounds;
  };
  expect(beside(known)).toEqual({ atBest: "suitable", atWorst: "suitable" });
  expect(beside(unknown)).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
});
