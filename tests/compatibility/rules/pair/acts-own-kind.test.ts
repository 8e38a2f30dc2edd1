import { describe, expect, test } from "vitest";
import amatitlaniaNigrofasciata from "vivary/catalog/amatitlania-nigrofasciata";
import ancistrusCirrhosus from "vivary/catalog/ancistrus-cirrhosus";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import { actsOwnKind } from "../../../../src/compatibility/rules/pair/acts-own-kind";
import type { TraitValue as Value } from "../../../../src/species";
import { animal, type Stated } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

type Act = Value<"temperament.acts">[number];

const doing = (act: Act, more: Stated = {}) => animal("doer", { "temperament.acts": [act], ...more });
/** Two of them, judged once from one to the other. */
const two = (act: Act, more?: Stated) => {
  const species = doing(act, more);
  return pairBy(actsOwnKind, { species }, { species }).findings.filter(({ from }) => from === 0);
};
const shoal: Stated = { "social.living": "shoal", "social.group": { least: 6 } };

describe("what weighs how much", () => {
  test("killing blocks, and so does biting anyone at any time", () => {
    expect(two({ does: "kills", target: "own-kind" })).toMatchObject([{ weight: "blocking" }]);
    expect(two({ does: "kills", target: "own-kind", when: "breeding" })).toMatchObject([
      { weight: "blocking" },
    ]);
    expect(two({ does: "bites", target: "any" })).toMatchObject([{ weight: "blocking" }]);
  });

  test("other bites and chases restrict", () => {
    expect(two({ does: "bites", target: "any", when: "crowded" })).toMatchObject([{ weight: "restricting" }]);
    expect(two({ does: "bites", target: "own-kind" })).toMatchObject([{ weight: "restricting" }]);
    expect(two({ does: "chases", target: "own-sex" })).toMatchObject([{ weight: "restricting" }]);
  });

  test("what happens at food only, or does no harm, is worth knowing", () => {
    expect(two({ does: "chases", target: "own-kind", when: "feeding" })).toMatchObject([
      { weight: "advisory" },
    ]);
    expect(two({ does: "robs-food", target: "own-kind" })).toMatchObject([{ weight: "advisory" }]);
  });

  test("acts at other species are none of this rule's", () => {
    expect(two({ does: "bites", target: "look-alike" })).toEqual([]);
    const [species, other] = [doing({ does: "kills", target: "own-kind" }), animal("other", {})];
    expect(pairBy(actsOwnKind, { species }, { species: other }).findings).toEqual([]);
  });
});

describe("males that chase each other", () => {
  const act = { does: "chases", doer: "male", target: "own-sex" } as const;
  const species = doing(act);

  test("need another male to chase", () => {
    expect(pairBy(actsOwnKind, { species, sex: "male" }, { species, sex: "male" }).outcome).toBe(
      "conditional",
    );
    expect(pairBy(actsOwnKind, { species, sex: "male" }, { species, sex: "female" }).outcome).toBe(
      "suitable",
    );
    expect(pairBy(actsOwnKind, { species, sex: "female" }, { species, sex: "female" }).outcome).toBe(
      "suitable",
    );
  });

  test("leave a group with one male in peace", () => {
    const among = (males: number, females: number) =>
      weighed(planBy(actsOwnKind, [{ species, males, females }])).findings;
    expect(among(1, 4)).toEqual([]);
    expect(among(2, 3)).toEqual(["restricting"]);
    expect(planBy(actsOwnKind, [{ species, males: 2 }]).findings).toMatchObject([
      { condition: { on: "group.males", of: 0, wanted: { max: 1 } } },
    ]);
  });

  test("may be among animals whose sex nobody knows", () => {
    const { bounds, open } = planBy(actsOwnKind, [{ species, unsexed: 5 }]);
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
    expect(open).toContainEqual(
      expect.objectContaining({ input: "group.males", of: 0, reason: "not-given" }),
    );
  });

  test("are two males in one tank even if the plan lists them apart", () => {
    expect(weighed(planBy(actsOwnKind, [{ species, males: 2 }])).findings).toContain("restricting");
    const apart = [
      { species, males: 1 },
      { species, males: 1 },
    ];
    expect(weighed(planBy(actsOwnKind, apart)).findings).toContain("restricting");
  });
});

test("males that wear out females do so with females only, and less where there are enough", () => {
  const species = doing(
    { does: "chases", doer: "male", target: "other-sex" },
    { "social.femalesPerMale": 2 },
  );
  const among = (males: number, females: number) =>
    weighed(planBy(actsOwnKind, [{ species, males, females }]));
  expect(among(2, 0)).toEqual({ findings: [], met: [] });
  expect(among(1, 1)).toEqual({ findings: ["restricting"], met: [] });
  expect(among(1, 2)).toEqual({ findings: [], met: ["restricting"] });
});

test("males that wear out females do so with any, where no number is known", () => {
  const species = doing({ does: "chases", doer: "male", target: "other-sex" });
  expect(planBy(actsOwnKind, [{ species, males: 1, females: 9 }]).findings).toMatchObject([
    { weight: "restricting", condition: { on: "group.pairs", of: 0, wanted: { max: 0 } } },
  ]);
});

describe("how many of them spread the harm", () => {
  const chases = { does: "chases", target: "own-kind" } as const;
  const among = (unsexed: number, more: Stated) =>
    weighed(planBy(actsOwnKind, [{ species: doing(chases, more), unsexed }]));

  test("a shoal large enough", () => {
    expect(among(5, shoal)).toEqual({ findings: ["restricting"], met: [] });
    expect(among(6, shoal)).toEqual({ findings: [], met: ["restricting"] });
  });

  test("a pair no more than two", () => {
    expect(among(2, { "social.living": "pair" })).toEqual({ findings: [], met: ["restricting"] });
    expect(among(3, { "social.living": "pair" })).toEqual({ findings: ["restricting"], met: [] });
  });

  test("a loner none", () => {
    expect(among(2, { "social.living": "alone" })).toEqual({ findings: ["restricting"], met: [] });
    expect(among(1, { "social.living": "alone" })).toEqual({ findings: [], met: [] });
  });

  test("nobody knows where the way of living is unknown", () => {
    const { bounds, open } = planBy(actsOwnKind, [{ species: doing(chases), unsexed: 9 }]);
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
    expect(open).toContainEqual(expect.objectContaining({ trait: "social.living", reason: "missing" }));
  });
});

describe("breeding", () => {
  const guards = (does: "chases" | "bites") =>
    doing({ does, target: "own-kind", when: "guarding-brood" }, { "social.living": "pair" });

  test("comes only where both sexes may be", () => {
    const species = guards("bites");
    expect(weighed(planBy(actsOwnKind, [{ species, females: 4 }])).findings).toEqual([]);
    expect(weighed(planBy(actsOwnKind, [{ species, males: 1, females: 2 }])).findings).toEqual([
      "restricting",
    ]);
    expect(weighed(planBy(actsOwnKind, [{ species, males: 1, females: 1 }])).findings).toEqual([]);
  });

  test("leaves a pair by itself", () => {
    expect(planBy(actsOwnKind, [{ species: guards("bites"), unsexed: 4 }]).findings).toMatchObject([
      { condition: { on: "group.count", of: 0, wanted: { max: 2 } } },
    ]);
  });

  test("may come among animals whose sex nobody knows", () => {
    const species = doing(
      { does: "bites", target: "own-kind", when: "guarding-brood" },
      { "social.living": "group", "social.group": { least: 5 } },
    );
    const { bounds, open } = planBy(actsOwnKind, [{ species, unsexed: 4 }]);
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
    expect(open).toContainEqual(
      expect.objectContaining({ input: "group.pairs", of: 0, reason: "not-given" }),
    );
  });

  test("comes just as well where the plan lists male and female apart", () => {
    const species = guards("bites");
    const apart = [
      { species, males: 1 },
      { species, females: 2 },
    ];
    expect(weighed(planBy(actsOwnKind, apart)).findings).toContain("restricting");
    expect(pairBy(actsOwnKind, { species, sex: "male" }, { species, sex: "female" }).outcome).toBe(
      "conditional",
    );
  });

  test("parents that only drive others away need cover", () => {
    const groups = [{ species: guards("chases"), males: 1, females: 2 }];
    expect(weighed(planBy(actsOwnKind, groups, { tank: { cover: 0.3 } }))).toEqual({
      findings: [],
      met: ["restricting"],
    });
    expect(weighed(planBy(actsOwnKind, groups, { tank: { cover: 0.2 } })).findings).toEqual(["restricting"]);
  });
});

describe("young animals grow up", () => {
  const once = { value: "adult" };

  test("what they do from a stage on they will do, and the finding says so", () => {
    const species = doing({ does: "chases", target: "own-kind", from: "adult" }, shoal);
    const [young] = planBy(actsOwnKind, [{ species, juveniles: 3 }]).findings;
    expect(young).toMatchObject({ weight: "restricting", measures: { once } });
    const [grown] = planBy(actsOwnKind, [{ species, unsexed: 3 }]).findings;
    expect(grown).toMatchObject({ weight: "restricting" });
    expect(grown?.measures).not.toHaveProperty("once");
  });

  test("and they will breed", () => {
    const species = doing({ does: "bites", target: "own-kind", when: "guarding-brood" });
    expect(planBy(actsOwnKind, [{ species, juveniles: 4 }]).findings).toMatchObject([{ measures: { once } }]);
  });
});

describe("in a keeper's tank", () => {
  test("two male bettas kill each other", () => {
    const male = { species: bettaSplendens, sex: "male" } as const;
    expect(pairBy(actsOwnKind, male, male).outcome).toBe("unsuitable");
    expect(planBy(actsOwnKind, [{ species: bettaSplendens, males: 2 }]).outcome).toBe("unsuitable");
    expect(
      planBy(actsOwnKind, [
        { species: bettaSplendens, males: 1 },
        { species: bettaSplendens, form: "plakat", males: 1 },
      ]).outcome,
    ).toBe("unsuitable");
  });

  test("a betta alone is at peace", () => {
    expect(planBy(actsOwnKind, [{ species: bettaSplendens, males: 1 }]).outcome).toBe("suitable");
  });

  test("tiger barbs and danios chase each other, and spread it in a shoal", () => {
    for (const species of [puntigrusTetrazona, danioRerio]) {
      expect(planBy(actsOwnKind, [{ species, unsexed: 3 }]).outcome).toBe("conditional");
      expect(planBy(actsOwnKind, [{ species, unsexed: 12 }]).outcome).toBe("suitable");
    }
  });

  test("white clouds leave each other alone", () => {
    expect(planBy(actsOwnKind, [{ species: tanichthysAlbonubes, unsexed: 2 }]).findings).toEqual([]);
  });

  test("bristlenoses live as one male with females", () => {
    const species = ancistrusCirrhosus;
    expect(planBy(actsOwnKind, [{ species, males: 2, females: 2 }]).outcome).toBe("conditional");
    expect(planBy(actsOwnKind, [{ species, males: 1, females: 2 }], { tank: { cover: 0.4 } }).outcome).toBe(
      "suitable",
    );
  });

  test("convict cichlids beside the pair are bitten", () => {
    expect(
      planBy(actsOwnKind, [{ species: amatitlaniaNigrofasciata, males: 2, females: 2 }]).outcome,
    ).not.toBe("suitable");
  });
});
