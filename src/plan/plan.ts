import type { classes, FlowClass, Sex, SpeciesProfile, Stage, TraitValue } from "../species";
import type { TankDimensions } from "../tank";
import type { Planting, Temper } from "./choices";
import type { Lawgiver } from "./generated";

/** One kind of animal to be judged: without sex or stage, adults of both sexes. */
export interface Party {
  readonly species: SpeciesProfile;
  /** A key of the species' forms; not needed where the profile has the form applied. */
  readonly form?: string | undefined;
  readonly sex?: Sex | undefined;
  readonly stage?: Stage | undefined;
  /** Total length in cm, in place of the species' figures: from 0.1 to twice the greatest that is known of it. */
  readonly length?: number | undefined;
  /** How many; of two or more is also judged what they do to each other. Unknown if absent: then it is not. */
  readonly count?: number | undefined;
  /** What these individuals are like. Default `typical`. */
  readonly temper?: Temper | undefined;
}

/** Animals of one species that are kept together. At least one. */
export interface Group {
  /** A name of the plan's own, passed on to the verdict's parties. */
  readonly id?: string | undefined;
  readonly species: SpeciesProfile;
  /** A key of the species' forms; not needed where the profile has the form applied. */
  readonly form?: string | undefined;
  /** How many grown males. */
  readonly males?: number | undefined;
  /** How many grown females. */
  readonly females?: number | undefined;
  /** How many grown animals of unknown sex. */
  readonly unsexed?: number | undefined;
  /** How many that have still to grow. */
  readonly juveniles?: number | undefined;
  /** Total length in cm, in place of the species' figures: from 0.1 to twice the greatest that is known of it. */
  readonly length?: number | undefined;
  /** What these individuals are like. Default `typical`. */
  readonly temper?: Temper | undefined;
  /** Whether young of it are wanted. Default no. */
  readonly raises?: boolean | undefined;
  /** The day on which it moves in, counted from the first. */
  readonly entersOn?: number | undefined;
}

/** The tank and how it is furnished. Shares are of the plan area, from 0 to 1. All but the base may be unknown. */
export interface PlannedTank extends Omit<TankDimensions, "height"> {
  /** As in `TankDimensions`; without it volume and mass are unknown. */
  readonly height?: number | undefined;
  /** Closed or covered so that no animal can jump or climb out. */
  readonly lid?: boolean | undefined;
  /** The calmest and the strongest current that an animal finds in it. The jet of an outlet is no current. */
  readonly flow?: { readonly calmest: FlowClass; readonly strongest: FlowClass } | undefined;
  /** The share with plants, roots, stones or floating leaves to hide in. */
  readonly cover?: number | undefined;
  /** The share free to swim in, no more than cover leaves. If absent, what it leaves. */
  readonly openWater?: number | undefined;
  /** The share of the water's surface that no leaf, film or lid touches. */
  readonly openSurface?: number | undefined;
  /** The number of things that break the line of sight over the floor. */
  readonly sightBreaks?: number | undefined;
  /** What covers most of the ground. */
  readonly substrate?: keyof typeof classes.ground | undefined;
  /** How many there are of what animals hide, sleep or spawn in. */
  readonly hides?: { readonly [Kind in keyof typeof classes.hide]?: number | undefined } | undefined;
  readonly plants?: Planting | undefined;
  readonly filter?: PlannedFilter | undefined;
}

/** The filter that takes up ammonia. */
export interface PlannedFilter {
  /**
   * Surface of the media in m². A litre of coarse foam has one at least: `foamArea` of `vivary/load`.
   */
  readonly mediaArea: number;
  /** Days since it first ran with animals or ammonia. */
  readonly age: number;
}

/** The water as it usually is, and at its hottest and coolest. What is absent is unknown, but for the salinity. */
export interface PlannedWater {
  /** °C. */
  readonly temperature?: number | undefined;
  /** Without unit. */
  readonly pH?: number | undefined;
  /**
   * °dH, of the water before sea salt is added, as records mean it: each g/kg of that brings 10 °dH more (calcium and
   * magnesium of the reference composition of seawater, Millero et al. 2008, from memory).
   */
  readonly generalHardness?: number | undefined;
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
  readonly food: TraitValue<"diet.foods">[number];
  /** Where in the water it is taken. */
  readonly place: TraitValue<"diet.reach">[number];
  /** When it is given. Default `day`. */
  readonly light?: TraitValue<"diet.light">[number] | undefined;
  /** Given so that faster animals do not get at it: by hand, behind a screen, while they feed elsewhere. */
  readonly apart?: boolean | undefined;
}

/** A tank, its water, its animals and what they are fed. Only the tank's base and the groups are needed. */
export interface Plan {
  readonly tank: PlannedTank;
  readonly water?: PlannedWater | undefined;
  /** One to a hundred; none only where a function says that it takes a tank without animals. */
  readonly groups: readonly Group[];
  readonly offerings?: readonly Offering[] | undefined;
  /**
   * Where the tank stands, by some of `lawgivers`: `germany`, `us-florida`. Their laws are told, and with those of a part
   * those of the whole. Absent or empty: how many laws there are.
   */
  readonly jurisdiction?: readonly Lawgiver[] | undefined;
}
