import { expect, describe as suite, test } from "vitest";
import { findSpecies } from "vivary/catalog";
import { remedies } from "../../../src/advice";
import { assessPair, assessPlan, type Verdict, witness } from "../../../src/compatibility";
import type { Group, Plan, PlannedTank, PlannedWater } from "../../../src/plan";
import { type DescribeOptions, describe, english, sentence, speciesPage } from "../../../src/report";
import { german } from "../../../src/report/de";
import type { SpeciesProfile } from "../../../src/species";
import { convert } from "../../../src/units";

function species(name: string): SpeciesProfile {
  const [found] = findSpecies(name);
  if (!found) throw new Error(name);
  return found;
}

const group = (name: string, numbers: Omit<Group, "species">): Group => ({
  species: species(name),
  ...numbers,
});

/** A tank by length and width in cm, furnished so that little is left to ask for. */
const tank = (length: number, width: number, more: Partial<PlannedTank> = {}): PlannedTank => ({
  base: { shape: "rectangle", length, width },
  height: 40,
  cover: 0.35,
  openWater: 0.5,
  openSurface: 0.4,
  sightBreaks: 3,
  lid: true,
  plants: "grown-in",
  substrate: "sand",
  hides: { caves: 3, wood: 3, leaves: 2, rocks: 3 },
  filter: { mediaArea: 6, age: 90 },
  flow: { calmest: "still", strongest: "gentle" },
  ...more,
});

const offerings: Plan["offerings"] = [
  { food: "dry", place: "surface" },
  { food: "frozen", place: "midwater" },
  { food: "dry", place: "bottom" },
  { food: "frozen", place: "bottom", light: "night" },
];

const warm: PlannedWater = { temperature: 25, pH: 7, generalHardness: 8 };

const furnished = (base: PlannedTank, ...groups: Group[]): Plan => ({
  tank: base,
  water: warm,
  groups,
  offerings,
});

/** A report in one line. */
const told = (plan: Plan, options?: DescribeOptions) =>
  describe(assessPlan(plan), options).replaceAll(/\s+/g, " ");

suite("the answer", () => {
  test("says why it could be worse", () => {
    const plan = furnished(
      tank(120, 50, { hides: { caves: 6, rocks: 8 } }),
      group("convict cichlid", { males: 1, females: 1 }),
      group("firemouth cichlid", { males: 1, females: 1 }),
    );
    const report = told({ ...plan, water: { ...warm, pH: 7.4, generalHardness: 12 } });
    expect(report).toContain(" At worst it is unsuitable: individuals differ much.");
    expect(report.indexOf("a rough one could rule it out")).toBeLessThan(report.indexOf("Worth knowing"));
  });

  test("says so where nothing is open but how heavy they grow, as with a filter that just does", () => {
    const plan = witness({
      tank: { base: { shape: "rectangle", length: 200, width: 80 }, height: 60 },
      groups: [group("dwarf chain loach", { unsexed: 8 })],
    });
    if (!plan) throw new Error("Eight dwarf chain loaches have a plan.");
    const verdict = assessPlan(plan);
    expect(verdict).toMatchObject({ outcome: "suitable", bounds: { atWorst: "conditional" }, open: [] });
    expect(told(plan)).toContain(
      "At worst something would have to change: how heavy they grow is an estimate.",
    );
    expect(told(plan, { messages: german })).toContain(
      "Im schlechtesten Fall muss sich etwas ändern: wie schwer sie werden, ist geschätzt.",
    );
    const { filter } = plan.tank;
    const larger = { ...plan.tank, filter: filter && { ...filter, mediaArea: 3 * filter.mediaArea } };
    expect(told({ ...plan, tank: larger })).not.toContain("At worst");
  });

  test("names the law of the place before all else that is asked for", () => {
    const plan: Plan = {
      tank: { base: { shape: "rectangle", length: 120, width: 50 } },
      groups: [group("walking catfish", { unsexed: 1 })],
    };
    const law = "The law where the tank stands names the walking catfish: read below what it says";
    expect(told({ ...plan, jurisdiction: ["us-florida"] })).toContain(law);
    expect(told({ ...plan, jurisdiction: ["japan"] })).not.toContain("The law where");
    expect(told(plan)).not.toContain("The law where");
  });

  test("leaves it to no individual what water two can share", () => {
    const plan = furnished(
      tank(80, 35),
      group("neon tetra", { unsexed: 10 }),
      group("molly", { females: 4 }),
    );
    const report = told(plan);
    expect(report).toContain("Undetermined: ");
    expect(report).not.toMatch(/depends on the individuals|rough one/);
  });

  test("does not say that two go well together of which something is worth knowing", () => {
    const pair = assessPair({ species: species("angelfish") }, { species: species("bristlenose catfish") });
    expect(describe(pair).replaceAll(/\s+/g, " ")).toMatch(
      /^Suitable: freshwater angelfish .* can live together\./,
    );
    expect(describe(pair, { messages: german })).toMatch(/können\s+zusammen leben/);
  });

  test("tells once what nobody can tell of some and what is sure of others of a kind", () => {
    const cockatoos = { ...group("cockatoo dwarf cichlid", { males: 1, females: 2 }) };
    const snails = group("assassin snail", { unsexed: 5 });
    const report = told({ ...furnished(tank(150, 50), { ...cockatoos, raises: true }, cockatoos, snails) });
    expect(report.match(/may eat the eggs/g)).toHaveLength(1);
  });

  test("calls no numbers right of which there are too many, and no plan good of which something is to be known", () => {
    const julies = group("masked julie", { unsexed: 6 });
    const water = { temperature: 25, pH: 8.4, generalHardness: 14 };
    const report = told({
      ...furnished(tank(150, 50, { sightBreaks: 9, hides: { rocks: 9 } }), julies),
      water,
    });
    expect(report).toMatch(/^Suitable: a plan that will do for 6 masked julies/);
    expect(report).toContain("live at most 2 together");
    expect(report).not.toMatch(/right as planned:[^.]*numbers/);
  });

  test("tells of what animals do to their own kind and to others as such", () => {
    const puffers = group("pea puffer", { unsexed: 6 });
    const plan = furnished(tank(150, 50, { sightBreaks: 9 }), puffers, group("ember tetra", { unsexed: 10 }));
    expect(told(plan)).toContain("bite pieces out of the fins of their own kind and ember tetras");
    expect(told(plan, { messages: german })).toContain("verletzen Artgenossen und Funkensalmler");
  });

  test("does not bid watch a lone animal for fights with its own kind", () => {
    const report = told(furnished(tank(150, 50), group("red-bellied piranha", { unsexed: 1 })));
    expect(report).toMatch(/Watch for: [^.]*hiding all day\./);
    expect(report).not.toContain("chasing that does not end");
  });

  test("does not say that all go well together with a bully among them", () => {
    const plan = furnished(
      tank(150, 50, { sightBreaks: 8 }),
      group("pearl gourami", { males: 1, females: 3, temper: "bully" }),
      group("harlequin rasbora", { unsexed: 15 }),
    );
    expect(told(plan)).toMatch(/^Suitable: a plan that will do for 4 pearl gouramis /);
    expect(told(plan, { messages: german })).toMatch(/^Geeignet: ein brauchbarer Plan für /);
  });
});

suite("the animals", () => {
  test("are listed group by group, also where two groups are alike", () => {
    const male = group("dwarf gourami", { males: 1 });
    const report = told(furnished(tank(120, 50), male, male, group("dwarf gourami", { females: 3 })));
    expect(report.split("1 dwarf gourami (Trichogaster lalius; male)")).toHaveLength(3);
  });

  test("that are bold are one or several", () => {
    const betta = group("siamese fighting fish", { males: 1, temper: "bolder" });
    expect(told(furnished(tank(60, 30), betta))).toContain("(Betta splendens; male, a bold one)");
  });
});

suite("what must change", () => {
  test("is told with the gravest that one does to another, and no more", () => {
    const plan: Plan = {
      tank: { base: { shape: "rectangle", length: 60, width: 30 } },
      groups: [group("guppy", { unsexed: 5 }), group("siamese fighting fish", { unsexed: 1 })],
    };
    expect(told(plan).match(/The Siamese fighting fish bites guppies/gi)).toHaveLength(1);
  });

  test("of the water is what suits all, not those alone who suffer", () => {
    const plan = furnished(
      tank(60, 30),
      group("siamese fighting fish", { males: 1 }),
      group("peppered corydoras", { unsexed: 6 }),
    );
    expect(told({ ...plan, water: { ...warm, temperature: 27 } })).toContain(
      "Keep the water at 24 to 25 °C. Peppered corydoras need 18 to 25 °C; yours is 27 °C.",
    );
  });

  test("of the room is told once", () => {
    const loaches = told(furnished(tank(180, 60), group("clown loach", { unsexed: 6 })));
    expect(loaches).toContain("need a tank of about 200 × ");
    expect(loaches).not.toContain("hardly less");
    const catfish = told(furnished(tank(240, 80), group("redtail catfish", { juveniles: 1, length: 10 })));
    expect(catfish).toContain("Unsuitable: the tank is far too small");
    expect(catfish).not.toContain("cannot turn");
  });

  test("is no list of furnishing where the plan is ruled out", () => {
    const bowl: Plan = {
      tank: { base: { shape: "rectangle", length: 60, width: 30 } },
      groups: [group("goldfish", { juveniles: 2, length: 5 })],
    };
    expect(told(bowl)).toContain("Not in your plan yet: see that it is so - Water: ");
    expect(told(bowl)).not.toMatch(/coarse foam|on the ground|free to swim/);
  });

  test("is what a grown hunter asks for, however small it is bought", () => {
    const [discus, angelfish] = [species("discus"), species("freshwater angelfish")];
    const verdict = assessPair(
      { species: discus, stage: "juvenile", length: 5 },
      { species: angelfish, stage: "juvenile", length: 4 },
    );
    expect(describe(verdict).replaceAll(/\s+/g, " ")).toContain(
      "Once grown, freshwater angelfish eat discus of 5 cm",
    );
  });
});

suite("what would help", () => {
  const plan = furnished(tank(100, 40), group("tiger barb", { unsexed: 10 }), group("guppy", { males: 6 }));

  test("names the form that would be spared", () => {
    const report = told(plan, { remedies: remedies(plan) });
    expect(report).toContain("Choose guppies of this form: wild-type guppy.");
  });

  test("tells water in one clause", () => {
    const discus: Plan = {
      ...furnished(tank(150, 60, { height: 60 }), group("discus", { unsexed: 6 })),
      water: { temperature: 24, pH: 8, generalHardness: 20 },
    };
    expect(told(discus, { remedies: remedies(discus) })).toContain(
      "What would help - Have water of 26 to 30 °C, pH 5 to 7.5, hardness 0 to 12 °dH.",
    );
  });
});

suite("figures", () => {
  test("of sources that differ on a length are told", () => {
    const plan = furnished(
      tank(120, 50),
      group("serpae tetra", { unsexed: 10 }),
      group("cherry shrimp", { unsexed: 10 }),
    );
    expect(told(plan)).toContain("serpae tetras, adult length 4.7 to 5 cm");
  });

  test("count fresh water for no merit, and brackish water for one", () => {
    const cold: PlannedWater = { ...warm, temperature: 29 };
    const fresh = told({ ...furnished(tank(80, 35), group("neon tetra", { unsexed: 10 })), water: cold });
    expect(fresh).toMatch(/right as planned: [^.]*hardness/);
    expect(fresh).not.toMatch(/right as planned: [^.]*salinity/);
    const gobies = furnished(tank(80, 35), group("bumblebee goby", { unsexed: 6 }));
    const brackish = told({ ...gobies, water: { ...warm, temperature: 34, salinity: 4, pH: 8 } });
    expect(brackish).toMatch(/right as planned: [^.]*salinity/);
  });
});

test("where more of a kind are to join males that must stay alone, the report says of which sex", () => {
  const plan = furnished(
    tank(120, 50),
    group("cockatoo dwarf cichlid", { males: 1 }),
    group("electric yellow cichlid", { unsexed: 8 }),
  );
  expect(told(plan)).toMatch(
    /What must change - .*Keep male cockatoo dwarf cichlids only: .* keep at least 2/,
  );
  const enough = furnished(
    tank(120, 50),
    group("cockatoo dwarf cichlid", { males: 2 }),
    group("electric yellow cichlid", { unsexed: 8 }),
  );
  expect(told(enough)).not.toContain("Keep male cockatoo dwarf cichlids only");
});

test("company that settles two shy kinds is asked for once", () => {
  const shy = furnished(
    tank(100, 40),
    group("dwarf gourami", { males: 1, females: 1 }),
    group("honey gourami", { males: 1, females: 1 }),
  );
  expect(told(shy).match(/keep calm fish/gi)).toHaveLength(1);
  expect(told(shy)).toContain(
    "neither eat dwarf gouramis and honey gouramis nor are eaten by them. Dwarf gouramis and honey gouramis are shy",
  );
});

test("what becomes of young is told once where those of one group alone are wanted", () => {
  const mixed = furnished(
    tank(100, 40, { cover: 0.1 }),
    group("Bolivian ram", { unsexed: 2 }),
    group("platy", { unsexed: 4, raises: true }),
    group("platy", { unsexed: 3 }),
  );
  expect(told(mixed).match(/Bolivian rams and platies eat the young of platies/g)).toHaveLength(1);
});

test("entries in the law are counted once of a species, however many groups of it there are", () => {
  const grown = group("dojo loach", { unsexed: 2 });
  const young = group("dojo loach", { juveniles: 4 });
  const gold = group("gold dojo loach", { unsexed: 1 });
  const law = (...groups: Group[]) => told(furnished(tank(120, 50), ...groups)).match(/Law: (\d+) entr/)?.[1];
  expect(law(grown)).toBe(String(species("dojo loach").listings?.length));
  expect(law(grown, young)).toBe(law(grown));
  expect(law(grown, gold, young)).toBe(law(grown));
  const ray = group("ocellate river stingray", { females: 1 });
  expect(Number(law(grown, ray, young))).toBe(Number(law(grown)) + Number(law(ray)));
});

test("every law of the place is told, however many there are", () => {
  const ray = furnished(tank(300, 120), group("ocellate river stingray", { females: 1 }));
  const floridan = told({ ...ray, jurisdiction: ["us-florida"] });
  expect(floridan).toContain("Private keeping is prohibited");
  expect(floridan.match(/Law on the ocellate river stingray/g)).toHaveLength(3);
});

test("those that kill each other get a tank each", () => {
  const plan = furnished(tank(60, 35), group("Siamese fighting fish", { males: 2 }));
  const helped = (options: DescribeOptions = {}) => told(plan, { remedies: remedies(plan), ...options });
  expect(helped()).not.toMatch(/another tank for the 2/);
  const shared = furnished(tank(60, 35), ...plan.groups, group("ember tetra", { unsexed: 10 }));
  const report = told(shared, { remedies: remedies(shared) });
  expect(report).toMatch(/Find a tank each for the 2 Siamese fighting fish/i);
  expect(told(shared, { remedies: remedies(shared), messages: german })).toMatch(/je ein eigenes Becken/);
});

test("of several that live alone nobody can tell, and that is told before what room keeps down", () => {
  const squeakers = furnished(tank(300, 100, { height: 80 }), group("featherfin squeaker", { unsexed: 3 }));
  expect(told(squeakers)).toMatch(
    /What nobody can tell - Featherfin squeakers may not bear their own kind, whatever room they have\. Worth knowing/,
  );
  expect(told(squeakers, { messages: german })).toMatch(
    /vertragen vielleicht keine Artgenossen, wie viel Platz auch da ist\./,
  );
});

test("that some eat the plants that others need is told once", () => {
  const gouramis = group("sparkling gourami", { unsexed: 6 });
  const report = told(furnished(tank(120, 50), gouramis, group("rosy barb", { unsexed: 8 })));
  expect(report).toContain("Rosy barbs eat plants, and sparkling gouramis cannot do without them");
  expect(report.match(/eat plants/gi)).toHaveLength(1);
  expect(told(furnished(tank(120, 50), group("rosy barb", { unsexed: 8 })))).toContain(
    "Rosy barbs eat plants.",
  );
});

test("water to keep is told past none of its ends, and as what the animals need", () => {
  const angelfish = group("freshwater angelfish", { unsexed: 6 });
  const verdict = assessPlan({ tank: tank(150, 60), water: { generalHardness: 20 }, groups: [angelfish] });
  const asked = verdict.conditions.find(({ on }) => on === "water.generalHardness");
  const { min = 0, max = 0 } = asked?.aim ?? {};
  const [, from, to] =
    /hardness of (\d+) to (\d+) ppm/.exec(sentence(verdict, asked as never, { units: "us" })) ?? [];
  expect(Number(from)).toBeGreaterThanOrEqual(convert(min, "dH", "mg/L-CaCO3"));
  expect(Number(to)).toBeLessThanOrEqual(convert(max, "dH", "mg/L-CaCO3"));
  expect(describe(verdict, { units: "us" }).replaceAll(/\s+/g, " ")).toContain(
    `need a hardness of ${from} to ${to} ppm`,
  );
});

test("water that two share lies within what each is told to be kept in, to the degree", () => {
  const verdict = assessPair({ species: species("neon blue rasbora") }, { species: species("discus") });
  const report = describe(verdict, { units: "us" }).replaceAll(/\s+/g, " ");
  expect(report).toContain("are kept at 73 to 79 °F, discus at 79 to 86 °F: they share only 79 °F");
});

test("water of which one figure alone will do is told exactly", () => {
  const verdict = assessPair({ species: species("neon tetra") }, { species: species("zebra danio") });
  const only = (on: "water.pH" | "water.temperature", figure: number) => {
    const alone = { min: figure, max: figure };
    const condition: Verdict["conditions"][number] = { on, wanted: alone, aim: alone, findings: [] };
    return sentence(verdict, condition, { units: "us" });
  };
  expect(only("water.pH", 7.25)).toBe("Keep the water at a pH of 7.25.");
  expect(only("water.temperature", 25.5)).toBe("Keep the water at 77.9 °F.");
});

test("of eggs that are left lying nobody is said to guard them, nor to come by night", () => {
  const barbs = group("tiger barb", { males: 4, females: 4, raises: true });
  const plan = { ...furnished(tank(120, 50), barbs, group("pearl danio", { unsexed: 8 })) };
  const report = told({ ...plan, tank: { ...plan.tank, cover: 0 } });
  expect(report).toContain("earl danios eat the eggs of tiger barbs");
  expect(report).not.toContain("guard");
});

test("nobody is told to cover more than the whole tank", () => {
  const shy = group("ocellate river stingray", { males: 1, females: 1, temper: "shyer" });
  const report = told(furnished(tank(300, 150), shy));
  expect(report).not.toContain("cover over 100 %");
  expect(report).toContain("cellate river stingrays are shy and come out beside calm fish.");
});

test("no unit cuts anything off what is needed", () => {
  const us = { units: "us" } as const;
  const barb = told(
    { tank: tank(60, 50, { filter: undefined }), groups: [group("tiger barb", { unsexed: 1 })] },
    us,
  );
  expect(barb).toContain("needs a tank at least 32 in long; yours is 24 in."); // 80 cm are 31.5 in
  expect(barb).toContain("about 0.3 US gal of coarse foam"); // 1 L is 0.26 US gal
  const catfish = {
    tank: tank(600, 300, { height: 60 }),
    groups: [group("redtail catfish", { unsexed: 1 })],
  };
  expect(told(catfish, us)).toContain("needs a tank 34 in high; yours is 24 in."); // 85 cm are 33.5 in
  expect(told(catfish, { ...us, messages: german })).toMatch(/braucht ein 34\sZoll hohes Becken/);
  const page = speciesPage(species("zebra danio"), us).replaceAll(/\s+/g, " ");
  expect(page).toContain("need a tank at least 32 in long"); // 80 cm
});

test("how long one grows for which the tank is too small is said of it alone", () => {
  const plan: Plan = {
    tank: { base: { shape: "rectangle", length: 30, width: 24 } },
    groups: [group("leopard pleco", { unsexed: 1 }), group("kuhli loach", { unsexed: 6 })],
  };
  const [english, deutsch] = [told(plan), told(plan, { messages: german })];
  expect(english).toMatch(/the leopard pleco and kuhli loaches need a tank of/i);
  expect(english).toContain("The leopard pleco grows to 40 cm and cannot turn in a tank 24 cm wide.");
  expect(english).not.toMatch(/40 cm long/);
  expect(deutsch).toMatch(/der Wabenschilderwels und Dornaugen brauchen ein Becken/i);
  expect(deutsch).toMatch(
    /Wabenschilderwels wird 40\scm lang und kann in einem 24\scm breiten Becken nicht wenden/,
  );
  const alone = told({ ...plan, groups: plan.groups.slice(0, 1) });
  expect(alone).not.toContain("cannot turn");
});

test("one animal that is eaten small is named, in no more words than it has", () => {
  const acaras = { species: species("blue acara"), form: "electric-blue" };
  const tetra = { species: species("bleeding heart tetra"), stage: "fry", count: 1 } as const;
  const pair = assessPair(tetra, acaras);
  const predation = pair.findings.filter(
    ({ rule, weight }) => rule === "predation" && weight === "restricting",
  );
  expect(predation.map((finding) => sentence(pair, finding))).toEqual([
    expect.stringMatching(/^Electric blue acaras eat the bleeding heart tetra while it is small; those of /),
  ]);
  const panchax = {
    groups: [group("honey gourami", { females: 1 }), group("Gardner's killifish", { males: 1 })],
  };
  const report = told({ tank: tank(60, 30), ...panchax });
  expect(report).toContain("Gardner's killifish needs company of its own");
  expect(report).not.toMatch(/the Gardner's/i);
});

test("what nobody can tell of their own kind is told though something is asked for besides", () => {
  const knifefish = { species: species("black ghost knifefish"), count: 3 };
  const report = describe(assessPair({ species: species("red zebra cichlid") }, knifefish)).replaceAll(
    /\s+/g,
    " ",
  );
  expect(report).toMatch(/^Nobody can tell: it depends on the individuals \(black ghost knifefish\)/);
  expect(report).toMatch(
    /What nobody can tell - Black ghost knifefish may not bear their own kind, whatever room they have\. What must change - .*black ghost knifefish chase their own kind/,
  );
});

test("wounds that room and cover should prevent are told, and what to do when they come", () => {
  const convicts = (cover: number) =>
    told(
      furnished(
        tank(150, 60, { cover, sightBreaks: 8, hides: { caves: 10, rocks: 10 } }),
        group("convict cichlid", { males: 1, females: 1 }),
        group("Sterba's corydoras", { unsexed: 8 }),
      ),
    );
  expect(convicts(0.4)).toMatch(
    /Room and cover as planned should keep this down: .*convict cichlids bite Sterba's corydoras while they guard eggs or young.* If bullying starts/,
  );
  expect(convicts(0.4)).toMatch(/Watch for: [^.]*chasing that does not end/);
});

test("young that are wanted are told to be eaten, however well the cover as planned keeps that down", () => {
  const shrimps = furnished(
    tank(80, 35, { cover: 0.4 }),
    group("cherry shrimp", { unsexed: 15, raises: true }),
    group("harlequin rasbora", { unsexed: 10 }),
  );
  expect(told(shrimps)).toMatch(
    /Room and cover as planned should keep this down: [^.]*harlequin rasboras eat the young of cherry shrimps/,
  );
  expect(told(shrimps)).toMatch(/Watch for: [^.]*missing eggs or young \(cherry shrimps\)/);
  expect(told(shrimps)).not.toContain("If bullying starts");
});

suite("nothing is told twice", () => {
  const monos = { length: 1 } as const;
  const plan: Plan = {
    tank: { base: { shape: "rectangle", length: 240, width: 80 } },
    water: { temperature: 26 },
    groups: [
      group("mono", { unsexed: 14, ...monos }),
      group("pictus catfish", { unsexed: 34, length: 1 }),
      group("mono", { males: 6, females: 8, length: 3 }),
    ],
  };
  const times = (text: string, part: RegExp) => text.match(new RegExp(part, "g"))?.length ?? 0;

  test("of two groups of a kind: what water they cannot share, and what to buy", () => {
    expect(times(told(plan), /no salinity suits both/)).toBe(1);
    expect(times(told(plan), /Buy monos that measure/)).toBe(1);
  });

  test("of who bites: not as a reason for something else besides", () => {
    const piranhas: Plan = {
      tank: { base: { shape: "rectangle", length: 500, width: 400 } },
      groups: [
        group("redtail catfish", { unsexed: 2, length: 1 }),
        group("red-bellied piranha", { unsexed: 22, length: 1 }),
      ],
    };
    expect(times(told(piranhas), /piranhas bite redtail catfish/)).toBe(1);
  });
});

test("water at the edge of what some can take is not praised as right", () => {
  const neons = furnished(tank(80, 35), group("neon tetra", { unsexed: 10 }));
  const right = (pH: number) => told({ ...neons, water: { ...warm, pH } });
  expect(right(6.5)).toMatch(/right as planned: [^.]*water/);
  expect(right(7.2)).toMatch(/at the edge of what they can take/);
  expect(right(7.2)).not.toMatch(/right as planned: [^.]*(water\b|pH)/);
});

test("a tonne is set up on no floor before an engineer was asked", () => {
  const weight = (length: number) =>
    told(furnished(tank(length, 100, { height: 70 }), group("ocellate river stingray", { females: 1 })));
  expect(weight(300)).toMatch(/Weight: about [\d,]+ kg .* Ask a structural engineer before you set it up/);
  expect(weight(100)).toMatch(/Weight: about 870 kg .* by a bearing wall/);
});

test("a tank to have is told in the unit of the report, in whatever unit the plan is", () => {
  const groups = [group("balantiocheilos melanopterus", { unsexed: 5 })];
  const sidesIn = (unit: "in" | "mm", length: number, width: number, height: number) => {
    const plan: Plan = { tank: { base: { shape: "rectangle", length, width }, height, unit }, groups };
    const told = describe(assessPlan(plan), { remedies: remedies(plan) });
    return [...told.matchAll(/ tank of (?:about )?(\d+) × (\d+) cm/g)].map(([, one]) => Number(one));
  };
  for (const sides of [sidesIn("in", 48, 18, 20), sidesIn("mm", 1200, 450, 500)]) {
    expect(sides.length).toBeGreaterThan(1);
    for (const length of sides) expect(length).toBeGreaterThan(150);
  }
});

test("a condition of an app is told in the unit of its fact", () => {
  const verdict = assessPair({ species: species("neon tetra") }, { species: species("zebra danio") });
  const water = { on: "water.temperature", wanted: { min: 20, max: 26 } } as const;
  expect(sentence(verdict, water, { units: "us" })).toBe("Keep the water at 68 to 78 °F.");
});

test("nobody is told to give what nobody can buy", () => {
  const verdict = assessPair({ species: species("twig catfish") }, { species: species("tiger barb") });
  for (const food of ["detritus", "plankton"] as const) {
    const fed = { on: "group.offerings", of: 0, wanted: { oneOf: [food, "night"] } } as const;
    expect(sentence(verdict, fed)).not.toContain(food);
  }
});

test("a pair says that cautions are told of a plan alone", () => {
  const [ray, dollar] = [species("potamotrygon motoro"), species("metynnis argenteus")];
  const told = /can\s+hurt\s+people/;
  expect(describe(assessPair({ species: ray }, { species: dollar }))).toMatch(told);
  const plan: Plan = { tank: tank(600, 300), groups: [{ species: ray, unsexed: 1 }] };
  expect(describe(assessPlan(plan))).not.toMatch(told);
});

test("the page of a species tells the numbers that go wrong", () => {
  const page = speciesPage(species("elephantnose fish"));
  expect(page).toContain("one or more, but not 2 to 4");
  expect(page.replaceAll("\n", " ")).toContain("with 2 to 4 things go wrong");
});

suite("sensitive animals", () => {
  const neons = group("neon tetra", { unsexed: 10 });

  test("are to wait for a ripe filter, which not all of them can do last", () => {
    const plan = furnished(tank(100, 40), neons, group("otocinclus", { unsexed: 6 }));
    expect(told(plan)).toContain("Do not add neon tetras and otocinclus before the filter is ripe");
    expect(told(plan)).not.toContain(" last");
    expect(told(plan, { messages: german })).toContain("erst einsetzen, wenn der Filter eingefahren ist");
  });
});

test("who needs a cool season is told once of all for whom it would be too cold", () => {
  const whiteClouds = group("tanichthys albonubes", { unsexed: 10 });
  const [tetras, rasboras] = [
    group("hyphessobrycon amandae", { unsexed: 10 }),
    group("trigonostigma heteromorpha", { unsexed: 10 }),
  ];
  const needs = /White cloud mountain minnows need 15 to 18 °C/g;
  const all = told(furnished(tank(120, 50), whiteClouds, tetras, rasboras));
  expect(all.match(needs)).toHaveLength(1);
  expect(all).not.toContain("which are kept at");
  const [one] =
    told(furnished(tank(120, 50), whiteClouds, tetras)).match(/too cold for ember tetras[^.]*/) ?? [];
  expect(one).toMatch(/which are kept at \d+ to \d+ °C/);
});

test("sources that give the same least number are told as one, with the numbers that do worst", () => {
  const verdict = assessPlan(furnished(tank(200, 70), group("discus", { unsexed: 5 })));
  const told = (...values: readonly unknown[]) => {
    const question = {
      rule: "group-size",
      reason: "disputed",
      trait: "social.group",
      of: 0,
      values,
      couldBe: "restricting",
    };
    return sentence(verdict, question as never);
  };
  const worst = { least: 5, avoid: { min: 3, max: 4 } };
  const once = "Sources differ: discus, group size at least 5 (3 to 4 do worst).";
  expect(told({ least: 5 }, worst)).toBe(once);
  expect(told(worst, { least: 5 })).toBe(once);
  expect(told({ least: 8 }, { least: 5 })).toContain("at least 8 or at least 5");
});

test("beside what sources dispute of water stands that of the plan, salt water too", () => {
  const water = { temperature: 27, pH: 8, generalHardness: 12, salinity: 6 };
  const verdict = assessPlan({ ...furnished(tank(200, 70), group("discus", { unsexed: 5 })), water });
  const told = (trait: string, ...kept: readonly object[]) => {
    const values = kept.map((span) => ({ kept: span }));
    const question = { rule: "x", reason: "disputed", trait, of: 0, values, couldBe: "restricting" };
    return sentence(verdict, question as never);
  };
  expect(told("water.pH", { max: 7 }, { max: 7.5 })).toContain("(yours 8)");
  expect(told("water.salinity", { max: 1 }, { max: 3 })).toContain("(yours 6 g/kg)");
  expect(told("water.carbonateHardness", { max: 4 }, { max: 6 })).not.toContain("yours");
});

test("all the others are told as many, in both languages", () => {
  const names = ["tiger barb", "honey gourami", "panda corydoras", "neon tetra"];
  const verdict = assessPlan(furnished(tank(200, 60), ...names.map((name) => group(name, { unsexed: 8 }))));
  const findings = [1, 2, 3].map((to) => {
    const about = { rule: "feeding-competition", weight: "advisory", from: 0, to } as const;
    return { ...about, basis: "common-practice" as const, traits: [] };
  });
  const hungry: Verdict = { ...verdict, findings, conditions: [], met: [] };
  const report = (options?: DescribeOptions) => describe(hungry, options).replaceAll(/\s+/g, " ");
  expect(report()).toContain("iger barbs have eaten before all the others get to the food.");
  expect(report({ messages: german })).toContain("bevor alle anderen ans Futter kommen.");
});

test("those that cannot be kept with their own kind are named, and not excused by the room", () => {
  const plan: Plan = {
    tank: tank(150, 50),
    groups: [group("red-tailed black shark", { unsexed: 2 }), group("gold barb", { unsexed: 8 })],
  };
  expect(told(plan)).toContain("Unsuitable: do not keep red-tailed black sharks like this.");
  expect(told(plan)).toContain("Red-tailed black sharks kill their own kind.");
  const inGerman = told(plan, { messages: german });
  expect(inGerman).toContain("Ungeeignet: Feuerschwänze so nicht halten.");
  expect(inGerman).toContain("Feuerschwänze töten Artgenossen.");
});

test("a sentence on the filter names it", () => {
  const plan: Plan = {
    tank: tank(150, 50, { filter: undefined }),
    groups: [group("gold barb", { unsexed: 8 })],
  };
  const verdict = assessPlan(plan);
  const finding = verdict.findings.find(({ rule }) => rule === "filter-nitrogen");
  const said = (messages: typeof english) => finding && sentence(verdict, finding, { messages });
  expect(said(english)).toBe("The filter has to take up the ammonia of the stock, grown and fed plenty.");
  expect(said(german)).toMatch(/^Der Filter muss das Ammonium abbauen/);
});
