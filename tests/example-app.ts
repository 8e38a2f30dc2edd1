// Tries the example app in Chromium, built of what the package ships: what it says, and who can use it.
import type { Browser, BrowserContextOptions } from "playwright-core";
import type { PlanData } from "vivary/plan";
import type { Messages, UnitSystem } from "vivary/report";
import { chromiumHere, launched } from "./consumer/chromium";
import { hashOf, planOf, plans } from "./example-app/plans";
import { assessPlan, english, german, reportParts } from "./example-app/shipped";
import { site } from "./example-app/site";
import { type Visitor, visitor } from "./example-app/visitor";

/** Each check visits the app and answers one line a problem. */
type Check = (
  visit: (hash?: string, options?: BrowserContextOptions) => Promise<Visitor>,
) => Promise<readonly string[]>;

/** What Node says of a plan, as one line. */
const answerOf = (saved: PlanData, messages: Messages, units: UnitSystem) =>
  reportParts(assessPlan(planOf(saved)), { messages, units })[0]?.items.join(" ");

const expectSame = (what: string, found: unknown, expected: unknown): readonly string[] =>
  JSON.stringify(found) === JSON.stringify(expected)
    ? []
    : [`${what}: found ${JSON.stringify(found)}, expected ${JSON.stringify(expected)}`];

const narrow = { viewport: { width: 360, height: 740 } };

/** In the browser: the id of what has the focus, where the verdict's answer lies over some of it. */
const hiddenFocus = `(() => {
  const held = document.activeElement, answer = document.querySelector(".outcome");
  if (held === document.body || answer.contains(held)) return "";
  const a = held.getBoundingClientRect(), b = answer.getBoundingClientRect();
  const over = a.left < b.right && b.left < a.right && a.top < b.bottom - 1 && b.top < a.bottom - 1;
  return over ? held.id || held.textContent : "";
})()`;

/** The plan that the page remembers. */
const remembered = ({ page }: Visitor): Promise<PlanData> =>
  page.evaluate('JSON.parse(localStorage.getItem("plan"))');

const isFocused = ({ page }: Visitor): Promise<string> => page.evaluate("document.activeElement.id");

const checks: Readonly<Record<string, Check>> = {
  "It opens with an example, and loads no species but those of it": async (visit) => {
    const { page, loaded } = await visit();
    const groups = await page.locator(".group").count();
    const species = loaded.filter(
      (name) => /^[a-z]+-[a-z]+-.+\.js$/.test(name) && !name.startsWith("index-"),
    );
    return [...expectSame("groups", groups, 3), ...expectSame("species loaded", species.length, 3)];
  },

  "It says of each plan what Node says": async (visit) => {
    const problems: string[] = [];
    const told = [
      [english, "metric", { locale: "en-GB" }],
      [german, "metric", { locale: "de-DE" }],
      [english, "us", { locale: "en-US" }],
    ] as const;
    for (const [messages, units, options] of told) {
      const { page, reads } = await visit("", options);
      for (const [name, saved] of Object.entries(plans)) {
        await page.evaluate(
          `document.querySelector(".notice").replaceChildren(); location.hash = "${hashOf(saved)}"`,
        );
        await page.waitForSelector(".notice p");
        const outcome = await page.getAttribute(".outcome", "data-outcome");
        problems.push(
          ...expectSame(name, await reads(".outcome"), answerOf(saved, messages, units)),
          ...expectSame(name, outcome, assessPlan(planOf(saved)).outcome),
        );
      }
    }
    return problems;
  },

  "A plan is made by the keyboard alone": async (visit) => {
    const somebody = await visit();
    const { page, reads } = somebody;
    await page.focus("#empty");
    await page.keyboard.press("Enter");
    const nothing = await reads(".verdict");
    await page.keyboard.press("Tab");
    const search = await isFocused(somebody);
    await page.keyboard.type("neon t");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowUp");
    const chosen = await page.getAttribute("#species", "aria-activedescendant");
    const offered = await reads("#species-0");
    await page.keyboard.press("Enter");
    await page.waitForSelector(".outcome");
    for (let step = 0; step < 4; step += 1) await page.keyboard.press("Tab");
    const count = await isFocused(somebody);
    await page.keyboard.press("Control+A");
    await page.keyboard.type("12");
    const { groups } = await remembered(somebody);
    const asked = page.locator(".conditions button").first();
    const condition = await asked.getAttribute("id");
    await asked.focus();
    await page.keyboard.press("Enter");
    const gone = await page.locator(`#${condition}`).count();
    const next = await page.evaluate("document.activeElement.textContent");
    await page.locator("footer [role=status]", { hasText: "Not yet" }).waitFor({ state: "attached" });
    const heard = await reads("footer [role=status]");
    await page.focus("#groups-0-remove");
    await page.keyboard.press("Enter");
    const heading = await page.evaluate("document.activeElement.textContent");
    return [
      ...expectSame("of nothing", nothing, "Verdict Add the first species, and the verdict begins."),
      ...expectSame("what follows the buttons", search, "species"),
      ...expectSame("the active suggestion", chosen, "species-0"),
      ...expectSame("its words", offered, "Neon tetra Paracheirodon innesi"),
      ...expectSame("what follows the choice", count, "groups-0-unsexed"),
      ...expectSame("the groups", groups, [{ species: "paracheirodon-innesi", unsexed: 12 }]),
      ...expectSame("conditions left of one that was met", gone, 0),
      ...expectSame("the button with the focus then", next, "Put it in"),
      ...expectSame("the heading with the focus after the last animal went", heading, "Animals"),
      ...expectSame("what is read out", heard, "Not yet"),
    ];
  },

  "The list of species opens, moves and closes as a combobox does": async (visit) => {
    const { page } = await visit();
    const state = () =>
      page.evaluate(
        '[species.getAttribute("aria-expanded"), species.getAttribute("aria-activedescendant"), document.querySelector("[role=option][aria-selected=true]")?.id]',
      );
    await page.fill("#species", "tetra");
    const open = await state();
    await page.press("#species", "ArrowUp");
    const last = await state();
    await page.press("#species", "Escape");
    const closed = await state();
    return [
      ...expectSame("open", open, ["true", "species-0", "species-0"]),
      ...expectSame("at its end", last, ["true", "species-9", "species-9"]),
      ...expectSame("closed", closed, ["false", null, null]),
      ...expectSame("what was typed", await page.inputValue("#species"), "tetra"),
    ];
  },

  "What was typed is judged, and what cannot be read is said at its field": async (visit) => {
    const { page, reads } = await visit();
    await page.fill("#water-temperature", "warm");
    const note = await reads("#water-temperature-note");
    const invalid = await page.getAttribute("#water-temperature", "aria-invalid");
    const waits = await page.locator(".verdict .mend a").count();
    await page.click("#share");
    const refused = await reads(".notice");
    await page.fill("#water-temperature", "31,5");
    await page.click("#condition-water-temperature-tank-why summary");
    const why = await reads("#condition-water-temperature-tank-why");
    const still = await page.getAttribute("#water-temperature", "aria-invalid");
    return [
      ...expectSame("the note", note, "This needs a number."),
      ...expectSame("aria-invalid", [invalid, still], ["true", null]),
      ...expectSame("links to what is wrong", waits, 1),
      ...expectSame("of a link to it", refused, "Something to mend"),
      ...expectSame("whether 31.5 °C is told", why.includes("31.5 °C"), true),
    ];
  },

  "All that is asked for can be put in, and it works then": async (visit) => {
    const { page } = await visit(hashOf(plans["many things unsaid"]));
    const lit = await page.locator(".asked").count();
    for (let press = 0; press < 5; press += 1) {
      const [one] = await page.locator(".conditions button").all();
      if (!one) break;
      const all = page.locator("#put-all-in");
      await ((await all.count()) > 0 ? all : one).click();
    }
    return [
      ...expectSame("whether fields are lit", lit > 3, true),
      ...expectSame("lit fields left", await page.locator(".asked, .amiss").count(), 0),
      ...expectSame("outcome", await page.getAttribute(".outcome", "data-outcome"), "suitable"),
    ];
  },

  "A way out is found, taken and undone": async (visit) => {
    const somebody = await visit(hashOf(plans["two that fight"]));
    const { page } = somebody;
    await page.click("#seek-ways");
    await page.click("#take-0");
    const taken = await page.getAttribute(".outcome", "data-outcome");
    await page.click("#undo");
    return [
      ...expectSame("taken", taken, "suitable"),
      ...expectSame("undone", await page.getAttribute(".outcome", "data-outcome"), "unsuitable"),
    ];
  },

  "What a plan that is ruled out lacks besides is folded away, and a way out leaves it as conditions": async (
    visit,
  ) => {
    const { page } = await visit(hashOf(plans["one that eats the others, and much besides"]));
    const conditions = page.locator(".conditions button");
    const folded = await conditions.first().isVisible();
    await page.click("#besides > summary");
    const unfolded = await conditions.first().isVisible();
    await page.click("#seek-ways");
    await page.click("#take-0");
    return [
      ...expectSame("folded", folded, false),
      ...expectSame("unfolded", unfolded, true),
      ...expectSame("taken", await page.getAttribute(".outcome", "data-outcome"), "conditional"),
      ...expectSame("conditions left", await conditions.first().isVisible(), true),
    ];
  },

  "The verdict stays in sight beside the plan": async (visit) => {
    const { page } = await visit("", { viewport: { width: 1200, height: 800 } });
    await page.locator("#water-coolest").scrollIntoViewIfNeeded();
    const box = await page.locator(".outcome").boundingBox();
    return expectSame("in sight", box !== null && box.y >= 0 && box.y < 800, true);
  },

  "A plan comes back by its link, by a file, and after the page was closed": async (visit) => {
    const somebody = await visit(hashOf(plans["a form, in inches"]));
    const { page } = somebody;
    await page.fill("#groups-0-unsexed", "9");
    const saved = await remembered(somebody);
    await page.click("#share");
    const link = await page.inputValue("#link");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    await page.click("#empty");
    await page.setInputFiles("#file", await download.path());
    await page.waitForSelector("#groups-0-unsexed");
    const ofFile = await remembered(somebody);
    await page.reload();
    await page.waitForSelector("#groups-0-unsexed");
    const another = await visit(link.replace(/.*#/, "#"));
    await another.page.waitForSelector("#groups-0-unsexed");
    return [
      ...expectSame("saved", saved.groups, [
        { species: "puntigrus-tetrazona", form: "long-fin", unsexed: 9 },
      ]),
      ...expectSame("by the file", ofFile, saved),
      ...expectSame("after closing", await remembered(somebody), saved),
      ...expectSame("by the link", await remembered(another), saved),
    ];
  },

  "An old name is told, and a broken link or file takes nothing away": async (visit) => {
    const old = { ...plans["many things unsaid"], groups: [{ species: "corydoras-paleatus", unsexed: 8 }] };
    const first = await visit(hashOf(old));
    await first.page.waitForSelector(".notice p");
    const told = await first.reads(".notice");
    const second = await visit(hashOf(old).slice(0, 40));
    await second.page.waitForSelector(".notice p");
    const broken = await second.reads(".notice");
    await second.page.fill("#tank-height", "46");
    await second.page.evaluate(`location.hash = "${hashOf(old).slice(0, 50)}"`);
    await second.page.waitForSelector(".notice p");
    const brokenLater = await second.reads(".notice");
    const text = Buffer.from("{}");
    await second.page.setInputFiles("#file", { name: "a.json", mimeType: "application/json", buffer: text });
    await second.page.locator(".notice", { hasText: "file" }).waitFor();
    return [
      ...expectSame(
        "renamed",
        told,
        "The plan is open. “corydoras-paleatus” is called Hoplisoma paleatum now.",
      ),
      ...expectSame("broken", broken.startsWith("This link is damaged"), true),
      ...expectSame("what is shown first", broken.endsWith("What you see is an example."), true),
      ...expectSame("what is shown later", brokenLater.endsWith("Here is the plan you had."), true),
      ...expectSame("groups kept", await second.page.locator(".group").count(), 3),
    ];
  },

  "Inches and Fahrenheit are shown and kept as centimetres and Celsius": async (visit) => {
    const somebody = await visit("", { locale: "en-US" });
    const { page } = somebody;
    await page.fill("#tank-height", "20");
    await page.fill("#water-temperature", "77");
    const { tank, water } = await remembered(somebody);
    await page.selectOption("#units", "metric");
    return [
      ...expectSame("kept", [tank.height, water?.temperature], [50.8, 25]),
      ...expectSame("shown", await page.inputValue("#tank-height"), "50.8"),
    ];
  },

  "Whoever says where the tank stands reads the law of that place, in their language": async (visit) => {
    const somebody = await visit(hashOf(plans["a snail that laws name"]), { locale: "de-DE" });
    const { page, reads } = somebody;
    await page.waitForSelector(".notice p");
    const before = await reads(".verdict");
    await page.selectOption("#jurisdiction", { label: "Europäische Union, anderswo" });
    const { jurisdiction } = await remembered(somebody);
    const after = await reads(".verdict");
    await page.selectOption("#language", "en");
    const kept = await page.inputValue("#jurisdiction");
    await page.selectOption("#jurisdiction", "");
    const { jurisdiction: none } = await remembered(somebody);
    const several = await visit(
      hashOf({ ...plans["a snail that laws name"], jurisdiction: ["germany", "us"] }),
    );
    await several.page.waitForSelector(".notice p");
    return [
      ...expectSame("that it is asked for", before.includes("mehrerer Orte"), true),
      ...expectSame("the law told", after.includes("Recht, betrifft") && after.includes("Union"), true),
      ...expectSame("saved", jurisdiction, ["eu"]),
      ...expectSame("kept in another language", kept, "eu"),
      ...expectSame("taken back", none, undefined),
      ...expectSame("several", await several.page.inputValue("#jurisdiction"), "germany,us"),
    ];
  },

  "What is too small or too great is told its limits, in the reader's units, and whose it is": async (
    visit,
  ) => {
    const { page, reads } = await visit("", { locale: "de-DE" });
    await page.fill("#water-pH", "77");
    await page.fill("#water-temperature", "-3");
    await page.fill("#groups-1-unsexed", "2,5");
    await page.fill("#tank-base-length", "0");
    await page.fill("#groups-0-length", "0");
    const notes = [
      "water-pH",
      "water-temperature",
      "groups-1-unsexed",
      "tank-base-length",
      "groups-0-length",
    ];
    const told = await Promise.all(notes.map((id) => reads(`#${id}-note`)));
    const mended = await page.locator(".mend a").allTextContents();
    await page.fill("#groups-0-length", "35");
    const inMillimetres = await reads("#groups-0-length-note");
    await page.selectOption("#units", "us");
    const inFahrenheit = await reads("#water-temperature-note");
    return [
      ...expectSame("notes", told, [
        "Möglich ist 3 bis 11.",
        "Möglich ist -2 bis 48 °C.",
        "Möglich ist eine ganze Zahl, 0 bis 1.000.000.",
        "Möglich ist 0,01 bis 100.000 cm.",
        "Möglich ist 0,1 bis 1.000 cm.",
      ]),
      ...expectSame("the list", [...mended].sort(), [
        "Grundfläche: Länge (cm)",
        "Neonsalmler: Länge jetzt (cm)",
        "Pandapanzerwels: Geschlecht unbekannt",
        "Temperatur (°C)",
        "pH-Wert",
      ]),
      ...expectSame("a neon in millimetres", inMillimetres, "So lang wird kein Tier dieser Art."),
      ...expectSame("in other units", inFahrenheit, "Möglich ist 28,4 bis 118,4 °F."),
    ];
  },

  "A number means what it means in the language that was chosen": async (visit) => {
    const somebody = await visit("", { locale: "de-DE" });
    const { page } = somebody;
    await page.fill("#tank-base-length", "1.000");
    await page.fill("#water-pH", "6,5");
    const german = await remembered(somebody);
    await page.selectOption("#language", "en");
    await page.fill("#tank-base-length", "1,100");
    const english = await remembered(somebody);
    const lengths = [german, english].map(({ tank: { base } }) => base.shape === "rectangle" && base.length);
    return [...expectSame("lengths", lengths, [1000, 1100]), ...expectSame("pH", german.water?.pH, 6.5)];
  },

  "Cover and free water are not more than the whole": async (visit) => {
    const { page, reads } = await visit();
    await page.fill("#tank-cover", "60");
    await page.fill("#tank-openWater", "40");
    const whole = await page.locator(".mend").count();
    await page.fill("#tank-openWater", "60");
    return [
      ...expectSame("of the whole", whole, 0),
      ...expectSame(
        "of more",
        await reads("#tank-openWater-note"),
        "Cover and what is free to swim in share the tank: together at most 100 %.",
      ),
      ...expectSame("links to it", await page.locator(".mend a").count(), 1),
    ];
  },

  "What has the focus is not hidden behind the verdict, however one gets there": async (visit) => {
    const problems: string[] = [];
    const { water: _, ...unmeasured } = plans["a snail that laws name"];
    const looks = [
      [plans["one that eats the others, and much besides"], 1200],
      [{ ...unmeasured, jurisdiction: ["eu"] }, 980],
    ] as const;
    for (const [plan, width] of looks) {
      const { page } = await visit(hashOf(plan), { viewport: { width, height: 700 }, locale: "de-DE" });
      await page.waitForSelector(".notice p");
      for (const summary of await page.locator(".verdict summary:visible").all()) await summary.click();
      await page.locator(":is(button, input, select, summary):visible").last().focus();
      for (let step = 0; step < 90; step += 1) {
        await page.keyboard.press("Shift+Tab");
        const hidden = await page.evaluate(hiddenFocus);
        if (hidden !== "") problems.push(`at ${width} px: ${hidden}`);
      }
    }
    return problems;
  },

  "Nothing keeps anybody out, in any state, however narrow and dark": async (visit) => {
    const problems: string[] = [];
    const look = async (state: string, somebody: Visitor) => {
      problems.push(...(await somebody.findsWrong(state)));
    };
    const light = await visit();
    await look("the example", light);
    await light.page.fill("#water-temperature", "warm");
    await look("a slip", light);

    const dark = await visit(hashOf(plans["two that fight"]), {
      ...narrow,
      colorScheme: "dark",
      locale: "de-DE",
    });
    await dark.page.click("#seek-ways");
    await dark.page.waitForSelector(".way");
    await dark.page.click("summary >> nth=0");
    await dark.page.fill("#species", "salmler");
    await look("ways out and a search, narrow, dark and German", dark);

    const bare = await visit("", narrow);
    await bare.page.click("#empty");
    await bare.page.click("#offerings-add");
    await bare.page.click("#share");
    await look("an empty plan with a link", bare);
    await bare.page.selectOption("#tank-base-shape", "circle");
    await bare.page.selectOption("#units", "imperial");
    await look("a circle", bare);

    const good = await visit(hashOf(plans["all as it should be"]), { ...narrow, colorScheme: "dark" });
    await good.page.waitForSelector("[data-outcome=suitable]");
    await look("a good plan", good);
    return problems;
  },
};

/** What a check finds, and what the browser complained of meanwhile. */
async function problemsOf(check: Check, browser: Browser, address: string): Promise<readonly string[]> {
  const visitors: Visitor[] = [];
  const found = await check(async (hash = "", options) => {
    const come = await visitor(browser, address + hash, options);
    visitors.push(come);
    return come;
  }).catch((error: unknown) => [String(error)]);
  await Promise.all(visitors.map(({ leave }) => leave()));
  return [...found, ...visitors.flatMap(({ complaints }) => complaints)];
}

const program = chromiumHere();
if (!program) {
  console.log("skipped  The example app: Chromium is not installed");
  process.exitCode = process.env.CI ? 1 : 0;
} else {
  const { address, close } = await site();
  const browser = await launched(program);
  const problems: string[] = [];
  const asked = process.argv[2] ?? "";
  const chosen = Object.entries(checks).filter(([name]) => name.includes(asked));
  const results = await Promise.all(
    chosen.map(async ([name, check]) => ({ name, found: await problemsOf(check, browser, address) })),
  );
  for (const { name, found } of results) {
    console.log(`${found.length === 0 ? "ok    " : "FAILED"}  ${name}`);
    problems.push(...found.map((problem) => `${name}: ${problem}`));
  }
  await browser.close();
  await close();
  for (const problem of problems) console.error(problem);
  process.exitCode = problems.length > 0 ? 1 : 0;
}
