// Holds the plan of the house: floors that see only those below, doors, and no circles. Run by `npm run house`.

/** The floors that others may stand on, from the ground up; those of one storey do not know each other. */
const storeys = [
  ["units"],
  ["ranges"],
  ["species"],
  ["tank", "water"],
  ["load"],
  ["plan"],
  ["compatibility", "standards"],
  ["advice"],
  ["report", "tables"],
];

/** What stands beside them, each with the floors it may use. Nobody uses these. */
const beside = {
  schema: ["units", "ranges", "species", "tank", "water", "load", "plan", "standards"],
  catalog: ["shelf", "species"],
  evidence: ["shelf", "species"],
  search: ["shelf", "species"],
};

/** Modules of one species or one language each, generated: users import them one by one, and search loads them so. */
const modulesApart = "^src/((catalog|evidence)/species|search/languages)/";

const floors = [...storeys.flat(), ...Object.keys(beside), "shelf"];

const lower = storeys.flatMap((storey, level) =>
  storey.map((floor) => [floor, storeys.slice(0, level).flat()]),
);

/** @param {readonly string[]} names */
const anyOf = (names) => `^src/(${names.join("|")})/`;

/** For each floor, that it uses none but those it may. */
const arrows = [...lower, ...Object.entries(beside), ["shelf", []]].map(([floor, allowed]) => ({
  name: `${floor}-stands-on-${allowed.at(-1) ?? "the-ground"}`,
  comment: `${floor} may use ${allowed.join(", ") || "none of the floors"}.`,
  severity: "error",
  from: { path: `^src/${floor}/` },
  to: {
    path: anyOf(floors.filter((other) => other !== floor && !allowed.includes(other))),
    ...(floor === "search" && { pathNot: modulesApart }),
  },
}));

/** Folders whose rooms see only those before them: the rooms from the ground up, as patterns. */
const stairways = {
  "src/compatibility": [
    "(threshold(s|-values)\\.ts|animals/)",
    "engine/",
    "rules/",
    "verdict/",
    "assess/",
    "(meeting/|joining/|planner/|(?!threshold)[^/]+\\.ts)",
  ],
  "src/report": ["matters/", "messages/", "profile/", "(describe|pictures)/", "page/"],
  data: ["reading/", "writing/", "(checks|flips|modules)/", "commands/"],
};

const stairs = Object.entries(stairways).flatMap(([folder, rooms]) =>
  rooms.slice(0, -1).map((room, level) => ({
    name: `stairs-of-${folder}-${level + 1}`,
    comment: `From the ground up: ${rooms.join(", ")}.`,
    severity: "error",
    from: { path: `^${folder}/${room}` },
    to: { path: rooms.slice(level + 1).map((higher) => `^${folder}/${higher}`) },
  })),
);

export default {
  forbidden: [
    {
      name: "no-circle",
      comment: "No file needs itself, by whatever way, be it for a type.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "by-the-door",
      comment:
        "A floor is entered by its index.ts, or by inner.ts: what other floors share and no user sees.",
      severity: "error",
      from: { path: "^src/([^/]+)/" },
      to: { path: "^src/[^/]+/", pathNot: ["^src/$1/", "^src/[^/]+/(index|inner)\\.ts$", modulesApart] },
    },
    {
      name: "by-the-front-door",
      comment: "The root and the programs see of a floor what users see.",
      severity: "error",
      from: { path: "^(src/index\\.ts$|data/|docs/)" },
      to: { path: "^src/[^/]+/", pathNot: ["^src/[^/]+/(de/|rules/)?index\\.ts$", modulesApart] },
    },
    {
      name: "every-floor-is-in-the-plan",
      comment: "A folder of src has its place in .config/house.mjs.",
      severity: "error",
      from: { path: "^src/", pathNot: [anyOf(floors), "^src/[^/]+\\.ts$"] },
      to: {},
    },
    {
      name: "the-ground-bears-all",
      comment: "What stands beside the floors uses none of them.",
      severity: "error",
      from: { path: "^src/[^/]+\\.ts$", pathNot: "^src/index\\.ts$" },
      to: { path: "^src/.+/" },
    },
    {
      name: "the-root-brings-no-data",
      comment: "Who imports the root gets neither species nor zod.",
      severity: "error",
      from: { path: "^src/index\\.ts$" },
      to: { path: anyOf([...Object.keys(beside), "shelf"]) },
    },
    ...Object.entries({ schema: "zod", units: "convert-units" }).map(([floor, library]) => ({
      name: `only-${floor}-uses-${library}`,
      comment: "Even a type of it would reach whoever imports ours.",
      severity: "error",
      from: { path: "^src/", pathNot: `^src/${floor}/` },
      to: { path: `node_modules/${library}/` },
    })),
    {
      name: "nothing-foreign",
      comment: "The library runs on nothing but the language, zod and convert-units.",
      severity: "error",
      from: { path: "^src/" },
      to: { pathNot: ["^src/", "^package\\.json$", "node_modules/(zod|convert-units)/"] },
    },
    ...arrows,
    ...stairs,
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    doNotFollow: { path: "node_modules" },
    exclude: { path: "^docs/site/dist/" },
    enhancedResolveOptions: { extensions: [".ts", ".js", ".json"] },
  },
};
