import { multiples } from "../multiples";

/**
 * German degree, French degree, English (Clark) degree, US grain per gallon, mg/L and mmol/L as CaCO3, and
 * milliequivalent per litre. The same factors hold for general hardness (calcium and magnesium) and for
 * carbonate hardness (alkalinity), since each counts what as much CaCO3 would bring.
 */
export type HardnessUnit = "dH" | "fH" | "eH" | "gpg" | "mg/L-CaCO3" | "mmol/L-CaCO3" | "meq/L";

/** Molar masses in g/mol with Ca 40.078, C 12.011, O 15.9994 (IUPAC standard atomic weights of 2007). */
const CaCO3 = 100.0872;
const CaO = 56.0774;

/** Milliequivalents per litre in a German degree, 10 mg/L of CaO, a mole of which carries two. */
export const milliequivalentsPerDegree = 20 / CaO;

const grain = 64.798_91; // mg: 1 lb = 7000 grains

/** Milligrams of CaCO3 per litre in each unit. */
export const hardness = () =>
  multiples<HardnessUnit>({
    dH: (10 * CaCO3) / CaO, // 10 mg/L CaO
    fH: 10, // 10 mg/L CaCO3
    eH: grain / 4.546_09, // 1 grain of CaCO3 per imperial gallon
    gpg: grain / 3.785_411_784, // 1 grain of CaCO3 per US gallon
    "mg/L-CaCO3": 1,
    "mmol/L-CaCO3": CaCO3,
    "meq/L": CaCO3 / 2, // 1 mol of CaCO3 carries 2 equivalents
  });
