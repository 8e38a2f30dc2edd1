// What the code took from memory. Whoever reads a source writes it there in place of "from memory", and takes the line away.

interface Recalled {
  /** Within src. */
  readonly file: string;
  readonly what: string;
  /** What would have to be read. */
  readonly settledBy: string;
}

export const recalled: readonly Recalled[] = [
  {
    file: "report/messages/german-standards.ts",
    what: "That reference 51539 of FishBase is the German report on keeping ornamental fish, printed in 1999.",
    settledBy: "The list of references of FishBase.",
  },
  {
    file: "report/messages/sentences.ts",
    what: "The concentrated load of dwellings, a fifth of the weight from which a report sends to an engineer first.",
    settledBy: "Table 6.2 of EN 1991-1-1:2002.",
  },
  {
    file: "compatibility/thresholds.ts",
    what: "The oxygen down to which animals of low and of high need may come, how far a hot day may exceed what is kept, and the weight from which floors are cautioned about.",
    settledBy:
      "EPA 440/5-86-003, the table of criteria; Brungs & Jones 1977, EPA-600/3-77-061, on limits for a week; the schedule on fish of the Model Conditions for Pet Vending Licensing 2013; table 6.2 of EN 1991-1-1:2002.",
  },
  {
    file: "advice/set-point/hot-end.ts",
    what: "The un-ionized ammonia up to which fresh water supports fish life: 0.025 mg/L, and 0.005 as a guide.",
    settledBy: "Directive 2006/44/EC, the table of Annex I; EIFAC Technical Paper 11 (1970).",
  },
  {
    file: "compatibility/rules/pair/mucus-grazing.ts",
    what: "That plecos hang on manatees also in springs full of algae, so that food does not end it.",
    settledBy: "Nico, Loftus & Reid 2009, Aquatic Invasions 4:511-519.",
  },
  {
    file: "compatibility/rules/pair/shyness.ts",
    what: "That calm fish in the open tell shy larger ones that no danger is near.",
    settledBy: "Barlow 1968, on calm company in the open, in the orange chromide.",
  },
  {
    file: "compatibility/rules/plan/both-sexes.ts",
    what: "That females of livebearers keep sperm and bear for months.",
    settledBy: "Constantz 1989, Reproductive biology of poeciliid fishes, in Meffe & Snelson.",
  },
  {
    file: "load/body-mass.ts",
    what: "That the factor a of length and weight lies between 0.001 and 0.1. It only bounds what is accepted.",
    settledBy: "Froese 2006, J. Appl. Ichthyol. 22:241-253, beyond its summary, which was read.",
  },
  {
    file: "load/coarse-foam.ts",
    what: "The surface of a litre of coarse foam.",
    settledBy: "Tables of media in Timmons & Ebeling, or a maker's data sheet of foam of 20 pores an inch.",
  },
  {
    file: "load/filter-capacity.ts",
    what: "What a square metre of ripe media takes up in a day, and that it follows the concentration below 1 mg/L.",
    settledBy:
      "SRAC Publication 453; Malone & Pfeiffer 2006, Aquacult. Eng. 34:389-402, of which the abstract alone was read; measurements of aquarium filters at 0.1 mg/L.",
  },
  {
    file: "load/nitrogen-load.ts",
    what: "The form of the equation: food times protein times 0.092. The coefficient was read in a script that sizes filters.",
    settledBy: "Timmons & Ebeling, Recirculating Aquaculture, the chapter on mass balances.",
  },
  {
    file: "plan/plan.ts",
    what: "That each g/kg of sea salt brings 10 °dH.",
    settledBy: "Calcium and magnesium of the reference composition of seawater, Millero et al. 2008.",
  },
  {
    file: "species/profile/derived.ts",
    what: "That long fins make zebrafish a fifth slower.",
    settledBy: "Plaut 2000, J. Exp. Biol. 203:813-820.",
  },
  {
    file: "species/profile/lengths.ts",
    what: "How far the share of standard length in total length varies: 0.80 to 0.85.",
    settledBy:
      "The shares measured in `size.standardShare` of the records: only two fifths of them lie within it, most of the others below.",
  },
  {
    file: "species/traits/classes.ts",
    what: "The grain sizes of ground.",
    settledBy: "ISO 14688-1, the table of particle sizes.",
  },
  {
    file: "water/mixture.ts",
    what: "That alkalinity is conserved where waters are mixed.",
    settledBy: "Stumm & Morgan 1996, Aquatic Chemistry, the chapter on dissolved carbon dioxide.",
  },
];
