import { describe, expect, test } from "vitest";
import de from "vivary/search/de";
import en from "vivary/search/en";
import { allSpecies, speciesById } from "../../src/catalog";
import { InvalidInputError } from "../../src/errors";
import { nameIn } from "../../src/report/names";
import { type SearchNames, type SuggestOptions, suggestSpecies } from "../../src/search";
import { hashOf, someNamed } from "../drawn";
import { expectRefused } from "../refused";
import { seedOf } from "../runs";

const idsOf = (typed: string, options?: SuggestOptions) =>
  suggestSpecies(typed, options).map(({ id, form }) => (form ? `${id}, ${form}` : id));
const everyone: SuggestOptions = { most: 10_000 };
const everyoneInGerman: SuggestOptions = { ...everyone, languages: [de] };

/** Letters and digits alone, as a plain reading of a name. */
const lettersOf = (name: string) =>
  name
    .normalize("NFD")
    .toLowerCase()
    .replaceAll("ß", "ss")
    .replaceAll(/[^a-z0-9]/g, "");

describe("what keepers type finds what they mean", () => {
  test.each([
    ["neon t", "paracheirodon-innesi"],
    ["neontetra", "paracheirodon-innesi"],
    ["gup", "poecilia-reticulata"],
    ["zebra fish", "danio-rerio"],
    ["gold fish", "carassius-auratus"],
    ["anglefish", "pterophyllum-scalare"],
    ["scalare", "pterophyllum-scalare"],
    ["endlers", "poecilia-wingei"],
    ["patzcuaro", "cambarellus-patzcuarensis"],
    ["L46", "hypancistrus-zebra"],
    ["C. paleatus", "hoplisoma-paleatum"],
    ["barbus tetr", "puntigrus-tetrazona"],
    ["corydoras-paleatus", "hoplisoma-paleatum"],
    ["tetra neon black", "hyphessobrycon-herbertaxelrodi"],
    ["amanno shrimp", "caridina-multidentata"],
    ["sterbas catfush", "hoplisoma-sterbai"],
    ["strba's cattfish", "hoplisoma-sterbai"],
    ["synodongis etricola", "synodontis-petricola"],
    ["badis adis", "badis-badis"],
    ["paradies gourami", "macropodus-opercularis"],
    ["guppies", "poecilia-reticulata"],
    ["black neons", "hyphessobrycon-herbertaxelrodi"],
    ["long-fin tiger b", "puntigrus-tetrazona, long-fin"],
    ["moss barb", "puntigrus-tetrazona, green"],
    ["shubunkin", "carassius-auratus, shubunkin"],
  ])("%s", (typed, id) => {
    expect(idsOf(typed)[0]).toBe(id);
  });

  test.each([
    ["tetra", "paracheirodon-innesi", "bario-sanctaefilomenae", "phenacogrammus-interruptus"],
    ["cory", "hoplisoma-panda", "gastrodermus-pygmaeus", "osteogaster-aenea"],
    ["pleco", "pterygoplichthys-pardalis", "hypancistrus-zebra", "ancistrus-cirrhosus"],
    ["barb", "puntigrus-tetrazona", "puntius-titteya", "pethia-conchonius"],
    ["killi", "epiplatys-annulatus", "fundulopanchax-gardneri", "aphyosemion-australe"],
    ["shrimp", "neocaridina-davidi", "caridina-multidentata", "atyopsis-moluccensis"],
    ["snail", "planorbella-duryi", "vittina-natalensis", "anentome-helena"],
    ["cichlid", "astronotus-ocellatus", "pterophyllum-scalare", "symphysodon-aequifasciatus"],
    ["livebearer", "poecilia-reticulata", "xiphophorus-maculatus", "poecilia-sphenops"],
    ["catfish", "otocinclus-vittatus", "panaqolus-maccus", "hoplisoma-sterbai"],
    ["Loricariidae", "otocinclus-vittatus", "farlowella-vittata"],
    ["rainbowfish", "melanotaenia-boesemani", "pseudomugil-furcatus"],
  ])("the group %s", (typed, ...ids) => {
    expect(idsOf(typed, everyone)).toEqual(expect.arrayContaining(ids));
  });
});

test.each([
  ["neons", "neon"],
  ["tetras", "tetra"],
  ["corys", "cory"],
  ["danios", "danio"],
  ["loaches", "loach"],
  ["barbs", "barb"],
  ["guppies", "guppy"],
  ["mollies", "molly"],
  ["platies", "platy"],
  ["cichlids", "cichlid"],
  ["plecos", "pleco"],
  ["rasboras", "rasbora"],
  ["angels", "angel"],
  ["livebearers", "livebearer"],
  ["crayfishes", "crayfish"],
  ["mosses", "moss"],
  ["black neons", "black neon"],
  ["tiger barbs", "tiger barb"],
  ["neon tetras", "neon tetra"],
])("%s finds first what %s does", (several, one) => {
  expect(idsOf(one, { most: 3 })).not.toStrictEqual([]);
  expect(idsOf(several, { most: 3 })).toStrictEqual(idsOf(one, { most: 3 }));
});

test("a word with s at its end is one that begins so, and several of what it names", () => {
  const inOrder = ["mikrogeophagus-ramirezi", "planorbella-duryi", "mikrogeophagus-altispinosus"];
  expect(idsOf("rams", everyone).filter((id) => inOrder.includes(id))).toStrictEqual(inOrder);
  expect(idsOf("rams")[0]).toBe("mikrogeophagus-ramirezi");
  const bettas = idsOf("bettas", everyone);
  expect(bettas).toEqual(expect.arrayContaining(["betta-imbellis", "betta-splendens"]));
  expect(bettas.slice(0, 2)).toStrictEqual(["betta-splendens", "betta-imbellis"]);
  expect(idsOf("discus")[0]).toBe("symphysodon-aequifasciatus");
  expect(idsOf("dicus")[0]).toBe("symphysodon-aequifasciatus");
});

test("what was typed comes before that of which it would be several", () => {
  // "neons" begins Neonsalmler, and "wels" ends Antennenwels; a wel is within the jewel cichlid.
  expect(idsOf("Neons", everyoneInGerman)[0]).toBe("paracheirodon-innesi");
  const ids = idsOf("Wels", everyoneInGerman);
  expect(ids.indexOf("ancistrus-cirrhosus")).toBeLessThan(ids.indexOf("anomalochromis-thomasi"));
});

test("letters that meet by chance where two words do make no match", () => {
  // Corydoras aeneus has sae, common otocinclus mono, glass catfish scat.
  expect(idsOf("sae", everyone)).not.toContain("osteogaster-aenea");
  expect(idsOf("mono", everyone)).not.toContain("otocinclus-vittatus");
  expect(suggestSpecies("scat", everyone).filter(({ rank }) => rank === 3)).toStrictEqual([]);
  // Typed with the space between them they may begin within a word.
  expect(idsOf("fin molly")).toContain("poecilia-latipinna");
});

test.each([
  ["betta fish", "betta"],
  ["koi fish", "koi"],
  ["discus fish", "discus"],
  ["neon fish", "neon"],
  ["guppy fishes", "guppy"],
])("%s finds first what %s does", (typed, name) => {
  expect(idsOf(typed)[0]).toBe(idsOf(name)[0]);
});

test("a fish is left off where no name has it alone", () => {
  expect(idsOf("gold fish")).toStrictEqual(idsOf("goldfish"));
  expect(idsOf("fish", everyone).length).toBeGreaterThan(5);
  expect(idsOf("tetra fish", everyone)).not.toContain("danio-rerio");
  // A clown loach is called a loach: no clown fish of the sea is here.
  expect(idsOf("clown fish")).not.toContain("chromobotia-macracanthus");
});

test.each([
  ["Schnecken", "snail"],
  ["Krebse", "crayfish"],
  ["Flusskrebse", "crayfish"],
  ["Garnelen", "shrimp"],
] as const)("%s finds every %s", (typed, kind) => {
  const ids = allSpecies.flatMap(({ id, taxonomy }) => (taxonomy.kind === kind ? [id] : []));
  expect(idsOf(typed, everyoneInGerman)).toEqual(expect.arrayContaining(ids));
});

test.each([
  ["Kugelfische", "carinotetraodon-travancoricus"],
  ["Grundeln", "brachygobius-doriae"],
])("%s finds %s first", (typed, id) => {
  expect(idsOf(typed, everyoneInGerman)[0]).toBe(id);
});

test.each(["L46", "L046", "L 046", "l-46", "L04"])(
  "the number %s is that of one catfish, however it is written",
  (typed) => {
    expect(idsOf(typed)[0]).toBe("hypancistrus-zebra");
    expect(suggestSpecies(typed)[0]?.matched.text).toBe("L46");
  },
);

test.each(["L460", "L406", "L1046"])("%s is no way to write L46", (typed) => {
  expect(idsOf(typed)).not.toContain("hypancistrus-zebra");
});

test.each(["L144", "L47"])("the number %s of another catfish finds none", (typed) => {
  expect(idsOf(typed)).toStrictEqual([]);
});

test.each([
  ["crayfish", "cambarellus-patzcuarensis", "procambarus-virginalis"],
  ["koi", "cyprinus-rubrofuscus", "pterophyllum-scalare, marble"],
])("%s, spelt right, is taken for no other word", (typed, ...ids) => {
  expect(idsOf(typed)).toEqual(expect.arrayContaining(ids));
  expect(suggestSpecies(typed, everyone).every(({ rank }) => rank < 6)).toBe(true);
});

test("each says what to show, which name fits, and what sort of name that is", () => {
  expect(suggestSpecies("brachydanio rer", { most: 1 })).toStrictEqual([
    {
      id: "danio-rerio",
      name: "zebra danio",
      matched: { text: "Brachydanio rerio", as: "synonym" },
      rank: 4,
    },
  ]);
  const kindOf = (typed: string) => suggestSpecies(typed)[0]?.matched;
  expect(kindOf("danio rer")).toStrictEqual({ text: "Danio rerio", as: "scientific" });
  expect(kindOf("zebrafi")).toStrictEqual({ text: "zebrafish", as: "vernacular" });
  expect(kindOf("leopard dan")).toStrictEqual({ text: "leopard danio", as: "form" });
  expect(kindOf("Poeciliid")).toStrictEqual({ text: "Poeciliidae", as: "group" });
});

describe("the better a name fits, the earlier it stands", () => {
  const rankOf = (typed: string, id: string) =>
    suggestSpecies(typed, everyone).find((one) => one.id === id)?.rank;

  test.each([
    ["neon", "paracheirodon-innesi", 0],
    ["neon", "melanotaenia-praecox", 1],
    ["neon", "paracheirodon-simulans", 2],
    ["beard", "poecilia-wingei", undefined],
    ["bearer", "poecilia-wingei", 3],
    ["mollienesia", "poecilia-sphenops", 4],
    ["livebearer", "poecilia-sphenops", 5],
    ["kribenzis", "pelvicachromis-pulcher", 6],
    ["krybenzis", "pelvicachromis-pulcher", 7],
    ["krybenziz", "pelvicachromis-pulcher", undefined],
    ["dalmatian", "poecilia-sphenops", undefined],
  ])("%s and %s: %s", (typed, id, rank) => {
    expect(rankOf(typed, id)).toBe(rank);
  });

  test("in order of rank, and those of one rank by name, forms behind species", () => {
    for (const typed of ["red", "gold", "tetra", "ba", "c", "danio"]) {
      const given = suggestSpecies(typed, everyone);
      const ranks = given.map(({ rank }) => rank);
      expect(ranks).toStrictEqual([...ranks].sort((a, b) => a - b));
      for (const rank of [1, 2]) {
        const names = given
          .filter((one) => one.rank === rank && !one.form)
          .map(({ name }) => lettersOf(name));
        expect(names).toStrictEqual([...names].sort());
      }
    }
  });
});

describe("forms", () => {
  test("stand there where their own name fits better than those of their species", () => {
    expect(idsOf("black moor")[0]).toBe("carassius-auratus, telescope");
    expect(idsOf("tiger barb", everyone)).not.toContain("puntigrus-tetrazona, green");
    expect(idsOf("long-fin", everyone)).toContain("danio-rerio, long-fin");
  });

  test("nothing is given twice", () => {
    for (const typed of ["a", "gold", "albino", "tetra"]) {
      const ids = idsOf(typed, everyone);
      expect(ids).toStrictEqual([...new Set(ids)]);
    }
  });
});

describe("compared with reading every name of every species", () => {
  const spoken = allSpecies.map(({ id, taxonomy, names }) => ({
    id,
    names: [taxonomy.name, ...Object.values(names).flat()],
  }));
  const beginnings = spoken.flatMap(({ names }) =>
    names.map((name) => name.slice(0, 1 + (hashOf(name) % name.length))),
  );
  const typed = someNamed([...new Set(beginnings)], (text) => text, 200, seedOf(0));

  /** A name as it is and with ae for ä. */
  const ways = (name: string) => [name, name.normalize("NFC").replaceAll(/[äöü]/gi, "$&e")].map(lettersOf);

  /** What was typed, and that of which it is several. */
  const oneOrSeveral = (letters: string) => [letters, letters.replace(/s$/, "")];

  test("what begins as typed is found, all of it, and nothing else is ranked so", () => {
    for (const text of typed) {
      const letters = lettersOf(text);
      const idsThatBegin = (sought: readonly string[], spelt: (name: string) => readonly string[]) =>
        spoken
          .filter(({ names }) =>
            names.flatMap(spelt).some((way) => sought.some((one) => way.startsWith(one))),
          )
          .map(({ id }) => id);
      const given = suggestSpecies(text, everyoneInGerman).filter(({ rank, form }) => rank <= 1 && !form);
      const ids = given.map(({ id }) => id);
      const begin = idsThatBegin([letters], (name) => [lettersOf(name)]);
      const may = idsThatBegin(oneOrSeveral(letters), ways);
      const missed = begin.filter((id) => !ids.includes(id));
      const others = given.filter(({ id, matched }) => matched.as !== "synonym" && !may.includes(id));
      expect([text, missed, others]).toStrictEqual([text, [], []]);
    }
  });

  const isIn = (part: string, name: string) =>
    ways(name).some((way) => oneOrSeveral(part).some((one) => way.includes(one)));

  test("whatever is given has what was typed in the name that is said to fit, unless it is misspelt", () => {
    for (const text of typed) {
      for (const { rank, matched } of suggestSpecies(text, everyoneInGerman)) {
        const parts = text.split(/[\s-]/).map(lettersOf);
        if (rank <= 5)
          for (const part of parts) expect(isIn(part, matched.text), `${text}: ${matched.text}`).toBe(true);
      }
    }
  });
});

describe("a slip of the finger", () => {
  /** Slips of every sort, spread over the letters of the name. */
  const misspelt = (name: string, turn: number) =>
    [...name].flatMap((letter, at) => {
      if ((at + turn) % 5 !== 0 || !/\w/.test(letter)) return [];
      const [before, after, next] = [name.slice(0, at), name.slice(at + 1), name[at + 1] ?? ""];
      return [before + after, before + next + letter + name.slice(at + 2), before + letter + letter + after];
    });

  test("hides no species: 95 of 100 stand among the first five", () => {
    const tried = allSpecies.flatMap(({ id, taxonomy, names }) =>
      [taxonomy.name, ...Object.values(names).flat()]
        .filter((name) => lettersOf(name).length > 4)
        .flatMap((name) => misspelt(name, hashOf(id)).map((typed) => ({ id, typed }))),
    );
    const missed = tried.filter(
      ({ id, typed }) => !suggestSpecies(typed, { most: 5, languages: [de] }).some((one) => one.id === id),
    );
    expect(tried.length).toBeGreaterThan(3000);
    expect(missed.length / tried.length).toBeLessThan(0.05);
  });
});

describe("other languages", () => {
  const german: SearchNames = {
    language: "de",
    names: {
      "paracheirodon-innesi": ["Neonsalmler", "Neonfisch"],
      "paracheirodon-innesi/diamond": ["Diamantneon"],
      "corydoras-paleatus": ["Marmorierter Panzerwels"],
      "boraras-brigittae": ["Moskitobärbling"],
      "nobody-knows": ["Unbekannter Salmler"],
    },
    groups: { Cichlidae: ["Buntbarsche"] },
  };
  const languages = [german];

  test.each([
    ["Neons", "paracheirodon-innesi", "Neonsalmler", "vernacular"],
    ["salmler", "paracheirodon-innesi", "Neonsalmler", "vernacular"],
    ["panzer", "hoplisoma-paleatum", "Marmorierter Panzerwels", "vernacular"],
    ["moskitobarbling", "boraras-brigittae", "Moskitobärbling", "vernacular"],
    ["moskitobaerbling", "boraras-brigittae", "Moskitobärbling", "vernacular"],
    ["diamantn", "paracheirodon-innesi", "Diamantneon", "form"],
    ["neon tetra", "paracheirodon-innesi", "neon tetra", "vernacular"],
    ["buntb", "mikrogeophagus-ramirezi", "Buntbarsche", "group"],
  ])("%s", (typed, id, text, as) => {
    const found = suggestSpecies(typed, { ...everyone, languages }).find((one) => one.id === id);
    expect(found?.matched).toStrictEqual({ text, as });
  });

  test.each(["Moskitobärbling", "moskitobarbling", "moskitobaerbling"])("%s is the whole name", (typed) => {
    const [first] = suggestSpecies(typed, { languages });
    expect(first?.matched.text).toBe("Moskitobärbling");
    expect(first?.rank).toBe(0);
  });

  test.each([
    ["kärpfling", "karpfling", "kaerpfling"],
    ["küssender gu", "kussender gu", "kuessender gu"],
    ["zebrabä", "zebraba", "zebrabae"],
    ["rüssel", "russel", "ruessel"],
    ["glühlichtbaerbling", "gluehlichtbärbling", "gluehlichtbaerbling"],
  ])("%s, %s and %s find the same, ranked alike", (...typed) => {
    const [first, ...others] = typed.map((text) => suggestSpecies(text, everyoneInGerman));
    expect(first?.[0]?.matched.as).toMatch(/vernacular|form/);
    for (const other of others) expect(other).toStrictEqual(first);
  });

  test.each([
    ["boesemani", "melanotaenia-boesemani"],
    ["bösemani", "melanotaenia-boesemani"],
    ["serpae t", "megalamphodus-eques"],
    ["aequi", "symphysodon-aequifasciatus"],
    ["blauer neon", "paracheirodon-simulans"],
    ["praecox", "melanotaenia-praecox"],
  ])("%s, which has ae, oe or ue of its own or none, finds %s first", (typed, id) => {
    const [first] = suggestSpecies(typed, everyoneInGerman);
    expect(first?.id).toBe(id);
    expect(first?.rank).toBeLessThan(4);
  });

  test("ae is not found as a", () => {
    expect(suggestSpecies("pae", everyoneInGerman).map(({ matched }) => matched.text)).not.toContain(
      "panda cory",
    );
    for (const { matched } of suggestSpecies("ae", everyoneInGerman)) expect(matched.text).toMatch(/ae|ä/i);
  });

  test.each([
    ["Neonsal", "paracheirodon-innesi"],
    ["skalar", "pterophyllum-scalare"],
    ["panzerwels", "hoplisoma-panda"],
    ["Schmerle", "chromobotia-macracanthus"],
    ["lebendgebarende", "poecilia-reticulata"],
    ["Garnele", "caridina-multidentata"],
    ["Bärblinge", "boraras-brigittae"],
  ])("of the package: %s", (typed, id) => {
    expect(idsOf(typed, everyoneInGerman)).toContain(id);
    expect(suggestSpecies(typed, everyoneInGerman)[0]?.name).toBe(
      speciesById(suggestSpecies(typed, everyoneInGerman)[0]?.id ?? "")?.names.de?.[0],
    );
  });

  test("the name to show is that of the first language that has one", () => {
    const shown = (typed: string) => suggestSpecies(typed, { languages })[0]?.name;
    expect(shown("neon tetra")).toBe("Neonsalmler");
    expect(shown("diamond neon")).toBe("Diamantneon");
    expect(shown("zebra danio")).toBe("Danio rerio");
    expect(suggestSpecies("zebra danio", { languages: [german, de] })[0]?.name).toBe("Zebrabärbling");
  });

  test("is the scientific one where it has none, unless English is given beside it", () => {
    const [first] = suggestSpecies("pike cichlid", { languages: [de] });
    expect(first).toMatchObject({
      name: "Saxatilia saxatilis",
      matched: { text: "ring-tailed pike cichlid", as: "vernacular" },
    });
    expect(suggestSpecies("pike cichlid", { languages: [de, en] })[0]?.name).toBe("ring-tailed pike cichlid");
    expect(suggestSpecies("pike cichlid")[0]?.name).toBe("ring-tailed pike cichlid");
  });

  test("is that of its species where a form has none", () => {
    const [first] = suggestSpecies("orange flame tetra", { languages: [de] });
    expect(first).toMatchObject({ form: "orange", name: "Roter von Rio" });
  });

  test.each(["de", "en"])("is in %s the name by which reports call every species and form", (language) => {
    const languages = language === "de" ? [de] : [];
    for (const { id, taxonomy, names, forms = {} } of allSpecies) {
      const found = suggestSpecies(taxonomy.name, { languages, most: 1 })[0];
      expect(found).toMatchObject({ id, name: nameIn(language, names, taxonomy.name) });
      for (const [form, { names: own }] of Object.entries(forms)) {
        const called = Object.values(own).flat()[0] ?? "";
        const suggested = suggestSpecies(called, { ...everyone, languages });
        const one = suggested.find((suggestion) => suggestion.id === id && suggestion.form === form);
        expect(one?.name, called).toBe(nameIn(language, { ...names, ...own }, taxonomy.name));
      }
    }
  });

  test("a species that nobody knows is not given, and English needs no module", () => {
    expect(idsOf("Unbekannter", { languages })).toStrictEqual([]);
    expect(idsOf("Neonsalmler")).toStrictEqual([]);
  });

  test("names that an app adds are found at once", () => {
    const names: Record<string, readonly string[]> = {};
    const french: SearchNames = { language: "fr", names, groups: {} };
    expect(idsOf("poisson zèbre", { languages: [french] })).toStrictEqual([]);
    names["danio-rerio"] = ["poisson zèbre"];
    expect(idsOf("poisson zèbre", { languages: [french] })).toStrictEqual(["danio-rerio"]);
  });

  test("what is given is not changed", () => {
    const before = structuredClone(german);
    suggestSpecies("neon", { languages });
    expect(german).toStrictEqual(before);
  });
});

describe("whatever is typed", () => {
  test.each(["", " ", "-", "'", "...", "\u0301"])("%j is nothing yet", (typed) => {
    expect(suggestSpecies(typed)).toStrictEqual([]);
  });

  test.each([".*", "[", "(", "\\", "__proto__", "constructor", "unicornfish", "金魚", "d".repeat(200)])(
    "%s finds nobody",
    (typed) => {
      expect(suggestSpecies(typed)).toStrictEqual([]);
    },
  );

  test.each([undefined, null, 5, {}, ["danio"], "d".repeat(201)])("%o is refused", (typed) => {
    expect(() => suggestSpecies(typed as string)).toThrow(InvalidInputError);
  });

  test.each([0, -1, 1.5, Number.NaN, "5"])("%o at most is refused", (most) => {
    expect(() => suggestSpecies("danio", { most: most as number })).toThrow(InvalidInputError);
  });

  test.each([[["de"]], [[null]], [[{}]], ["de"], [{ language: "de" }]])(
    "languages %j are refused",
    (languages) => {
      expect(() => suggestSpecies("danio", { languages: languages as unknown as SearchNames[] })).toThrow(
        InvalidInputError,
      );
    },
  );

  test.each([
    [{ names: { "danio-rerio": "Zebra" }, groups: {} }, "options.languages[0].names.danio-rerio"],
    [{ names: { "danio-rerio": [7] }, groups: {} }, "options.languages[0].names.danio-rerio"],
    [{ names: {}, groups: { Cichlidae: "cichlid" } }, "options.languages[0].groups.Cichlidae"],
    [{ names: {} }, "options.languages[0].groups"],
  ])("a language as %j is refused by the place of what is no list of names", (language, path) => {
    const languages = [{ language: "xx", ...language } as unknown as SearchNames];
    expectRefused(() => suggestSpecies("danio", { languages }), path);
  });

  test("ten are given, or as many as are asked for", () => {
    expect(suggestSpecies("tetra")).toHaveLength(10);
    expect(suggestSpecies("tetra", { most: 3 })).toHaveLength(3);
  });
});

test("an answer comes while one types: 95 of 100 within five milliseconds on a busy machine", () => {
  const typed = allSpecies
    .flatMap(({ taxonomy, names }) =>
      [taxonomy.name, ...(names.en ?? [])].map((name) => name.slice(0, 2 + (hashOf(name) % name.length))),
    )
    .slice(0, 500);
  const times = typed.map((text) => {
    const { user, system } = process.cpuUsage();
    suggestSpecies(text);
    const after = process.cpuUsage();
    return after.user + after.system - user - system;
  });
  expect(times.length).toBe(500);
  expect(times.sort((a, b) => a - b)[475]).toBeLessThan(5000);
});
