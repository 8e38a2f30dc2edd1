import { paragraph, type Section, section } from "../parts";
import type { Telling } from "../telling";

/** Where it comes from, and where those that are sold come from. */
export function origin({ known, messages, who, remarks }: Telling): readonly Section[] {
  const { headings, origin: words } = messages.page;
  const regions = (known("origin.regions") ?? []).map((region) => messages.page.region(region));
  const waters = known("origin.waters") ?? [];
  const supply = known("origin.supply");
  const conservation = known("origin.conservation");
  const isPlain = waters.every((water) => water === "fresh");
  return section(
    "origin",
    headings.origin,
    paragraph(
      regions.length > 0 && words.from(regions, who),
      !isPlain && words.waters(waters),
      supply && words.supply[supply],
      conservation && words.conservation(conservation.status, conservation.year),
    ),
    remarks(["origin.regions", "origin.waters", "origin.supply", "origin.conservation"]),
  );
}
