import { expect, test } from "vitest";
import { datesArePast } from "../../../data/checks/dates-are-past";
import { leastRecord } from "../../species/records";
import { foundBy } from "./found";

const issued = (...parts: number[]) =>
  foundBy(datesArePast, {}, [{ id: "a", issued: { "date-parts": [parts] } }]);

test.each([[[2019]], [[2019, 4]], [[2024, 2, 29]]])("%j is a date", async (parts) => {
  expect(await issued(...parts)).toStrictEqual([]);
});

test.each([
  [[1997, 13], "1997-13"],
  [[2023, 2, 29], "2023-02-29"],
  [[2199], "2199"],
])("%j is none, or still to come", async (parts, told) => {
  expect(await issued(...parts)).toStrictEqual([`data/sources/a.json: the date ${told}`]);
});

test("no species is described in years to come, nor its status told", async () => {
  const described = (authority: string) =>
    foundBy(datesArePast, { taxonomy: { ...leastRecord.taxonomy, authority } });
  expect(await described("(Hamilton, 1822)")).toStrictEqual([]);
  expect(await described("(Hamilton, 2822)")).toHaveLength(1);
  const status = (year: number) =>
    foundBy(datesArePast, {
      origin: { conservation: [{ by: "common-practice", value: { status: "LC", year } }] },
    });
  expect(await status(2020)).toStrictEqual([]);
  expect(await status(2120)).toHaveLength(1);
});
