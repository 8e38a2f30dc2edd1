import type { Temper } from "../../../plan";
import type { Act, Kind, TraitPath, TraitValue } from "../../../species";

/** What individuals may be like beside their kind. */
type Individual = Exclude<Temper, "typical">;

/**
 * What each temper makes of a trait of its kind; what nobody knows of the kind stays unknown unless temper tells it. Only
 * fish take calm company in the open for a sign that nothing threatens: of snails, shrimps and crayfish nobody tells it.
 */
const changes: Readonly<
  Record<
    Individual,
    { readonly [Path in TraitPath]?: (value: TraitValue<Path>, kind: Kind) => TraitValue<Path> }
  >
> = {
  shyer: {
    "temperament.shy": () => true,
    "social.settledBy": (settled, kind) => settled || kind === "fish",
    "diet.pace": () => "slow",
  },
  bolder: {
    "temperament.shy": () => false,
    "social.settledBy": () => false,
    "temperament.acts": (acts) => acts.flatMap(atAnyTime),
  },
  bully: {
    "temperament.shy": () => false,
    "social.settledBy": () => false,
    "temperament.acts": (acts) => acts.flatMap(atAnyTime),
  },
};

/**
 * What others do only when crowded or breeding, bolder ones do whenever they can; when crowded they do it as well, to whom
 * they leave alone while there is room.
 */
function atAnyTime(act: Act): readonly Act[] {
  const { when, ...always } = act;
  if (when === "crowded") return [always, act];
  return [when === "breeding" ? always : act];
}

/** The value of a trait of individuals of a temper. */
export function ofTemper(temper: Individual, path: TraitPath, value: unknown, kind: Kind): unknown {
  const change = changes[temper][path] as ((value: unknown, kind: Kind) => unknown) | undefined;
  return change ? change(value, kind) : value;
}

/** The tempers between which individuals of a kind lie that differ much. */
export const spread: readonly Individual[] = ["shyer", "bolder"];

/** Whether a trait hangs on what individuals are like. */
export const hangsOnTemper = (path: TraitPath): boolean =>
  spread.some((temper) => Object.hasOwn(changes[temper], path));
