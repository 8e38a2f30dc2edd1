import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import { actsLookAlike } from "../../../../src/compatibility/rules/pair/acts-look-alike";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

type Looks = Value<"appearance.looks">;
type Act = Value<"temperament.acts">[number];

const barred: Looks = [{ tag: "upright-bars" }];
const doer = (act: Partial<Act>, looks?: Looks) =>
  animal("doer", {
    "temperament.acts": [{ does: "chases", target: "look-alike", ...act }],
    ...(looks && { "appearance.looks": looks }),
  });
const other = (looks?: Looks, id = "other") =>
  animal(id, { "temperament.acts": [], ...(looks && { "appearance.looks": looks }) });
const weights = (...[a, b]: [ReturnType<typeof doer>, ReturnType<typeof other>]) =>
  weighed(pairBy(actsLookAlike, { species: a }, { species: b })).findings;

test("it takes whoever shares a marking for one of its own", () => {
  expect(weights(doer({}, barred), other([{ tag: "long-stripe" }, { tag: "upright-bars" }]))).toEqual([
    "restricting",
  ]);
  expect(weights(doer({}, barred), other([{ tag: "long-stripe" }]))).toEqual([]);
  expect(weights(doer({}, barred), other([]))).toEqual([]);
  expect(weights(doer({}, []), other(barred))).toEqual([]);
});

test("markings nobody stated count as shared, and stay open", () => {
  for (const pair of [
    [doer({}), other(barred)],
    [doer({}, barred), other()],
  ] as const) {
    expect(weights(...pair)).toEqual(["restricting"]);
    const [species, beside] = pair;
    const { bounds, open } = pairBy(actsLookAlike, { species }, { species: beside });
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
    expect(open).toMatchObject([{ trait: "appearance.looks", reason: "missing" }]);
  }
});

test("a marking of one sex counts where that sex may be", () => {
  const species = doer({}, barred);
  const beside = other([{ tag: "upright-bars", sex: "male" }]);
  const among = (sex?: "male" | "female") =>
    weighed(pairBy(actsLookAlike, { species }, { species: beside, sex })).findings;
  expect(among("male")).toEqual(["restricting"]);
  expect(among("female")).toEqual([]);
  expect(among()).toEqual(["restricting"]);
});

test("its own species is another rule's", () => {
  expect(weights(doer({}, barred), other(barred, "doer"))).toEqual([]);
});

test("killing blocks, what happens at food is worth knowing", () => {
  expect(weights(doer({ does: "kills" }, barred), other(barred))).toEqual(["blocking"]);
  expect(weights(doer({ when: "feeding" }, barred), other(barred))).toEqual(["advisory"]);
});

describe("what ends it", () => {
  const groups = (act: Partial<Act>, males: number) => [
    { species: doer(act, barred), males, females: 1 },
    { species: other(barred), unsexed: 1 },
  ];

  test("cover to get out of sight", () => {
    const withCover = (cover: number) => weighed(planBy(actsLookAlike, groups({}, 1), { tank: { cover } }));
    expect(withCover(0.3)).toEqual({ findings: [], met: ["restricting"] });
    expect(withCover(0.29)).toEqual({ findings: ["restricting"], met: [] });
  });

  test("none of the sex that does it", () => {
    const inCover = { tank: { cover: 1 } };
    expect(planBy(actsLookAlike, groups({ doer: "male" }, 1), inCover).findings).toMatchObject([
      { weight: "restricting", condition: { on: "group.males", of: 0, wanted: { max: 0 } } },
    ]);
    expect(weighed(planBy(actsLookAlike, groups({ doer: "male" }, 0), inCover)).findings).toEqual([]);
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
