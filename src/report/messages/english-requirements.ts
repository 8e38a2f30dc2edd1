import type { OfficialRequirement } from "../../standards";
import { english } from "./english";
import { allOf } from "./english-grammar";
import type {
  DependsOn,
  RequirementMessages,
  RequirementWords,
  ToldAsked,
  ToldHas,
  ToldOpen,
  ToldRequirement,
} from "./requirement-messages";
import { withRequirements } from "./with-requirements";

const answers: Readonly<Record<OfficialRequirement["answer"], string>> = {
  "not-met": "Not met",
  depends: "Depends",
  undetermined: "Cannot be told",
  met: "Met",
};

const forces: Readonly<Record<OfficialRequirement["force"], string>> = {
  binding: "binding",
  municipal: "municipal, binding in that city",
  advice: "advice, not binding",
  "guidance for authorities": "guidance for authorities, not binding",
};

const bound = (binds: boolean) => (binds ? "binding" : "not binding");

const measures: Readonly<Record<Exclude<ToldHas["of"], "animals">, string>> = {
  "gross volume": "gross volume",
  "water volume": "volume of the water",
  "water volume to gross volume": "volume of the water or of the tank",
  length: "length",
  width: "width",
  depth: "depth of the water or of the tank",
  "water depth": "depth of the water",
  "front edge": "front edge",
  floor: "floor",
  "general hardness": "general hardness",
  "shape of the base": "base",
};

const taken = {
  planned: "as the plan gives it",
  grown: "where the plan gives none, that of grown fish",
  any: "where the plan gives none, that of grown fish, and for young any up to that",
};

/** The length of the fish from which a figure was computed. */
const measured = ({ length }: NonNullable<ToldAsked["by"]>, these: string) =>
  ({
    "present standard length": `the length of ${these} now, without the tail fin`,
    "present total length": `the length of ${these} now, with the tail fin`,
    "adult total length": `the length to which ${these} grow, with the tail fin`,
  })[length];

/** The same, and what is taken for it where the plan may give it. */
function computed(by: NonNullable<ToldAsked["by"]>, these: string): string {
  const as = by.length === "adult total length" ? "" : ` (${taken[by.taken]})`;
  return `, worked out from ${measured(by, these)}${as}`;
}

function asked({ figure, extent, beyond, isCount, by }: ToldAsked, these: string): string {
  if (figure === "")
    return `How much that is cannot be worked out${by ? ` from ${measured(by, these)}` : ""}.`;
  if (isCount) return `Asked: ${extent === "open" ? figure : `at least ${figure}`} animals.`;
  const least = {
    one: `${beyond ? "more than" : "at least"} ${figure}`,
    span: by ? figure : `at least ${figure}`,
    open: `${figure}, and more for what is not known`,
  }[extent];
  return `Asked: ${least}${by ? computed(by, these) : ""}.`;
}

function has({ of, figure, isOne, sizes }: ToldHas): string {
  if (of === "animals") return `The plan: ${figure} ${isOne ? "animal" : "animals"}.`;
  if (of === "shape of the base") return `The plan: ${figure}.`;
  const sized =
    sizes && { outer: ", by sizes outside the glass", inner: ", by sizes inside the glass" }[sizes];
  return `The plan: ${figure} (${measures[of]}${sized ?? ""}).`;
}

const counted = (of: Extract<DependsOn, { on: "sizes" }>["of"]): string => {
  if (of.includes("volume")) return "whether the volume of the water or of the tank counts";
  return of.includes("depth")
    ? "whether the depth of the water or of the tank counts"
    : "whether the glass counts";
};

const depending = (one: DependsOn, these: string): string =>
  one.on === "sizes"
    ? counted(one.of)
    : {
        "present standard length": `how long ${these} are without the tail fin`,
        "present total length": `how long ${these} are`,
        "adult total length": `how long ${these} grow`,
      }[one.length];

function open(told: ToldOpen): string {
  if (told.reason === "missing") return `Not known: ${told.trait} (${told.of.who}).`;
  if (told.reason === "no-figure") return "The text states no figure by which to tell.";
  if (told.reason === "not-read") return "The figures of the text have not been read.";
  if (told.lacks === "height") return "The plan does not give the height of the tank.";
  return told.lacks === "hardness"
    ? "The plan does not give the general hardness."
    : "A plan does not tell it.";
}

const noted = (note: NonNullable<ToldRequirement["note"]>) =>
  typeof note === "number" ? `See note ${note}.` : `Note: ${note}`;

/** What reports on official requirements say in English. */
const words = (): RequirementWords => ({
  lead: 'What laws and official guidance known here ask, one sentence at a time and in other words than theirs, beside what the plan has. What holds is what is in force where the tank stands. "Met" says that what the plan has reaches what that sentence asks, and no more: more may be asked.',
  none: "Nothing is known here of what a law or official guidance asks. That is no leave: the law where the tank stands decides, and it may ask much.",
  instrument: ({ jurisdiction, instrument, date, forces: told }) => {
    const force =
      told.length > 1 ? "some binding, some not, as told of each" : told.map((one) => forces[one]).join();
    return `${jurisdiction}: ${instrument} (${date ?? "date not known"}; ${force})`;
  },
  requirement: ({ answer, animals, asks, dependsOn, basis, binds, note, article, ...told }) => {
    const these = animals ? "these fish" : "the fish";
    const on = dependsOn.map((one) => depending(one, these));
    const place = [
      article,
      binds === undefined ? [] : bound(binds),
      basis ? { read: "read", memory: "recalled, not read" }[basis] : [],
    ].flat();
    return [
      `${answers[answer]}${animals ? ` (${animals.who})` : ""}: ${asks}`,
      told.asked ? asked(told.asked, these) : [],
      told.has ? has(told.has) : [],
      on.length > 0 ? `It depends on ${allOf(on)}: at one end it is met, at the other not.` : [],
      told.open ? open(told.open) : [],
      `Where it stands: ${place.join("; ")}.`,
      note === undefined ? [] : noted(note),
    ]
      .flat()
      .join(" ");
  },
  note: (number, note) => `Note ${number}: ${note}`,
  caution: (caution) => caution,
  shapes: {
    rectangle: "a rectangular base",
    polygon: "a base with corners",
    circle: "a round base",
    sector: "a base that is a slice of a circle",
    bowed: "a base with a bowed front",
  },
  forces,
  closing: "The text in force decides: ask the competent authority, as a rule the veterinary office.",
});

/** What reports say in English, and what is said of official requirements. */
export const englishRequirements: RequirementMessages = /* @__PURE__ */ withRequirements(
  english,
  /* @__PURE__ */ words(),
);
