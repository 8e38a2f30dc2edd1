import { expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import hoplisomaPanda from "vivary/catalog/hoplisoma-panda";
import labidochromisCaeruleus from "vivary/catalog/labidochromis-caeruleus";
import melanochromisAuratus from "vivary/catalog/melanochromis-auratus";
import symphysodonAequifasciatus from "vivary/catalog/symphysodon-aequifasciatus";
import { setPoint } from "../../../../src/advice";
import { describeSetPoint, unitSystems } from "../../../../src/report";
import { someSpecies } from "../../../drawn";

test("no end is told past which an animal has water that it cannot be given", () => {
  const species = [melanochromisAuratus, symphysodonAequifasciatus, labidochromisCaeruleus];
  const found = setPoint(species);
  const { pH: at = 0 } = found.conflict ? {} : found.water;
  const { pH: moves = 0 } = found.conflict ? {} : found.margin;
  const [, from, to] =
    / pH .*? staying\s+within (\S+)\s+to\s+(\S+)\s/.exec(describeSetPoint(found, species)) ?? [];
  expect(Number(from)).toBeGreaterThanOrEqual(at - moves);
  expect(Number(to)).toBeLessThanOrEqual(at + moves);
  expect(Number(to)).toBeGreaterThan(Number(from));
});

test("a narrow span is told as one, with the aim between its ends", () => {
  const species = [hoplisomaPanda, bettaSplendens];
  expect(describeSetPoint(setPoint(species), species, { units: "us" })).toContain(
    "- Temperature 76.6 °F, staying within 76.1 to 77 °F (",
  );
});

test("an aim never reads like an end of the span to stay within", () => {
  let spans = 0;
  const some = someSpecies(40, 0);
  for (const species of some.flatMap((one, index) => some.slice(index).map((other) => [one, other]))) {
    const found = setPoint(species);
    for (const units of unitSystems) {
      const told = describeSetPoint(found, species, { units }).replaceAll(/\s+/g, " ");
      for (const [, aim, from, to] of told.matchAll(
        /([\d.]+)[^,]*, staying within ([\d.]+)(?: to ([\d.]+))?/g,
      )) {
        expect([from, to]).not.toContain(aim);
        spans += 1;
      }
    }
  }
  expect(spans).toBeGreaterThan(500);
});
