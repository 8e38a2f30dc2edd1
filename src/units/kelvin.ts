/** 0 °C in kelvins (SI Brochure, 9th edition, 2.3.1). */
export const zeroCelsius = 273.15;

/** A temperature in °C as kelvins, as equations take it. */
export const kelvins = (celsius: number): number => celsius + zeroCelsius;
