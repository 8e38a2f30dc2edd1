import { expect, test } from "vitest";
import labidochromisCaeruleus from "vivary/catalog/labidochromis-caeruleus";
import melanochromisAuratus from "vivary/catalog/melanochromis-auratus";
import symphysodonAequifasciatus from "vivary/catalog/symphysodon-aequifasciatus";
import { setPoint } from "../../../../src/advice";
import { describeSetPoint } from "../../../../src/report";

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
