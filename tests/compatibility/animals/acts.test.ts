import { describe, expect, test } from "vitest";
import {
  canHappen,
  livesOnGround,
  notYet,
  reaches,
  reachesAsleep,
} from "../../../src/compatibility/animals/acts";
import { kinOf } from "../../../src/plan/kin";
import type { Animals } from "../../../src/plan/party";
import type { Act } from "../../../src/species";

const chase: Act = { does: "chases", target: "any" };

const some = (numbers: Parameters<typeof kinOf>[0][number]): Animals => ({
  id: "a",
  kind: "fish",
  family: "F",
  order: "O",
  listings: [],
  ...numbers,
  kin: kinOf([numbers]),
});

describe("an act reaches", () => {
  test("those of the same part of the water", () => {
    expect(reaches(chase, ["bottom"], ["bottom", "midwater"])).toBe(true);
    expect(reaches(chase, ["bottom"], ["midwater"])).toBe(false);
  });

  test.each(["guarding-brood", "crowded"] as const)("those of the next part too, when %s", (when) => {
    expect(reaches({ ...chase, when }, ["bottom"], ["midwater"])).toBe(true);
    expect(reaches({ ...chase, when }, ["bottom"], ["surface"])).toBe(false);
  });

  test("whoever lives nobody knows where", () => {
    expect(reaches(chase, undefined, ["surface"])).toBe(true);
    expect(reaches(chase, ["bottom"], undefined)).toBe(true);
  });

  test("those asleep in the next part, by night and at any time alone", () => {
    const night = { "space.zones": ["bottom"], "diet.light": ["night"] } as const;
    const sleeper = { "space.zones": ["midwater"], "diet.light": ["day"] } as const;
    expect(reachesAsleep(chase, night, sleeper)).toBe(true);
    expect(reachesAsleep({ ...chase, when: "feeding" }, night, sleeper)).toBe(false);
    expect(reachesAsleep(chase, { ...night, "diet.light": ["day"] }, sleeper)).toBe(false);
    expect(reachesAsleep(chase, night, { ...sleeper, "diet.light": ["day", "night"] })).toBe(false);
    expect(reachesAsleep(chase, night, { ...sleeper, "space.zones": ["surface"] })).toBe(false);
  });
});

describe("among their own", () => {
  const ofSex = (doer: "male" | "female"): Act => ({ does: "bites", doer, target: "own-sex" });
  const group = some({ count: 4, males: 1, females: 3 });

  test("it takes two of the sex that fights", () => {
    expect(canHappen(ofSex("female"), group, group)).toBe(true);
    expect(canHappen(ofSex("male"), group, group)).toBe(false);
  });

  test("beside five females one of which nobody says the sex is no two males, and two may be", () => {
    const females = (others: number) => some({ count: 5 + others, some: { female: 5 } });
    const [one, two] = [females(1), females(2)];
    expect(canHappen(ofSex("male"), one, one)).toBe(false);
    expect(canHappen(ofSex("male"), two, two)).toBe(true);
    expect(canHappen(ofSex("female"), one, one)).toBe(true);
  });

  test("it takes a pair to breed", () => {
    const breeding: Act = { does: "chases", target: "own-kind", when: "breeding" };
    expect(canHappen(breeding, group, group)).toBe(true);
    const females = some({ count: 3, males: 0, females: 3 });
    expect(canHappen(breeding, females, females)).toBe(false);
    const one = some({ count: 1 });
    expect(canHappen(breeding, one, one)).toBe(false);
  });
});

test("a brood is guarded by grown animals, and all else done at any age unless it is said", () => {
  const young = { ...some({ count: 2 }), stage: "juvenile" } as const;
  expect(notYet({ ...chase, when: "guarding-brood" }, young)).toBe(true);
  expect(notYet(chase, young)).toBe(false);
  expect(notYet({ ...chase, from: "adult" }, young)).toBe(true);
  expect(notYet({ ...chase, from: "juvenile" }, young)).toBe(false);
});

test("on the ground lives who lives nowhere else, or nobody knows where", () => {
  expect(livesOnGround(["bottom"])).toBe(true);
  expect(livesOnGround(["bottom", "midwater"])).toBe(false);
  expect(livesOnGround(undefined)).toBe(true);
});
