import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import { actsLookAlike } from "../../../../src/compatibility/rules/pair/acts-look-alike";
import type { TraitValue as Value, Zone } from "../../../../src/species";
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
    ...(looks && { "appearance.looks": looks }),
    ...more,
  });
const other = (looks?: Looks, id = "other", zones?: readonly Zone[]) =>
  animal(id, {
    "temperament.acts": [],
    "space.openWater": 0,
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

test("a male betta takes a male guppy's tail for a rival's; a neon is no rival", () => {
  const male = { species: bettaSplendens, sex: "male" } as const;
  expect(
    pairBy(actsLookAlike, male, { species: poeciliaReticulata, sex: "male" }).findings.length,
  ).toBeGreaterThan(0);
  expect(pairBy(actsLookAlike, male, { species: paracheirodonInnesi }).findings).toEqual([]);
  const female = { species: bettaSplendens, sex: "female" } as const;
  expect(pairBy(actsLookAlike, female, { species: poeciliaReticulata, sex: "male" }).findings).toEqual([]);
});
