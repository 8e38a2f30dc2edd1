import type { Suggestion } from "vivary/search";
import { type Draft, emptyDraft, exampleDraft } from "./plan/draft";
import { copied, saveAs } from "./plan/file";
import { judged } from "./plan/judged";
import { hashOf, type Linked, linkedPlan } from "./plan/link";
import { remember, remembered } from "./plan/memory";
import { type Opened, openedText } from "./plan/opened";
import { learn, profileOf } from "./plan/profiles";
import { firstLanguage, firstUnits } from "./settings";
import { languageOf } from "./texts/languages";
import { nameOf } from "./texts/texts";
import { announcer } from "./view/announcer";
import { type Acts, actsView, settingsView } from "./view/bar";
import { element, refill } from "./view/element";
import { groupsView } from "./view/groups";
import { keepClear } from "./view/keep-clear";
import { lightFields } from "./view/notes";
import { offeringsView } from "./view/offerings";
import { type Page, pageIn } from "./view/page";
import type { Change, Shown } from "./view/shown";
import { speciesBox } from "./view/species-box";
import { tankView, waterView } from "./view/tank";
import { verdictView } from "./view/verdict";

/** How many steps can be undone. */
const mostSteps = 100;

/** Starts the app: with the plan of the link, else the one that was here last, else the example. */
export async function startApp(): Promise<void> {
  const voice = announcer();
  const past: Draft[] = [];
  const language = await languageOf(firstLanguage());
  let shown: Shown = { draft: exampleDraft, language, units: firstUnits() };
  let page: Page;

  const change: Change = (changed, how, told) => {
    past.push(shown.draft);
    past.splice(0, past.length - mostSteps);
    shown = { ...shown, draft: changed(shown.draft) };
    page.notice.replaceChildren();
    if (how === "done") showFields();
    showVerdict();
    if (told !== undefined) notify(told);
  };

  const showAll = () => {
    page = pageIn(shown, voice.element);
    refill(page.settings, settingsView(shown, acts));
    refill(page.acts, actsView(shown, acts));
    refill(page.search, [speciesBox(shown.language, add, voice.say)]);
    showFields();
    showVerdict();
  };

  const showFields = () => {
    refill(page.groups, groupsView(shown, change));
    refill(page.tank, tankView(shown, change));
    refill(page.water, waterView(shown, change));
    refill(page.food, offeringsView(shown, change));
  };

  const showVerdict = () => {
    const { texts } = shown.language;
    const now = judged(shown.draft);
    const said = texts.outcomes[now.is === "judged" ? now.verdict.outcome : now.is];
    refill(page.verdict, verdictView(now, shown, change));
    keepClear(page.verdict);
    page.jump.replaceChildren(
      element("a", { href: "#verdict" }, texts.actions.toVerdict, ": ", element("b", {}, said)),
    );
    lightFields(document, now, texts);
    voice.say(said);
    if (now.is !== "unreadable") remember("plan", JSON.stringify(shown.draft));
  };

  /** Whether the plan can be read as it stands, so that it may be passed on. */
  const isSound = () => judged(shown.draft).is !== "unreadable";

  const notify = (text: string, ...more: readonly Node[]) =>
    page.notice.replaceChildren(element("p", {}, text), ...more);

  const add = async ({ id, form }: Suggestion) => {
    const { texts, code } = shown.language;
    await learn([id]);
    const profile = profileOf(id);
    if (!profile) return notify(texts.search.failed);
    const group = { species: id, ...(form !== undefined && { form }), unsexed: 1 };
    change(
      (draft) => ({ ...draft, groups: [...draft.groups, group] }),
      "done",
      texts.search.added(nameOf(profile, code)),
    );
  };

  /** Goes on with a plan that was opened, and tells what is called otherwise now. */
  const goOn = ({ draft, renamed }: Opened) => {
    const { texts } = shown.language;
    const news = renamed.map(({ from, to }) => texts.renamed(from, profileOf(to)?.taxonomy.name ?? to));
    change(() => draft, "done", [texts.opened, ...news].join(" "));
  };

  const replaceBy = async (draft: Draft) => {
    await learn(draft.groups.map(({ species }) => species));
    change(() => draft, "done", shown.language.texts.changed);
  };

  const acts: Acts = {
    speak: async (code) => show({ language: await languageOf(code) }, "language", code),
    measure: (units) => show({ units }, "units", units),
    share: async () => {
      const { texts } = shown.language;
      if (!isSound()) return notify(texts.outcomes.unreadable);
      const link = location.href.replace(/#.*/, "") + (await hashOf(shown.draft));
      notify(
        (await copied(link)) ? texts.linkCopied : texts.linkReady,
        element("label", { for: "link" }, texts.link),
        element("input", { id: "link", type: "text", readonly: true, value: link }),
      );
    },
    download: () => {
      const { texts } = shown.language;
      if (!isSound()) return notify(texts.outcomes.unreadable);
      saveAs(texts.file, shown.draft);
    },
    open: async (file) => {
      const plan = await openedText(await file.text());
      if (plan) goOn(plan);
      else notify(shown.language.texts.brokenFile);
    },
    undo: () => {
      const before = past.pop();
      if (!before) return;
      shown = { ...shown, draft: before };
      page.notice.replaceChildren();
      showFields();
      showVerdict();
    },
    empty: () => replaceBy(emptyDraft),
    example: () => replaceBy(exampleDraft),
  };

  const show = (other: Partial<Shown>, setting: "language" | "units", value: string) => {
    remember(setting, value);
    shown = { ...shown, ...other };
    showAll();
    document.getElementById(setting)?.focus();
  };

  /** Goes on with the plan of a link, if it has come whole. */
  const goOnWith = (link: Linked | undefined) => {
    if (!link) return;
    const { texts } = shown.language;
    history.replaceState(undefined, "", location.pathname + location.search);
    if (link.plan) goOn(link.plan);
    else notify(`${texts.brokenLink} ${shown.draft === exampleDraft ? texts.exampleShown : texts.planKept}`);
  };

  const link = await linkedPlan(location.hash);
  const last = await openedText(remembered("plan") ?? "");
  if (last) shown = { ...shown, draft: last.draft };
  else await learn(exampleDraft.groups.map(({ species }) => species));
  showAll();
  goOnWith(link);
  addEventListener("resize", () => keepClear(page.verdict));
  addEventListener("hashchange", async () => goOnWith(await linkedPlan(location.hash)));
}
