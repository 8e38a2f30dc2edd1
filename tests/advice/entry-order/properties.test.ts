import fc from "fast-check";
import { expect, test } from "vitest";
import { entryOrder } from "../../../src/advice";
import { assessPlan, type Outcome } from "../../../src/compatibility";
import type { Group, Plan } from "../../../src/plan";
import { factAt } from "../../../src/species";
import { adults, type Stated } from "../../compatibility/animals";
import { planOf } from "../../compatibility/judging";
import { runs } from "../../runs";
import { defender, hunter, newcomer, rules, shy } from "./newcomers";

const sorts: readonly Stated[] = [
  {},
  shy,
  { ...shy, ...defender },
  defender,
  { ...shy, ...hunter, ...defender },
  { ...hunter, "social.settles": false },
  { "size.adultLength": adults(2.2), "space.zones": ["surface"] },
  { "space.grownInPlants": true },
];
const outcomes: readonly Outcome[] = ["suitable", "conditional", "undetermined", "unsuitable"];

const groups = (most: number) =>
  fc
    .array(fc.constantFrom(...sorts), { minLength: 1, maxLength: most })
    .map((stated) => stated.map((one, index) => newcomer(`n${index}`, one)));

const planFor = (company: readonly Group[]): Plan =>
  planOf(company, { tank: { filter: { mediaArea: 20, age: 365 }, plants: "grown-in" } });

/** What speaks against a plan, by the names of the animals. */
function against(company: readonly Group[]) {
  const { outcome, findings, parties } = assessPlan(planFor(company), { rules });
  const reasons = findings.flatMap((finding) =>
    finding.weight === "favourable" || (finding.weight === "advisory" && !finding.couldBe)
      ? []
      : [`${finding.rule} ${parties[finding.from ?? -1]?.id} ${parties[finding.to ?? -1]?.id}`],
  );
  return { outcome, reasons };
}

/** Whether some animals are no worse off than in the whole plan. */
function isAsGood(company: readonly Group[], whole: ReturnType<typeof against>): boolean {
  const { outcome, reasons } = against(company);
  return (
    outcomes.indexOf(outcome) <= outcomes.indexOf(whole.outcome) &&
    reasons.every((reason) => whole.reasons.includes(reason))
  );
}

function permutations<Item>(items: readonly Item[]): readonly (readonly Item[])[] {
  if (items.length === 0) return [[]];
  return items.flatMap((first, index) =>
    permutations(items.filter((_, other) => other !== index)).map((rest) => [first, ...rest]),
  );
}

const defends = ({ species }: Group) => factAt(species, "space.territory")?.value !== "none";

/** How often one that defends a place comes before one that does not. */
const early = (order: readonly Group[]) =>
  order
    .filter(defends)
    .reduce((sum, one) => sum + order.slice(order.indexOf(one)).filter((other) => !defends(other)).length, 0);

test("of all orders of one species after the other it gives one in which fewest defend a place too soon", () => {
  let ordered = 0;
  fc.assert(
    fc.property(groups(4), (company) => {
      const whole = against(company);
      const found = entryOrder(planFor(company), { rules });
      const { steps } = found;
      if (whole.outcome === "unsuitable") {
        expect(found).toMatchObject({ reason: "unsuitable" });
        return;
      }
      const possible = permutations(company).filter((order) =>
        order.every((_, index) => isAsGood(order.slice(0, index + 1), whole)),
      );
      const isInSingles = steps?.every(({ groups: step }) => step.length === 1) ?? false;
      expect(isInSingles).toBe(possible.length > 0);
      if (!isInSingles || !steps) return;
      ordered += 1;
      const order = steps.flatMap(({ groups: step }) => step.flatMap((index) => company[index] ?? []));
      expect(possible).toContainEqual(order);
      expect(early(order)).toBe(Math.min(...possible.map(early)));
      expect(steps.map(({ day }) => day)).toEqual(order.map((_, index) => 30 * (index + 1)));
    }),
    { numRuns: runs(30) },
  );
  expect(ordered).toBeGreaterThan(5);
});

test("six species are ordered as well as any order does", () => {
  const company = [defender, shy, {}, { ...shy, ...defender }, {}, defender].map((one, index) =>
    newcomer(`n${index}`, one),
  );
  const { steps = [] } = entryOrder(planFor(company), { rules });
  const order = steps.flatMap(({ groups: [index = 0] }) => company[index] ?? []);
  const whole = against(company);
  const known = new Map<string, boolean>();
  const passes = (some: readonly Group[]) => {
    const key = some
      .map(({ species }) => species.id)
      .sort()
      .join();
    const isGood = known.get(key) ?? isAsGood(some, whole);
    known.set(key, isGood);
    return isGood;
  };
  const possible = permutations(company).filter((one) =>
    one.every((_, index) => passes(one.slice(0, index + 1))),
  );
  expect(possible).toContainEqual(order);
  expect(early(order)).toBe(Math.min(...possible.map(early)));
});

test("more than six species come in steps that are each as good as the whole", () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom<Stated>({}, shy, defender, { ...shy, ...defender }), {
        minLength: 7,
        maxLength: 10,
      }),
      (stated) => {
        const company = [...stated, {}].map((one, index) => newcomer(`n${index}`, one));
        const whole = against(company);
        const { steps, reason } = entryOrder(planFor(company), { rules });
        if (!steps) throw new Error(`no order: ${reason}`);
        const inside: Group[] = [];
        for (const { groups: step } of steps) {
          inside.push(...step.flatMap((index) => company[index] ?? []));
          expect(isAsGood(inside, whole)).toBe(true);
        }
        expect(inside).toHaveLength(company.length);
      },
    ),
    { numRuns: runs(10) },
  );
});
