import { describe, expect, test } from "vitest";
import { isGrave, isOf, toldActs } from "../../../../src/report/page/sections/acts";
import type { Act } from "../../../../src/species";

const told = (...acts: readonly Act[]) => toldActs(acts).map(({ does, targets }) => [does, targets]);

describe("the deeds that a page tells", () => {
  test("name all on whom one falls, each once", () => {
    expect(
      told(
        { does: "chases", target: "look-alike" },
        { does: "chases", target: "smaller" },
        { does: "chases", target: "smaller" },
        { does: "bites", target: "smaller" },
      ),
    ).toStrictEqual([
      ["chases", ["look-alike", "smaller"]],
      ["bites", ["smaller"]],
    ]);
  });

  test("name no sex of its kind beside the whole kind", () => {
    expect(
      told(
        { does: "chases", target: "own-sex" },
        { does: "chases", target: "other-sex" },
        { does: "chases", target: "own-kind" },
        { does: "chases", target: "any" },
      ),
    ).toStrictEqual([["chases", ["own-kind", "any"]]]);
    expect(told({ does: "chases", target: "own-sex" })).toStrictEqual([["chases", ["own-sex"]]]);
  });

  test("are apart by who does it, and when", () => {
    const [of, breeding] = [
      { does: "bites", target: "own-sex", doer: "male" },
      { does: "bites", target: "own-sex", when: "breeding" },
    ] as const;
    const acts = toldActs([of, breeding]);
    expect(acts).toHaveLength(2);
    expect(acts.map((act) => [isOf(of, act), isOf(breeding, act), isOf("none", act)])).toStrictEqual([
      [true, false, false],
      [false, true, false],
    ]);
  });

  test.each<[Act, boolean]>([
    [{ does: "kills", target: "own-sex" }, true],
    [{ does: "bites", target: "any", when: "guarding-brood" }, false],
    [{ does: "nips-fins", target: "long-finned" }, true],
    [{ does: "nips-fins", target: "own-kind" }, false],
    [{ does: "chases", target: "any" }, false],
  ])("%o is to be known before buying: %s", (act, grave) => {
    expect(toldActs([act]).map(isGrave)).toStrictEqual([grave]);
  });
});
