import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import hoplisomaPanda from "vivary/catalog/hoplisoma-panda";
import trichogasterLalius from "vivary/catalog/trichogaster-lalius";
import { type EntryOrder, type EntryReason, entryOrder, type NoEntryOrder } from "../../../../src/advice";
import type { Plan } from "../../../../src/plan";
import { describeEntryOrder, describeEntryOrderIn, english } from "../../../../src/report";
import { germanAdvice } from "../../../../src/report/de";

const plan: Plan = {
  tank: {
    base: { shape: "rectangle", length: 120, width: 50 },
    height: 45,
    cover: 0.4,
    lid: true,
    plants: "planted",
    filter: { mediaArea: 4, age: 120 },
  },
  water: { temperature: 25 },
  groups: [
    { species: danioRerio, unsexed: 10, entersOn: -90 },
    { species: hoplisomaPanda, unsexed: 6 },
    { species: trichogasterLalius, males: 1, females: 2, entersOn: 100 },
  ],
};
const order = entryOrder(plan);
const flat = (text: string) => text.replaceAll(/\s+/g, " ");

describe("an order of entry in words", () => {
  test("says who is there, who comes from which day on, and why", () => {
    expect(
      describeEntryOrder(order, plan),
    ).toBe(`Days count from the day on which the tank is set up; each is the soonest that
will do.

In the tank already
- 10 zebra danios (Danio rerio).
- As far as known, those that are in by then give off 1.6 to 4.9 mg of ammonia
  nitrogen a day once grown; the filter takes up 80 to 400 mg.
- With all that are in by then the plan is conditional: its report tells what
  must change.

From day 30
- 6 panda corydoras (Hoplisoma panda).
- Quarantine ends on day 30.
- As far as known, those that are in by then give off 2.5 to 15 mg of ammonia
  nitrogen a day once grown; the filter takes up 80 to 400 mg.

From day 100
- 3 dwarf gouramis (Trichogaster lalius; 1 male and 2 females).
- Quarantine ends on day 60.
- By day 44 the filter takes up what those before give off, if it is large
  enough.
- Plants set on the first day have grown in by day 56.
- The plan says day 100 at the soonest.
- Dwarf gouramis defend a place, which later comers would have to win.
- As far as known, those that are in by then give off 3.9 to 40 mg of ammonia
  nitrogen a day once grown; the filter takes up 80 to 400 mg.

${english.closing.replace("a second tank", "a second\ntank")}`);
  });

  test("says the same in German", () => {
    const german = describeEntryOrderIn(germanAdvice, order, plan);
    expect(german).toBe(describeEntryOrder(order, plan, { messages: germanAdvice }));
    expect(german).toContain("Ab Tag 100\n- 3 Zwergfadenfische");
    expect(flat(german)).toContain(
      "Zwergfadenfische verteidigen ein Revier, das später Kommende erst erobern müssten.",
    );
  });

  test("promises nothing of a filter that is too small", () => {
    const small = { ...plan, tank: { ...plan.tank, filter: { mediaArea: 0, age: 120 } } };
    const told = flat(describeEntryOrder(entryOrder(small), small));
    expect(told).toContain("takes up none as it stands in the plan");
    expect(told).not.toMatch(/takes up what those before give off(?!, if)/);
  });

  test("tells of a filter that ripens that it has to be fed until then", () => {
    const young = {
      ...plan,
      tank: { ...plan.tank, filter: { mediaArea: 4, age: 0 } },
      groups: plan.groups.slice(1),
    };
    expect(flat(describeEntryOrder(entryOrder(young), young))).toContain(
      "Fed with ammonia until animals are there, the filter is surely ripe by day 56.",
    );
  });
});

describe("a reason for the place in an order", () => {
  const because = (reason: EntryReason, groups: readonly number[] = [2], units?: "us") => {
    const others = [0, 1, 2].filter((group) => !groups.includes(group));
    const steps = [
      { day: 0, groups: others, because: [], outcome: "suitable" as const },
      { day: 50, groups, because: [reason], outcome: "suitable" as const },
    ];
    const text = describeEntryOrder({ steps }, plan, { units }).replaceAll("\n  ", " ").split("\n");
    return text[text.indexOf("From day 50") + 2]?.slice(2);
  };

  test("gives the length to grow to in the reader's units, the day only where it is known", () => {
    expect(because({ reason: "others-grow", group: 1, length: 3.2, day: 120 })).toBe(
      "First panda corydoras have to measure at least 3.5 cm, likely by day 120: the length counts, not the day.",
    );
    expect(because({ reason: "others-grow", group: 1, length: 3.2 }, [2], "us")).toBe(
      "First panda corydoras have to measure at least 1.4 in; nobody knows when that is: the length counts, not the day.",
    );
  });

  test("names those that have to be there before, and what is at stake, each thing once", () => {
    expect(
      because({ reason: "others-first", groups: [0, 1], rules: ["settling-company", "ph", "water-ph"] }),
    ).toBe("Zebra danios and panda corydoras have to be there before (calm company; pH).");
    expect(because({ reason: "others-first", groups: [0], rules: ["x-light"] })).toBe(
      "Zebra danios have to be there before (x-light).",
    );
  });

  test("counts days in whole ones, and no sooner than the plan says", () => {
    expect(because({ reason: "stated-day", day: 40.2 })).toBe("The plan says day 41 at the soonest.");
  });

  test("is said of some where those that come are of several species", () => {
    expect(because({ reason: "defends-place" }, [1, 2])).toBe(
      "Some of these defend a place, which later comers would have to win.",
    );
    expect(because({ reason: "may-eat", groups: [0] }, [1, 2])).toBe(
      "Some of these may eat zebra danios, which know the tank by then.",
    );
    expect(because({ reason: "together" }, [1, 2])).toBe(
      "They come on one day, since none of them may come before the others.",
    );
  });
});

describe("where there is no order", () => {
  const two = {
    ...plan,
    groups: [
      { species: bettaSplendens, males: 1 },
      { species: danioRerio, unsexed: 8 },
    ],
  };
  const none = (
    reason: NoEntryOrder["reason"],
    groups: readonly number[] = [0],
    rules: readonly string[] = [],
  ) => flat(describeEntryOrder({ reason, groups, rules }, two));

  test("the reason is told, whom it is about and what speaks against it", () => {
    expect(none("unsuitable", [0, 1], ["fin-nipping", "predation"])).toBe(
      "No order of entry: the plan as a whole is unsuitable. What is amiss: nipped fins and who eats whom.",
    );
    expect(none("others-there")).toBe(
      "No order of entry: the Siamese fighting fish is too short as yet for animals that live in the tank already.",
    );
    expect(none("both-grow-first", [0, 1])).toContain("(the Siamese fighting fish and zebra danios)");
    expect(none("worse-before", [1])).toContain("whichever comes next (zebra danios)");
    expect(none("not-found", [0, 1])).toContain("not every order is tried");
  });
});

test("Markdown has a heading for each day", () => {
  const marked = describeEntryOrder(order, plan, { format: "markdown" });
  expect(marked.match(/^## .*$/gm)).toEqual(["## In the tank already", "## From day 30", "## From day 100"]);
});

describe("what is no order of the plan is refused by its path", () => {
  const [step] = order.steps ?? [];
  test.each<readonly [string, unknown, RegExp]>([
    ["nothing", undefined, /^order: /],
    ["an order without steps", {}, /^order\.reason/],
    ["an order whose steps are gone", { steps: undefined }, /^order\.steps/],
    ["the order of fewer groups", { steps: [step] }, /^order\.steps/],
    ["a group that is not there", { steps: [{ ...step, groups: [7] }] }, /^order\.steps\[0\]\.groups/],
    ["a reason nobody knows", { reason: "moon", groups: [], rules: [] }, /^order\.reason/],
    [
      "a reason of a step nobody knows",
      { steps: [{ ...step, because: [{ reason: "moon" }] }] },
      /^order\.steps\[0\]\.because\[0\]\.reason/,
    ],
    ["an outcome nobody knows", { steps: [{ ...step, outcome: "fine" }] }, /^order\.steps\[0\]\.outcome/],
  ])("%s", (_, given, path) => {
    expect(() => describeEntryOrder(given as EntryOrder, plan)).toThrow(path);
  });

  test("and so is what is no plan", () => {
    expect(() => describeEntryOrder(order, {} as Plan)).toThrow(/^plan\.tank/);
  });
});
