import type { ThresholdValues } from "../../compatibility";
import { type Ends, oxygenLimits } from "../../compatibility/inner";
import { factAt, type SpeciesProfile } from "../../species";
import { ammoniaDomain, oxygenDomain, oxygenSaturation, unionizedAmmoniaFraction } from "../../water";

/** Un-ionized ammonia, as NH3, of which one gram of nitrogen makes so many: molar masses 17.0305 and 14.0067. */
const perNitrogen = 17.0305 / 14.0067;

/**
 * Un-ionized ammonia, as NH3, up to which fresh water supports fish life, mg/L. Directive 2006/44/EC, Annex I
 * (repealed), mandatory value for salmonid and cyprinid waters alike, from memory; after EIFAC 1970, Technical Paper 11.
 * Its guide value is 0.005.
 */
export const unionizedAmmoniaLimit = 0.025;

/** Water at its hottest and most alkaline. */
export interface HotEnd {
  /** °C. */
  readonly temperature: number;
  readonly pH: number;
  /** As NH3, mg/L. */
  readonly unionizedAmmonia: number;
  /** In water saturated with air, mg/L. */
  readonly oxygen: number;
}

/** What must hold at the hot end. */
export interface HotTerms {
  /** Total ammonia nitrogen, mg/L. */
  readonly totalAmmonia: number;
  /** As NH3, mg/L. */
  readonly mostUnionized: number;
  /** The oxygen that the neediest animal may come down to, mg/L. */
  readonly leastOxygen: number;
  /** g/kg. */
  readonly salinity: number;
}

/** What water holds at a temperature and a pH. */
export function hotEndAt(temperature: number, pH: number, { totalAmmonia, salinity }: HotTerms): HotEnd {
  const unionizedAmmonia = totalAmmonia * unionizedAmmoniaFraction({ temperature, pH }) * perNitrogen;
  return { temperature, pH, unionizedAmmonia, oxygen: oxygenSaturation({ temperature, salinity }) };
}

/** Whether animals can live at a hot end; not where nobody can reckon it. */
export function isBearable(temperature: number, pH: number, terms: HotTerms): boolean {
  if (temperature > oxygenDomain.temperature.max || pH > ammoniaDomain.pH.max) return false;
  const { unionizedAmmonia, oxygen } = hotEndAt(temperature, pH, terms);
  return unionizedAmmonia <= terms.mostUnionized && oxygen >= terms.leastOxygen;
}

/** The oxygen that the neediest of some animals may come down to, mg/L; air breathers take theirs from above. */
export function leastOxygenOf(profiles: readonly SpeciesProfile[], thresholds: ThresholdValues): number {
  const limits = profiles.flatMap((profile) => {
    const need = factAt(profile, "water.oxygenNeed")?.value;
    const breathing = factAt(profile, "water.airBreathing")?.value.kind ?? "none";
    return need && breathing === "none" ? [thresholds[oxygenLimits[need]]] : [];
  });
  return Math.max(0, ...limits);
}

/** Two spans, of temperature and of pH. */
export interface Spans {
  readonly temperature: Ends;
  readonly pH: Ends;
}

/** How often the share is halved: to less than a millionth of a degree. */
const halvings = 40;

/**
 * Spans whose upper ends come down, each by the same share of its room above the least width, until their corner is
 * bearable; undefined where the least is not. Ammonia grows with both and oxygen falls, so that the whole box is bearable
 * where its corner is, and halving the share finds the widest.
 */
export function lowered(
  { temperature, pH }: Spans,
  least: { readonly temperature: number; readonly pH: number },
  isBearableUpTo: (temperature: number, pH: number) => boolean,
): Spans | undefined {
  const upTo = (share: number): Spans => ({
    temperature: narrowed(temperature, least.temperature, share),
    pH: narrowed(pH, least.pH, share),
  });
  const holds = (share: number) => {
    const spans = upTo(share);
    return isBearableUpTo(spans.temperature.max, spans.pH.max);
  };
  if (holds(1)) return { temperature, pH };
  if (!holds(0)) return undefined;
  let [sure, tooMuch] = [0, 1];
  for (let step = 0; step < halvings; step += 1) {
    const middle = (sure + tooMuch) / 2;
    if (holds(middle)) sure = middle;
    else tooMuch = middle;
  }
  const { temperature: warm, pH: alkaline } = upTo(sure);
  return {
    temperature: { ...warm, max: roundedDown(warm.max) },
    pH: { ...alkaline, max: roundedDown(alkaline.max) },
  };
}

/** To a millionth, so that what is borne stays so. */
const roundedDown = (figure: number): number => Math.floor(figure * 1e6) / 1e6;

/** A span with so great a share of its room above the least width. */
function narrowed({ min, max }: Ends, least: number, share: number): Ends {
  const narrowest = Math.min(least, max - min);
  return { min, max: min + narrowest + (max - min - narrowest) * share };
}
