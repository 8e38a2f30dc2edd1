import type { classes } from "./class-table";

/** What sort of animal a species is. */
export type Kind = keyof typeof classes.kind;
/** The sexes that a statement, a length or an act may be about. */
export type Sex = keyof typeof classes.sex;
/** The stages of life, the youngest first. */
export type Stage = keyof typeof classes.stage;
/** The parts of the water. */
export type Zone = keyof typeof classes.zone;
/** Currents, the calmest first. */
export type FlowClass = keyof typeof classes.flow;
/** What a figure of water means. */
export type WaterMeaning = keyof typeof classes.waterMeaning;
/** What ended a test, or what a tested figure was best for. */
export type Endpoint = keyof typeof classes.endpoint;
/** What a length means. */
export type LengthMeaning = keyof typeof classes.lengthMeaning;
/** What a length was measured as. */
export type LengthMeasure = keyof typeof classes.lengthMeasure;
