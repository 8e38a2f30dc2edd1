import fc from "fast-check";
import { expect, test } from "vitest";
import { solve } from "yalps";
import { setPoint, type WaterAxis } from "../../../src/advice";
import { assessPlan, thresholds } from "../../../src/compatibility";
import { generalHardness } from "../../../src/compatibility/rules/pair/general-hardness";
import { ph } from "../../../src/compatibility/rules/pair/ph";
import { salinity } from "../../../src/compatibility/rules/pair/salinity";
import { temperature } from "../../../src/compatibility/rules/pair/temperature";
import { waterHardness } from "../../../src/compatibility/rules/plan/water-hardness";
import { waterPh } from "../../../src/compatibility/rules/plan/water-ph";
import { waterSalinity } from "../../../src/compatibility/rules/plan/water-salinity";
import { waterTemperature } from "../../../src/compatibility/rules/plan/water-temperature";
import type { PlannedWater } from "../../../src/plan";
import type { PartialRange } from "../../../src/ranges";
import { factAt, type SpeciesProfile } from "../../../src/species";
import { unionizedAmmoniaFraction } from "../../../src/water";
import { planOf } from "../../compatibility/judging";
import { anySpecies } from "../../drawn";
import { runs } from "../../runs";
import { largestCompany, share, type Terms } from "./companies";
import { swimmers } from "./waters";

const rules = [
  temperature,
  ph,
  generalHardness,
  salinity,
  waterTemperature,
  waterPh,
  waterHardness,
  waterSalinity,
];

/** What assessPlan says of animals in a water, by the rules about water alone. */
const judged = (profiles: readonly SpeciesProfile[], water: PlannedWater) =>
  assessPlan({ ...planOf(profiles.map((species) => ({ species, unsexed: 1 }))), water }, { rules });

const swings = fc.record({
  temperature: fc.constantFrom(0, 0.5, 2),
  pH: fc.constantFrom(0, 0.25),
  generalHardness: fc.constantFrom(0, 1),
});

/** Weights of what speaks against a water whose every figure is given. */
const against = (profiles: readonly SpeciesProfile[], water: PlannedWater) =>
  judged(profiles, water)
    .findings.map(({ weight }) => weight)
    .filter((weight) => weight === "blocking" || weight === "restricting");

test("the water that is found is water that assessPlan accepts, to the ends of its margin", () => {
  let tried = 0;
  fc.assert(
    fc.property(swimmers(4), swings, (profiles, swing) => {
      const found = setPoint(profiles, { swing });
      if (found.conflict) return;
      tried += 1;
      const { water, margin } = found;
      for (const share of [-1, -0.5, 0, 0.5, 1]) {
        const moved = (axis: Exclude<WaterAxis, "salinity">) =>
          water[axis] === undefined ? {} : { [axis]: water[axis] + share * (margin[axis] ?? 0) };
        const season = share * (margin.temperature ?? 0);
        const changed = {
          ...water,
          ...moved("temperature"),
          ...moved("pH"),
          ...moved("generalHardness"),
          ...(water.hottest !== undefined && { hottest: water.hottest + season }),
          ...(water.coolest !== undefined && { coolest: water.coolest + season }),
        };
        const rounded = Object.fromEntries(
          Object.entries(changed).map(([name, figure = 0]) => [name, Number(figure.toFixed(9))]),
        );
        const stated = judged(profiles, rounded).findings.filter(
          (finding) =>
            finding.weight === "restricting" && Object.hasOwn(rounded, finding.condition.on.slice(6)),
        );
        expect(stated).toEqual([]);
      }
      expect(against(profiles, water).includes("blocking")).toBe(false);
    }),
    { numRuns: runs(100) },
  );
  expect(tried).toBeGreaterThanOrEqual(runs(10));
});

test("who is kept in less than margin and swing span is whoever assessPlan finds past that there", () => {
  const axes = { "water-temperature": "temperature", "water-ph": "pH", "water-hardness": "generalHardness" };
  const tried = { always: 0, hottest: 0, coolest: 0, swinging: 0 };
  fc.assert(
    fc.property(swimmers(4), swings, (profiles, swing) => {
      const found = setPoint(profiles, { swing });
      if (found.conflict) return;
      const { water, margin, beyondKept } = found;
      for (const { when = "always" } of beyondKept) tried[when] += 1;
      const { hottest: _, coolest: __, ...usual } = water;
      const movedBy = (share: number, swung: Partial<typeof swing> = {}): PlannedWater =>
        Object.fromEntries(
          Object.entries(usual).map(([name, figure = 0]) => {
            const on = name as Exclude<WaterAxis, "salinity">;
            const moved = name === "salinity" ? 0 : (margin[on] ?? 0) + (swung[on] ?? 0);
            return [name, Number((figure + share * moved).toFixed(9))];
          }),
        );
      /** Whom assessPlan tells past what they are kept in: places, figures and when. */
      const past = (each: PlannedWater, always = "always") =>
        judged(profiles, each).findings.flatMap((finding) => {
          const { rule, from, measures = {} } = finding;
          if (!Object.hasOwn(axes, rule) || "optimum" in measures) return [];
          const when = (["hottest", "coolest"] as const).find((season) => season in measures) ?? always;
          return [`${from} ${axes[rule as keyof typeof axes]} ${when}`];
        });
      const { temperature: ___, ...others } = swing;
      const meant = [
        ...[movedBy(-1), water, movedBy(1)].flatMap((each) => past(each)),
        ...[movedBy(-1, others), movedBy(1, others)].flatMap((each) => past(each, "swinging")),
      ].filter((one) => !one.endsWith("temperature swinging"));
      const told = beyondKept.map(({ on, of, when = "always" }) => `${of} ${on} ${when}`);
      const always = new Set(meant.filter((one) => one.endsWith("always")).map((one) => one.slice(0, -6)));
      const isToldAlready = (one: string) => always.has(one.replace(/(hottest|coolest|swinging)$/, ""));
      expect(new Set(told)).toEqual(new Set(meant.filter((one) => !isToldAlready(one))));
    }),
    { numRuns: runs(100) },
  );
  for (const often of Object.values(tried)) expect(often).toBeGreaterThanOrEqual(runs(1));
});

test("what is doubtful or no certain conflict is what assessPlan leaves open", () => {
  fc.assert(
    fc.property(swimmers(4), (profiles) => {
      const found = setPoint(profiles);
      const { findings } = judged(profiles, found.conflict ? {} : found.water);
      const blocks = findings.some(({ weight }) => weight === "blocking");
      const couldBlock = findings.some((finding) => "couldBe" in finding);
      if (!found.conflict) expect([blocks, couldBlock]).toEqual([false, found.doubtful.length > 0]);
      else if (found.conflict.isCertain) expect(blocks).toBe(true);
      else expect([blocks, couldBlock]).toEqual([false, true]);
    }),
    { numRuns: runs(100) },
  );
});

test("where none is found, assessPlan accepts no water on a grid", () => {
  let tried = 0;
  fc.assert(
    fc.property(swimmers(4), (profiles) => {
      const found = setPoint(profiles);
      if (!found.conflict) return;
      tried += 1;
      const { on } = found.conflict;
      const [from, to, step] = {
        temperature: [17, 34, 0.25],
        pH: [5, 10, 0.05],
        generalHardness: [0, 32, 0.5],
        salinity: [0, 16, 0.5],
        ammonia: [0, 0, 1],
      }[on] as [number, number, number];
      for (let figure = from; figure <= to; figure += step) {
        const said = judged(profiles, { [on]: Number(figure.toFixed(6)) });
        const isAccepted = said.findings.every(
          (finding) =>
            finding.weight !== "blocking" &&
            !("couldBe" in finding) &&
            (finding.weight !== "restricting" || finding.condition.on !== `water.${on}`),
        );
        expect(isAccepted).toBe(false);
      }
    }),
    { numRuns: runs(20) },
  );
  expect(tried).toBeGreaterThanOrEqual(runs(4));
});

/** The figure in the middle of what all spans share, and how far it is from the nearest end; undefined where they share none. */
function middleOf(
  spans: readonly PartialRange[],
): { readonly at: number; readonly margin: number } | undefined {
  const names = spans.flatMap((_, index) => [[`min${index}`, 1] as const, [`max${index}`, -1] as const]);
  const solved = solve({
    direction: "maximize",
    objective: "margin",
    constraints: Object.fromEntries(
      spans.flatMap(({ min = 0, max = 0 }, index) => [
        [`min${index}`, { min }],
        [`max${index}`, { max }],
      ]),
    ),
    variables: {
      at: Object.fromEntries(names.map(([name]) => [name, 1])),
      margin: { margin: 1, ...Object.fromEntries(names.map(([name, sign]) => [name, -sign])) },
    },
  });
  if (solved.status !== "optimal") return undefined;
  const found = new Map<string, number>(solved.variables);
  return { at: found.get("at") ?? 0, margin: found.get("margin") ?? 0 };
}

test("figure and margin are those of linear programmes: what is best for all, in what all are kept in", () => {
  const least = {
    temperature: thresholds.leastTemperature.value,
    pH: thresholds.leastPH.value,
    generalHardness: thresholds.leastHardness.value,
  };
  let tried = 0;
  fc.assert(
    fc.property(swimmers(6), (profiles) => {
      const found = setPoint(profiles);
      if (found.conflict) return;
      for (const axis of ["temperature", "pH", "generalHardness"] as const) {
        const figures = profiles.flatMap((profile) => factAt(profile, `water.${axis}`)?.value ?? []);
        const kept = middleOf(figures.map((figure) => figure.kept));
        const held = least[axis] / 2;
        if (figures.length === 0 || !kept || kept.margin < held - 1e-9) continue;
        const { at: best } = middleOf(figures.map((figure) => figure.optimum ?? figure.kept)) ?? kept;
        tried += 1;
        const room = kept.margin - held;
        const at = Math.min(Math.max(best, kept.at - room), kept.at + room);
        expect(found.water[axis]).toBeCloseTo(at, 6);
        expect(found.margin[axis]).toBeCloseTo(kept.margin - Math.abs(at - kept.at), 6);
      }
    }),
    { numRuns: runs(100) },
  );
  expect(tried).toBeGreaterThanOrEqual(runs(15));
});

test("the largest company is that of trying all, and the earliest of them", () => {
  const options = fc.constantFrom<Terms>({}, { totalAmmonia: 1 }, { totalAmmonia: 8 }, { swing: 2 });
  const lost = new Map<number, number>();
  fc.assert(
    fc.property(swimmers(8), options, (profiles, terms) => {
      const { swing, ...ammonia } = terms;
      const given = { ...ammonia, ...(swing !== undefined && { swing: { temperature: swing } }) };
      const found = setPoint(profiles, given);
      const earliest = largestCompany(profiles, terms);
      expect(found.conflict === undefined).toBe(earliest.length === profiles.length);
      if (!found.conflict) return;
      const { stay, leave } = found.largest;
      lost.set(leave.length, (lost.get(leave.length) ?? 0) + 1);
      expect(stay).toEqual(earliest);
      expect(leave).toEqual([...profiles.keys()].filter((place) => !earliest.includes(place)));
      if (stay.length === 0) return;
      const alone = setPoint(
        stay.flatMap((place) => profiles[place] ?? []),
        given,
      );
      expect(found.largest.setPoint?.water).toEqual("water" in alone ? alone.water : undefined);
    }),
    { numRuns: runs(300) },
  );
  for (const left of [1, 2, 3]) expect(lost.get(left)).toBeGreaterThanOrEqual(runs(10));
});

test("the largest company of species of the catalog is that of trying all", () => {
  const some = fc.uniqueArray(anySpecies, { minLength: 2, maxLength: 8 });
  const lost = new Map<number, number>();
  fc.assert(
    fc.property(some, fc.constantFrom(0, 1, 2), (profiles, swing) => {
      const found = setPoint(profiles, { swing: { temperature: swing } });
      const stay = found.conflict ? found.largest.stay : [...profiles.keys()];
      expect(stay).toEqual(largestCompany(profiles, { swing }));
      const left = profiles.length - stay.length;
      lost.set(left, (lost.get(left) ?? 0) + 1);
    }),
    { numRuns: runs(500) },
  );
  for (const left of [0, 1, 2]) expect(lost.get(left)).toBeGreaterThanOrEqual(runs(10));
});

test("two share water, and several, where their intervals do", () => {
  const answers = { yes: 0, no: 0 };
  fc.assert(
    fc.property(swimmers(5), (profiles) => {
      const pairs = profiles.flatMap((one, index) => profiles.slice(index + 1).map((other) => [one, other]));
      const isShared = share(profiles);
      answers[isShared ? "yes" : "no"] += 1;
      expect(setPoint(profiles).conflict === undefined).toBe(isShared);
      expect(isShared).toBe(pairs.every((pair) => setPoint(pair).conflict === undefined));
    }),
    { numRuns: runs(100) },
  );
  expect(Math.min(answers.yes, answers.no)).toBeGreaterThanOrEqual(runs(10));
});

test("with ammonia, the hot end is borne, and no warmer and more alkaline one is", () => {
  let tried = 0;
  fc.assert(
    fc.property(swimmers(3), fc.constantFrom(0.5, 2, 8), (profiles, totalAmmonia) => {
      const [free, found] = [setPoint(profiles), setPoint(profiles, { totalAmmonia })];
      if (free.conflict || found.conflict || !found.hotEnd) return;
      const nh3 = (at: number, pH: number) =>
        totalAmmonia * unionizedAmmoniaFraction({ temperature: at, pH }) * (17.0305 / 14.0067);
      expect(found.hotEnd.unionizedAmmonia).toBeLessThanOrEqual(0.025);
      const endsOf = ({ water, margin }: typeof free, axis: "temperature" | "pH") => {
        const [at, reach] = [water[axis] ?? 0, margin[axis] ?? 0];
        return { min: at - reach, max: at + reach };
      };
      const corner = (some: typeof free) =>
        [endsOf(some, "temperature").max, endsOf(some, "pH").max] as const;
      if (nh3(...corner(free)) <= 0.025) {
        expect(found.water).toEqual(free.water);
        return;
      }
      tried += 1;
      const [warmest, mostAlkaline] = corner(found);
      expect(nh3(warmest + 1e-3, mostAlkaline + 1e-3)).toBeGreaterThan(0.025);
    }),
    { numRuns: runs(100) },
  );
  expect(tried).toBeGreaterThanOrEqual(runs(2));
});
