import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import crossocheilusOblongus from "vivary/catalog/crossocheilus-oblongus";
import epalzeorhynchosBicolor from "vivary/catalog/epalzeorhynchos-bicolor";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import trichogasterLalius from "vivary/catalog/trichogaster-lalius";
import trichopsisPumila from "vivary/catalog/trichopsis-pumila";
import { actsLookAlike } from "../../../../src/compatibility/rules/pair/acts-look-alike";
import type { Kind, SpeciesProfile, TraitValue as Value, Zone } from "../../../../src/species";
import { animal, type Stated } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

type Looks = Value<"appearance.looks">;
type Act = Value<"temperament.acts">[number];

const barred: Looks = [{ tag: "upright-bars" }];
const doer = (act: Partial<Act>, looks?: Looks, more: Stated = {}) =>
  animal("doer", {
    "temperament.acts": [{ does: "chases", target: "look-alike", ...act }],
    "space.territory": { area: 2000, zone: "bottom", holder: "male" },
    "space.openWater": 0,
    "size.bodyShape": "eel-like",
    ...(looks && { "appearance.looks": looks }),
    ...more,
  });
/** An animal of another build. */
const other = (looks?: Looks, id = "other", zones?: readonly Zone[]) =>
  animal(id, {
    "temperament.acts": [],
    "space.openWater": 0,
    "size.bodyShape": "short-deep",
    ...(looks && { "appearance.looks": looks }),
    ...(zones && { "space.zones": zones }),
  });
const found = (...[a, b]: [ReturnType<typeof doer>, ReturnType<typeof other>]) =>
  pairBy(actsLookAlike, { species: a }, { species: b }).findings;
const weights = (...pair: Parameters<typeof found>) => found(...pair).map(({ weight }) => weight);

const roomAndSight = [
  { weight: "restricting", condition: { on: "tank.sightBreaks", wanted: { min: 1 } } },
  { weight: "restricting", condition: { on: "tank.footprint", wanted: { min: 4000, unit: "cm2" } } },
];

test("it takes whoever shares a marking for one of its own, and chases it: room and something between", () => {
  expect(found(doer({}, barred), other([{ tag: "long-stripe" }, { tag: "upright-bars" }]))).toMatchObject(
    roomAndSight,
  );
  expect(found(doer({}, barred), other([{ tag: "long-stripe" }]))).toEqual([]);
  expect(found(doer({}, barred), other([]))).toEqual([]);
  expect(found(doer({}, []), other(barred))).toEqual([]);
});

test("who holds no place needs something between alone", () => {
  expect(found(doer({}, barred, { "space.territory": "none" }), other(barred))).toMatchObject(
    roomAndSight.slice(0, 1),
  );
});

test("markings nobody stated count as shared, and stay open", () => {
  for (const pair of [
    [doer({}), other(barred)],
    [doer({}, barred), other()],
  ] as const) {
    expect(weights(...pair)).toEqual(["restricting", "restricting"]);
    const [species, beside] = pair;
    const { bounds, open } = pairBy(actsLookAlike, { species }, { species: beside });
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
    expect(open).toContainEqual(
      expect.objectContaining({ trait: "appearance.looks", reason: "missing", couldBe: "restricting" }),
    );
  }
});

test("a marking of one sex counts where that sex may be", () => {
  const species = doer({}, barred);
  const beside = other([{ tag: "upright-bars", sex: "male" }]);
  const among = (sex?: "male" | "female") =>
    pairBy(actsLookAlike, { species }, { species: beside, sex }).findings;
  expect(among("male")).toMatchObject(roomAndSight);
  expect(among("female")).toEqual([]);
  expect(among()).toMatchObject(roomAndSight);
});

test("it tells whether its markings or its build are seen in the other", () => {
  const built = animal("other", {
    "temperament.acts": [],
    "size.bodyShape": "eel-like",
    "appearance.looks": [],
  });
  for (const [beside, value] of [
    [other(barred), "markings"],
    [built, "build"],
  ] as const) {
    const likeness = { measures: { likeness: { value } } };
    expect(found(doer({}, barred), beside)).toMatchObject([likeness, likeness]);
  }
});

test("its own species is another rule's", () => {
  expect(weights(doer({}, barred), other(barred, "doer"))).toEqual([]);
});

test("killing and wounding block, whatever room there is", () => {
  expect(weights(doer({ does: "kills" }, barred), other(barred))).toEqual(["blocking"]);
  expect(weights(doer({ does: "bites" }, barred), other(barred))).toEqual(["blocking"]);
});

test("what happens at food or when crowded is worth knowing, as are chases from a brood", () => {
  for (const when of ["feeding", "crowded", "breeding", "guarding-brood"] as const) {
    expect(weights(doer({ when }, barred), other(barred)), when).toEqual(["advisory"]);
  }
});

test("bites when crowded need cover, room and something between", () => {
  expect(found(doer({ does: "bites", when: "crowded" }, barred), other(barred))).toMatchObject([
    { condition: { on: "tank.cover", wanted: { min: 0.3 } } },
    ...roomAndSight,
  ]);
});

test("bites for a brood need room beside the parents' place", () => {
  expect(found(doer({ does: "bites", when: "guarding-brood" }, barred), other(barred))).toMatchObject(
    roomAndSight,
  );
});

describe("parts of the water", () => {
  const below = (act: Partial<Act>) => doer(act, barred, { "space.zones": ["bottom"] });
  const at = (zone: Zone) => other(barred, "other", [zone]);

  test("who never meets it is never taken for one of its own", () => {
    expect(weights(below({}), at("midwater"))).toEqual([]);
    expect(weights(below({}), at("bottom"))).toEqual(["restricting", "restricting"]);
  });

  test("a guarded brood reaches the next one, not the one beyond", () => {
    const guards = below({ does: "bites", when: "guarding-brood" });
    expect(weights(guards, at("midwater"))).toEqual(["restricting", "restricting"]);
    expect(weights(guards, at("surface"))).toEqual([]);
  });
});

describe("what ends it", () => {
  const groups = (act: Partial<Act>, males: number) => [
    { species: doer(act, barred), males, females: 1 },
    { species: other(barred), unsexed: 1 },
  ];

  test("something to break the line of sight, and room for two", () => {
    const inTank = (width: number, sightBreaks: number) =>
      weighed(
        planBy(actsLookAlike, groups({}, 1), {
          tank: { base: { shape: "rectangle", length: 100, width }, sightBreaks },
        }),
      );
    expect(inTank(40, 1)).toEqual({ findings: [], met: ["restricting", "restricting"] });
    expect(inTank(39, 1)).toEqual({ findings: ["restricting"], met: ["restricting"] });
    expect(inTank(40, 0)).toEqual({ findings: ["restricting"], met: ["restricting"] });
  });

  test("none of the sex that does it in the plan, which is never asked for", () => {
    expect(planBy(actsLookAlike, groups({ doer: "male" }, 0)).findings).toEqual([]);
    expect(planBy(actsLookAlike, groups({ doer: "male", does: "bites" }, 1)).findings).toMatchObject([
      { weight: "blocking" },
    ]);
  });
});

describe("a build", () => {
  const shaped = (shape?: Value<"size.bodyShape">, kind: Kind = "fish") =>
    animal(
      "other",
      { "temperament.acts": [], "appearance.looks": [], ...(shape && { "size.bodyShape": shape }) },
      { kind },
    );
  const deep = (act: Partial<Act>) => doer(act, barred, { "size.bodyShape": "short-deep" });

  test("is shared by fish of one family that are about as deep, whatever they wear", () => {
    expect(found(deep({}), shaped("short-deep"))).toMatchObject(roomAndSight);
    expect(found(deep({}), shaped("fusiform"))).toMatchObject(roomAndSight);
    expect(found(deep({}), shaped("elongated"))).toEqual([]);
    expect(found(deep({}), shaped("short-deep", "shrimp"))).toEqual([]);
  });

  test("is shared across the families of an order by fish of the same shape alone", () => {
    const ofFamily = (shape: Value<"size.bodyShape">, family: string, order?: string) => {
      const { taxonomy, ...rest } = shaped(shape);
      return { ...rest, taxonomy: { ...taxonomy, family, ...(order && { order }) } };
    };
    expect(found(deep({}), ofFamily("short-deep", "Aliudae"))).toMatchObject(roomAndSight);
    expect(found(deep({}), ofFamily("fusiform", "Aliudae"))).toEqual([]);
    expect(found(deep({}), ofFamily("short-deep", "Aliudae", "Aliiformes"))).toEqual([]);
  });

  test("that nobody stated counts as shared", () => {
    expect(found(deep({}), shaped())).toMatchObject(roomAndSight);
  });

  test("alone makes a lesser rival, which is chased and not wounded", () => {
    const chased = { measures: { act: { value: "chases" } } };
    expect(found(deep({ does: "bites" }), shaped("short-deep"))).toMatchObject(
      roomAndSight.map((finding) => ({ ...finding, ...chased })),
    );
  });
});

describe("where the plan does not say of which sex they are, it is asked for", () => {
  const bites = { does: "bites", doer: "male" } as const;
  const striped = other([{ tag: "upright-bars", sex: "female" }]);
  const among = (one: ReturnType<typeof doer>, males?: number) =>
    planBy(actsLookAlike, [
      { species: one, ...(males === undefined ? { unsexed: 2 } : { males }) },
      { species: striped, unsexed: 4 },
    ]).findings;

  test("the sex of the doers that does not wound, first", () => {
    expect(among(doer(bites, barred))).toMatchObject([
      { weight: "restricting", condition: { on: "group.sex", of: 0, wanted: { oneOf: ["female"] } } },
    ]);
  });

  test("else the sex of the others that does not bear the markings", () => {
    const spared = { on: "group.sex", of: 1, wanted: { oneOf: ["male"] } };
    expect(among(doer(bites, barred), 1)).toMatchObject([{ weight: "restricting", condition: spared }]);
    expect(among(doer({ does: "bites" }, barred))).toMatchObject([
      { weight: "restricting", condition: spared },
    ]);
  });

  test("nothing where both sexes bear them", () => {
    expect(weights(doer({ does: "bites" }, barred), other(barred))).toEqual(["blocking"]);
  });
});

test("a male dwarf gourami drives off a sparkling gourami, a red-tailed shark an algae eater; not a tetra", () => {
  const conditions = (a: SpeciesProfile, b: SpeciesProfile) =>
    pairBy(actsLookAlike, { species: a, sex: "male" }, { species: b }).conditions.map(({ on }) => on);
  expect(conditions(trichogasterLalius, trichopsisPumila)).toEqual(["tank.sightBreaks", "tank.footprint"]);
  expect(conditions(epalzeorhynchosBicolor, crossocheilusOblongus)).toContain("tank.sightBreaks");
  expect(conditions(trichogasterLalius, paracheirodonInnesi)).toEqual([]);
});

test("a male betta takes a male guppy's tail for a rival's; a neon is no rival", () => {
  const male = { species: bettaSplendens, sex: "male" } as const;
  expect(
    pairBy(actsLookAlike, male, { species: poeciliaReticulata, sex: "male" }).findings.length,
  ).toBeGreaterThan(0);
  expect(pairBy(actsLookAlike, male, { species: paracheirodonInnesi }).findings).toEqual([]);
  const female = { species: bettaSplendens, sex: "female" } as const;
  expect(pairBy(actsLookAlike, female, { species: poeciliaReticulata, sex: "male" }).findings).toEqual([]);
});
