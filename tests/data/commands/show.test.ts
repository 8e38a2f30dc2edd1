import { expect, test } from "vitest";
import { show } from "../../../data/commands/show";
import { project, textOf } from "../project";

test("the forms of a species are shown, each with what differs, and whose the verdicts are", async () => {
  const { root } = project();
  const said = textOf(await show(root, "danio-rerio"));
  expect(said).toMatch(/\n## Forms\n/);
  expect(said).toMatch(/\n- leopard danio \(leopard\): .+/);
  expect(said).toMatch(/\n- long-fin.* \(long-fin\): .*long fins \(appearance\.longFins\)/);
  expect(said).toContain("Verdicts are of the species");
});

test("a form that differs in nothing that is stated says so, and a species without forms has no section", async () => {
  const { root, read, write } = project();
  const file = "data/species/danio-rerio.json";
  const record = JSON.parse(read(file));
  const forms = { ...record.forms, gold: { names: { en: ["gold danio"] } } };
  write(file, JSON.stringify({ ...record, forms }));
  expect(textOf(await show(root, "danio-rerio"))).toContain("- gold danio (gold): nothing");
  expect(textOf(await show(root, "danio-choprae"))).not.toContain("## Forms");
});
