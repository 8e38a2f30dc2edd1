import { frozen } from "../../frozen";
import type { LawgiverNames } from "./lawgiver-names";

/** The places where a tank may stand, in German. */
export const germanLawgivers: LawgiverNames = /* @__PURE__ */ frozen({
  "us-alabama": "Alabama (Vereinigte Staaten)",
  "us-arkansas": "Arkansas (Vereinigte Staaten)",
  australia: "Australien, anderswo",
  brazil: "Brasilien",
  germany: "Deutschland",
  eu: "Europäische Union, anderswo",
  "us-florida": "Florida (Vereinigte Staaten)",
  japan: "Japan",
  "us-california": "Kalifornien (Vereinigte Staaten)",
  "us-michigan": "Michigan (Vereinigte Staaten)",
  "new-zealand": "Neuseeland",
  "australia-new-south-wales": "Neusüdwales (Australien)",
  "canada-ontario": "Ontario (Kanada)",
  "australia-queensland": "Queensland (Australien)",
  switzerland: "Schweiz",
  us: "Vereinigte Staaten, anderswo",
  "united-kingdom": "Vereinigtes Königreich",
  cites: "ein anderes Land von CITES",
});
