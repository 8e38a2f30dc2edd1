import type { NoSetPoint, SetPoint, WaterAxis } from "../../../advice";
import { finite, listOf, objectOf, oneOf } from "../../../checks";
import { waterAxes } from "../../../compatibility/inner";
import { ofPart } from "../../../errors";
import { checkPlaces } from "../checked-places";
import { checkSize } from "../checked-verdict";

/** The set point itself, or an InvalidInputError where it is none that can be told, or one of other species. */
export function checkedSetPoint<Found extends SetPoint | NoSetPoint>(found: Found, species: number): Found {
  objectOf(found, "found");
  ofPart(["found"], () => checkAnswer(found, species));
  return found;
}

function checkAnswer(found: SetPoint | NoSetPoint, species: number): void {
  if (!("largest" in found)) {
    checkPoint(found, species);
    return;
  }
  const { on, between } = objectOf(found.conflict, "conflict");
  oneOf(on, [...waterAxes, "ammonia"], "conflict.on");
  checkPlaces(between, species, "conflict.between");
  const { stay, leave, setPoint } = objectOf(found.largest, "largest");
  checkPlaces(stay, species, "largest.stay");
  checkPlaces(leave, species, "largest.leave");
  if (setPoint) ofPart(["largest", "setPoint"], () => checkPoint(objectOf(setPoint, ""), species));
}

function checkPoint(
  { water, margin, limiting, hotEnd, open, beyondKept, doubtful }: SetPoint,
  species: number,
): void {
  checkFigures(water, "water");
  checkFigures(margin, "margin");
  if (hotEnd !== undefined) checkFigures(hotEnd, "hotEnd");
  for (const [axis, limits] of Object.entries(objectOf(limiting, "limiting")))
    checkPlaces(Object.values(objectOf(limits, `limiting.${axis}`)), species, `limiting.${axis}`);
  for (const [index, one] of listOf(open, "open").entries()) {
    const { on, of } = objectOf(one, `open[${index}]`);
    checkAxis(on, [of], species, `open[${index}]`);
  }
  for (const [index, one] of listOf(beyondKept, "beyondKept").entries()) {
    const at = `beyondKept[${index}]`;
    const { on, of, kept, when } = objectOf(one, at);
    checkAxis(on, [of], species, at);
    checkFigures(kept, `${at}.kept`);
    if (when !== undefined) oneOf(when, ["hottest", "coolest", "swinging"], `${at}.when`);
  }
  for (const [index, one] of listOf(doubtful, "doubtful").entries()) {
    const { on, between, reason } = objectOf(one, `doubtful[${index}]`);
    checkAxis(on, between, species, `doubtful[${index}]`);
    oneOf(reason, ["class-end", "both-give-way"], `doubtful[${index}].reason`);
  }
}

/** Refuses what are no figures that can be told. */
function checkFigures(figures: object, at: string): void {
  for (const [name, figure] of Object.entries(objectOf(figures, at))) finite(figure, `${at}.${name}`);
  checkSize(figures, at);
}

function checkAxis(on: WaterAxis, places: readonly number[], species: number, at: string): void {
  oneOf(on, waterAxes, `${at}.on`);
  checkPlaces(places, species, at);
}
