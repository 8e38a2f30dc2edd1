import { finite } from "../../checks";
import { refusal } from "../../errors";
import type { LengthUnit } from "../../units";
import type { SectorBase } from "../base";
import { type FloorAt, type FloorMeasures, floor } from "../floor";
import { lengthInCm } from "../length-in-cm";
import { disc } from "./circle";

export function sector(base: SectorBase, unit: LengthUnit): FloorAt {
  const radius = lengthInCm(base.radius, unit, "base.radius");
  const angle = finite(base.angle, "base.angle");
  const half = (angle * Math.PI) / 360;
  if (!(half > 0 && angle <= 360)) {
    throw refusal("base.angle", "degrees above 0, up to 360", angle, "range");
  }
  return angle === 360 ? disc(radius) : (inset) => slice(radius - inset, half, inset);
}

/**
 * What two straight sides and an arc enclose. The arc has radius `r` about the point where the sides met before
 * each moved inward by `inset`; `half` is half the angle between them, in radians.
 */
function slice(r: number, half: number, inset: number): FloorMeasures | undefined {
  const corner = inset / Math.sin(half); // where the sides meet now, along the bisector
  if (Math.abs(corner) >= r) return undefined;

  const lean = Math.asin(inset / r); // how far each end of the arc has turned towards the bisector
  const area = r ** 2 * (half - lean) - inset * (r * Math.cos(lean) - corner * Math.cos(half));

  if (half > Math.PI / 2) {
    const reach = Math.min(half - lean, Math.PI);
    return floor(area, r - r * Math.cos(reach), 2 * r * Math.sin(Math.min(reach, Math.PI / 2)));
  }
  const end = 2 * half - lean; // seen along one straight side: where the arc ends
  const near = Math.min(corner * Math.cos(half), r * Math.cos(Math.min(end, Math.PI)));
  const far = r * Math.cos(Math.max(lean, 0));
  const top = r * Math.sin(Math.min(end, Math.PI / 2));
  return floor(area, far - near, top - inset);
}
