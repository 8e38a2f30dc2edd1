export const name = "A moved id arrives at a record in one step";

export function find({ moved, records }) {
  const ids = new Set(records.map(({ record }) => record.id));
  return moved.flatMap(({ path, json }) => {
    const mend = "Forward to the id of a record, and only ids that no record has.";
    const problems = [];
    if (ids.has(json?.id)) problems.push({ found: `${json.id} has a record`, expected: "an id without one" });
    if (!ids.has(json?.to)) problems.push({ found: `goes to ${json?.to}`, expected: "the id of a record" });
    if (typeof json?.why !== "string") problems.push({ found: "no reason", expected: "why it moved" });
    return problems.map((problem) => ({ where: path, ...problem, mend }));
  });
}
