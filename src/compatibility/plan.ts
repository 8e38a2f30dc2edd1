import type { FlowClass, Sex, SpeciesProfile, Stage, TraitValue as Value } from "../species";
import type { TankDimensions } from "../tank";

/** One kind of animal to be judged: without sex or stage, adults of both sexes. */
export interface Party {
  readonly species: SpeciesProfile;
  /** A key of the species' forms. */
  readonly form?: string | undefined;
  readonly sex?: Sex | undefined;
  readonly stage?: Stage | undefined;
  /** Total length in cm, in place of the species' figures. */
  readonly length?: number | undefined;
  /** How many; unknown if absent. */
  readonly count?: number | undefined;
}

/** Animals of one species that are kept together. At least one. */
export interface Group {
  readonly species: SpeciesProfile;
  readonly form?: string | undefined;
  readonly males?: number | undefined;
  readonly females?: number | undefined;
  readonly unsexed?: number | undefined;
  readonly juveniles?: number | undefined;
  /** Total length in cm, in place of the species' figures. */
  readonly length?: number | undefined;
  /** The day on which it moves in. */
  readonly entersOn?: number | undefined;
}

/** The tank and how it is furnished. Shares are of the plan area, from 0 to 1. */
export type PlannedTank = TankDimensions & {
  /** Closed or covered so that no animal can jump or climb out. */
  readonly lid?: boolean | undefined;
  /** The calmest and the strongest current that an animal finds in it. The jet of an outlet is no current. */
  readonly flow?: { readonly calmest: FlowClass; readonly strongest: FlowClass } | undefined;
  /** The share with plants, roots, stones or floating leaves to hide in. */
  readonly cover?: number | undefined;
  /** The share free to swim in. If absent, what cover leaves. */
  readonly openWater?: number | undefined;
  /** The share of the water's surface that no leaf, film or lid touches. */
  readonly openSurface?: number | undefined;
  /** The number of things that break the line of sight over the floor. */
  readonly sightBreaks?: number | undefined;
  readonly plants?: "none" | "planted" | "grown-in" | undefined;
  /**
   * Surface of the filter media in m² and days since it first ran with animals or ammonia. A litre of coarse foam
   * (20 pores an inch) has 1.0 to 1.6 m² (aquaculture media tables such as Timmons & Ebeling, from memory).
   */
  readonly filter?: { readonly mediaArea: number; readonly age: number } | undefined;
};

/** The water as it usually is, and at its hottest and coolest. */
export interface PlannedWater {
  /** °C. */
  readonly temperature: number;
  readonly pH: number;
  /** °dH. */
  readonly generalHardness: number;
  /** °dH. */
  readonly carbonateHardness?: number | undefined;
  /** g/kg; 0 if absent. */
  readonly salinity?: number | undefined;
  /** °C on the hottest day. */
  readonly hottest?: number | undefined;
  /** °C in the coolest season. */
  readonly coolest?: number | undefined;
}

/** One food as it is regularly given. */
export interface Offering {
  readonly food: Value<"diet.foods">[number];
  /** Where in the water it is taken. */
  readonly place: Value<"diet.reach">[number];
  /** When it is given. Default `day`. */
  readonly light?: Value<"diet.light">[number] | undefined;
  /** Given so that faster animals do not get at it: by hand, behind a screen, while they feed elsewhere. */
  readonly apart?: boolean | undefined;
}

/** A tank, its water, its animals and what they are fed. */
export interface Plan {
  readonly tank: PlannedTank;
  readonly water: PlannedWater;
  readonly groups: readonly Group[];
  readonly offerings?: readonly Offering[] | undefined;
}
