import type { Verdict } from "../src/compatibility";
import type { SpeciesProfile } from "../src/species";

export declare function lineOf(name: string, verdict: Verdict): string;
export declare function pairName(a: SpeciesProfile, b: SpeciesProfile): string;
export declare function commonName(profile: SpeciesProfile): string;
