import * as z from "zod";
import { classes } from "../../species";
import { currents } from "../../species/inner";
import { listUpTo, name, note } from "../bounded";

/** One of the classes of a trait. */
const oneOf = <Class extends string>(of: Readonly<Record<Class, string>>) =>
  z.enum(Object.keys(of) as [Class, ...Class[]]);

/** The trait may be known to be absent or empty. */
const orNone = <Value extends z.ZodType>(value: Value) => z.union([value, z.literal("none")]);

const share = z.number().min(0).max(1);
const count = z.int().min(1);
const size = z.number().positive();

const range = z
  .strictObject({ min: z.number().optional(), max: z.number().optional() })
  .refine(({ min, max }) => min !== undefined || max !== undefined, "a range with at least one end")
  .refine(({ min = -Infinity, max = Infinity }) => min <= max, "min not above max");

const flowRange = z
  .strictObject({ min: oneOf(classes.flow), max: oneOf(classes.flow) })
  .refine(({ min, max }) => currents.indexOf(min) <= currents.indexOf(max), "min not above max");

const counts = z
  .strictObject({ min: count, max: count })
  .refine(({ min, max }) => min <= max, "min not above max");

/** A size that is needed by a stated number of animals. */
const sizeForGroup = z.strictObject({ least: size, for: count });

const act = z.strictObject({
  does: oneOf(classes.does),
  doer: oneOf(classes.sex).optional(),
  target: oneOf(classes.target),
  when: oneOf(classes.when).optional(),
  from: oneOf(classes.stage).optional(),
});

/** What one statement of each trait holds: `StatedValues` as the schema checks it. */
export const values = {
  origin: {
    regions: name,
    waters: oneOf(classes.waters),
    conservation: z.strictObject({ status: oneOf(classes.conservation), year: z.int().optional() }),
  },
  size: {
    adultLength: size,
    standardShare: share,
    bodyShape: oneOf(classes.bodyShape),
    bodyDepthShare: share,
    lengthWeight: z.strictObject({ a: size, b: size }),
    lifespan: size,
  },
  water: {
    temperature: range,
    pH: range,
    generalHardness: range,
    salinity: range,
    flow: flowRange,
    oxygenNeed: oneOf(classes.oxygenNeed),
    airBreathing: z.strictObject({
      kind: oneOf(classes.airBreathing),
      from: oneOf(classes.stage).optional(),
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
        anyOf: listUpTo(10, oneOf(classes.hide)),
        each: count,
        holder: oneOf(classes.territoryHolder),
        sharedBy: count.optional(),
      }),
    ),
    jumps: oneOf(classes.jumps),
    territory: orNone(
      z.strictObject({ area: size, zone: oneOf(classes.zone), holder: oneOf(classes.territoryHolder) }),
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
      .strictObject({ least: count, avoid: counts.optional() })
      .refine(({ least, avoid }) => !avoid || least < avoid.min || least > avoid.max, "least outside avoid"),
    femalesPerMale: z.number().min(0),
    settledBy: z.boolean(),
    settles: z.boolean(),
  },
  appearance: {
    looks: orNone(z.strictObject({ tag: oneOf(classes.look), sex: oneOf(classes.sex).optional() })),
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
    eats: orNone(z.strictObject({ prey: oneOf(classes.prey), greatest: size.optional() })),
  },
  reproduction: {
    mode: oneOf(classes.reproduction),
    interbreedsWith: orNone(name),
  },
  effects: {
    digs: z.boolean(),
    uproots: z.boolean(),
    eatsPlants: z.boolean(),
  },
  care: {
    sensitive: orNone(oneOf(classes.sensitivity)),
    hazards: orNone(oneOf(classes.hazard)),
    rehoming: note,
  },
} as const;
