import { expect, test } from "vitest";
import { problemsWith } from "../../problems";

const trade = "common-practice";

test("a statement has a value, or a note for the reader, or both", () => {
  const cover = [{ by: trade, value: 0.3, note: "Roots." }, { by: trade, note: "Leaves." }, { by: trade }];
  expect(problemsWith({ space: { cover } })).toStrictEqual([["space.cover[2]", "a value, or a note"]]);
});

test("a figure of water says what it means", () => {
  const pH = [
    { by: trade, value: { min: 6, max: 8 } },
    { by: trade, note: "Soft water in the wild." },
  ];
  expect(problemsWith({ water: { pH } })).toStrictEqual([
    ["water.pH[0].as", "what the figure means, such as kept"],
  ]);
});

test("a length says what it means and what was measured", () => {
  expect(problemsWith({ size: { adultLength: [{ by: trade, value: 4 }] } })).toStrictEqual([
    ["size.adultLength[0].as", "usual or greatest"],
    ["size.adultLength[0].measure", "what was measured, or unstated"],
  ]);
});

test("an age says whether it is usual or the greatest on record", () => {
  const lifespan = [
    { by: trade, value: 4 },
    { by: trade, note: "Longer in cool water." },
  ];
  expect(problemsWith({ size: { lifespan } })).toStrictEqual([["size.lifespan[0].as", "usual or greatest"]]);
  expect(problemsWith({ size: { lifespan: [{ by: trade, value: 4, as: "greatest" }] } })).toStrictEqual([]);
});

test("a curator says how the sources were weighed", () => {
  const lifespan = [{ by: "curator", value: 4, as: "usual" }];
  expect(problemsWith({ size: { lifespan } })).toStrictEqual([
    ["size.lifespan[0].note", "a note on how the sources were weighed"],
  ]);
});

test("a field of the wrong kind is told once, not missed as well", () => {
  const pH = [{ by: trade, value: { min: 6, max: 8 }, as: { kept: true } }];
  expect(problemsWith({ water: { pH } })).toHaveLength(1);
});
