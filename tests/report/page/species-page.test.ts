import { XMLParser, XMLValidator } from "fast-xml-parser";
import MarkdownIt from "markdown-it";
import { describe, expect, test } from "vitest";
import { allSpecies, speciesById } from "vivary/catalog";
import { citationsOf, recordById } from "vivary/evidence";
import { onceOfEachObject } from "../../../src/made-once";
import { speciesPage, speciesPageIn } from "../../../src/report";
import { germanPages } from "../../../src/report/de";
import { applyForm, resolve, type SpeciesProfile } from "../../../src/species";
import { expectRefused } from "../../refused";
import { pseudo, unmarked } from "../messages/pseudo";

const species = (id: string): SpeciesProfile => {
  const found = speciesById(id);
  if (!found) throw new Error(id);
  return found;
};

const barb = species("puntigrus-tetrazona");
const betta = species("betta-splendens");

/** Every species and every form of one. */
const everyKind = allSpecies.flatMap((profile) => [
  profile,
  ...Object.keys(profile.forms ?? {}).map((form) => applyForm(profile, form)),
]);

/** What a page may be written from beside the profile, but for company, which takes time. */
const evidenceOf = onceOfEachObject(({ id }: SpeciesProfile) => {
  const record = recordById(id);
  return { record, sources: record ? citationsOf(record) : [] };
});

const broken = /undefined|NaN|Infinity|\[object/;

/** A few of every sort, in the order of the catalog. */
const some = everyKind.filter((_, index) => index % 12 === 0);

describe("a page", () => {
  test("no bred form is told to come from a country, but its species", () => {
    const danio = speciesById("danio-rerio") as SpeciesProfile;
    const told = (profile: SpeciesProfile) => speciesPage(profile, { format: "markdown" });
    expect(told(danio)).toMatch(/\nThe zebra danio comes from /);
    expect(told(applyForm(danio, "fluorescent"))).toMatch(/\nDanio rerio comes from /);
  });

  test("who feeds slowly is not told to look at food, for snails and sieving shrimps do not", () => {
    for (const id of ["vittina-natalensis", "atyopsis-moluccensis", "betta-splendens"]) {
      const page = speciesPage(speciesById(id) as SpeciesProfile, { format: "markdown" });
      expect(page).toContain("It takes its food slowly, so that quicker ones are there first");
      expect(page).not.toContain("looks at food");
    }
  });

  test("no floor for a further one is told of a kind that lives alone", () => {
    const told = (id: string) => speciesPage(speciesById(id) as SpeciesProfile, { format: "markdown" });
    expect(told("apteronotus-albifrons")).not.toMatch(/each further one/);
    expect(told("danio-rerio")).toMatch(/each further one/);
  });

  test("a name that belongs to another species is told as such, in German too", () => {
    const krib = speciesById("pelvicachromis-pulcher") as SpeciesProfile;
    expect(speciesPage(krib)).toContain("Pelvicachromis kribensis (misapplied)");
    const german = speciesPage(krib, { messages: germanPages }).replaceAll(/\s+/g, " ");
    expect(german).toContain("Pelvicachromis kribensis (zu Unrecht)");
    expect(german).not.toContain("misapplied");
  });

  test("a ray is as large as its disc is broad, with no length of its tail beside", () => {
    const [ray] = allSpecies.filter(({ id }) => id === "potamotrygon-motoro");
    if (!ray) throw new Error("no ray");
    expect(speciesPage(ray, { format: "markdown" })).toContain(
      "Males usually measure 40 cm across the disc, and 50 cm at most. Females usually measure 45 cm across the disc, and 50 cm at most.",
    );
  });

  test("reads like somebody who keeps them", () => {
    const page = speciesPage(barb, evidenceOf(barb)).replaceAll(/\n(?: {2})?(?=\S)/g, " ");
    expect(page).toContain(
      "A shoaling fish in the open water, 6 cm long when grown, for water of 20 to 26 °C.",
    );
    expect(page).toContain("The tiger barb comes from Sumatra and Borneo.");
    expect(page).toContain("Keep eight or more; with 2 to 5 things go wrong.");
    expect(page).toContain(
      "It chases its own kind. An order of rank; in a large group no animal takes all of it.",
    );
  });

  test("says beyond what water it suffers, in every language", () => {
    const inOneLine = (page: string) => page.replaceAll(/\s+/g, " ");
    expect(inOneLine(speciesPage(betta))).toContain("best at 25 to 28 °C; suffers or dies below 10 °C");
    expect(inOneLine(speciesPage(barb))).toContain("suffers or dies outside 11.7 to 34.5 °C");
    expect(inOneLine(speciesPageIn(germanPages, betta))).toContain("leiden oder sterben unter 10 °C");
    const sourced = inOneLine(speciesPage(betta, evidenceOf(betta)));
    expect(sourced).toContain("Temperature: below 10 °C; suffers or dies; Leggatt");
  });

  test("says in German what a keeper would say", () => {
    const told = (id: string) => speciesPageIn(germanPages, species(id)).replaceAll(/\s+/g, " ");
    const golden = told("carassius-auratus");
    expect(golden).toContain("Nie aussetzen, auch keine Pflanzen und kein Beckenwasser:");
    expect(golden).not.toContain("ins Freie");
    expect(golden).toMatch(/Sie werden bis zu \d+ cm lang\./);
    expect(golden).toMatch(
      /Gängige Praxis ohne Quelle, zumindest zum Teil: |Hier widersprechen sich die Quellen: /,
    );
    expect(told("dario-dario")).toContain("leben im Harem.");
    const all = allSpecies.map(({ id }) => told(id)).join(" ");
    expect(all).toContain("von schwacher bis starker Strömung");
    expect(all).toContain("Sie brauchen als Boden kahles Glas, Sand, feinen Kies oder runde Steine.");
    expect(all).toContain("dienen Höhlen und Wurzeln, je drei Tiere ein Platz.");
    expect(all).toContain("Ausgewachsen jagen sie Artgenossen.");
    expect(all).toContain("Zu füttern: Trockenfutter, Algen, Gemüse, Blätter und Holz zum Raspeln.");
    expect(all).toContain("Heimat: Kerala, Indien; Süden von Karnataka, Indien.");
    expect(all).not.toMatch(/ein Tier \([^)]*\)|\boder \S+ oder\b/);
  });

  test("tells of soft water what it does to shells, and what to moults", () => {
    const [snail, shrimp] = ["snail", "shrimp"].map((kind) => {
      const one = allSpecies.find(
        ({ taxonomy, care }) =>
          taxonomy.kind === kind && care?.sensitive?.value.some((to) => to === "soft-water"),
      );
      if (!one) throw new Error(kind);
      return [speciesPage(one), speciesPageIn(germanPages, one)].map((page) => page.replaceAll(/\s+/g, " "));
    });
    expect(snail?.[0]).toContain("Its shell fails in soft, acid water.");
    expect(snail?.[1]).toContain("leidet ihr Gehäuse.");
    expect(shrimp?.[0]).toContain("Its moult fails in soft, acid water.");
    expect(shrimp?.[1]).toContain("misslingt die Häutung.");
  });

  test("lists food as one list", () => {
    const all = allSpecies.map((one) => speciesPage(one).replaceAll(/\s+/g, " ")).join(" ");
    expect(all).toContain("Give it dry food, algae, vegetables, leaves and wood to rasp.");
    expect(all).not.toMatch(/Give it [^.]* and [^.,]* and /);
  });

  test("tells the age of breeding in half months, never later than it is", () => {
    const early = { value: 1.92, basis: "published" } as const;
    const told = speciesPage({ ...barb, reproduction: { ...barb.reproduction, breedsFrom: early } });
    expect(told.replaceAll(/\s+/g, " ")).toContain("It breeds from about 1.5 months on.");
  });

  test("tells hardness in the units of the reader", () => {
    expect(speciesPage(barb)).toContain("keep at 5 to 19 °dH");
    expect(speciesPage(barb, { units: "us" })).toContain("keep at 90 to 330 ppm"); // Never past an end.
  });

  test("measures no ray by its disc and its tail at once", () => {
    const page = speciesPage(speciesById("potamotrygon-motoro") as SpeciesProfile).replaceAll(/\s+/g, " ");
    expect(page).toContain("on the ground, 60 cm long when grown");
    expect(page).toContain("Males usually measure 40 cm across the disc, and 50 cm at most.");
  });

  test("warns of what harms before it tells anything else", () => {
    const page = speciesPage(betta);
    const warned = page.indexOf("Males kill other males.");
    expect(warned).toBeGreaterThan(page.indexOf("Know before you buy"));
    expect(warned).toBeLessThan(page.indexOf("Where it comes from"));
  });

  test("tells in both languages what to know of where an animal may move on to", () => {
    const bear = (page: string, text: string) => expect(page.replaceAll(/\s+/g, " ")).toContain(text);
    let told = 0;
    for (const profile of everyKind) {
      const { en, de } = profile.care?.rehoming?.value ?? {};
      if (en === undefined) continue;
      told += 1;
      bear(speciesPage(profile), en);
      expect(de, profile.id).toBeDefined();
      bear(speciesPageIn(germanPages, profile), de ?? "");
    }
    expect(told).toBeGreaterThan(70);
    const untold = {
      ...betta,
      care: { rehoming: { value: { en: "Alone." }, basis: "common-practice" } },
    } as const;
    bear(speciesPageIn(germanPages, untold), "auf Englisch: Alone.");
  });

  test("of a form remarks nothing of its species in whose place the form says something else", () => {
    const of = (id: string, form: string) => {
      const profile = species(id);
      const page = speciesPage(applyForm(profile, form), { ...evidenceOf(profile), format: "markdown" });
      return page.replaceAll(/\s+/g, " ");
    };
    const oranda = of("carassius-auratus", "oranda");
    expect(oranda).toContain("Wintered in no pond; a room without a heater will do.");
    expect(oranda).not.toContain("breeds better with cool ones");
    expect(oranda).not.toContain("4 to 24 °C");
    const barbs = of("pethia-conchonius", "long-fin");
    expect(barbs).toContain("It chases its own kind.");
    expect(barbs).not.toContain("Above all in groups that are too small.");
  });

  test("says that it needs no hollow where somebody knows it, and not where there is a note alone", () => {
    const record = recordById("danio-rerio");
    if (!record) throw new Error("The zebra danio has no record.");
    const page = (line: { readonly value?: "none" }) => {
      const hides = [{ by: "common-practice", ...line, note: "Sleeps among plants." }];
      const noted = { ...record, space: { ...record.space, hides } };
      return speciesPage(resolve(noted), { record: noted }).replaceAll(/\s+/g, " ");
    };
    expect(page({ value: "none" })).toContain("It needs no hollow to hide in. Sleeps among plants.");
    expect(page({})).toContain("Sleeps among plants.");
    expect(page({})).not.toContain("no hollow");
  });

  test("tells of hiding what only a shy animal shows by it", () => {
    const watched = (shy: boolean) =>
      speciesPage({
        ...betta,
        temperament: { ...betta.temperament, shy: { value: shy, basis: "published" } },
      });
    const why = "too bare a tank or too restless company";
    expect([true, false].map((shy) => watched(shy).replaceAll(/\s+/g, " ").includes(why))).toStrictEqual([
      true,
      false,
    ]);
  });

  test("tells the least floor in steps of 50 cm², never less than it is", () => {
    const floor = (least: number) => {
      const footprint = { value: [{ least, for: 6 }], basis: "published" } as const;
      const group = { value: { least: 6 }, basis: "published" } as const;
      const [space, social] = [
        { ...barb.space, footprint },
        { ...barb.social, group },
      ];
      return /a floor of ([\d,]+) cm²/.exec(
        speciesPage({ ...barb, space, social }).replaceAll(/\s+/g, " "),
      )?.[1];
    };
    expect([3000, 3001, 3050, 3051].map(floor)).toStrictEqual(["3,000", "3,050", "3,050", "3,100"]);
  });

  test("tells apart what to give it, and what else it eats where it comes from", () => {
    const told = (...foods: readonly ("dry" | "frozen" | "algae" | "worms")[]) => {
      const diet = { ...barb.diet, foods: { value: foods, basis: "published" } } as const;
      return speciesPage({ ...barb, diet }).replaceAll(/\s+/g, " ");
    };
    const both = told("dry", "algae", "worms");
    expect(both).toContain("Give it dry food and algae. In the wild it finds worms.");
    expect(told("dry", "frozen")).not.toContain("In the wild it finds");
    expect(told("worms")).not.toContain("Give it");
  });

  test("names nobody where no candidates are given, and no sources where none are", () => {
    const page = speciesPage(barb);
    expect(page).not.toContain("Good companions");
    expect(page).not.toContain("What would eat it");
    expect(page).not.toContain("\nSources\n");
    expect(page).toContain("Shrimps, crayfish and crabs of up to 3 cm are eaten");
  });

  test("tells in plain words how its forms differ, and nothing of what they share", () => {
    const page = speciesPage(species("poecilia-sphenops"), { format: "markdown" });
    expect(page).toContain(
      "- Balloon molly: body shape: short and deep; current: still to gentle. Males usually measure 4.5 cm, and 6 cm at most. Females usually measure 5.5 cm, and 10 cm at most.",
    );
    expect(page).toContain("temperature: 24 to 28 °C.");
    expect(page).not.toMatch(/\bTL\b|\bSL\b|tested \d/);
    expect(page.slice(page.indexOf("Balloon molly"))).not.toContain("lives for about 3 years");
  });

  test("of a form is headed by the form and tells of what it was bred", () => {
    const page = speciesPage(applyForm(barb, "long-fin"), { format: "markdown" });
    expect(page.split("\n")[0]).toBe("# Long-fin tiger barb");
    expect(page).toContain("A form bred from Puntigrus tetrazona.");
    expect(page).toContain("It wants a gentle current.");
  });

  test("puts what each source says of the water beside each other", () => {
    const page = speciesPage(barb, evidenceOf(barb));
    expect(page).toContain("- pH: 6 to 8; kept; FishBase; a class of its handbook");
    expect(page).toContain("- pH: 6 to 7; kept; Ganga Aquarium");
  });

  test("takes the reader's units", () => {
    expect(speciesPage(barb, { units: "us", format: "markdown" })).toContain("for water of 68 to 78 °F.");
  });

  test("of a record of which little is known is short, and says what is missing", () => {
    const { id, taxonomy, names } = barb;
    const thin: SpeciesProfile = {
      id,
      taxonomy,
      names,
      incomplete: ["water.temperature"],
      space: { zones: { value: ["bottom"], basis: "published" } },
    };
    const page = speciesPage(thin, { candidates: [betta] });
    expect(page).toContain("A fish on the ground.");
    expect(page).toContain("Too little is known to judge its company: temperature.");
    expect(page).not.toContain("How it behaves");
    expect(page).not.toContain("Good companions");
    expect(page.length).toBeLessThan(2000);
  });

  test("refuses what is no profile, an unknown format and an unknown unit system", () => {
    expectRefused(() => speciesPage({} as never));
    expectRefused(() => speciesPage(barb, { format: "pdf" as never }), "format");
    expectRefused(() => speciesPage(barb, { units: "ells" as never }), "units");
    expectRefused(() => speciesPage(barb, { candidates: [{} as never] }));
    expectRefused(() => speciesPage(barb, { candidates: 3 as never }), "candidates");
  });
});

describe("the pages of all species and forms", () => {
  test("say nothing that is empty, doubled or undefined, in text, Markdown and HTML", () => {
    const [formats, languages] = [["text", "markdown", "html"] as const, [undefined, germanPages]];
    for (const profile of everyKind) {
      const { record, sources } = evidenceOf(profile);
      expect(speciesPage(profile, { record, sources }), profile.id).not.toMatch(broken);
      for (const [messages, format] of languages.flatMap((one) =>
        formats.map((other) => [one, other] as const),
      )) {
        const page = speciesPage(profile, { record, format, messages })
          .replaceAll(/^ {2}/gm, "")
          .replaceAll(/&\w+;/g, "…");
        expect(page, profile.id).not.toMatch(broken);
        expect(page, profile.id).not.toMatch(
          /[^\s|] {2}[^\s|]|\(\)| [,.;:](?: |$)|\.\.(?!\.)|: \.|;\.|[.!?]{2}/m,
        );
      }
    }
  });

  test("have something below every heading", () => {
    for (const profile of everyKind) {
      const page = speciesPage(profile, { ...evidenceOf(profile), format: "markdown" });
      const blocks = page.trim().split(/\n\n+/);
      for (const [index, block] of blocks.entries()) {
        const next = blocks[index + 1];
        if (block.startsWith("## ")) expect(next, profile.id).not.toMatch(/^## |^$/);
        if (block.startsWith("### ")) expect(next, profile.id).not.toMatch(/^#/);
      }
      expect(blocks.at(-1), profile.id).not.toMatch(/^#/);
    }
  });

  test("keep their lines within 80 columns as text, and addresses whole", () => {
    for (const profile of everyKind) {
      for (const line of speciesPage(profile, evidenceOf(profile)).split("\n"))
        expect(line.replace(/\S*:\/\/\S*/, "").length, line).toBeLessThanOrEqual(80);
    }
  });

  test("write addresses and names of files as they are", () => {
    for (const profile of everyKind) {
      const { record, sources } = evidenceOf(profile);
      const page = speciesPage(profile, { record, sources });
      const addresses = sources.flatMap(({ at = "" }) => at.match(/\S+:\/\/\S+/g) ?? []);
      for (const address of addresses) expect(page, profile.id).toContain(address.replace(/[.,;)]+$/, ""));
    }
  });

  test("are well-formed as HTML, with each id once and no script or style", () => {
    for (const profile of everyKind) {
      const page = speciesPage(profile, { ...evidenceOf(profile), format: "html" });
      expect(XMLValidator.validate(page), profile.id).toBe(true);
      const ids = [...page.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
      expect(new Set(ids).size, profile.id).toBe(ids.length);
      expect(page).not.toMatch(/<script|<style|style=|onclick/);
      for (const [, of] of page.matchAll(/aria-labelledby="([^"]*)"/g)) expect(ids).toContain(of);
    }
  });

  test("say nothing outside the language, but for names and what records say", () => {
    const quiet = { ...pseudo, page: { ...pseudo.page, readsNotes: false } };
    for (const profile of everyKind) {
      const { taxonomy } = profile;
      const texts = [taxonomy.name, taxonomy.authority, taxonomy.family, taxonomy.order];
      const bred = Object.keys(profile.forms ?? {}).map((form) =>
        profile.form === undefined ? applyForm(profile, form) : profile,
      );
      const names = [profile, ...bred].flatMap((one) => one.names.en?.[0] ?? one.taxonomy.name);
      const page = speciesPageIn(quiet, profile).replaceAll("\n", " ");
      const left = [...texts, ...names]
        .flatMap((text) => [text, text.charAt(0).toUpperCase() + text.slice(1)])
        .sort((a, b) => b.length - a.length)
        .reduce((text, known) => text.replaceAll(known, ""), unmarked(page));
      expect(left.match(/\p{L}{2,}/gu) ?? [], profile.id).toEqual([]);
    }
  });
});

test("a reference ends a title that asks or exclaims with no further stop", () => {
  const asking = allSpecies.filter((profile) =>
    evidenceOf(profile).sources.some(({ source }) => /[?!]$/.test(source?.title ?? "")),
  );
  expect(asking.length).toBeGreaterThan(0);
  for (const profile of asking) {
    expect(speciesPage(profile, evidenceOf(profile)), profile.id).not.toMatch(/[?!]\./);
  }
});

describe("a page as HTML", () => {
  const page = speciesPage(barb, {
    format: "html",
    candidates: [betta, ...some.filter(({ id }) => id !== barb.id)],
    linkTo: (id, form) => (id === "betta-splendens" ? `../${id}/?a=1&b=${form}` : undefined),
  });

  test("is one article in its language, with a heading for each section", () => {
    const parsed = new XMLParser({ ignoreAttributes: false }).parse(page);
    expect(Object.keys(parsed)).toEqual(["article"]);
    expect(parsed.article["@_lang"]).toBe("en-GB");
    expect(parsed.article.header.h1).toBe("Tiger barb");
    for (const section of parsed.article.section) {
      expect(section.h2["#text"]).not.toBe("");
      expect(section["@_aria-labelledby"]).toBe(section.h2["@_id"]);
    }
  });

  test("leads to the pages that the app names, and to no other", () => {
    const linked = speciesPage(betta, {
      format: "html",
      candidates: [barb],
      linkTo: (id) => `../${id}/?a=1&b`,
    });
    expect(linked).not.toContain('href=""');
    expect(page).not.toContain("undefined</a>");
    const links = [...page.matchAll(/href="([^"]*)"/g)].map(([, to]) => to);
    expect(new Set(links).size).toBeLessThanOrEqual(1);
  });

  test("leads nowhere by what is no function, or gives no address", () => {
    for (const linkTo of ["/fish", () => 7, () => null]) {
      for (const format of ["html", "markdown"]) {
        const asked = { candidates: [barb], format, linkTo };
        expectRefused(() => Reflect.apply(speciesPage, undefined, [betta, asked]), "options.linkTo");
      }
    }
  });

  test.each([
    "/fish/a%20b",
    "/fish/a b?c=d&e=f#g",
    "/fisch/kärpfling(1)[2]_*x*",
    "/fish?a=1&copy;=2&#60;",
    "/fish/><script>|x`y",
  ])("leads in Markdown where it leads in HTML: %s", (to) => {
    const asked = { candidates: [barb], linkTo: () => to };
    const addressesIn = (html: string) =>
      [...html.matchAll(/href="([^"]*)"/g)].map(([, address = ""]) => {
        const plain = address
          .replaceAll(
            /&(lt|gt|quot|amp);/g,
            (_, name: string) => ({ lt: "<", gt: ">", quot: '"' })[name] ?? "&",
          )
          .replaceAll(/\s/g, encodeURIComponent);
        return new URL(plain, "https://vivary.test/").href;
      });
    const html = addressesIn(speciesPage(betta, { ...asked, format: "html" }));
    const markdown = addressesIn(
      new MarkdownIt().render(speciesPage(betta, { ...asked, format: "markdown" })),
    );
    expect(html).not.toStrictEqual([]);
    expect(markdown.map(decodeURI)).toStrictEqual(html.map(decodeURI));
  });

  test("stays whole in Markdown whatever address an app gives", () => {
    const framed = (to: string) =>
      new MarkdownIt()
        .render(speciesPage(betta, { candidates: [barb], format: "markdown", linkTo: () => to }))
        .replaceAll(/href="[^"]*"/g, "");
    expect(framed("/fish\\z>)\n\n# h\n\n|a|\ud800")).toBe(framed("/fish"));
  });

  test("shows what stands in names as text", () => {
    const evil: SpeciesProfile = { ...barb, names: { en: ['<b onclick="x">&'] } };
    const told = speciesPage(evil, { format: "html" });
    expect(told).toContain("<h1>&lt;b onclick=&quot;x&quot;&gt;&amp;</h1>");
    expect(XMLValidator.validate(told)).toBe(true);
    expect(speciesPage(evil, { format: "markdown" })).not.toMatch(/[^\\]<b/);
  });
});

test("of a shoal of which nobody knows how large it is no number is told, and no tank", () => {
  const danio = species("danio-rerio");
  const { group: _, ...social } = danio.social ?? {};
  expect(speciesPage(danio)).toMatch(/\n- Number: six or more/);
  const page = speciesPage({ ...danio, social });
  expect(page).toContain("A shoaling fish");
  expect(page).not.toMatch(/\n- (Number|Tank): |or larger for/);
});

test("common practice is not said to stand alone where a published figure is used too", () => {
  const page = speciesPage(species("danio-rerio")).replaceAll(/\s+/g, " ");
  expect(page).toMatch(/Common practice, which no source states, has a part in [^.]*adult length/);
  expect(page).not.toMatch(/common practice alone/i);
});

test("an age when grown that a growth curve puts past half of its life is not told", () => {
  const told = (id: string) => speciesPage(species(id), evidenceOf(species(id)));
  for (const late of ["carassius-auratus", "misgurnus-anguillicaudatus", "pangio-kuhlii"]) {
    expect(told(late)).not.toContain("is grown at");
    expect(told(late)).not.toContain("growth curve");
  }
  for (const early of ["danio-rerio", "astronotus-ocellatus", "polypterus-senegalus"])
    expect(told(early)).toContain("is grown at");
});

test("a page of those of which a pair is enough asks for no more, that of a harem for several", () => {
  const told = (id: string) => speciesPage(species(id)).replaceAll(/\s+/g, " ");
  const badis = told("dario-dario");
  expect(badis).toContain("Number: one male and one female or more");
  expect(badis).toContain("lives in harems, one male with its females. Keep two or more.");
  expect(badis).not.toContain("several females");
  expect(told("melanochromis-auratus")).toContain("Number: one male and several females");
});
