// What a JSON Schema can tell of a record beside its fields, so that an editor underlines it while it is typed.
import * as z from "zod";
import { type TraitPath, traitTable } from "../../species";
import { sizeFields } from "../../species/inner";
import { neededFields } from "./needed";

type Rule = Readonly<Record<string, unknown>>;
type Span = { readonly min: number; readonly max: number };

const lacks = (field: string): Rule => ({ not: { required: [field] } });
const has = (field: string): Rule => ({ required: [field] });

/** Which fields of a statement belong together, and where its figures lie. */
export function rulesOfStatement(path: TraitPath, value: z.ZodType): Rule {
  const { way, plausible, unit } = traitTable[path];
  const needed = neededFields[way];
  return {
    anyOf: [has("value"), has("note")],
    ...(needed.length > 0 && { dependentRequired: { value: needed } }),
    dependentSchemas: { value: weighed, adopt: lacks("setAside") },
    ...(plausible && { allOf: [plausibly(value, plausible, unit)] }),
  };
}

/** What was weighed from several sources says how. */
const weighed: Rule = {
  anyOf: [has("note"), { properties: { by: { not: { const: "curator" } } } }],
};

/** The figures lie where such figures can lie, unless they are set aside or in another unit. */
function plausibly(value: z.ZodType, span: Span, unit: string | undefined): Rule {
  const inOtherUnit = { ...has("unit"), properties: { unit: { not: { const: unit } } } };
  return {
    anyOf: [
      { properties: { value: bounded(value, span) } },
      has("setAside"),
      ...(unit === undefined ? [] : [inOtherUnit]),
    ],
  };
}

/** A value whose sizes lie within a span. */
function bounded(value: z.ZodType, { min, max }: Span): Rule {
  const span = { type: "number", minimum: min, maximum: max };
  if (value instanceof z.ZodNumber) return span;
  if (value instanceof z.ZodUnion)
    return { anyOf: value.options.map((option) => bounded(option as z.ZodType, { min, max })) };
  if (!(value instanceof z.ZodObject)) return { type: "string" };
  const sizes = sizeFields.filter((field) => Object.hasOwn(value.shape, field));
  return { type: "object", properties: Object.fromEntries(sizes.map((field) => [field, span])) };
}

/** No line stands twice; "none" stands alone where lines add up, but for what is set aside. */
export function rulesOfList(path: TraitPath, value: z.ZodType): Rule {
  const addsUp = traitTable[path].way === "all" && value instanceof z.ZodUnion;
  if (!addsUp) return { uniqueItems: true };
  const none = { type: "object", properties: { value: { const: "none" } } };
  return {
    uniqueItems: true,
    anyOf: [
      { not: { contains: { ...none, ...has("value"), ...lacks("setAside") } } },
      { items: { type: "object", anyOf: [none, has("setAside")] } },
    ],
  };
}
