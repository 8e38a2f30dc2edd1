import { expect, test } from "vitest";
import { sourcesAreOne } from "../../../data/checks/sources-are-one";
import { foundBy } from "./found";

const found = (...sources: Parameters<typeof foundBy>[2] & {}) => foundBy(sourcesAreOne, {}, sources);

test("a paper that has two files is told in both, however its DOI is written", async () => {
  expect(
    await found({ id: "yanar-2019", DOI: "10.1016/J.1" }, { id: "yanar-gao", DOI: "10.1016/j.1" }),
  ).toStrictEqual([
    "data/sources/yanar-2019.json: the DOI 10.1016/J.1 stands in data/sources/yanar-gao.json too",
    "data/sources/yanar-gao.json: the DOI 10.1016/j.1 stands in data/sources/yanar-2019.json too",
  ]);
});

test.each(["http://nas.er.usgs.gov", "https://www.nas.er.usgs.gov/", "https://NAS.er.usgs.gov"])(
  "%s is the address of another file",
  async (URL) => {
    expect(await found({ id: "usgs", URL }, { id: "usgs-nas", URL: "https://nas.er.usgs.gov" })).toHaveLength(
      2,
    );
  },
);

test("other papers have other numbers, and a file may have none", async () => {
  expect(
    await found({ id: "a", DOI: "10.1016/j.1" }, { id: "b", DOI: "10.1016/j.2" }, { id: "c" }, { id: "d" }),
  ).toEqual([]);
});
