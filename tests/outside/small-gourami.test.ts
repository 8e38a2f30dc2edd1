// Common practice, no source: what keepers of the dwarf gourami agree on, by its consequences alone.
import { describe, expect, test } from "vitest";
import { allSpecies, speciesById } from "vivary/catalog";
import { assessPair, assessPlan, type Finding, type Verdict } from "vivary/compatibility";
import type { Group, Party, Plan, PlannedTank } from "vivary/plan";
import { applyForm, type SpeciesProfile } from "vivary/species";

function kind(id: string): SpeciesProfile {
  const species = speciesById(id);
  if (!species) throw new Error(`The catalog has no ${id}.`);
  return species;
}

const gourami = applyForm(kind("trichogaster-lalius"), "powder-blue");
const [male, female]: readonly Party[] = [
  { species: gourami, sex: "male" },
  { species: gourami, sex: "female" },
];
const pair: Group = { species: gourami, males: 1, females: 1 };

const floorOf = (length: number, width: number) => ({ shape: "rectangle", length, width }) as const;
const furnished: PlannedTank = {
  base: floorOf(100, 40),
  height: 40,
  lid: true,
  cover: 0.3,
  openWater: 0.4,
  openSurface: 0.4,
  plants: "grown-in",
  substrate: "sand",
  sightBreaks: 2,
  flow: { calmest: "still", strongest: "gentle" },
  filter: { mediaArea: 5, age: 200 },
};
/** 40 cm long, 40 litres. */
const small: PlannedTank = { ...furnished, base: floorOf(40, 30), height: 35, cover: 0.5 };

const planOf = (tank: PlannedTank, ...groups: readonly Group[]): Plan => ({
  tank,
  water: { temperature: 25, pH: 7, generalHardness: 8 },
  groups,
  offerings: [{ food: "dry", place: "surface" }],
});
const kept = (tank: PlannedTank, ...groups: readonly Group[]) => assessPlan(planOf(tank, ...groups));

const asked = ({ conditions }: Verdict) => conditions.map(({ on }) => on);
const promised = ["suitable", "conditional"];
const weighty = ({ findings }: Verdict): readonly Finding[] =>
  findings.filter(({ weight }) => weight === "blocking" || weight === "restricting");
const rulesOf = (verdict: Verdict) => new Set(weighty(verdict).map(({ rule }) => rule));
/** Whether a rule has a word to say of the gourami. */
const asksFor = (verdict: Verdict, rule: string) =>
  weighty(verdict).some((finding) => finding.rule === rule && finding.from === 0);

describe("its surroundings", () => {
  test("a pair in 40 litres on a base of 40 cm, well furnished, is not ruled out", () => {
    expect(promised).toContain(kept(small, pair).outcome);
  });

  const bare = kept({ ...furnished, cover: 0, plants: "none" }, pair);
  test("a bare tank asks for cover", () => expect(asked(bare)).toContain("tank.cover"));
  test("a bare tank asks for plants that have grown in", () => {
    expect(asked(bare)).toContain("tank.plants");
  });

  test("a strong current is nothing to it while it can leave it", () => {
    const dense = { ...furnished, cover: 0.6 };
    const all = kept({ ...dense, flow: { calmest: "strong", strongest: "strong" } }, pair);
    expect(all.outcome).toBe("conditional");
    expect(asked(all)).toEqual(["tank.flow.calmest"]);
    expect(kept({ ...dense, flow: { calmest: "still", strongest: "strong" } }, pair).outcome).toBe(
      "suitable",
    );
  });

  test("it shares water with nearly all tropical fish of fresh water", () => {
    const apart = allSpecies
      .filter(({ taxonomy, water }) => taxonomy.kind === "fish" && !water?.salinity?.value.kept?.min)
      .filter((species) => {
        const { findings } = assessPair({ species: gourami }, { species });
        const ofWater = ["temperature", "ph", "general-hardness", "salinity"];
        return findings.some(({ rule, weight }) => weight === "blocking" && ofWater.includes(rule));
      });
    expect(apart.length).toBeLessThan(allSpecies.length / 20);
    const warm = apart.filter(({ water }) => {
      const { min = 0, max = 0 } = water?.temperature?.value.kept ?? {};
      return min >= 10 && max >= 25;
    });
    expect(warm.map(({ id }) => id)).toEqual([]);
  });

  test("it is pickier than a honey gourami, as a sparkling gourami is", () => {
    const cool = (id: string, form?: string) =>
      assessPlan({
        ...planOf({ ...furnished, cover: 0.5 }, { species: kind(id), form, unsexed: 6 }),
        water: { temperature: 22.5, pH: 7, generalHardness: 8 },
      });
    expect(asked(cool("trichogaster-chuna"))).not.toContain("water.temperature");
    expect(asked(cool("trichogaster-lalius", "powder-blue"))).toContain("water.temperature");
    expect(asked(cool("trichopsis-pumila"))).toContain("water.temperature");
  });
});

describe("its company", () => {
  const beside = (id: string, unsexed: number) => kept(furnished, pair, { species: kind(id), unsexed });

  // The record says that company does not settle it.
  test("beside corydoras alone it stays unsettled", () => {
    expect(asksFor(beside("hoplisoma-panda", 8), "settling-company")).toBe(true);
  });

  test.each(["hyphessobrycon-amandae", "paracheirodon-axelrodi", "paracheirodon-simulans"])(
    "beside many %s it is settled",
    (id) => {
      const verdict = beside(id, 12);
      expect(asksFor(verdict, "settling-company")).toBe(false);
      expect(promised).toContain(verdict.outcome);
    },
  );

  test.each([
    ["danio-rerio", "conditional"],
    ["puntigrus-tetrazona", "unsuitable"],
    ["pethia-conchonius", "unsuitable"],
  ])("beside %s the answer is about its food, and a condition reaches it", (id, outcome) => {
    const verdict = assessPair({ species: gourami }, { species: kind(id) });
    expect(verdict.outcome).toBe(outcome);
    const food = verdict.conditions.find(({ on, of }) => on === "group.offerings" && of === 0);
    expect(food?.wanted).toMatchObject({ oneOf: expect.arrayContaining(["apart"]) });
  });

  test.each(["puntigrus-tetrazona", "pethia-conchonius"])("%s bite off its feelers", (id) => {
    const { findings } = assessPair({ species: gourami }, { species: kind(id) });
    const blocking = findings.filter(({ weight }) => weight === "blocking");
    expect(blocking.map(({ watchFor }) => watchFor)).toEqual(["torn-fins"]);
  });
});

describe("its rivals", () => {
  const others = [
    "trichogaster-chuna",
    "trichogaster-labiosa",
    "trichopodus-leerii",
    "trichopodus-trichopterus",
    "trichopodus-microlepis",
  ];
  const meetings = [
    { name: "its own kind", other: male },
    { name: "a female of its own", other: female },
    ...others.map((id): { name: string; other: Party } => ({
      name: id,
      other: { species: kind(id), sex: "male" },
    })),
  ];

  test.each(meetings)("a male beside $name is about chasing, and nothing rules it out", ({ other }) => {
    const verdict = assessPair(male as Party, other as Party);
    expect(promised).toContain(verdict.outcome);
    expect(verdict.findings.map(({ watchFor }) => watchFor)).toContain("chasing");
    expect(verdict.findings.map(({ watchFor }) => watchFor)).not.toContain("torn-fins");
  });

  test.each(["macropodus-opercularis", "betta-splendens"])(
    "a male beside a male %s is about chasing, and about its feelers, which are bitten off",
    (id) => {
      const verdict = assessPair(male as Party, { species: kind(id), sex: "male" });
      expect(verdict.outcome).toBe("unsuitable");
      const signs = verdict.findings.map(({ watchFor }) => watchFor);
      expect(signs).toEqual(expect.arrayContaining(["chasing", "torn-fins"]));
    },
  );

  test("a male beside a sparkling gourami is about chasing", () => {
    const verdict = assessPair(male as Party, { species: kind("trichopsis-pumila"), sex: "male" });
    expect(verdict.findings.map(({ watchFor }) => watchFor)).toContain("chasing");
  });

  test("two males are more to it in a small tank", () => {
    const two = { species: gourami, males: 2, females: 2 };
    const [near, far] = [kept(small, two), kept({ ...furnished, base: floorOf(120, 50), cover: 0.5 }, two)];
    const chased = (verdict: Verdict) => weighty(verdict).filter(({ watchFor }) => watchFor === "chasing");
    expect(chased(near).length).toBeGreaterThan(0);
    expect(chased(far)).toEqual([]);
  });

  test("individuals differ, and the answer shows it", () => {
    const { open, bounds } = assessPair(male as Party, { species: kind("danio-rerio") });
    const individual = open.some(({ reason }) => reason === "individual");
    expect(individual || bounds.atBest !== bounds.atWorst).toBe(true);
  });
});

describe("cherry shrimps beside it", () => {
  const shrimps = kind("neocaridina-davidi");
  const young = (length: number) =>
    assessPair({ species: gourami }, { species: shrimps, stage: "juvenile", length });
  const colony = (cover: number) =>
    rulesOf(kept({ ...furnished, cover }, pair, { species: shrimps, unsexed: 20, raises: true }));

  test("grown ones live beside it", () => {
    expect(promised).toContain(assessPair({ species: gourami }, { species: shrimps }).outcome);
    expect(rulesOf(assessPair({ species: gourami }, { species: shrimps }))).not.toContain("predation");
  });
  test("young of 0.8 cm are prey", () => expect(rulesOf(young(0.8))).toContain("predation"));
  test("young of 1.2 cm are not", () => expect(rulesOf(young(1.2))).not.toContain("predation"));
  test("dense moss saves some of the young", () => {
    expect(colony(0.1)).toContain("predation");
    expect(colony(0.5)).not.toContain("predation");
  });
});
