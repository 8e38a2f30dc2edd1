import { describe, expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import { partiesOf, partiesOfGroups } from "../../src/plan/party";
import { applyForm } from "../../src/species";

const animalsOf = (group: object) => partiesOfGroups([{ species: danioRerio, ...group }])[0]?.animals;

describe("a group", () => {
  test.each([
    ["of both sexes", { males: 2, females: 4 }, { count: 6, males: 2, females: 4 }],
    ["of males", { males: 2 }, { count: 2, males: 2, females: 0, sex: "male" }],
    ["of females", { females: 4 }, { count: 4, males: 0, females: 4, sex: "female" }],
    ["of the young", { juveniles: 5 }, { count: 5, stage: "juvenile" }],
    ["of a temper", { unsexed: 6, temper: "bully" }, { count: 6, temper: "bully" }],
    ["that is to raise young", { unsexed: 6, raises: true }, { count: 6, raises: true }],
    ["of a length", { unsexed: 6, length: 3 }, { count: 6, length: 3 }],
  ])("%s is one", (_, group, animals) => {
    expect(animalsOf(group)).toMatchObject(animals);
  });

  test("of the unsexed has no sex, no stage and no number of either sex", () => {
    expect(Object.keys(animalsOf({ unsexed: 6 }) ?? {}).sort()).toEqual(
      ["id", "kind", "family", "order", "count", "kin", "listings"].sort(),
    );
  });
  test("of unsexed beside males says that some are male", () => {
    expect(animalsOf({ unsexed: 6, males: 1 })).toMatchObject({ count: 7, some: { male: 1 } });
    expect(animalsOf({ unsexed: 6, males: 1 })).not.toHaveProperty("males");
  });

  test("of typical temper, or that raises none, is one of which nothing is said", () => {
    expect(animalsOf({ unsexed: 6, temper: "typical", raises: false })).toEqual(animalsOf({ unsexed: 6 }));
  });

  test("of young and grown has no stage", () => {
    expect(animalsOf({ juveniles: 5, males: 1 })).not.toHaveProperty("stage");
  });

  test("keeps the id that the plan gives it", () => {
    const [named, unnamed] = partiesOfGroups([
      { id: "mine", species: danioRerio, unsexed: 6 },
      { species: danioRerio, unsexed: 4 },
    ]);
    expect(named?.groupId).toBe("mine");
    expect(unnamed).not.toHaveProperty("groupId");
  });

  test("counts its own kind over all groups, whatever their form", () => {
    const parties = partiesOfGroups([
      { species: puntigrusTetrazona, males: 3, females: 3 },
      { species: puntigrusTetrazona, form: "long-fin", males: 1, females: 1 },
      { species: danioRerio, unsexed: 8 },
    ]);
    expect(parties.map(({ animals }) => animals.kin.count)).toEqual([8, 8, 8]);
    expect(parties[1]?.animals.kin).toMatchObject({ males: 4, females: 4 });
    expect(parties[2]?.animals.kin).not.toHaveProperty("males");
  });
});

describe("a form", () => {
  const longFin = applyForm(puntigrusTetrazona, "long-fin");

  test("is the same party however it is given", () => {
    const ways = [
      { species: puntigrusTetrazona, form: "long-fin" },
      { species: longFin },
      { species: longFin, form: "long-fin" },
    ];
    const [first, ...others] = ways.map((way) => partiesOf([{ ...way, count: 6 }])[0]);
    expect(first?.animals.form).toBe("long-fin");
    for (const other of others) expect(other).toEqual(first);
  });
});

describe("one of a pair", () => {
  const [party] = partiesOf([{ species: danioRerio, sex: "male", count: 3 }]);

  test("counts its sex where both are known", () => {
    expect(party?.animals).toMatchObject({ sex: "male", count: 3, males: 3, females: 0 });
  });

  test("has no number that nobody gave", () => {
    expect(partiesOf([{ species: danioRerio, sex: "male" }])[0]?.animals).not.toHaveProperty("males");
    expect(partiesOf([{ species: danioRerio, count: 3 }])[0]?.animals).not.toHaveProperty("females");
  });
});
