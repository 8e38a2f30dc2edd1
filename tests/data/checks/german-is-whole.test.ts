import { expect, test } from "vitest";
import { germanIsWhole } from "../../../data/checks/german-is-whole";
import { foundBy } from "./found";

const danio = "data/species/danio-rerio.json";
const named = (de: string) => foundBy(germanIsWhole, { names: { en: ["zebra danio"], de: [de] } } as never);
const practice = (value: unknown) => [{ by: "common-practice" as const, value }] as never;

test("a German name begins with a capital and is no English one", async () => {
  expect(await named("Zebrabärbling")).toStrictEqual([]);
  expect(await named("zebrabärbling")).toStrictEqual([`${danio}: the German name zebrabärbling`]);
  const forms = { leopard: { names: { en: ["leopard danio"], de: ["leopardbärbling"] } } };
  expect(await foundBy(germanIsWhole, { forms })).toStrictEqual([
    `${danio}: the German name leopardbärbling`,
  ]);
  const english = { names: { en: ["Zebra danio"], de: ["Zebra danio"] } } as never;
  expect(await foundBy(germanIsWhole, english)).toStrictEqual([`${danio}: the German name Zebra danio`]);
});

test("where an animal may move on to is told in both languages, of forms too", async () => {
  const told = [`${danio}: care.rehoming in English alone`];
  const rehoming = (value: unknown) => ({ care: { rehoming: practice(value) } });
  expect(await foundBy(germanIsWhole, rehoming({ en: "As a group.", de: "Als Gruppe." }))).toStrictEqual([]);
  expect(await foundBy(germanIsWhole, rehoming({ en: "As a group." }))).toStrictEqual(told);
  const forms = { leopard: { names: { en: ["leopard danio"] }, ...rehoming({ en: "As a group." }) } };
  expect(await foundBy(germanIsWhole, { forms })).toStrictEqual(told);
});

test("a region has its German, unless it is called alike", async () => {
  const of = (region: string) => foundBy(germanIsWhole, { origin: { regions: practice(region) } });
  for (const region of ["Mekong basin", "Thailand", "Kerala"]) expect(await of(region)).toStrictEqual([]);
  expect(await of("Kinabatangan basin")).toStrictEqual([
    `${danio}: the region Kinabatangan basin, of which German has no word`,
  ]);
});
