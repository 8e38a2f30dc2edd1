import { expect, test } from "vitest";
import { problemsWith } from "../../problems";

const study = { cite: "a-study", at: "p. 4" };

test("a statement names a source of the record, or the trade, or the curator", () => {
  const lifespan = [
    { by: "study", value: 4, as: "usual" },
    { by: "common-practice", value: 5, as: "usual" },
    { by: "curator", value: 3.5, note: "Weighed.", as: "usual" },
    { by: "a-study", value: 3, as: "greatest" },
  ];
  expect(problemsWith({ sources: { study }, size: { lifespan } })).toStrictEqual([
    ["size.lifespan[3].by", "one of study, common-practice, curator"],
  ]);
});

test.each(["__proto__", "constructor", "toString"])("%s is no source", (by) => {
  expect(problemsWith({ size: { lifespan: [{ by, value: 4, as: "usual" }] } })).toMatchObject([
    ["size.lifespan[0].by", {}],
  ]);
});

test("a source is there because a statement names it: a note or a form is enough", () => {
  const cover = [{ by: "study", note: "Hides when young." }];
  expect(problemsWith({ sources: { study }, space: { cover } })).toStrictEqual([]);
  const leopard = {
    names: { en: ["leopard danio"] },
    size: { lifespan: [{ by: "study", value: 4, as: "usual" }] },
  };
  expect(problemsWith({ sources: { study }, forms: { leopard } })).toStrictEqual([]);
  expect(problemsWith({ sources: { study } })).toStrictEqual([
    ["sources.study", "a source that some statement names"],
  ]);
});

test("a source that a line of a misspelt trait or section names is no unused one", () => {
  const said = [{ by: "study", value: 4, as: "usual" }];
  expect(problemsWith({ sources: { study }, size: { lifespn: said } })).toMatchObject([["size.lifespn", {}]]);
  expect(problemsWith({ sources: { study }, sice: { lifespan: said } })).toMatchObject([["sice", {}]]);
});

test.each(["common-practice", "curator"])("%s is reserved", (key) => {
  const lifespan = [{ by: key, value: 4, note: "Weighed.", as: "usual" }];
  expect(problemsWith({ sources: { [key]: study }, size: { lifespan } })).toStrictEqual([
    [`sources.${key}`, "a key that is not reserved"],
  ]);
});

test("a source says where the figure stands, or that it was recalled or observed", () => {
  const height = [{ by: "study", value: 40 }];
  const problemsOf = (source: object) => problemsWith({ sources: { study: source }, space: { height } });
  expect(problemsOf({ cite: "a-study" })).toStrictEqual([
    ["sources.study", "at: the page, row or address; or memory: true where the source was not read"],
  ]);
  expect(problemsOf({ cite: "a-study", under: "Brachydanio rerio", of: "Danio" })).toHaveLength(1);
  expect(problemsOf({ cite: "a-study", at: "p. 4" })).toStrictEqual([]);
  expect(problemsOf({ cite: "a-study", memory: true })).toStrictEqual([]);
  expect(problemsOf({ cite: "a-keeper", observed: true })).toStrictEqual([]);
});
