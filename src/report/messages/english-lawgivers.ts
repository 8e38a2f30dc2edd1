import { frozen } from "../../frozen";
import type { LawgiverNames } from "./lawgiver-names";

/** The places where a tank may stand, in English. */
export const englishLawgivers: LawgiverNames = /* @__PURE__ */ frozen({
  "us-alabama": "Alabama (United States)",
  "us-arkansas": "Arkansas (United States)",
  australia: "Australia, elsewhere",
  brazil: "Brazil",
  "us-california": "California (United States)",
  eu: "European Union, elsewhere",
  "us-florida": "Florida (United States)",
  germany: "Germany",
  japan: "Japan",
  "us-michigan": "Michigan (United States)",
  "australia-new-south-wales": "New South Wales (Australia)",
  "new-zealand": "New Zealand",
  "canada-ontario": "Ontario (Canada)",
  "australia-queensland": "Queensland (Australia)",
  switzerland: "Switzerland",
  "united-kingdom": "United Kingdom",
  us: "United States, elsewhere",
  cites: "another country in CITES",
});
