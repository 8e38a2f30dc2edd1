import { expect, test } from "vitest";
import { facts } from "vivary/plan";
import {
  countFields,
  floorFields,
  groupFields,
  tankFields,
  tankSets,
  waterFields,
} from "../../../docs/example-app/plan/fields";

test("the example app has a field for every fact of a plan that one field answers", () => {
  const tank = { base: { shape: "rectangle" } } as Parameters<typeof floorFields>[0]["tank"];
  const sets = [floorFields({ tank } as Parameters<typeof floorFields>[0]), ...tankSets, countFields(0)];
  const fields = [...sets.flatMap((set) => set.fields), ...tankFields, ...waterFields, ...groupFields(0)];
  const asked = fields.map(({ path }) => path.join("."));
  const paths = Object.values(facts).flatMap((fact) => fact.paths.map((path) => path.join(".")));
  const left = [...new Set(paths)].filter((path) => {
    const own = path.replace(".of.", ".0.");
    return !asked.some((field) => field === own || field.startsWith(`${own}.`));
  });
  // A form is chosen with its species, and what is fed is a list that grows.
  expect(left).toEqual(["groups.of.form", "offerings"]);
});
