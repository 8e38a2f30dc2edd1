/** A plan as an app saves it. */
export const saved = {
  format: 1,
  tank: {
    base: { shape: "rectangle", length: 100, width: 40 },
    height: 45,
    lid: true,
    flow: { calmest: "still", strongest: "moderate" },
    filter: { mediaArea: 4, age: 90 },
  },
  water: { temperature: 24, pH: 7, generalHardness: 8 },
  groups: [
    { species: "puntigrus-tetrazona", form: "long-fin", unsexed: 8 },
    { species: "danio-rerio", males: 3, females: 5 },
  ],
  offerings: [{ food: "dry", place: "midwater" }],
} as const;

type Changed = Readonly<Record<string, unknown>>;

export const withTank = (change: Changed) => ({ ...saved, tank: { ...saved.tank, ...change } });
const withWater = (change: Changed) => ({ ...saved, water: { ...saved.water, ...change } });
export const withGroup = (change: Changed) => ({
  ...saved,
  groups: [saved.groups[0], { ...saved.groups[1], ...change }],
});

type Case = readonly [mistake: string, plan: unknown, path: string, code: string];

/** Plans of another shape than a plan has, each with one mistake: where it is and what sort of mistake. */
export const misshapen: readonly Case[] = [
  ["nothing", null, "", "type"],
  ["a list", [saved], "", "type"],
  ["a text", JSON.stringify(saved), "", "type"],
  ["no tank", { ...saved, tank: undefined }, "tank", "type"],
  ["a tank that is null", { ...saved, tank: null }, "tank", "type"],
  ["a tank that is a list", { ...saved, tank: [] }, "tank", "type"],
  ["no base", withTank({ base: undefined }), "tank.base", "type"],
  ["a bowl", withTank({ base: { shape: "bowl", diameter: 30 } }), "tank.base.shape", "word"],
  ["a base of no shape", withTank({ base: { length: 80, width: 35 } }), "tank.base.shape", "word"],
  ["no width", withTank({ base: { shape: "rectangle", length: 80 } }), "tank.base.width", "type"],
  [
    "a circle with a width",
    withTank({ base: { shape: "circle", diameter: 40, width: 40 } }),
    "tank.base.width",
    "unknown-key",
  ],
  [
    "a polygon of two corners",
    withTank({
      base: {
        shape: "polygon",
        points: [
          [0, 0],
          [60, 0],
        ],
      },
    }),
    "tank.base.points",
    "range",
  ],
  [
    "a corner of one number",
    withTank({ base: { shape: "polygon", points: [[0, 0], [60], [60, 60]] } }),
    "tank.base.points.1",
    "range",
  ],
  [
    "a tank without length",
    withTank({ base: { shape: "rectangle", length: 0, width: 40 } }),
    "tank.base.length",
    "range",
  ],
  ["a height below zero", withTank({ height: -1 }), "tank.height", "range"],
  ["glass of less than nothing", withTank({ glass: -0.5 }), "tank.glass", "range"],
  [
    "more than a full turn",
    withTank({ base: { shape: "sector", radius: 50, angle: 400 } }),
    "tank.base.angle",
    "range",
  ],
  ["a height in words", withTank({ height: "45" }), "tank.height", "type"],
  ["yards", withTank({ unit: "yd" }), "tank.unit", "word"],
  ["a lid in words", withTank({ lid: "true" }), "tank.lid", "type"],
  ["more cover than floor", withTank({ cover: 1.2 }), "tank.cover", "range"],
  ["cover in per cent", withTank({ cover: 30 }), "tank.cover", "range"],
  ["half a root", withTank({ sightBreaks: 1.5 }), "tank.sightBreaks", "range"],
  ["gravel of no size", withTank({ substrate: "gravel" }), "tank.substrate", "word"],
  ["half a cave", withTank({ hides: { caves: 0.5 } }), "tank.hides.caves", "range"],
  [
    "a hiding place of no known kind",
    withTank({ hides: { castles: 1 } }),
    "tank.hides.castles",
    "unknown-key",
  ],
  ["a number of hiding places", withTank({ hides: 3 }), "tank.hides", "type"],
  ["a temper of no known kind", withGroup({ temper: "grumpy" }), "groups.1.temper", "word"],
  ["young wanted in words", withGroup({ raises: "yes" }), "groups.1.raises", "type"],
  ["plants of plastic", withTank({ plants: "plastic" }), "tank.plants", "word"],
  ["a filter of unknown age", withTank({ filter: { mediaArea: 2 } }), "tank.filter.age", "type"],
  ["half a current", withTank({ flow: { calmest: "still" } }), "tank.flow.strongest", "word"],
  ["a misspelt key of the tank", withTank({ covr: 0.3 }), "tank.covr", "unknown-key"],
  ["pH in words", withWater({ pH: "7" }), "water.pH", "type"],
  ["pH of wine vinegar", withWater({ pH: 2 }), "water.pH", "range"],
  ["°F for °C", withWater({ temperature: 77 }), "water.temperature", "range"],
  ["water as a list", { ...saved, water: [24] }, "water", "type"],
  ["no groups", { ...saved, groups: undefined }, "groups", "type"],
  ["an empty list of groups", { ...saved, groups: [] }, "groups", "range"],
  ["groups by name", { ...saved, groups: { danios: saved.groups[1] } }, "groups", "type"],
  [
    "more groups than are judged at once",
    { ...saved, groups: Array(101).fill(saved.groups[1]) },
    "groups",
    "too-many",
  ],
  ["a group that is null", { ...saved, groups: [saved.groups[0], null] }, "groups.1", "type"],
  ["a group without a species", withGroup({ species: undefined }), "groups.1.species", "type"],
  ["a species by number", withGroup({ species: 7 }), "groups.1.species", "type"],
  ["a species without a name", withGroup({ species: "" }), "groups.1.species", "text"],
  ["an endless name", withGroup({ species: "x".repeat(121) }), "groups.1.species", "text"],
  ["animals by word", withGroup({ unsexed: "7" }), "groups.1.unsexed", "type"],
  ["half an animal", withGroup({ unsexed: 1.5 }), "groups.1.unsexed", "range"],
  ["fewer animals than none", withGroup({ males: -1 }), "groups.1.males", "range"],
  ["more animals than anyone counts", withGroup({ unsexed: 1e15 }), "groups.1.unsexed", "range"],
  ["an animal without length", withGroup({ length: 0 }), "groups.1.length", "range"],
  ["a misspelt key of a group", withGroup({ male: 3 }), "groups.1.male", "unknown-key"],
  ["a form by number", withGroup({ form: 1 }), "groups.1.form", "type"],
  ["a name without letters", withGroup({ id: "" }), "groups.1.id", "text"],
  ["food that is no list", { ...saved, offerings: "dry" }, "offerings", "type"],
  [
    "food that nobody knows",
    { ...saved, offerings: [{ food: "pizza", place: "surface" }] },
    "offerings.0.food",
    "word",
  ],
  ["food given nowhere", { ...saved, offerings: [{ food: "dry" }] }, "offerings.0.place", "word"],
  ["a misspelt key of the plan", { ...saved, grups: [] }, "grups", "unknown-key"],
  ["a later format", { ...saved, format: 2 }, "format", "unknown-format"],
  ["a format in words", { ...saved, format: "1" }, "format", "unknown-format"],
  ["a format that is null", { ...saved, format: null }, "format", "unknown-format"],
];

/** Plans of the right shape that cannot be true, or whose species nobody has. */
export const impossible: readonly Case[] = [
  [
    "a strongest current that is calmer",
    withTank({ flow: { calmest: "strong", strongest: "still" } }),
    "tank.flow.strongest",
    "conflict",
  ],
  [
    "a hottest day below the coolest",
    withWater({ hottest: 20, coolest: 22, temperature: undefined }),
    "water.hottest",
    "conflict",
  ],
  ["a hottest day cooler than usual", withWater({ hottest: 20 }), "water.hottest", "conflict"],
  ["a coolest season warmer than usual", withWater({ coolest: 26 }), "water.temperature", "conflict"],
  ["a group of none", withGroup({ males: 0, females: 0 }), "groups.1", "range"],
  ["an unknown species", withGroup({ species: "unicornis-verus" }), "groups.1.species", "unknown-species"],
  ["a species called __proto__", withGroup({ species: "__proto__" }), "groups.1.species", "unknown-species"],
  ["an unknown form", withGroup({ form: "long-fins" }), "groups.1.form", "unknown-form"],
  ["a form called toString", withGroup({ form: "toString" }), "groups.1.form", "unknown-form"],
  [
    "glass that leaves no room",
    withTank({ base: { shape: "rectangle", length: 100, width: 4 }, measured: "outer", glass: 2 }),
    "tank.glass",
    "conflict",
  ],
  [
    "a base whose sides cross",
    withTank({
      base: {
        shape: "polygon",
        points: [
          [0, 0],
          [60, 60],
          [60, 0],
          [0, 60],
        ],
      },
    }),
    "tank.base.points",
    "conflict",
  ],
  [
    "a tank of two kilometres",
    withTank({ base: { shape: "rectangle", length: 2000, width: 40 }, unit: "m" }),
    "tank.base.length",
    "range",
  ],
];
