import { decimal } from "../decimal";
import { InvalidInputError, type Problem, problemsAt } from "../errors";
import type { Facts, SpeciesProfile } from "../species";
import { currentsFrom } from "../species/inner";
import { tankFloor, tankGeometry } from "../tank";
import { headcount } from "./headcount";
import type { Group, PlannedTank, PlannedWater } from "./plan";
import { meant } from "./shape/nearest";
import type { ProblemPath } from "./shape/shape";

/** A strongest current that is calmer than the calmest. */
export function flowConflicts({ flow }: PlannedTank): readonly Problem[] {
  if (!flow || currentsFrom(flow.calmest).includes(flow.strongest)) return [];
  return [
    {
      path: ["tank", "flow", "strongest"],
      code: "conflict",
      expected: `no calmer current than the calmest, ${flow.calmest}`,
      found: flow.strongest,
    },
  ];
}

/** More free to swim in than cover leaves. */
export function shareConflicts({ cover = 0, openWater = 0 }: PlannedTank): readonly Problem[] {
  if (decimal(cover + openWater) <= 1) return [];
  const expected = `at most what cover leaves, ${decimal(1 - cover)}`;
  return [{ path: ["tank", "openWater"], code: "conflict", expected, found: openWater }];
}

/** What the geometry of tanks refuses, with the path within the plan. */
export function measureConflicts(tank: PlannedTank): readonly Problem[] {
  try {
    if (tank.height === undefined) tankFloor(tank);
    else tankGeometry({ ...tank, height: tank.height });
    return [];
  } catch (error) {
    if (!(error instanceof InvalidInputError)) throw error;
    return problemsAt(["tank"], error.problems);
  }
}

/** The coolest season is no warmer than usual, the hottest day no cooler. */
export function waterConflicts({ coolest, temperature, hottest }: PlannedWater): readonly Problem[] {
  return [
    ...ascending("hottest", hottest, "coolest", coolest),
    ...ascending("hottest", hottest, "temperature", temperature),
    ...ascending("temperature", temperature, "coolest", coolest),
  ];
}

function ascending(
  name: string,
  warmer: number | undefined,
  than: string,
  cooler: number | undefined,
): readonly Problem[] {
  if (warmer === undefined || cooler === undefined || warmer >= cooler) return [];
  const expected = `at least the ${than === "temperature" ? "usual temperature" : `${than} one`}, ${cooler}`;
  return [{ path: ["water", name], code: "conflict", expected, found: warmer }];
}

/** A group has an animal. */
export function countConflicts(group: Group, path: ProblemPath): readonly Problem[] {
  return headcount(group) > 0 ? [] : [{ path, code: "range", expected: "at least one animal", found: 0 }];
}

/** A form that the species has; the one applied, if one is. */
export function formConflicts(
  { species, form }: { readonly species: SpeciesProfile; readonly form?: string | undefined },
  path: ProblemPath,
): readonly Problem[] {
  if (form === undefined || form === species.form) return [];
  const at = { path: [...path, "form"], found: form };
  if (species.form !== undefined) {
    return [{ ...at, code: "conflict", expected: `${species.form}, the form that the profile has applied` }];
  }
  if (Object.hasOwn(species.forms ?? {}, form)) return [];
  const known = Object.keys(species.forms ?? {});
  const expected = `a form of ${species.id} (${known.join(", ") || "none"})${meant(form, known)}`;
  return [{ ...at, code: "unknown-form", expected }];
}

/**
 * No animal is more than twice the greatest length known of its kind (common practice, no source): such a length was given
 * in another unit.
 */
export function lengthConflicts(
  { species, length }: { readonly species: SpeciesProfile; readonly length?: number | undefined },
  path: ProblemPath,
): readonly Problem[] {
  const forms: readonly Facts[] = [species, ...Object.values(species.forms ?? {})];
  const known = forms.flatMap(({ size }) => size?.adultLength?.value.map(({ total }) => total.max) ?? []);
  const most = 2 * Math.max(...known);
  if (length === undefined || known.length === 0 || length <= most) return [];
  const expected = `at most ${decimal(most)} cm, twice the greatest length known of ${species.id}`;
  return [{ path: [...path, "length"], code: "conflict", expected, found: length }];
}

/** Ids that groups have been given are each given once. */
export function idConflicts(ids: readonly (string | undefined)[]): readonly Problem[] {
  return ids.flatMap((id, index): readonly Problem[] => {
    const first = ids.indexOf(id);
    if (id === undefined || first === index) return [];
    const expected = `an id that groups[${first}] does not have`;
    return [{ path: ["groups", index, "id"], code: "conflict", expected, found: id }];
  });
}
