import { describe, expect, test } from "vitest";
import { setPoint, unionizedAmmoniaLimit } from "../../../src/advice";
import { speciesById } from "../../../src/catalog";
import { assessPair } from "../../../src/compatibility";
import type { SpeciesProfile } from "../../../src/species";
import { animal } from "../../compatibility/animals";
import { expectRefused } from "../../refused";
import { keptAt } from "./waters";

const named = (...ids: readonly string[]): readonly SpeciesProfile[] =>
  ids.map((id) => speciesById(id) ?? expect.fail(`no ${id}`));

/** A heater that holds half a degree. */
const steady = { thresholds: { leastTemperature: 0.5 } };

describe("water for all", () => {
  test("lies in the middle of what all are kept in, and names whose ends limit it", () => {
    expect(setPoint([keptAt(20, 25), keptAt(22, 28), keptAt(18, 30)])).toEqual({
      water: { temperature: 23.5, pH: 7, generalHardness: 11, salinity: 0 },
      margin: { temperature: 1.5, pH: 1, generalHardness: 9, salinity: 0.5 },
      limiting: {
        temperature: { least: 1, most: 0 },
        pH: { least: 0, most: 0 },
        generalHardness: { least: 0, most: 0 },
        salinity: { least: 0, most: 0 },
      },
      open: [],
      beyondKept: [],
      doubtful: [],
    });
  });

  test("lies in the middle of what is best for all, and where they do not share that, of what they are kept in", () => {
    const best = (min: number, max: number) => keptAt(10, 26, { optimum: { min, max } });
    const alone = setPoint([best(18, 22)]);
    expect(alone).toMatchObject({ water: { temperature: 20 }, margin: { temperature: 6 } });
    expect(setPoint([best(18, 22), keptAt(14, 21)])).toMatchObject({ water: { temperature: 19.5 } });
    expect(setPoint([best(18, 22), best(21, 25)])).toMatchObject({ water: { temperature: 21.5 } });
    expect(setPoint([best(18, 20), best(21, 25)])).toMatchObject({ water: { temperature: 18 } });
    expect(setPoint(named("carassius-auratus"))).toMatchObject({ water: { temperature: 20 } });
  });

  test("where they are kept in nothing in common, in the middle of what all can be given", () => {
    // 18 to 22 and 22.5 to 26 give way by half a degree each: 22 to 22.5.
    const found = setPoint([keptAt(18, 22), keptAt(22.5, 26)], steady);
    expect(found).toMatchObject({ water: { temperature: 22.25 }, margin: { temperature: 0.25 } });
  });

  test("where what all are kept in is too narrow to be held, the margin is that of what they can be given", () => {
    const found = setPoint([keptAt(18, 24), keptAt(24, 28)], steady);
    expect(found).toMatchObject({ water: { temperature: 24 }, margin: { temperature: 0.5 } });
  });

  test("never leaves a limit, and keeps so far from it that it can be held", () => {
    // Can be given 20 to 20.5: half a degree is held.
    const found = setPoint([keptAt(20, 24, { limit: { min: 20 } }), keptAt(16, 20)], steady);
    expect(found).toMatchObject({ water: { temperature: 20.25 }, margin: { temperature: 0.25 } });
  });

  test("of one animal alone is its own", () => {
    expect(setPoint([keptAt(20, 26)])).toMatchObject({
      water: { temperature: 23 },
      margin: { temperature: 3 },
    });
  });

  test("of animals in brackish water is brackish, and fresh where that serves all", () => {
    const kept = (min: number, max: number) => animal("fish", { "water.salinity": { kept: { min, max } } });
    expect(setPoint([kept(5, 15), kept(9, 30)])).toMatchObject({
      water: { salinity: 12 },
      margin: { salinity: 3 },
    });
    expect(setPoint([kept(0, 15), kept(0, 5)])).toMatchObject({
      water: { salinity: 0 },
      margin: { salinity: 5 },
    });
  });

  test("lies just inside the one end that is known, and hardness begins at none", () => {
    const soft = animal("soft", { "water.generalHardness": { kept: { max: 10 } } });
    expect(setPoint([soft])).toMatchObject({ water: { generalHardness: 5 }, margin: { generalHardness: 5 } });
    const warm = animal("warm", { "water.temperature": { kept: { min: 24 } } });
    expect(setPoint([warm])).toMatchObject({ water: { temperature: 25 }, margin: { temperature: 1 } });
    const cool = animal("cool", { "water.temperature": { kept: { max: 20 } } });
    expect(setPoint([cool])).toMatchObject({ water: { temperature: 19 }, margin: { temperature: 1 } });
  });

  test("says of whom nobody knows, and leaves out what nobody knows of anyone", () => {
    const unknown = animal("unknown", { "water.temperature": { kept: { min: 20, max: 24 } } });
    const { open, ...found } = setPoint([
      unknown,
      animal("known", { "water.pH": { kept: { min: 6, max: 7 } } }),
    ]) as {
      open: unknown;
    };
    expect(found).toMatchObject({ water: { temperature: 22, pH: 6.5 } });
    expect(found).not.toHaveProperty("water.generalHardness");
    expect(open).toEqual([
      { on: "pH", of: 0 },
      { on: "generalHardness", of: 0 },
      { on: "salinity", of: 0 },
      { on: "temperature", of: 1 },
      { on: "generalHardness", of: 1 },
      { on: "salinity", of: 1 },
    ]);
  });
});

describe("a swing past what an animal is kept in, which it bears for a while", () => {
  const found = setPoint([keptAt(23, 28)], { swing: { temperature: 3 } });

  test("is told of the hottest day and the coolest season apart", () => {
    // 25 ± 3 °C and no room beside: the cool end is kept, the hot one is not.
    expect(found).toMatchObject({ water: { hottest: 29, coolest: 23 } });
    expect(found).toMatchObject({
      beyondKept: [{ on: "temperature", of: 0, kept: { min: 23, max: 28 }, when: "hottest" }],
    });
  });

  test("is none where it stays within that", () => {
    expect(setPoint([keptAt(20, 28)], { swing: { temperature: 2 } })).toMatchObject({ beyondKept: [] });
  });
});

test("where nobody says what is too hard, nobody is told to limit that", () => {
  const found = setPoint(named("toxotes-jaculatrix", "monodactylus-argenteus"));
  expect(found.conflict).toBeUndefined();
  if (!found.conflict) expect(found.limiting.generalHardness).toEqual({ least: 1 });
});

describe("what nobody knows for certain", () => {
  test("water shared only by the end of a handbook's class is doubtful", () => {
    const acid = animal("acid", { "water.pH": { kept: { min: 5, max: 6 }, precision: { max: "class" } } });
    const neutral = animal("neutral", { "water.pH": { kept: { min: 6.5, max: 7.5 } } });
    // 6 gives way by half a unit to 6.5, and were it the animal's own by a quarter to 6.25; 6.5 to 6.25.
    expect(setPoint([acid, neutral])).toMatchObject({
      water: { pH: 6.375 },
      doubtful: [{ on: "pH", between: [1, 0], reason: "class-end" }],
    });
  });

  test("water in which both would have to give way is doubtful, as it is to assessPair", () => {
    // Kept up to 7.5 and from 7.8: each gives way by a quarter.
    const two = named("symphysodon-aequifasciatus", "tropheus-duboisi");
    const [discus, tropheus] = two as [SpeciesProfile, SpeciesProfile];
    expect(assessPair({ species: discus }, { species: tropheus }).outcome).toBe("undetermined");
    expect(setPoint(two)).toMatchObject({
      doubtful: [{ on: "pH", between: [1, 0], reason: "both-give-way" }],
    });
  });

  test("a conflict with an optimum that stands in is not certain", () => {
    const optimum = animal("optimum", {
      "water.temperature": { kept: { min: 26, max: 28 }, optimum: { min: 26, max: 28 }, standIn: true },
    });
    expect(setPoint([keptAt(18, 22), optimum])).toMatchObject({
      conflict: { between: [1, 0], isCertain: false },
    });
    expect(setPoint([keptAt(18, 22), optimum, keptAt(24, 27)])).toMatchObject({
      conflict: { between: [2, 0], isCertain: true },
    });
  });
});

describe("a swing", () => {
  test("is held to hot days and cool seasons, and told in the water", () => {
    // Kept at 20 to 24 °C: for a hot day two degrees more, for a cool season one less.
    const found = setPoint([keptAt(20, 24)], { swing: { temperature: 2.5, pH: 0.5 } });
    expect(found).toMatchObject({
      water: { temperature: 22.5, hottest: 25, coolest: 20, pH: 7 },
      margin: { temperature: 1, pH: 0.5 },
    });
  });

  test("wider than an animal bears is a conflict of that animal with itself", () => {
    const found = setPoint([keptAt(18, 26), keptAt(22, 23)], { swing: { temperature: 3 } });
    expect(found).toMatchObject({
      conflict: { on: "temperature", between: [1, 1] },
      largest: { stay: [0], leave: [1], setPoint: { water: { temperature: 22.5 } } },
    });
  });
});

describe("no water for all", () => {
  const found = setPoint([keptAt(16, 20), keptAt(24, 28), keptAt(18, 22), keptAt(20, 30)], steady);

  test("is proved by the two that share none", () => {
    expect(found).toMatchObject({ conflict: { on: "temperature", between: [1, 0] } });
  });

  test("leaves the largest company, of equally large ones the earliest", () => {
    expect(found).toMatchObject({
      largest: {
        stay: [0, 2, 3],
        leave: [1],
        setPoint: { water: { temperature: 20 }, limiting: { temperature: { least: 3, most: 0 } } },
      },
    });
  });

  test("two that meet in less than can be held share none", () => {
    // 18 to 22 and 22.6 to 26 give way by half a degree each: 22.1 to 22.5.
    expect(setPoint([keptAt(18, 22), keptAt(22.6, 26)])).toMatchObject({
      conflict: { on: "temperature", between: [1, 0] },
    });
    expect(
      setPoint([keptAt(18, 22), keptAt(22.6, 26)], { thresholds: { leastTemperature: 0.4 } }),
    ).toHaveProperty("water.temperature", 22.3);
  });

  test("two that meet at the end of both, past what is best for one, are apart", () => {
    const cool = keptAt(18, 24, { optimum: { min: 20, max: 22 } });
    expect(setPoint([keptAt(24, 28), cool])).toMatchObject({
      conflict: { on: "temperature", between: [0, 1], isCertain: true },
      largest: { stay: [0], leave: [1] },
    });
    expect(setPoint([keptAt(24, 28), keptAt(18, 24)])).toHaveProperty("water.temperature", 24);
  });

  test("one whose limits leave less than can be held is alone", () => {
    const narrow = keptAt(20, 20, { limit: { min: 20, max: 20.2 } });
    expect(setPoint([narrow])).toHaveProperty("water.temperature", 20.1);
    expect(setPoint([narrow, keptAt(18, 26)])).toMatchObject({
      conflict: { on: "temperature", between: [0, 1] },
    });
  });
});

describe("with ammonia", () => {
  test("that is borne even where it is warmest, nothing changes", () => {
    const { hotEnd, ...found } = setPoint([keptAt(20, 26)], { totalAmmonia: 0.1 }) as { hotEnd?: object };
    expect(found).toEqual(setPoint([keptAt(20, 26)]));
    // Emerson et al. 1975: pKa 9.2158 at 26 °C, of which pH 8 leaves 5.74 %; 0.1 mg/L of nitrogen are 0.1216 mg/L of NH3.
    expect(hotEnd).toMatchObject({
      temperature: 26,
      pH: 8,
      unionizedAmmonia: expect.closeTo(0.1216 * 0.0574, 4),
    });
  });

  test("warm and alkaline ends come down until it is borne", () => {
    const found = setPoint([keptAt(20, 26)], { totalAmmonia: 2 });
    if (found.conflict) return expect.fail("a conflict");
    expect(found.hotEnd?.unionizedAmmonia).toBeLessThanOrEqual(unionizedAmmoniaLimit);
    expect(found.hotEnd?.unionizedAmmonia).toBeCloseTo(unionizedAmmoniaLimit, 5);
    expect(found.limiting).toMatchObject({ temperature: { least: 0 }, pH: { least: 0 } });
    expect(found.limiting.pH).not.toHaveProperty("most");
    expect(found.water.pH).toBeLessThan(7);
    expect(found.water.generalHardness).toBe(11);
  });

  test("a swing is borne as well", () => {
    const found = setPoint([keptAt(20, 26)], { totalAmmonia: 2, swing: { temperature: 1, pH: 0.3 } });
    expect(found).toHaveProperty("hotEnd.unionizedAmmonia", expect.closeTo(unionizedAmmoniaLimit, 5));
  });

  test("that is borne nowhere, the warmest and the most alkaline prove it", () => {
    const alkaline = animal("alkaline", {
      "water.temperature": { kept: { min: 18, max: 28 } },
      "water.pH": { kept: { min: 8, max: 9 } },
    });
    const warm = animal("warm", {
      "water.temperature": { kept: { min: 26, max: 30 } },
      "water.pH": { kept: { min: 6, max: 9 } },
    });
    const found = setPoint([warm, alkaline], { totalAmmonia: 0.45 });
    expect(found).toMatchObject({
      conflict: { on: "ammonia", between: [0, 1] },
      largest: { stay: [0], leave: [1] },
    });
    expect(setPoint([warm, alkaline], { totalAmmonia: 0.45, mostUnionized: 0.05 })).toHaveProperty("water");
  });

  test("that one bears nowhere by itself, it does not bear in company", () => {
    const alkaline = animal("alkaline", {
      "water.temperature": { kept: { min: 20, max: 21 } },
      "water.pH": { kept: { min: 7.5, max: 7.7 }, limit: { min: 7.5, max: 7.7 } },
    });
    const cooler = animal("cooler", {
      "water.temperature": { kept: { min: 18, max: 20 } },
      "water.pH": { kept: { min: 6.25, max: 7.5 } },
    });
    expect(setPoint([alkaline], { totalAmmonia: 1.2 })).toHaveProperty("largest.stay", []);
    expect(setPoint([alkaline, cooler], { totalAmmonia: 1.2 })).toHaveProperty("largest.stay", [1]);
  });

  test("oxygen at the hot end is that of saturated water, and enough for the neediest", () => {
    const needy = animal("needy", {
      "water.temperature": { kept: { min: 20, max: 30 } },
      "water.pH": { kept: { min: 6, max: 7 } },
      "water.oxygenNeed": "high",
    });
    // Benson & Krause 1984: 7.56 mg/L at 30 °C.
    expect(setPoint([needy], { totalAmmonia: 0.1 })).toHaveProperty("hotEnd.oxygen", expect.closeTo(7.56, 2));
    const cooler = setPoint([needy], { totalAmmonia: 0.1, thresholds: { oxygenForHigh: 8 } });
    expect(cooler).toHaveProperty("hotEnd.oxygen", expect.closeTo(8, 4));
  });
});

test("discus and white cloud mountain minnows share no water in the catalog", () => {
  const found = setPoint(named("symphysodon-aequifasciatus", "tanichthys-albonubes", "paracheirodon-innesi"));
  expect(found).toMatchObject({ conflict: { on: "temperature", between: [0, 1] } });
});

test("what is no list of profiles, or no such option, is refused", () => {
  expectRefused(() => setPoint([]), "profiles");
  // @ts-expect-error: no profile
  expectRefused(() => setPoint([{}]), "profiles[0].id");
  // @ts-expect-error: no list
  expectRefused(() => setPoint(keptAt(20, 26)), "profiles");
  const given = (options: Parameters<typeof setPoint>[1]) => () => setPoint([keptAt(20, 26)], options);
  expectRefused(given({ swing: { temperature: -1 } }), "options.swing.temperature");
  // @ts-expect-error: no figure that moves
  expectRefused(given({ swing: { salinity: 1 } }), "options.swing.salinity");
  expectRefused(given({ swing: { pH: Number.NaN } }), "options.swing.pH");
  expectRefused(given({ totalAmmonia: 0 }), "options.totalAmmonia");
  expectRefused(given({ totalAmmonia: 1, mostUnionized: -1 }), "options.mostUnionized");
  // @ts-expect-error: no threshold
  expectRefused(given({ thresholds: { none: 1 } }), "thresholds");
});
