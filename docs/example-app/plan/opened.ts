import { planData, type Renamed, safeParsePlan, speciesIn } from "vivary/plan";
import { type Draft, emptyDraft } from "./draft";
import { isLackOfAnimals } from "./judged";
import { learn, profileOf } from "./profiles";

/** A plan that was saved once, as it is today. */
export interface Opened {
  readonly draft: Draft;
  /** What is called otherwise by now. */
  readonly renamed: readonly Renamed[];
}

/** Opens what was saved, by this version or an older one; undefined where it is no plan. */
async function opened(saved: unknown): Promise<Opened | undefined> {
  await learn(speciesIn(saved));
  const parsed = safeParsePlan(saved, profileOf);
  if (parsed.success) {
    const draft = planData(parsed.plan);
    await learn(speciesIn(draft));
    return { draft, renamed: parsed.renamed };
  }
  return parsed.problems.every(isLackOfAnimals)
    ? { draft: { ...emptyDraft, ...Object(saved) }, renamed: [] }
    : undefined;
}

/** Opens what was saved as text. */
export async function openedText(text: string): Promise<Opened | undefined> {
  try {
    return await opened(JSON.parse(text));
  } catch {
    return undefined;
  }
}
