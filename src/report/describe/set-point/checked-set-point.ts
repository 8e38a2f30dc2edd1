import type { NoSetPoint, SetPoint, WaterAxis } from "../../../advice";
import { finite, listOf, objectOf, oneOf } from "../../../checks";
import { waterAxes } from "../../../compatibility/inner";
import { ofPart } from "../../../errors";
import { checkPlace } from "../checked-verdict";

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

function checkPoint({ water, margin, limiting, hotEnd, open, doubtful }: SetPoint, species: number): void {
  for (const [name, figure] of Object.entries(objectOf(water, "water"))) finite(figure, `water.${name}`);
  for (const [axis, moves] of Object.entries(objectOf(margin, "margin"))) finite(moves, `margin.${axis}`);
  for (const [axis, limits] of Object.entries(objectOf(limiting, "limiting")))
    checkPlaces(Object.values(objectOf(limits, `limiting.${axis}`)), species, `limiting.${axis}`);
  for (const [name, figure] of Object.entries(objectOf(hotEnd ?? {}, "hotEnd")))
    finite(figure, `hotEnd.${name}`);
  for (const { on, of } of listOf(open, "open")) checkAxis(on, [of], species, "open");
  for (const { on, between } of listOf(doubtful, "doubtful")) checkAxis(on, between, species, "doubtful");
}

function checkAxis(on: WaterAxis, places: readonly number[], species: number, subject: string): void {
  oneOf(on, waterAxes, `${subject}.on`);
  checkPlaces(places, species, subject);
}

function checkPlaces(places: readonly number[], species: number, subject: string): void {
  for (const place of listOf(places, subject)) checkPlace(place, species, subject);
}
