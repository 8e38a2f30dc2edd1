import { expect, test } from "vitest";
import { assessPair, defineRule, type Rule } from "../../../src/compatibility";
import { animal } from "../animals";

/** Of a species that needs so much cover, as one source says, and so much, as another does. */
const needing = (id: string, cover: number, also: number) =>
  animal(id, { "space.cover": cover }, { also: [{ "space.cover": also }] });

/** A rule that blocks where the other needs less cover; it may ask something in the midst of it. */
const lessCover = (asks: () => void): Rule =>
  defineRule({
    id: "x-less-cover",
    way: "mutual",
    needs: { from: ["space.cover"], to: ["space.cover"] },
    mayYield: ["blocking"],
    judge: ({ from, to }) => {
      const own = from["space.cover"];
      asks();
      return to["space.cover"] < own ? [{ weight: "blocking" }] : [];
    },
  });

test("a rule that asks of another pair while it judges, by itself, is answered as any other is", () => {
  const one = { species: needing("one", 0.1, 0.9) };
  const other = { species: needing("other", 0.5, 0.4) };
  const [further, furthest] = [needing("further", 0.7, 0.2), needing("furthest", 0.3, 0.6)];
  const inTheMidst = () => assessPair({ species: further }, { species: furthest }, { rules: [asking] });
  const told: unknown[] = [];
  let isAsked = false;
  const asking = lessCover(() => {
    if (isAsked) return;
    isAsked = true;
    told.push(inTheMidst());
    isAsked = false;
  });
  const plain = { rules: [lessCover(() => {})] };
  expect(assessPair(one, other, { rules: [asking] })).toEqual(assessPair(one, other, plain));
  expect(assessPair(one, other, plain).bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
  const apart = assessPair({ species: further }, { species: furthest }, plain);
  for (const each of told) expect(each).toEqual(apart);
  expect(told.length).toBe(4);
});

test("a rule that threw judges the next pair", () => {
  const one = { species: needing("one", 0.1, 0.9) };
  let fails = true;
  const rule = lessCover(() => {
    if (fails) throw new Error("of the app");
  });
  expect(() => assessPair(one, one, { rules: [rule] })).toThrow("of the app");
  fails = false;
  const other = { species: needing("other", 0.5, 0.4) };
  expect(assessPair(one, other, { rules: [rule] }).bounds.atWorst).toBe("unsuitable");
});
