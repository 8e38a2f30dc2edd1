import { expect, test } from "vitest";
import { identifiersAreKnown } from "../../../data/checks/identifiers-are-known";
import { readCollection } from "../../../data/reading/collection";
import { project } from "../project";

const danio = "data/species/danio-rerio.json";

const slipsWith = async (register: string, number: string) => {
  const { root, read, write } = project();
  const record = JSON.parse(read(danio));
  write(danio, JSON.stringify({ ...record, identifiers: { [register]: number } }));
  return identifiersAreKnown.find(await readCollection(root));
};

test("the numbers of the catalog are of known registers", async () => {
  expect(await identifiersAreKnown.find(await readCollection(project().root))).toStrictEqual([]);
  expect(await slipsWith("gbifBackbone", "2362635")).toStrictEqual([]);
});

test.each([
  ["fishBase", " Did you mean fishbase?"],
  ["nbci", " Did you mean ncbi?"],
  ["gbif", ""],
  ["toString", ""],
])("%s is no register", async (register, guess) => {
  expect(await slipsWith(register, "4653")).toMatchObject([
    { file: danio, at: ["identifiers", register], guess },
  ]);
});

test.each(["4653a", "04653", "SpecCode-4653", "46.53", "0"])(
  "%s is no number of FishBase",
  async (number) => {
    expect(await slipsWith("fishbase", number)).toMatchObject([
      { file: danio, at: ["identifiers", "fishbase"], found: `${number} in the register fishbase` },
    ]);
  },
);
