import { once } from "../../made-once";
import { currents, foods, grounds, hides, lights, zones } from "../../species/inner";
import { maxPolygonCorners } from "../../tank";
import { micrometres } from "../../units/inner";
import { plantings } from "../choices";
import { lawgivers } from "../generated";
import type { Group, Offering, Plan, PlannedFilter, PlannedTank, PlannedWater } from "../plan";
import { bodyLength, count, object, temper, text, word, yesOrNo } from "./parts";
import type { ObjectShape, Shape, ShapeCheck } from "./shape";

/** The most groups that are judged at once. */
export const mostGroups = 100;

/** The most hiding places of a kind, and the most sight breaks, of a tank. */
export const mostPlaces = 1000;

const share: Shape = { is: "number", min: 0, max: 1 };
/** Lengths of a tank, whatever its unit; `tankGeometry` says which are too small or too great. */
const length: Shape = { is: "number", above: 0 };
const distance: Shape = { is: "number", min: 0 };
const coordinate: Shape = { is: "number" };

const places: Shape = { is: "count", min: 0, max: mostPlaces };

type Base = PlannedTank["base"];
/** What a base of a shape says besides. */
type SidesOf<Name extends Base["shape"]> = Omit<Extract<Base, { readonly shape: Name }>, "shape">;

const base = <Name extends Base["shape"]>(
  shape: Name,
  fields: Readonly<Record<keyof SidesOf<Name> & string, Shape>>,
): ObjectShape => {
  const all: ObjectShape["fields"] = { shape: { is: "word", words: [shape] }, ...fields };
  return object(all, Object.keys(all));
};

const bases = (): Shape => ({
  is: "kinds",
  by: "shape",
  of: {
    rectangle: base("rectangle", { length, width: length }),
    polygon: base("polygon", {
      points: {
        is: "list",
        of: { is: "list", of: coordinate, least: 2, most: 2 },
        least: 3,
        most: maxPolygonCorners,
      },
    }),
    circle: base("circle", { diameter: length }),
    sector: base("sector", { radius: length, angle: { is: "number", above: 0, max: 360, unit: "degrees" } }),
    bowed: base("bowed", { length, width: length, bow: distance }),
  } satisfies Readonly<Record<Base["shape"], ObjectShape>>,
});

const current = () => word(currents);

const tank = /* @__PURE__ */ once(() =>
  object<PlannedTank>(
    {
      base: bases(),
      height: length,
      unit: { is: "word", words: Object.keys(micrometres) },
      measured: { is: "word", words: ["inner", "outer"] },
      glass: distance,
      waterBelowRim: distance,
      lid: yesOrNo,
      flow: object<NonNullable<PlannedTank["flow"]>>({ calmest: current(), strongest: current() }, [
        "calmest",
        "strongest",
      ]),
      cover: share,
      openWater: share,
      openSurface: share,
      sightBreaks: places,
      substrate: word(grounds),
      hides: object(Object.fromEntries(hides.map((kind) => [kind, places]))),
      plants: word(plantings),
      filter: object<PlannedFilter>(
        {
          mediaArea: { is: "number", min: 0, max: 1_000_000, unit: "m²" },
          age: { is: "number", min: 0, max: 36_525, unit: "days" },
        },
        ["mediaArea", "age"],
      ),
    },
    ["base"],
  ),
);

/** What a plan may say of water; outside these spans it is a slip of unit. */
const temperature: Shape = { is: "number", min: -2, max: 48, unit: "°C" };
const hardness: Shape = { is: "number", min: 0, max: 60, unit: "°dH" };

const water = /* @__PURE__ */ once(() =>
  object<PlannedWater>({
    temperature,
    pH: { is: "number", min: 3, max: 11 },
    generalHardness: hardness,
    carbonateHardness: hardness,
    salinity: { is: "number", min: 0, max: 120, unit: "g/kg" },
    hottest: temperature,
    coolest: temperature,
  }),
);

const offerings = /* @__PURE__ */ once(
  (): Shape => ({
    is: "list",
    least: 0,
    most: 200,
    of: object<Offering>({ food: word(foods), place: word(zones), light: word(lights), apart: yesOrNo }, [
      "food",
      "place",
    ]),
  }),
);

/** Groups whose species are as the check wants them. */
export function groupsShape(species: ShapeCheck): Shape {
  const group = object<Group>(
    {
      id: text,
      species: { is: "checked", check: species },
      form: text,
      males: count(0),
      females: count(0),
      unsexed: count(0),
      juveniles: count(0),
      length: bodyLength,
      temper,
      raises: yesOrNo,
      entersOn: { is: "number", min: -100_000, max: 100_000, unit: "days" },
    },
    ["species"],
  );
  return { is: "list", of: group, least: 1, most: mostGroups };
}

/** A plan with groups of a shape. */
export function planShape(groups: Shape): ObjectShape {
  const jurisdiction: Shape = { is: "list", of: { is: "word", words: lawgivers }, least: 0, most: 50 };
  return object<Plan>({ tank: tank(), water: water(), groups, offerings: offerings(), jurisdiction }, [
    "tank",
    "groups",
  ]);
}
