import { expect, test } from "vitest";
import { problemsWith } from "../../problems";

const study = { cite: "a-study" };

test("a statement names a source of the record, or the trade, or the curator", () => {
  const lifespan = [
    { by: "study", value: 4 },
    { by: "common-practice", value: 5 },
    { by: "curator", value: 3.5, note: "Weighed." },
    { by: "a-study", value: 3 },
  ];
  expect(problemsWith({ sources: { study }, size: { lifespan } })).toStrictEqual([
    ["size.lifespan[3].by", "one of study, common-practice, curator"],
  ]);
});

test.each(["__proto__", "constructor", "toString"])("%s is no source", (by) => {
  expect(problemsWith({ size: { lifespan: [{ by, value: 4 }] } })).toMatchObject([
    ["size.lifespan[0].by", {}],
  ]);
});

test("a source is there because a statement names it: a note or a form is enough", () => {
  const cover = [{ by: "study", note: "Hides when young." }];
  expect(problemsWith({ sources: { study }, space: { cover } })).toStrictEqual([]);
  const leopard = { names: { en: ["leopard danio"] }, size: { lifespan: [{ by: "study", value: 4 }] } };
  expect(problemsWith({ sources: { study }, forms: { leopard } })).toStrictEqual([]);
  expect(problemsWith({ sources: { study } })).toStrictEqual([
    ["sources.study", "a source that some statement names"],
  ]);
});

test.each(["common-practice", "curator"])("%s is reserved", (key) => {
  const lifespan = [{ by: key, value: 4, note: "Weighed." }];
  expect(problemsWith({ sources: { [key]: study }, size: { lifespan } })).toStrictEqual([
    [`sources.${key}`, "a key that is not reserved"],
  ]);
});
