import { type Child, element } from "./element";
import type { Shown } from "./shown";

/** The parts of the page that are filled again and again. */
export interface Page {
  readonly jump: HTMLElement;
  readonly settings: HTMLElement;
  readonly acts: HTMLElement;
  readonly notice: HTMLElement;
  readonly search: HTMLElement;
  readonly groups: HTMLElement;
  readonly tank: HTMLElement;
  readonly water: HTMLElement;
  readonly food: HTMLElement;
  readonly verdict: HTMLElement;
}

/** An empty page in a language. */
export function pageIn({ language: { code, texts } }: Shown, announcer: HTMLElement): Page {
  document.documentElement.lang = code;
  document.title = texts.title;
  const section = (name: string, ...children: readonly Child[]) =>
    element("section", { class: name }, ...children);
  const page = {
    jump: element("nav", { class: "jump", "aria-label": texts.headings.verdict }),
    settings: element("div", { class: "settings" }),
    acts: element("div", { class: "acts" }),
    notice: element("div", { class: "notice", role: "status" }),
    search: element("div"),
    groups: element("div", { class: "groups" }),
    tank: section("tank"),
    water: section("water"),
    food: section("food"),
    verdict: section("verdict"),
  };
  document.body.replaceChildren(
    page.jump,
    element("header", {}, element("h1", {}, texts.title), element("p", {}, texts.intro), page.settings),
    element(
      "main",
      {},
      element("div", { class: "top" }, page.acts, page.notice),
      element(
        "div",
        { class: "plan" },
        section(
          "animals",
          element("h2", { tabindex: "-1" }, texts.headings.animals),
          page.search,
          page.groups,
        ),
        page.tank,
        page.water,
        page.food,
      ),
      page.verdict,
    ),
    element("footer", {}, element("p", {}, texts.source), announcer),
  );
  return page;
}
