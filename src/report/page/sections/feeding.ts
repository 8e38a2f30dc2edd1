import type { Words } from "../../../compatibility";
import { paragraph, type Section, section } from "../parts";
import { isOfKeepers, notedStatements, notesOf } from "../remarks";
import type { Telling } from "../telling";

/** What a keeper can buy or grow. */
const offered: readonly Words["food"][] = ["dry", "frozen", "live", "algae", "plants", "wood"];
const prepared: readonly Words["food"][] = ["dry", "frozen", "live"];

/** What it eats, where, when, and how soon. */
export function feeding({ profile, record, known, messages, noted, remarks }: Telling): readonly Section[] {
  const { headings, feeding: words } = messages.page;
  const type = known("diet.type");
  const foods = known("diet.foods") ?? [];
  const reach = known("diet.reach") ?? [];
  const light = known("diet.light") ?? [];
  const pace = known("diet.pace");
  const given = offered.filter((food) => foods.includes(food));
  const isGiven = (food: unknown) => given.some((one) => one === food);
  const wild = foods.filter((food) => !prepared.includes(food) && !isGiven(food));
  const notes = notedStatements({ record, form: profile.form, messages }, "diet.foods").filter(isOfKeepers);
  const foodNotes = (isSuch: (food: unknown) => boolean) =>
    notesOf(notes.filter(({ value }) => isSuch(value)));
  return section(
    "feeding",
    headings.feeding,
    paragraph(
      noted("diet.type", type && words.type[type]),
      given.length > 0 && words.given(given),
      ...foodNotes((food) => isGiven(food)),
      wild.length > 0 && words.wild(wild),
      ...foodNotes((food) => !isGiven(food)),
      (reach.length > 0 || light.length > 0) && words.when(reach, light),
      noted("diet.reach", ""),
      noted("diet.light", ""),
      noted("diet.pace", pace && words.pace[pace]),
    ),
    remarks(["diet.type", "diet.foods", "diet.reach", "diet.light", "diet.pace"]),
  );
}
