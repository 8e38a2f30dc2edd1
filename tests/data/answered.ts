import { question } from "../../data/checks/nothing-is-left-to-fill-in";

type Json = ReturnType<typeof JSON.parse>;

/** A new record with the first answer of another one in the place of each question of a trait. */
export function answered(blank: Json, other: Json): Json {
  const isAsked = (line: Json) => line?.note?.startsWith(question);
  const sections = Object.entries<Json>(blank).filter(([section]) => section !== "sources");
  const filled = sections.map(([section, traits]) => {
    const lines = Object.entries<Json>(traits).map(([trait, held]) => {
      if (!Array.isArray(held) || !isAsked(held[0])) return [trait, held];
      const [{ note: _, ...line }] = held;
      return [trait, [{ ...line, value: other[section][trait][0].value }]];
    });
    return [section, typeof traits === "string" ? traits : Object.fromEntries(lines)];
  });
  return { ...blank, ...Object.fromEntries(filled) };
}
