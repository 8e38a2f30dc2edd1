import type { Plan, PlannedTank } from "vivary/plan";
import { keptTank } from "../advice/kept-tank";
import { speciesOf } from "./species-of";
import { type Figure, inTurns, urlOf } from "./timing";

const { allSpecies }: typeof import("vivary/catalog") = await import(urlOf("catalog"));
const { assessPlan }: typeof import("vivary/compatibility") = await import(urlOf("compatibility"));
const advice: typeof import("vivary/advice") = await import(urlOf("advice"));

const tank: PlannedTank = {
  ...keptTank,
  base: { shape: "rectangle", length: 150, width: 60 },
  height: 55,
  plants: "grown-in",
  filter: { mediaArea: 15, age: 200 },
};

/** Eight groups that live well in soft, warm water. */
const company = [
  "paracheirodon-innesi",
  "hoplisoma-panda",
  "otocinclus-vittatus",
  "trigonostigma-heteromorpha",
  "hemigrammus-bleheri",
  "hoplisoma-sterbai",
  "hyphessobrycon-amandae",
  "paracheirodon-axelrodi",
];

const planOf = (ids: readonly string[], unsexed: (place: number) => number): Plan => ({
  tank,
  water: { temperature: 25, pH: 6.8, generalHardness: 7 },
  groups: ids.map((id, place) => ({ species: speciesOf(id), unsexed: unsexed(place) })),
});

/** What is measured of advice, as times one verdict on a plan of eight groups in the same run. */
export function adviceFigures(): readonly Figure[] {
  const eight = planOf(company, () => 12);
  const short = planOf(company, (place) => (place < 3 ? 3 : 12));
  const six = planOf(company.slice(0, 6), () => 12);
  const { assess, ...calls } = inTurns(5, {
    assess: () => assessPlan(eight),
    remedies: () => advice.remedies(short),
    whoCouldJoin: () => advice.whoCouldJoin(eight, allSpecies),
    leastTank: () => advice.leastTank(eight.groups),
    setPoint: () => advice.setPoint(allSpecies),
    entryOrder: () => advice.entryOrder(six),
    feedingPlan: () => advice.feedingPlan(eight),
    suspects: () => advice.suspects(eight, ["torn-fins", "hiding"]),
  });
  const most: Readonly<Record<keyof typeof calls, readonly [figure: string, target: number]>> = {
    remedies: ["remedies of eight groups, three of them short", 20],
    whoCouldJoin: ["whoCouldJoin, the whole catalog beside eight groups", 60],
    leastTank: ["leastTank of eight groups", 80],
    setPoint: ["setPoint of the whole catalog", 20],
    entryOrder: ["entryOrder of six groups", 120],
    feedingPlan: ["feedingPlan of eight groups", 6],
    suspects: ["suspects of eight groups", 20],
  };
  console.log(`assessPlan of eight groups: ${assess.toPrecision(3)} ms`);
  return (Object.keys(most) as (keyof typeof calls)[]).map((name) => {
    const [figure, target] = most[name];
    console.log(`${figure}: ${calls[name].toPrecision(3)} ms`);
    return { figure: `${figure}, as times assessPlan of these`, found: calls[name] / assess, target };
  });
}
