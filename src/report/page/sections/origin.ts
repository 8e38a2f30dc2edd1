import { paragraph, type Section, section } from "../parts";
import type { Telling } from "../telling";

/** Where it comes from, of a form its species, and where those that are sold come from. */
export function origin({ profile, known, messages, who, noted, remarks }: Telling): readonly Section[] {
  const { headings, origin: words } = messages.page;
  const regions = known("origin.regions") ?? [];
  const waters = known("origin.waters") ?? [];
  const supply = known("origin.supply");
  const conservation = known("origin.conservation");
  const { name } = profile.taxonomy;
  const wild = profile.form === undefined ? who : { name, several: name, scientific: true };
  const isPlain = waters.every((water) => water === "fresh");
  return section(
    "origin",
    headings.origin,
    paragraph(
      noted("origin.regions", regions.length > 0 && words.from(regions, wild)),
      noted("origin.waters", !isPlain && words.waters(waters)),
      noted("origin.supply", supply && words.supply[supply]),
      conservation && words.conservation(conservation.status, conservation.year),
    ),
    remarks(["origin.regions", "origin.waters", "origin.supply", "origin.conservation"]),
  );
}
