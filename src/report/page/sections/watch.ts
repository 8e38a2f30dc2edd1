import type { Sign } from "../../../compatibility";
import type { Trouble } from "../../messages/page-messages";
import { list, paragraph, type Section, section } from "../parts";
import type { Telling } from "../telling";

/** What a keeper of it may see go wrong, and what to do then. */
export function watch(telling: Telling): readonly Section[] {
  const { messages } = telling;
  const { headings, watch: words } = messages.page;
  const bySign = new Map<Sign, Trouble[]>();
  for (const [sign, trouble] of troublesOf(telling)) bySign.set(sign, [...(bySign.get(sign) ?? []), trouble]);
  const rows = [...bySign].map(([sign, troubles]) =>
    words.told(
      messages.signs[sign],
      troubles.map((trouble) => words.troubles[trouble]),
    ),
  );
  return section("watch", headings.watch, list(rows), paragraph(rows.length > 0 && words.vet));
}

/** The troubles that what is known of it leads to, each with the sign by which it shows. */
function troublesOf({ known }: Telling): readonly (readonly [Sign, Trouble])[] {
  const acts = known("temperament.acts") ?? [];
  const does = (...deeds: readonly string[]) => acts.some((act) => deeds.includes(act.does));
  const eats = (...prey: readonly string[]) =>
    (known("predation.eats") ?? []).some((one) => prey.includes(one.prey));
  const living = known("social.living");
  const isCompany = living === "shoal" || living === "group";
  const mode = known("reproduction.mode");
  const foods = known("diet.foods") ?? [];
  const told: readonly (readonly [boolean, Sign, Trouble])[] = [
    [does("nips-fins") && !isCompany, "torn-fins", "nips-fins"],
    [does("nips-fins") && isCompany, "torn-fins", "nips-in-few"],
    [does("bites", "kills") && living === "alone", "torn-fins", "rivals"],
    [does("bites", "kills") && living !== "alone", "torn-fins", "bites"],
    [does("chases") && living !== "alone", "chasing", "chases"],
    [known("temperament.shy") === true, "hiding", "shy"],
    [known("social.settledBy") === true, "hiding", "settled-by"],
    [isCompany, "hiding", "alone-in-need"],
    [known("diet.pace") === "slow", "thin", "slow-eater"],
    [foods.length > 0 && !foods.includes("dry"), "thin", "fine-food"],
    [eats("fish", "shrimp", "snail"), "missing-animals", "eats-others"],
    [["startled", "readily"].includes(known("space.jumps") ?? ""), "missing-animals", "jumps"],
    [known("water.oxygenNeed") === "high", "gasping", "oxygen"],
    [known("water.airBreathing")?.kind === "obligate", "gasping", "air"],
    [mode !== "livebearer" && mode !== "sea-larvae" && eats("egg", "fry"), "missing-young", "egg-eater"],
  ];
  return told.flatMap(([is, sign, trouble]) => (is ? [[sign, trouble] as const] : []));
}
