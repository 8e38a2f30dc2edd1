import { describe, expect, test } from "vitest";
import amatitlaniaNigrofasciata from "vivary/catalog/amatitlania-nigrofasciata";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { assessPair } from "../../../../src/compatibility";
import { actsOthers } from "../../../../src/compatibility/rules/pair/acts-others";
import type { TraitValue as Value, Zone } from "../../../../src/species";
import { adults, animal, type Stated } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

type Act = Value<"temperament.acts">[number];

const doing = (act: Act, more: Stated = {}) =>
  animal("doer", {
    "temperament.acts": [act],
    "size.adultLength": adults(8),
    "space.zones": ["midwater"],
    ...more,
  });
const other = (length = 5, zones: readonly Zone[] = ["midwater"]) =>
  animal("other", { "temperament.acts": [], "size.adultLength": adults(length), "space.zones": zones });
const weights = (...[a, b]: [ReturnType<typeof doing>, ReturnType<typeof other>]) =>
  weighed(pairBy(actsOthers, { species: a }, { species: b })).findings;

const atAny = (does: Act["does"], when?: Act["when"]): Act => ({
  does,
  target: "any",
  ...(when && { when }),
});

test("killing blocks, and so does biting anyone at any time", () => {
  expect(weights(doing(atAny("kills")), other())).toEqual(["blocking"]);
  expect(weights(doing(atAny("bites")), other())).toEqual(["blocking"]);
  expect(weights(doing(atAny("bites", "always")), other())).toEqual(["blocking"]);
});

test("other bites and chases restrict, the rest is worth knowing", () => {
  expect(weights(doing(atAny("bites", "crowded")), other())).toEqual(["restricting"]);
  expect(weights(doing(atAny("chases")), other())).toEqual(["restricting"]);
  expect(weights(doing(atAny("chases", "feeding")), other())).toEqual(["advisory"]);
  expect(weights(doing(atAny("robs-food")), other())).toEqual(["advisory"]);
});

test("who never meets is never chased", () => {
  expect(weights(doing(atAny("chases")), other(5, ["bottom"]))).toEqual([]);
  expect(weights(doing(atAny("chases")), other(5, ["bottom", "midwater"]))).toEqual(["restricting"]);
});

test("acts at its own species or at look-alikes, at fins or at mucus are other rules'", () => {
  expect(weights(doing({ does: "kills", target: "own-kind" }), other())).toEqual([]);
  expect(weights(doing({ does: "kills", target: "look-alike" }), other())).toEqual([]);
  expect(weights(doing(atAny("nips-fins")), other())).toEqual([]);
  expect(weights(doing(atAny("rasps-mucus")), other())).toEqual([]);
  const species = doing(atAny("kills"));
  expect(pairBy(actsOthers, { species }, { species }).findings).toEqual([]);
});

test("bites at trailing fins are seen by one rule or another", () => {
  const betta = doing({ does: "bites", target: "long-finned" });
  const veiltail = animal("other", {
    "temperament.acts": [],
    "size.adultLength": adults(5),
    "appearance.longFins": true,
  });
  const { findings } = assessPair({ species: betta }, { species: veiltail });
  expect(findings).toMatchObject([{ weight: "restricting", from: 0, to: 1 }]);
});

test("chases in the open end where there is cover to get out of sight", () => {
  const groups = [
    { species: doing(atAny("chases")), unsexed: 1 },
    { species: other(), unsexed: 1 },
  ];
  const withCover = (cover: number) => weighed(planBy(actsOthers, groups, { tank: { cover } }));
  expect(withCover(0.3)).toEqual({ findings: [], met: ["restricting"] });
  expect(withCover(0.29)).toEqual({ findings: ["restricting"], met: [] });
});

describe("who chases smaller ones", () => {
  const chases = doing({ does: "chases", target: "smaller" });

  test("leaves those alone that are not clearly shorter", () => {
    // It measures 8 cm, and a lead of a fifth of its length decides.
    expect(weights(chases, other(6.3))).toEqual(["restricting"]);
    expect(weights(chases, other(6.4))).toEqual([]);
    expect(weights(chases, other(9))).toEqual([]);
  });

  test("leaves them alone once the plan states that they are long enough", () => {
    const beside = (length?: number) =>
      planBy(actsOthers, [
        { species: chases, unsexed: 1 },
        { species: other(5), unsexed: 1, length },
      ]);
    expect(beside().findings).toMatchObject([
      { weight: "restricting", condition: { on: "group.length", of: 1, wanted: { min: 6.4 } } },
    ]);
    expect(beside(6.3).findings).toHaveLength(1);
    expect(beside(6.4).findings).toEqual([]);
  });

  test("stays open where its own length is unknown, cover or not", () => {
    const unknown = doing({ does: "chases", target: "smaller" }, { "space.zones": ["midwater"] });
    const { size: _, ...unmeasured } = unknown;
    const groups = [
      { species: unmeasured, unsexed: 1 },
      { species: other(5), unsexed: 1 },
    ];
    const { outcome, bounds } = planBy(actsOthers, groups, { tank: { cover: 1 } });
    expect(outcome).toBe("undetermined");
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
  });
});

describe("a guarded brood", () => {
  const guards = (does: Act["does"]) => doing(atAny(does, "guarding-brood"));
  const tankOf = (does: Act["does"], males: number, females: number, cover: number) =>
    weighed(
      planBy(
        actsOthers,
        [
          { species: guards(does), males, females },
          { species: other(), unsexed: 1 },
        ],
        { tank: { cover } },
      ),
    );

  test("needs a pair", () => {
    expect(tankOf("bites", 2, 0, 0)).toEqual({ findings: [], met: [] });
    expect(tankOf("bites", 1, 1, 0)).toEqual({ findings: ["restricting"], met: [] });
  });

  test("is defended with bites whatever the cover, and by chasing as far as there is none", () => {
    expect(tankOf("bites", 1, 1, 1).findings).toEqual(["restricting"]);
    expect(tankOf("chases", 1, 1, 0.3)).toEqual({ findings: [], met: ["restricting"] });
  });

  test("comes just as well where the plan lists male and female apart", () => {
    const groups = [
      { species: guards("bites"), males: 1 },
      { species: guards("bites"), females: 1 },
      { species: other(), unsexed: 1 },
    ];
    expect(weighed(planBy(actsOthers, groups)).findings).toContain("restricting");
  });
});

describe("in a keeper's tank", () => {
  test("a convict cichlid chases a neon; a neon chases nobody", () => {
    const { findings } = pairBy(
      actsOthers,
      { species: amatitlaniaNigrofasciata },
      { species: paracheirodonInnesi },
    );
    expect(findings.length).toBeGreaterThan(0);
    expect(findings.every(({ from }) => from === 0)).toBe(true);
  });

  test("neons and corys leave each other alone", () => {
    expect(
      pairBy(actsOthers, { species: paracheirodonInnesi }, { species: osteogasterAenea }).findings,
    ).toEqual([]);
  });
});
