import type { Words } from "../../compatibility";

// Words that reports and pages have in common.
export const places: Readonly<Record<Words["zone"], string>> = {
  surface: "an der Oberfläche",
  midwater: "im freien Wasser",
  bottom: "am Boden",
};

export const grounds: Readonly<Record<Words["ground"], string>> = {
  bare: "kahles Glas",
  sand: "Sand",
  "fine-gravel": "feiner Kies",
  "coarse-gravel": "grober Kies",
  pebbles: "runde Steine",
};

/** The grounds as the object of a verb. */
export const groundsHad: Readonly<Record<Words["ground"], string>> = {
  ...grounds,
  "fine-gravel": "feinen Kies",
  "coarse-gravel": "groben Kies",
};

export const targets: Readonly<Record<Words["target"], string>> = {
  "own-sex": "Artgenossen des eigenen Geschlechts",
  "other-sex": "Artgenossen des anderen Geschlechts",
  "own-kind": "Artgenossen",
  "look-alike": "ähnlich aussehende Fische",
  "long-finned": "langflossige Fische",
  smaller: "kleinere Tiere",
  any: "alle in der Nähe",
};

export const prey: Readonly<Record<Words["prey"], string>> = {
  egg: "Eier",
  fry: "Fischlarven",
  fish: "Fische",
  shrimplet: "junge Garnelen",
  shrimp: "Garnelen",
  snail: "Schnecken",
  "young-snail": "junge Schnecken",
  crayfish: "Krebse",
  "young-crayfish": "junge Krebse",
  crab: "Krabben",
  "young-crab": "junge Krabben",
  mussel: "Muscheln",
  frog: "Frösche",
  tadpole: "Kaulquappen",
};
