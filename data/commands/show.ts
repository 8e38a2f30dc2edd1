// Prints a profile and the verdicts on it that a change of records flips.
import { profileMarkdown } from "vivary/report";
import { baseOf } from "../history";
import { type Answer, refused } from "./answer";
import { flipsOfRecords, profilesOf } from "./flips";

export async function show(root: string, id: string): Promise<Answer> {
  const profiles = await profilesOf(root);
  const shown = profiles.find((profile) => profile.id === id);
  if (!shown) return refused(`No well-formed record has the id ${id}: npm run species check ${id}`);
  const base = await baseOf(root);
  const flips =
    base === undefined
      ? ["No commit is at hand to compare with."]
      : await flipsOfRecords(root, base, profiles);
  return { lines: [profileMarkdown(shown), ...flips], failed: false };
}
