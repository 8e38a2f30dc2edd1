import { onceOfEach } from "../../made-once";

/** What several of a name are called: `guppies`, `neon tetras`, `blue forms of the red zebra`, `bronze corydoras`. */
export function plural(name: string): string {
  const [first = name, ...further] = name.split(" of ");
  if (further.length > 0) return [plural(first), ...further].join(" of ");
  if (!/[a-z]$/.test(name) || /(?:fish|[^s]s|[^o]x|koi|goi|ogon|ii|eri)$/.test(name)) return name;
  if (/[^aeiou]y$/.test(name)) return `${name.slice(0, -1)}ies`;
  return /(?:ch|sh|[sxz])$/.test(name) ? `${name}es` : `${name}s`;
}

/** `the tiger barb`; of a name that begins with whose it is, that alone: `Agassiz's dwarf cichlid`. */
export const the = (name: string) => (/^\p{Lu}\S*['’]s? /u.test(name) ? name : `the ${name}`);

/** The verb that agrees. */
export const verb = (many: boolean, one: string, several: string) => (many ? several : one);

export const they = (many: boolean) => verb(many, "it", "they");

export const them = (many: boolean) => verb(many, "it", "them");

export const their = (many: boolean) => verb(many, "its", "their");

const listed = /* @__PURE__ */ onceOfEach(
  (type: "conjunction" | "disjunction") => new Intl.ListFormat("en-GB", { type }),
);

export const allOf = (items: readonly string[]) => listed("conjunction").format(items);

export const anyOf = (choices: readonly string[]) => listed("disjunction").format(choices);
