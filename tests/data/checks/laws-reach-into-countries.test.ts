import { expect, test } from "vitest";
import { lawsReachIntoCountries } from "../../../data/checks/laws-reach-into-countries";
import { readCollection } from "../../../data/reading/collection";
import { project } from "../project";

const law = "data/legal/germany.json";
const slipsOf = async (within: string) => {
  const { root, read, write } = project();
  write(law, read(law).replace('"eu"', `"${within}"`));
  return lawsReachIntoCountries.find(await readCollection(root));
};

test("a country may be within any lawgiver that has a file", async () => {
  expect(await slipsOf("eu")).toEqual([]);
  expect(await slipsOf("switzerland")).toEqual([]);
});

test.each([
  ["cite", " Did you mean cites?"],
  ["atlantis", undefined],
  ["germany", undefined],
])("%s is no lawgiver that Germany is within", async (within, guess) => {
  expect(await slipsOf(within)).toMatchObject([{ file: law, at: ["within", 0], ...(guess && { guess }) }]);
});
