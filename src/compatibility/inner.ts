/** What the floors above share with the rules; no part of the public surface. */

export { floorNeeded, runNeeded } from "./animals/room";
export { askedAtWorst } from "./assess/asked-at-worst";
export { isEssential } from "./engine/answers/questions";
export { hangsOnTemper } from "./engine/sides/temper";
export { type Joinable, type Joined, joinable, type Told } from "./joining/joining";
export { coverInsteadOfCompany } from "./meeting/dense-cover";
export { meeting } from "./meeting/meeting";
export { roomy } from "./meeting/pair-plan";
export { sexAsked } from "./meeting/sex-asked";
export { preyReach } from "./prey-reach";
export { givingHardness, givingPH, givingTemperature } from "./rules/shared/givings";
export { oxygenLimits } from "./rules/shared/oxygen-limits";
export { type Giving, inSeason, meetPastTheirBest, surelyOf, wantedOf } from "./rules/shared/water";
export { thresholdValues } from "./threshold-values";
