import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findSpecies, speciesById } from "vivary/catalog";
import danioRerio from "vivary/catalog/danio-rerio";
import { assessPlan, planner } from "../../../src/compatibility";
import { describeProblem, InvalidInputError, type Problem } from "../../../src/errors";
import { type Plan, parsePlan, planData, type SpeciesLookup, safeParsePlan } from "../../../src/plan";
import type { SpeciesProfile } from "../../../src/species";
import { impossible, misshapen, saved, withGroup, withTank } from "./cases";

const problemsOf = (plan: unknown, lookup: SpeciesLookup = speciesById): readonly Problem[] => {
  const parsed = safeParsePlan(plan, lookup);
  return parsed.success ? [] : parsed.problems;
};
const at = ({ path }: Problem) => path.join(".");
const byFirstName: SpeciesLookup = (name) => findSpecies(name)[0];

describe("a plan with one mistake is refused for that mistake alone", () => {
  test.each([...misshapen, ...impossible])("%s", (_, plan, path, code) => {
    expect(problemsOf(plan).map((problem) => [at(problem), problem.code])).toEqual([[path, code]]);
  });
});

test("every mistake is told at once, those of shape beside those that contradict", () => {
  const plan = {
    format: 3,
    tank: {
      base: { shape: "rectangle", length: -80, width: -35 },
      height: 0,
      glass: -0.5,
      flow: { calmest: "strong", strongest: "gentle" },
      covr: 0.3,
    },
    water: { pH: "7", hottest: 20, coolest: 22 },
    groups: [
      { id: "a", species: "danio-rerio", form: "long-finn", unsexed: "8" },
      { id: "a", species: "unicornis-verus", males: 0 },
    ],
    offerings: [{ food: "dri", place: "midwater" }],
  };
  expect(problemsOf(plan).map((problem) => [at(problem), problem.code])).toEqual(
    expect.arrayContaining([
      ["format", "unknown-format"],
      ["tank.base.length", "range"],
      ["tank.base.width", "range"],
      ["tank.height", "range"],
      ["tank.glass", "range"],
      ["tank.flow.strongest", "conflict"],
      ["tank.covr", "unknown-key"],
      ["water.pH", "type"],
      ["water.hottest", "conflict"],
      ["groups.0.unsexed", "type"],
      ["groups.0.form", "unknown-form"],
      ["groups.1.species", "unknown-species"],
      ["groups.1", "range"],
      ["groups.1.id", "conflict"],
      ["offerings.0.food", "word"],
    ]),
  );
  expect(problemsOf(plan)).toHaveLength(15);
});

describe("a problem helps", () => {
  const said = (plan: unknown) => problemsOf(plan).map(describeProblem);

  test("by telling a text from a number", () => {
    expect(said(withGroup({ unsexed: "7" }))).toEqual([
      'groups[1].unsexed: expected a whole number from 0 to 1000000, found "7"',
    ]);
    expect(said({ ...saved, tank: null })).toEqual(["tank: expected an object, found null"]);
  });

  test.each([
    [withTank({ covr: 0.3 }), "(cover?)"],
    [withTank({ Lid: true }), "(lid?)"],
    [withGroup({ male: 3 }), "(males?)"],
    [withTank({ plants: "grown in" }), "(grown-in?)"],
    [withGroup({ form: "long-fins" }), "(long-fin?)"],
    [{ ...saved, group: [] }, "(groups?)"],
  ])("by naming what was probably meant: %#", (plan, meant) => {
    expect(said(plan)).toEqual([expect.stringContaining(meant)]);
  });

  test("by naming nothing where nothing is near", () => {
    expect(said(withTank({ xylophone: 1 }))).toEqual([expect.not.stringContaining("?")]);
  });
});

describe("a species by another name than its id", () => {
  test.each([
    ["an id it once bore", "corydoras-paleatus", "hoplisoma-paleatum", speciesById],
    ["a synonym", "Barbus tetrazona", "puntigrus-tetrazona", byFirstName],
    ["the accepted name", "Danio rerio", "danio-rerio", byFirstName],
    ["a vernacular name", "Zebra Danio", "danio-rerio", byFirstName],
  ])("is found by %s, and told", (_, name, id, lookup) => {
    const { plan, renamed } = parsePlan(withGroup({ species: name }), lookup);
    expect(plan.groups[1]?.species.id).toBe(id);
    expect(renamed).toEqual([{ path: ["groups", 1, "species"], from: name, to: id }]);
  });

  test("is the form, where the name is a form's", () => {
    const { plan } = parsePlan(withGroup({ species: "long-fin tiger barb" }), byFirstName);
    expect(plan.groups[1]?.species.form).toBe("long-fin");
    expect(
      problemsOf(withGroup({ species: "long-fin tiger barb", form: "albino" }), byFirstName),
    ).toMatchObject([{ path: ["groups", 1, "form"], code: "conflict" }]);
  });

  test("its id needs no telling", () => {
    expect(parsePlan(saved, speciesById).renamed).toEqual([]);
  });
});

describe("a form", () => {
  const { plan } = parsePlan(saved, speciesById);

  test("stays beside the profile that the lookup gave, as a condition on it and its field have it", () => {
    expect(plan.groups[0]).toEqual({ ...saved.groups[0], species: speciesById("puntigrus-tetrazona") });
  });

  test.each(["green", undefined])("can be changed in a planner: %s", (form) => {
    const changed = planner(plan).with({ groups: { 0: { form } } });
    expect(changed.verdict.parties[0]?.form).toBe(form);
    expect(planData(changed.plan).groups[0]?.form).toBe(form);
  });
});

describe("a form that had another id once", () => {
  const { forms = {} } = danioRerio;
  const [[id, form] = ["", undefined]] = Object.entries(forms);
  const renamed: SpeciesProfile = {
    ...danioRerio,
    forms: { ...forms, ...(form && { [id]: { ...form, once: ["veil-tail", "leopard"] } }) },
  };
  const opened = (name: string) =>
    parsePlan(withGroup({ form: name }), (of) => (of === "danio-rerio" ? renamed : speciesById(of)));

  test("is found by it, and told", () => {
    const { plan, renamed: told } = opened("veil-tail");
    expect(plan.groups[1]?.form).toBe(id);
    expect(told).toEqual([{ path: ["groups", 1, "form"], from: "veil-tail", to: id }]);
  });

  test("gives way to the form that bears the id now", () => {
    expect(opened("leopard").plan.groups[1]?.form).toBe("leopard");
    expect(opened("leopard").renamed).toEqual([]);
  });
});

describe("a lookup", () => {
  test("that throws makes its species unknown, and hides no other mistake", () => {
    const problems = problemsOf(withTank({ covr: 1 }), (name) => {
      if (name === "danio-rerio") throw new Error("offline");
      return speciesById(name);
    });
    expect(problems).toMatchObject([
      { path: ["tank", "covr"] },
      { path: ["groups", 1, "species"], found: "danio-rerio", expected: expect.stringContaining("offline") },
    ]);
  });

  test("is asked for nothing that is no name", () => {
    const asked: string[] = [];
    const lookup: SpeciesLookup = (name) => {
      asked.push(name);
      return undefined;
    };
    for (const species of [7, null, "", "x".repeat(100_000), ["danio-rerio"]]) {
      problemsOf(withGroup({ species }), lookup);
    }
    expect(new Set(asked)).toEqual(new Set(["puntigrus-tetrazona"]));
  });

  test("is asked for no more groups than are judged at once", () => {
    let asked = 0;
    const lookup: SpeciesLookup = (name) => {
      asked += 1;
      return speciesById(name);
    };
    problemsOf({ ...saved, groups: Array(10_000).fill(saved.groups[1]) }, lookup);
    expect(asked).toBeLessThanOrEqual(100);
  });

  test("that gives a promise is told to wait for it", () => {
    const lookup = async (name: string) => speciesById(name);
    const problems = problemsOf(saved, lookup as unknown as SpeciesLookup);
    expect(problems.map(at)).toEqual(["groups.0.species", "groups.1.species"]);
    expect(problems[0]?.expected).toContain("promise");
  });

  test.each([7, "danio-rerio", true, [], {}, { id: "danio-rerio" }, Symbol("danio"), () => danioRerio])(
    "that gives rubbish is refused: %#",
    (rubbish) => {
      const problems = problemsOf(saved, () => rubbish as unknown as SpeciesProfile);
      expect(problems.length).toBeGreaterThanOrEqual(2);
      for (const { path } of problems) expect(path.slice(0, 3)).toEqual(["groups", path[1], "species"]);
    },
  );

  test.each([undefined, null, "catalog", { get: speciesById }, new Map()])(
    "that is none is refused: %#",
    (lookup) => {
      expect(Reflect.apply(safeParsePlan, undefined, [saved, lookup])).toMatchObject({
        success: false,
        problems: [{ path: ["lookup"], code: "type" }],
      });
    },
  );
});

/** What a function throws. */
const thrownBy = (run: () => unknown) => {
  try {
    run();
  } catch (error) {
    return error;
  }
  return undefined;
};

describe("parsePlan and assessPlan", () => {
  test.each([...misshapen, ...impossible])("throw every problem in one error: %s", (_, plan) => {
    const error = thrownBy(() => parsePlan(plan, speciesById));
    expect(error).toBeInstanceOf(InvalidInputError);
    expect(error).toMatchObject({ problems: problemsOf(plan) });
  });

  /** The plan with the profiles in place of names, as an app without `parsePlan` makes it. */
  const withProfiles = (plan: unknown): unknown => {
    const { format: _, groups, ...rest } = Object(plan);
    const profileOf = (group: unknown) =>
      typeof group === "object" && group ? { ...group, species: speciesById(Object(group).species) } : group;
    return { ...rest, groups: Array.isArray(groups) ? groups.map(profileOf) : groups };
  };
  const aboutPlans = [...misshapen, ...impossible].filter(
    ([, plan, path]) => Object(plan).tank && !/species|^format/.test(path),
  );

  test.each(aboutPlans)("agree on %s", (_, plan) => {
    const error = thrownBy(() => assessPlan(withProfiles(plan) as Plan));
    expect(error).toBeInstanceOf(InvalidInputError);
    expect((error as InvalidInputError).problems).toEqual(problemsOf(plan));
  });
});

describe("whatever comes", () => {
  const answers = (input: unknown, lookup: unknown = speciesById) => {
    const parsed = Reflect.apply(safeParsePlan, undefined, [input, lookup]);
    if (!parsed.success) {
      expect(parsed.problems.length).toBeGreaterThan(0);
      expect(new InvalidInputError(parsed.problems).message.length).toBeGreaterThan(0);
    }
    return parsed.success;
  };
  const boom = () => {
    throw new Error("boom");
  };

  test("any JSON has an answer", () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => typeof answers(value) === "boolean"));
  });

  test("any JSON within a plan has an answer", () => {
    const keys = ["format", "tank", "water", "groups", "offerings"];
    fc.assert(
      fc.property(fc.constantFrom(...keys), fc.jsonValue(), (key, value) => {
        answers({ ...saved, [key]: value });
        answers(withTank({ [key]: value, base: value }));
        answers(withGroup({ species: value, form: value, unsexed: value }));
      }),
    );
  });

  test("anything at all has an answer", () => {
    const anything = fc.anything({
      withBigInt: true,
      withDate: true,
      withMap: true,
      withNullPrototype: true,
      withSparseArray: true,
      withTypedArray: true,
    });
    fc.assert(
      fc.property(anything, (value) => {
        answers(value);
        answers({ ...saved, tank: value });
        answers({ ...saved, groups: [value] });
        answers(saved, () => value);
      }),
    );
  });

  const cycle: Record<string, unknown> = { ...saved };
  cycle.tank = cycle;
  const revoked = Proxy.revocable({}, {});
  revoked.revoke();
  const revokedList = Proxy.revocable([], {});
  revokedList.revoke();
  const nested = (depth: number) => {
    let value: unknown = [];
    for (let at = 0; at < depth; at++) value = [value];
    return value;
  };
  const hostile: readonly (readonly [string, unknown])[] = [
    ["a cycle", cycle],
    ["a revoked proxy", revoked.proxy],
    ["endless nesting", nested(100_000)],
    ["a getter that throws", Object.defineProperty({}, "tank", { enumerable: true, get: boom })],
    ["a proxy that throws", new Proxy({}, { get: boom, ownKeys: boom, has: boom })],
    ["a function", () => saved],
    ["a symbol", Symbol("plan")],
    ["a big number", 7n],
    ["an object that is no text", { toString: boom, toJSON: boom, [Symbol.toPrimitive]: boom }],
    ["a revoked list", revokedList.proxy],
  ];

  test.each(hostile)("%s is refused, wherever it stands", (_, value) => {
    expect(answers(value)).toBe(false);
    expect(answers({ ...saved, tank: value })).toBe(false);
    expect(answers({ ...saved, groups: value })).toBe(false);
    expect(answers({ ...saved, groups: [value] })).toBe(false);
    expect(answers(withGroup({ species: value }))).toBe(false);
    expect(answers(withGroup({ unsexed: value }))).toBe(false);
    expect(answers(withTank({ cover: value }))).toBe(false);
    expect(answers({ ...saved, strange: value })).toBe(false);
    expect(answers(saved, () => value)).toBe(false);
  });

  test("a key of another's prototype is a key that nothing reads", () => {
    const plan = JSON.parse(`{ "__proto__": { "polluted": true }, ${JSON.stringify(saved).slice(1)}`);
    expect(problemsOf(plan).map(at)).toEqual(["__proto__"]);
    expect(Object(parsePlan(saved, speciesById).plan).polluted).toBeUndefined();
  });

  test("a thousand mistakes are told in good time", () => {
    const keys = Object.fromEntries(Array.from({ length: 5000 }, (_, index) => [`key${index}`, 1]));
    expect(problemsOf(withTank(keys))).toHaveLength(5000);
  });
});
