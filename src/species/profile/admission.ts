import { listOf, objectOf, oneOf, refuseOthers } from "../../checks";
import { refusal } from "../../errors";
import { type Basis, bases, basisOf } from "../record/basis";
import type { RecordSources } from "../record/record";
import type { Statement } from "../record/statement";
import { traitDefinitions } from "../traits/definitions";
import type { TraitPath } from "../traits/values";
import { isMeasuredWhole } from "./lengths";
import type { Fact, Facts } from "./profile";

/** What a profile may rest on. */
export interface ResolveOptions {
  readonly only?:
    | {
        /** Facts on these bases alone. Without `"derived"` nothing stands in, and no total length is computed. */
        readonly bases?: readonly Basis[] | undefined;
        /**
         * Sources marked `commercial`, whose licence is not known to forbid commercial use, and common practice. A source
         * that is not marked is left out, and so is what a curator blended.
         */
        readonly commercial?: boolean | undefined;
      }
    | undefined;
}

/** What of a record may be used. */
export interface Admission {
  readonly sources: RecordSources;
  /** Those of a trait's statements that may. */
  readonly statements: (path: TraitPath, statements: readonly Statement[]) => readonly Statement[];
  /** Those of the facts made of them that may. */
  readonly facts: <Some extends Facts>(facts: Some) => Some;
}

/**
 * What of a record may be used by what the caller wants alone.
 *
 * @throws InvalidInputError for an option that there is not, an unknown basis, and for a wish for commercial use that is
 * neither true nor false.
 */
export function admissionBy(options: ResolveOptions, sources: RecordSources): Admission {
  const { only = {}, ...others } = objectOf(options, "options");
  refuseOthers(others);
  const { bases: wanted = bases, commercial = false, ...more } = objectOf(only, "options.only");
  refuseOthers(more, "options.only");
  for (const basis of listOf(wanted, "options.only.bases")) oneOf(basis, bases, "options.only.bases");
  if (typeof commercial !== "boolean") throw refusal("options.only.commercial", "true or false", commercial);
  const computes = wanted.includes("derived");
  const admits = (path: TraitPath, statement: Statement) =>
    wanted.includes(basisOf(statement, sources)) &&
    (!commercial || isFree(statement, sources)) &&
    (computes || traitDefinitions[path].way !== "lengths" || isMeasuredWhole(statement.measure));
  return {
    sources,
    statements: (path, statements) => statements.filter((statement) => admits(path, statement)),
    facts: (facts) => (wanted === bases ? facts : factsOn(wanted, facts)),
  };
}

const isFree = ({ by }: Statement, sources: RecordSources) =>
  by === "common-practice" || (Object.hasOwn(sources, by) && sources[by]?.commercial === true);

/** The facts whose basis is among those wanted. */
function factsOn<Some extends Facts>(wanted: readonly Basis[], facts: Some): Some {
  const sections = Object.entries(facts).flatMap(([section, traits]) => {
    const held = Object.entries(traits as Readonly<Record<string, Fact<unknown>>>);
    const admitted = held.filter(([, { basis }]) => wanted.includes(basis));
    return admitted.length > 0 ? [[section, Object.fromEntries(admitted)]] : [];
  });
  return Object.fromEntries(sections);
}
