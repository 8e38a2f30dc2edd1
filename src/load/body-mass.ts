import { inDomain, objectOf, oneOf, positive, refuseOthers } from "../checks";
import { frozen } from "../frozen";
import type { Range } from "../ranges";
import type { TraitValue } from "../species";
import { within95 } from "./within-95";

/** What the mass of a fish is reckoned from. */
export interface BodyMassInput {
  /** Total length, cm. */
  readonly length: number;
  /** Its outline; unknown if absent. */
  readonly shape?: TraitValue<"size.bodyShape"> | undefined;
  /** The constants of its species: mass in g = a × (total length in cm) ^ b. */
  readonly lengthWeight?: TraitValue<"size.lengthWeight"> | undefined;
}

/** What a fish weighs. */
export interface BodyMass {
  /** The typical mass, g. */
  readonly typical: number;
  /** In which 95 of 100 species of its shape lie, g; one figure where the constants of its species are known. */
  readonly likely: Range;
}

/**
 * Where {@link bodyMass} holds: lengths from the smallest grown fishes to longer than any in fresh water, and constants
 * well around those of fishes (Froese 2006, J. Appl. Ichthyol. 22:241-253: b from 2.5 to 3.5; a from 0.001 to 0.1
 * from memory).
 */
export const bodyMassDomain = /* @__PURE__ */ frozen({
  /** Total length, cm. */
  length: { min: 0.1, max: 1000 },
  /** For mass in g and length in cm. */
  lengthWeight: {
    /** The factor. */
    a: { min: 0.0001, max: 1 },
    /** The exponent. */
    b: { min: 2, max: 4 },
  },
} as const);

/** Length and mass of fishes of one shape: means and standard deviations over species of log10 a and of b. */
interface Prior {
  readonly log10A: Normal;
  readonly b: Normal;
}

interface Normal {
  readonly mean: number;
  readonly deviation: number;
}

/**
 * Froese, Thorson & Reyes 2014, J. Appl. Ichthyol. 30:78-85: priors from 5150 length-weight studies, as the authors'
 * code has them.
 */
const priors: Readonly<Record<TraitValue<"size.bodyShape">, Prior>> = {
  "eel-like": { log10A: { mean: -2.99, deviation: 0.175 }, b: { mean: 3.06, deviation: 0.0896 } },
  elongated: { log10A: { mean: -2.41, deviation: 0.171 }, b: { mean: 3.12, deviation: 0.09 } },
  fusiform: { log10A: { mean: -1.95, deviation: 0.173 }, b: { mean: 3.04, deviation: 0.0857 } },
  "short-deep": { log10A: { mean: -1.7, deviation: 0.175 }, b: { mean: 3.01, deviation: 0.0905 } },
};

const anyShape: Prior = { log10A: { mean: -2, deviation: 0.313 }, b: { mean: 3.04, deviation: 0.119 } };

/**
 * Mass of a grown fish from its total length, in g: the typical one, and the span in which 95 of 100 species of its
 * shape lie. By the constants of the species where they are known: no spread goes with them, so the span is that one
 * figure. Else by those of its body shape; without a shape, by those of all shapes, and the span reaches over every
 * shape. A fish full of eggs or thin from hunger weighs more or less. Not for fry, shrimps, crayfish and snails.
 *
 * Source: Froese, Thorson & Reyes 2014, J. Appl. Ichthyol. 30:78-85; the span by the spreads of log10 a and of b, taken
 * as independent, as the authors' code takes them before it sees a species. Where a is large b tends to be small, so the
 * span is wide rather than narrow. It grows with length: at 5 cm a factor of 2.3 either way, at 60 cm one of 2.9.
 *
 * @throws OutsideDomainError outside {@link bodyMassDomain}.
 * @throws InvalidInputError if the length or a constant is missing or not above zero, or the shape is none of those known;
 * for any other field.
 *
 * @example
 * ```ts
 * import { bodyMass } from "vivary/load";
 *
 * bodyMass({ length: 5, shape: "fusiform" }).typical; // ≈ 1.50
 * bodyMass({ length: 5, lengthWeight: { a: 0.01, b: 3 } }).typical; // => 1.25
 * bodyMass({ length: 0 }); // throws
 * ```
 */
export function bodyMass(fish: BodyMassInput): BodyMass {
  const { length, shape, lengthWeight, ...others } = objectOf(fish, "");
  refuseOthers(others, "");
  const cm = inDomain(positive(length, "length"), "length", bodyMassDomain.length, "cm");
  const prior = shape === undefined ? anyShape : priors[oneOf(shape, Object.keys(priors), "shape")];
  if (lengthWeight !== undefined) {
    const { a, b, ...more } = objectOf(lengthWeight, "lengthWeight");
    refuseOthers(more, "lengthWeight");
    const typical = constant(a, "a") * cm ** constant(b, "b");
    return { typical, likely: { min: typical, max: typical } };
  }
  const spans = (prior === anyShape ? [anyShape, ...Object.values(priors)] : [prior]).map((of) =>
    spanOf(of, cm),
  );
  return {
    typical: massOf(prior, cm, 0),
    likely: { min: Math.min(...spans.map(({ min }) => min)), max: Math.max(...spans.map(({ max }) => max)) },
  };
}

const constant = (value: number, name: "a" | "b") =>
  inDomain(
    positive(value, `lengthWeight.${name}`),
    `lengthWeight.${name}`,
    bodyMassDomain.lengthWeight[name],
  );

const spanOf = (prior: Prior, cm: number): Range => ({
  min: massOf(prior, cm, -within95),
  max: massOf(prior, cm, within95),
});

/** The mass that lies so many standard deviations from the typical one, in the logarithm. */
function massOf({ log10A, b }: Prior, cm: number, deviations: number): number {
  const log10Length = Math.log10(cm);
  const deviation = Math.hypot(log10A.deviation, b.deviation * log10Length);
  return 10 ** (log10A.mean + b.mean * log10Length + deviations * deviation);
}
