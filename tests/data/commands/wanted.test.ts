import { expect, test } from "vitest";
import { wanted } from "../../../data/commands/wanted";
import { project } from "../project";

const file = "data/species/betta-splendens.json";

test("the gap that leaves most verdicts undetermined comes first", async () => {
  const { root, read, write } = project();
  const record = JSON.parse(read(file));
  record.water.temperature = record.water.temperature.map(({ by }: { readonly by: string }) => ({
    by,
    note: "A line that only informs.",
  }));
  write(file, JSON.stringify(record));
  const { lines, failed } = await wanted(root);
  expect(failed).toBe(false);
  expect(lines[0]).toMatch(
    /^betta-splendens \(Siamese fighting fish\): temperature \(water.temperature\) leaves \d+ pairs open, \d+ of them undetermined$/,
  );
});

test("the gaps of one species are told alone, by any of its names", async () => {
  const { root, read, write } = project();
  const record = JSON.parse(read(file));
  record.water.temperature = record.water.temperature.map(({ by }: { readonly by: string }) => ({
    by,
    note: "A line that only informs.",
  }));
  write(file, JSON.stringify(record));
  const { lines } = await wanted(root, "Siamese fighting fish");
  expect(lines[0]).toContain("water.temperature");
  for (const line of lines) expect(line).toContain("betta-splendens");
  expect(await wanted(root, "unicorn")).toMatchObject({ failed: true });
});
