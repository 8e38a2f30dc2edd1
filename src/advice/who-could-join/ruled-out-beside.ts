import { type AssessOptions, assessPair, type Finding, outcomes, pairRules } from "../../compatibility";
import type { Group, Plan } from "../../plan";
import type { SpeciesProfile } from "../../species";
import { movedTo } from "./asked-alone";

/**
 * What rules newcomers out beside one group of a plan. Only groups are looked at of which nothing more is told than how many
 * there are: of others less may be true than of their species.
 *
 * @returns For the place of a newcomer the finding, in which it is the party after those of the plan; undefined for none.
 */
export function ruledOutBeside(
  { groups }: Plan,
  newcomers: readonly SpeciesProfile[],
  options: AssessOptions,
): (place: number) => Finding | undefined {
  const { rules = pairRules } = options;
  if (!rules.some(({ way }) => way === "mutual" || way === "each-way")) return () => undefined;
  const plain = [...groups.entries()].filter(([, group]) => isPlain(group));
  const { outcome } = outcomes([...newcomers, ...plain.map(([, { species }]) => species)], options);
  return (place) => {
    const newcomer = newcomers[place];
    const beside = plain.find(
      ([, { species }], index) =>
        species.id !== newcomer?.id && outcome(newcomers.length + index, place) === "unsuitable",
    );
    if (!newcomer || !beside) return undefined;
    const [at, { species }] = beside;
    const { findings } = assessPair({ species }, { species: newcomer }, options);
    const blocking = findings.find(({ weight }) => weight === "blocking");
    return blocking && movedTo(blocking, [at, groups.length]);
  };
}

/** Whether nothing is told of a group but its species and how many there are. */
const isPlain = ({ form, males, females, juveniles, length, temper, raises }: Group) =>
  [form, males, females, juveniles, length, temper, raises].every((told) => told === undefined);
