import { expect, test } from "vitest";
import { checkout } from "../checkout";

test("the gap that leaves most verdicts undetermined comes first", () => {
  const project = checkout();
  const file = "data/species/betta-splendens.json";
  const record = JSON.parse(project.read(file));
  record.water.temperature = record.water.temperature.map(({ by }: { readonly by: string }) => ({
    by,
    note: "A line that only informs.",
  }));
  project.write(file, JSON.stringify(record));
  const { status, said } = project.run("species.mjs", "wanted");
  expect(status).toBe(0);
  expect(said.split("\n")[0]).toMatch(
    /^betta-splendens \(Siamese fighting fish\): temperature \(water.temperature\) leaves \d+ pairs open, \d\d+ of them undetermined$/,
  );
});

test("without a command the four are named", () => {
  const { status, said } = checkout().run("species.mjs");
  expect(status).toBe(1);
  for (const command of ["new", "check", "show", "wanted"])
    expect(said).toContain(`npm run species ${command}`);
});
