export const name = "What blocks has evidence";

/** Acts and prey that rule company out stand on a source, or on a note that says how keepers know. */
export function find({ records }) {
  return records.flatMap(({ path, record }) =>
    [
      ...(record.temperament?.acts ?? []).filter(({ value }) => isDeadly(value)),
      ...(record.predation?.eats ?? []).filter(({ value }) => value?.prey === "fish"),
    ]
      .filter(({ by, note, setAside }) => by === "common-practice" && !note && !setAside)
      .map(({ value }) => ({
        where: path,
        found: `${JSON.stringify(value)} by common practice, without a word on how it is known`,
        expected: "a source, or a note",
        mend: "Name the source, or add a note of one sentence: what keepers see.",
      })),
  );
}

const isDeadly = (act) =>
  act?.does === "kills" ||
  (act?.does === "bites" && act.target === "any" && (act.when ?? "always") === "always");
