import { type Basis, essentialTraits, factAt, traitPaths } from "../../../species";
import { paragraph, type Section, section } from "../parts";
import type { Telling } from "../telling";

/** Traits that are no loss to a reader where nobody knows them. */
const spared: ReadonlySet<string> = new Set([
  "size.standardShare",
  "space.furtherFootprint",
  "reproduction.interbreedsWith",
  "size.bodyDepthShare",
  "size.lengthWeight",
  "social.largestGroup",
  "care.rehoming",
  "space.height",
  "water.carbonateHardness",
  "water.coolSeason",
  "water.salinity",
]);

/** How well all this is supported, where sources differ, and what nobody knows. */
export function certainty({ profile, messages }: Telling): readonly Section[] {
  const { headings, certainty: words } = messages.page;
  const facts = traitPaths.flatMap((path) => {
    const fact = factAt(profile, path);
    return fact ? [{ path, ...fact }] : [];
  });
  const count = (...of: readonly string[]) => facts.filter(({ basis }) => of.includes(basis)).length;
  const named = (paths: readonly (typeof traitPaths)[number][]) => paths.map((path) => messages.traits[path]);
  const restingOn = (basis: Basis) =>
    named(essentialTraits.filter((path) => factAt(profile, path)?.basis === basis));
  const [practice, reckoned] = [restingOn("common-practice"), restingOn("derived")];
  const disputed = facts.filter(({ also = [] }) => also.length > 0).map(({ path }) => path);
  const unknown = traitPaths.filter((path) => !factAt(profile, path) && !spared.has(path));
  return section(
    "certainty",
    headings.certainty,
    paragraph(
      facts.length > 0 &&
        words.support({
          known: facts.length,
          published: count("published", "curated", "observed"),
          practice: count("common-practice"),
          recalled: count("memory"),
          reckoned: count("derived"),
        }),
      practice.length > 0 && words.practice(practice),
      reckoned.length > 0 && words.reckoned(reckoned),
      disputed.length > 0 && words.disputed(named(disputed)),
      unknown.length > 0 && words.unknown(named(unknown)),
      messages.closing,
    ),
  );
}
