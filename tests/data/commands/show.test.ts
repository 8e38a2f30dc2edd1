import { expect, test } from "vitest";
import { checkout } from "../checkout";

const betta = "data/species/betta-splendens.json";

test("a record is shown with the verdicts that a change of it flips", () => {
  const project = checkout();
  const record = JSON.parse(project.read(betta));
  record.predation.eats = [{ by: "common-practice", value: { prey: "fish", greatest: 5 }, note: "A test." }];
  project.write(betta, JSON.stringify(record));
  const { status, said } = project.run("species.mjs", "show", "betta-splendens");
  expect(status).toBe(0);
  expect(said).toContain("Betta splendens");
  expect(said).toMatch(/\d+ of \d+ verdicts differ/);
  expect(said).toMatch(/Siamese fighting fish and neon tetra: unsuitable. blocking: predation/);
});

test("an id without a record is told", () => {
  expect(checkout().run("species.mjs", "show", "unicorn")).toMatchObject({
    status: 1,
    said: expect.stringContaining("npm run species check unicorn"),
  });
});
