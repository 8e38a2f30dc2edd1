import * as z from "zod";
import { bodyMassDomain } from "../../load";
import type { PartialRange, Range } from "../../ranges";
import { classes } from "../../species";
import { currents, currentsFrom } from "../../species/inner";
import { listUpTo, name, note, speciesId } from "../bounded";
import { oneOf } from "./words";

/** The trait may be known to be absent or empty. */
const orNone = <Value extends z.ZodType>(value: Value) => z.union([value, z.literal("none")]);

const share = z.number().min(0).max(1);
const count = z.int().min(1);
const size = z.number().positive();
const within = ({ min, max }: Range) => z.number().min(min).max(max);

const ends = {
  min: z.number().optional().describe("The lower end; absent where it is not known."),
  max: z.number().optional().describe("The upper end; absent where it is not known."),
};

const hasAnEnd = ({ min, max }: PartialRange) => min !== undefined || max !== undefined;
const ascends = ({ min = -Infinity, max = Infinity }: PartialRange) => min <= max;

const range = z
  .strictObject(ends)
  .refine(hasAnEnd, "a range with at least one end")
  .refine(ascends, "min not above max")
  .meta({ minProperties: 1 });

const coolSeason = z
  .strictObject({
    ...ends,
    months: z.number().positive().max(12).optional().describe("How many months it lasts."),
  })
  .refine(hasAnEnd, "a range with at least one end")
  .refine(ascends, "min not above max")
  .meta({ anyOf: [{ required: ["min"] }, { required: ["max"] }] });

const flowRange = z
  .strictObject({ min: oneOf(classes.flow, "The weakest."), max: oneOf(classes.flow, "The strongest.") })
  .refine(({ min, max }) => currents.indexOf(min) <= currents.indexOf(max), "min not above max")
  .meta({
    anyOf: currents.map((min) => ({
      properties: { min: { const: min }, max: { enum: currentsFrom(min) } },
    })),
  });

const counts = z
  .strictObject({ min: count.describe("The least of them."), max: count.describe("The most of them.") })
  .refine(({ min, max }) => min <= max, "min not above max");

/** A size that is needed by a stated number of animals. */
const sizeForGroup = z.strictObject({
  least: size.describe("The least that will do."),
  for: count.describe("For how many animals."),
});

const act = z.strictObject({
  does: oneOf(classes.does, "What it does."),
  doer: oneOf(classes.sex, "Which sex does it; both if absent.").optional(),
  target: oneOf(classes.target, "Whom it falls on."),
  when: oneOf(classes.when, "When it happens; at any time if absent.").optional(),
  from: oneOf(classes.stage, "From which stage of life on.").optional(),
});

/** What one statement of each trait holds: `StatedValues` as the schema checks it. */
export const values = {
  origin: {
    regions: name,
    waters: oneOf(classes.waters),
    supply: oneOf(classes.supply),
    conservation: z.strictObject({
      status: oneOf(classes.conservation, "The category."),
      year: z.int().min(1960).max(2100).optional().describe("The year of the assessment."),
    }),
  },
  size: {
    adultLength: size,
    standardShare: share,
    bodyShape: oneOf(classes.bodyShape),
    bodyDepthShare: share,
    lengthWeight: z.strictObject({
      a: within(bodyMassDomain.lengthWeight.a).describe("The factor, for cm and g."),
      b: within(bodyMassDomain.lengthWeight.b).describe("The exponent, about 3."),
    }),
    grownAt: size,
    lifespan: size,
  },
  water: {
    temperature: range,
    pH: range,
    generalHardness: range,
    carbonateHardness: range,
    coolSeason: orNone(coolSeason),
    salinity: range,
    flow: flowRange,
    oxygenNeed: oneOf(classes.oxygenNeed),
    airBreathing: z.strictObject({
      kind: oneOf(classes.airBreathing, "Whether it takes air."),
      from: oneOf(classes.stage, "From which stage of life on.").optional(),
    }),
  },
  space: {
    baseLength: sizeForGroup,
    footprint: sizeForGroup,
    furtherFootprint: size,
    height: size,
    zones: oneOf(classes.zone),
    cover: share,
    openWater: share,
    grownInPlants: z.boolean(),
    substrate: orNone(oneOf(classes.ground)),
    hides: orNone(
      z.strictObject({
        anyOf: listUpTo(10, oneOf(classes.hide, "What serves.")).describe("Any of these serves."),
        each: count.describe("How many each holder needs."),
        holder: oneOf(classes.territoryHolder, "Who needs them."),
        sharedBy: count.optional().describe("How many holders lie in one of these together; 1 if absent."),
      }),
    ),
    jumps: oneOf(classes.jumps),
    territory: orNone(
      z.strictObject({
        area: size.describe("The floor that it defends."),
        zone: oneOf(classes.zone, "Where it lies."),
        holder: oneOf(classes.territoryHolder, "Who holds it."),
      }),
    ),
  },
  temperament: {
    acts: orNone(act),
    shy: z.boolean(),
    varies: z.boolean(),
  },
  social: {
    living: oneOf(classes.living),
    group: z
      .strictObject({
        least: count.describe("The fewest that live well together."),
        avoid: counts.optional().describe("Numbers at which they fight most."),
      })
      .refine(({ least, avoid }) => !avoid || least < avoid.min || least > avoid.max, "least outside avoid"),
    largestGroup: count,
    femalesPerMale: z.number().min(0),
    settledBy: z.boolean(),
    settles: z.boolean(),
  },
  appearance: {
    looks: orNone(
      z.strictObject({
        tag: oneOf(classes.look, "What it looks like."),
        sex: oneOf(classes.sex, "Which sex looks so; both if absent.").optional(),
      }),
    ),
    longFins: z.boolean(),
  },
  diet: {
    type: oneOf(classes.dietType),
    foods: oneOf(classes.food),
    reach: oneOf(classes.zone),
    pace: oneOf(classes.pace),
    light: oneOf(classes.light),
  },
  predation: {
    eats: orNone(
      z.strictObject({
        prey: oneOf(classes.prey, "What it eats."),
        greatest: size.optional().describe("The greatest length that it swallows."),
      }),
    ),
  },
  reproduction: {
    mode: oneOf(classes.reproduction),
    breedsFrom: size,
    interbreedsWith: orNone(speciesId),
  },
  effects: {
    digs: z.boolean(),
    uproots: z.boolean(),
    eatsPlants: z.boolean(),
  },
  care: {
    sensitive: orNone(oneOf(classes.sensitivity)),
    hazards: orNone(oneOf(classes.hazard)),
    rehoming: z.strictObject({
      en: note.describe("In English."),
      de: note.optional().describe("In German."),
    }),
  },
} as const;
