import type { FindingBy } from "../matters/by-rule";
import type { Messages } from "../messages/messages";
import type { Naming } from "./naming";

/** Those of a hazard, each with its family. */
export function hazardsTold(
  findings: readonly FindingBy<"caution-hazards">[],
  messages: Messages,
  { named }: Pick<Naming, "named">,
): string {
  const families = new Map<string, (number | undefined)[]>();
  for (const { measures, from } of findings) {
    const family = measures?.family?.value ?? "";
    families.set(family, [...(families.get(family) ?? []), from]);
  }
  const of = [...families].map(([family, those]) => ({ ...named(those), family }));
  return messages.hazards(findings[0]?.measures?.hazard?.value ?? "bite", of);
}
