import { expect, test } from "vitest";
import { allSpecies, speciesById } from "../../src/catalog";
import { InvalidInputError } from "../../src/errors";
import { loadSpecies, suggestSpecies } from "../../src/search";
import { moved } from "../../src/shelf";

test("every species is loaded as the catalog has it", async () => {
  for (const profile of allSpecies) expect(await loadSpecies(profile.id)).toStrictEqual(profile);
});

test("an id that moved gives what the catalog gives", async () => {
  expect(moved.length).toBeGreaterThan(0);
  for (const [id] of moved) expect(await loadSpecies(id)).toStrictEqual(speciesById(id));
});

test("a profile that was loaded cannot be changed", async () => {
  expect(Object.isFrozen((await loadSpecies("danio-rerio")).water?.temperature)).toBe(true);
});

test.each(["unicorn", "", "Danio rerio", "__proto__", "constructor", undefined, null, 5, {}])(
  "%o is refused, by the promise",
  async (id) => {
    const promised = loadSpecies(id as string);
    await expect(promised).rejects.toThrow(InvalidInputError);
    await expect(promised).rejects.toMatchObject({ problems: [{ code: "unknown-species", found: id }] });
  },
);

test("whoever gives a name is told what gives its id", async () => {
  await expect(loadSpecies("Danio rerio")).rejects.toThrow(
    'id: expected the id of a species, such as suggestSpecies gives for a name, found "Danio rerio"',
  );
  expect((await loadSpecies(suggestSpecies("Danio rerio")[0]?.id ?? "")).id).toBe("danio-rerio");
});
