import { cpSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { flips } from "../../../data/commands/flips";
import { show } from "../../../data/commands/show";
import { root as here } from "../../../data/reading/files";
import { project, textOf } from "../project";
import { repository } from "../repository";

const betta = "data/species/betta-splendens.json";

/** A repository of the data, and the text of a betta that eats fish. */
function history() {
  const { root, read, write, remove } = project();
  write(".gitignore", "node_modules\n");
  const commit = repository(root);
  const record = JSON.parse(read(betta));
  record.predation.eats = [{ by: "common-practice", value: { prey: "fish", greatest: 5 }, note: "A test." }];
  return { root, read, write, remove, commit, hungry: JSON.stringify(record) };
}

test("a change of a record is told with the pairs it flips: old, new, and the rule", async () => {
  const { root, write, commit, hungry } = history();
  commit("First");
  expect(textOf(await flips(root))).toBe("0 of 0 verdicts differ.");
  write(betta, hungry);
  const said = textOf(await flips(root));
  expect(said).toMatch(/neon tetra: \w+( \([^)]*\))? → unsuitable; now blocking predation/);
  expect(said).toMatch(/\d+ of 12 verdicts differ/);
  const shown = textOf(await show(root, "Betta splendens"));
  for (const line of said.split("\n").slice(0, -1)) expect(shown).toContain(line);
  expect(shown).toMatch(/neon tetra: .*→ unsuitable; now blocking predation\n {2}predation: /);
  expect(shown).toContain(
    '    predation.eats: { "by": "common-practice", "value": { "prey": "fish", "greatest": 5 } }',
  );
  expect(shown).toMatch(/Not known yet: |Every trait is known\./);
});

test("a species that is new or gone is counted", async () => {
  const { root, read, remove, write, commit } = history();
  const text = read(betta);
  remove(betta);
  commit("Without it");
  write(betta, text);
  expect(textOf(await flips(root))).toMatch(/0 of 12 verdicts differ.\n12 are new: /);
  commit("With it");
  remove(betta);
  expect(textOf(await flips(root, "HEAD"))).toContain("12 are gone.");
});

test("a branch is compared with where it left main, and any commit may be named", async () => {
  const { root, write, commit, hungry } = history();
  commit("First");
  write(betta, hungry);
  commit("Hungry");
  expect(textOf(await flips(root))).toBe("0 of 0 verdicts differ.");
  expect(textOf(await flips(root, "HEAD~1"))).toContain("now blocking predation");
  expect(await flips(root, "no-such-commit")).toStrictEqual({
    lines: ["git knows no commit no-such-commit."],
    failed: true,
  });
});

test("a change of a rule is judged by the rules of each commit", async () => {
  const { root, write, read, commit } = history();
  for (const part of ["data", "src", "package.json", "tsconfig.json"])
    cpSync(join(here, part), join(root, part), {
      recursive: true,
      filter: (path) => !path.endsWith(".json") || /(package|tsconfig)\.json$/.test(path),
    });
  symlinkSync(join(here, "node_modules"), join(root, "node_modules"));
  commit("First");
  const rules = "src/compatibility/rules/index.ts";
  write(rules, read(rules).replace(/^import \{ temperature \}/m, "// A change.\nimport { temperature }"));
  expect(textOf(await flips(root))).toMatch(/^0 of \d\d verdicts differ.$/);
});

test("where the other commit cannot tell its judgements, that is said", async () => {
  const { root, write, commit } = history();
  commit("First");
  write("package.json", "{}");
  cpSync(join(here, "src/errors.ts"), join(root, "src/errors.ts"));
  expect(textOf(await flips(root))).toMatch(/^[0-9a-f]{8} has no program that tells its judgements/);
});

test("without a history there is nothing to compare with", async () => {
  const { root } = project();
  expect(await flips(root)).toStrictEqual({
    lines: ["No commit is at hand to compare with."],
    failed: true,
  });
  expect(textOf(await show(root, "betta-splendens"))).toContain("No commit is at hand to compare with.");
});

test("an id without a record is told", async () => {
  const { root } = project();
  expect(textOf(await show(root, "unicorn"))).toBe("No record is called unicorn.");
});
