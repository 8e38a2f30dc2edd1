import { expect, test } from "vitest";
import convict from "vivary/catalog/amatitlania-nigrofasciata";
import bristlenose from "vivary/catalog/ancistrus-cirrhosus";
import oscar from "vivary/catalog/astronotus-ocellatus";
import betta from "vivary/catalog/betta-splendens";
import bumblebeeGoby from "vivary/catalog/brachygobius-doriae";
import goldfish from "vivary/catalog/carassius-auratus";
import amanoShrimp from "vivary/catalog/caridina-multidentata";
import hatchetfish from "vivary/catalog/carnegiella-strigata";
import zebraDanio from "vivary/catalog/danio-rerio";
import yellowLab from "vivary/catalog/labidochromis-caeruleus";
import cherryShrimp from "vivary/catalog/neocaridina-davidi";
import corydoras from "vivary/catalog/osteogaster-aenea";
import neon from "vivary/catalog/paracheirodon-innesi";
import guppy from "vivary/catalog/poecilia-reticulata";
import stingray from "vivary/catalog/potamotrygon-motoro";
import angelfish from "vivary/catalog/pterophyllum-scalare";
import tigerBarb from "vivary/catalog/puntigrus-tetrazona";
import hillstreamLoach from "vivary/catalog/sewellia-lineolata";
import whiteCloud from "vivary/catalog/tanichthys-albonubes";
import honeyGourami from "vivary/catalog/trichogaster-chuna";
import dwarfGourami from "vivary/catalog/trichogaster-lalius";
import nerite from "vivary/catalog/vittina-natalensis";
import swordtail from "vivary/catalog/xiphophorus-hellerii";
import platy from "vivary/catalog/xiphophorus-maculatus";
import type { SpeciesProfile, StatedValue } from "../../src/species";

// Common practice throughout: what an experienced keeper would say without looking it up.

type Figure = "temperature" | "pH" | "generalHardness" | "salinity";
type Act = Exclude<StatedValue<"temperament.acts">, "none">;
type Prey = Exclude<StatedValue<"predation.eats">, "none">["prey"];

const from = (profile: SpeciesProfile, figure: Figure) =>
  profile.water?.[figure]?.value.kept.min ?? Number.NaN;
const upTo = (profile: SpeciesProfile, figure: Figure) =>
  profile.water?.[figure]?.value.kept.max ?? Number.NaN;
const lengths = ({ size }: SpeciesProfile, as: "usual" | "greatest", of?: "male" | "female") =>
  (size?.adultLength?.value ?? [])
    .filter((length) => length.as === as && (of === undefined || length.sex === of))
    .map(({ length }) => length);
const longest = (profile: SpeciesProfile, as: "usual" | "greatest", of?: "male" | "female") =>
  Math.max(...lengths(profile, as, of));
const least = ({ social }: SpeciesProfile) => social?.group?.value.least ?? Number.NaN;
const tankFor = ({ space }: SpeciesProfile) => space?.baseLength?.value[0]?.least ?? Number.NaN;
const age = ({ size }: SpeciesProfile) =>
  size?.lifespan?.value.greatest ?? size?.lifespan?.value.usual ?? Number.NaN;
const zones = ({ space }: SpeciesProfile) => space?.zones?.value ?? [];
const jumps = ({ space }: SpeciesProfile) => space?.jumps?.value;
const breathes = ({ water }: SpeciesProfile) => water?.airBreathing?.value.kind;
const breeds = ({ reproduction }: SpeciesProfile) => reproduction?.mode?.value;
const lives = ({ social }: SpeciesProfile) => social?.living?.value;
const pace = ({ diet }: SpeciesProfile) => diet?.pace?.value;
const longFins = ({ appearance }: SpeciesProfile) => appearance?.longFins?.value;
const sensitiveTo = ({ care }: SpeciesProfile) => care?.sensitive?.value ?? [];
const hazards = ({ care }: SpeciesProfile) => care?.hazards?.value ?? [];
const crosses = ({ reproduction }: SpeciesProfile) => reproduction?.interbreedsWith?.value ?? [];
const eats = ({ predation }: SpeciesProfile, prey: Prey) =>
  (predation?.eats?.value ?? []).some((eaten) => eaten.prey === prey);
const does = ({ temperament }: SpeciesProfile, wanted: Partial<Act>) =>
  (temperament?.acts?.value ?? []).some((act) =>
    Object.entries(wanted).every(([key, held]) =>
      Object.entries(act).some(([k, v]) => k === key && v === held),
    ),
  );

const own: readonly Act["target"][] = ["own-sex", "other-sex", "own-kind"];

const known: Readonly<Record<string, () => boolean>> = {
  "bettas and gouramis drown without the surface": () =>
    [betta, dwarfGourami, honeyGourami].every((fish) => breathes(fish) === "obligate"),
  "corydoras gulp air when they must, neons never": () =>
    breathes(corydoras) === "facultative" && breathes(neon) === "none",
  "a male betta bites and kills another": () =>
    does(betta, { does: "bites", target: "own-sex", doer: "male" }) &&
    does(betta, { does: "kills", target: "own-sex" }),
  "a betta lives alone, in water that hardly moves, and is slow at food": () =>
    lives(betta) === "alone" && betta.water?.flow?.value.max === "gentle" && pace(betta) === "slow",
  "the longest oscar is ten times as long as the longest neon": () =>
    longest(oscar, "greatest") >= 10 * longest(neon, "greatest"),
  "an oscar eats fish, a platy, a corydoras and a bristlenose do not": () =>
    eats(oscar, "fish") && ![platy, corydoras, bristlenose].some((fish) => eats(fish, "fish")),
  "an oscar digs": () => oscar.effects?.digs?.value === true,
  "an oscar needs a longer tank than a betta, a stingray a longer one than an oscar": () =>
    tankFor(betta) < tankFor(oscar) && tankFor(oscar) < tankFor(stingray),
  "hatchetfish live at the surface and leave the water readily": () =>
    zones(hatchetfish).join() === "surface" && jumps(hatchetfish) === "readily",
  "nerites and Amano shrimps climb out, corydoras are not found on the floor each day": () =>
    jumps(nerite) === "readily" && jumps(amanoShrimp) === "readily" && jumps(corydoras) !== "readily",
  "Lake Malawi cichlids are kept in harder and less acid water than neons": () =>
    from(yellowLab, "generalHardness") > from(neon, "generalHardness") &&
    upTo(yellowLab, "generalHardness") > upTo(neon, "generalHardness") &&
    from(yellowLab, "pH") > upTo(neon, "pH"),
  "guppies, platies and swordtails like it harder than neons": () =>
    [guppy, platy, swordtail].every((fish) => from(fish, "generalHardness") > from(neon, "generalHardness")),
  "white clouds are kept cooler than angelfish, whatever the tank": () =>
    upTo(whiteCloud, "temperature") < from(angelfish, "temperature"),
  "goldfish are no company for bettas or angelfish in warmth": () =>
    [betta, angelfish].every((fish) => upTo(goldfish, "temperature") <= from(fish, "temperature")),
  "hillstream loaches want a current, oxygen and no warmth": () =>
    hillstreamLoach.water?.flow?.value.max === "strong" &&
    hillstreamLoach.water?.oxygenNeed?.value === "high" &&
    upTo(hillstreamLoach, "temperature") < upTo(angelfish, "temperature"),
  "bumblebee gobies are kept in brackish water, neons are not": () =>
    from(bumblebeeGoby, "salinity") > upTo(neon, "salinity"),
  "corydoras, bristlenoses and hillstream loaches keep to the bottom": () =>
    [corydoras, bristlenose, hillstreamLoach].every((fish) => zones(fish).join() === "bottom"),
  "neons and angelfish swim in the middle": () =>
    [neon, angelfish].every((fish) => zones(fish).includes("midwater")),
  "tiger barbs nip long fins and belong in a large shoal": () =>
    does(tigerBarb, { does: "nips-fins", target: "long-finned" }) &&
    lives(tigerBarb) === "shoal" &&
    least(tigerBarb) >= 6,
  "bettas, guppies and angelfish have fins to nip, neons do not": () =>
    [betta, guppy, angelfish].every(longFins) && !longFins(neon),
  "convicts bite whoever comes near their brood": () =>
    does(convict, { does: "bites", target: "any", when: "guarding-brood" }),
  "neons, corydoras, cherry shrimps and white clouds hurt nobody, and at most chase their own": () =>
    [neon, corydoras, cherryShrimp, whiteCloud].every((animal) =>
      animal.temperament?.acts?.value.every(({ does, target }) => does === "chases" && own.includes(target)),
    ),
  "danios are faster at food than bettas and gouramis": () =>
    pace(zebraDanio) === "fast" && [betta, honeyGourami].every((fish) => pace(fish) === "slow"),
  "guppies, platies and swordtails bear living young": () =>
    [guppy, platy, swordtail].every((fish) => breeds(fish) === "livebearer"),
  "female guppies are longer than males": () =>
    longest(guppy, "usual", "female") > longest(guppy, "usual", "male"),
  "swordtails and platies cross": () =>
    crosses(swordtail).includes(platy.id) && crosses(platy).includes(swordtail.id),
  "bettas and gouramis build nests of bubbles, yellow labs brood in the mouth, danios scatter": () =>
    [betta, dwarfGourami, honeyGourami].every((fish) => breeds(fish) === "bubble-nest") &&
    breeds(yellowLab) === "mouthbrooder" &&
    breeds(zebraDanio) === "scatters-eggs",
  "cherry shrimps breed in the tank, Amano shrimps and nerites need the sea": () =>
    breeds(cherryShrimp) === "broods-young" &&
    [amanoShrimp, nerite].every((animal) => breeds(animal) === "sea-larvae"),
  "copper harms shrimps and snails": () =>
    [cherryShrimp, amanoShrimp, nerite].every((animal) => sensitiveTo(animal).includes("copper")),
  "a stingray is venomous, a guppy harmless": () =>
    hazards(stingray).includes("venom") && hazards(guppy).length === 0,
  "bristlenoses and nerites live on plants and algae, bettas on animals": () =>
    [bristlenose, nerite].every(({ diet }) => diet?.type?.value === "herbivore") &&
    betta.diet?.type?.value === "carnivore",
  "goldfish grow older than oscars, oscars older than guppies": () =>
    age(goldfish) > age(oscar) && age(oscar) > age(guppy),
};

test.each(Object.entries(known))("%s", (_, holds) => {
  expect(holds()).toBe(true);
});
