import { onceOfEach } from "../../made-once";
import type { Figure } from "../figure";
import { isUpperEnd } from "./sentences";

export const exact = (value: number) => value.toLocaleString("de", { maximumSignificantDigits: 6 });

/** The verb that agrees. */
export const verb = (many: boolean, one: string, several: string) => (many ? several : one);

export const needs = (many: boolean) => verb(many, "braucht", "brauchen");

/** They need a figure; where only its upper end is told, they bear it. */
export const asks = (figure: Figure | undefined, many: boolean) =>
  isUpperEnd(figure) ? verb(many, "verträgt", "vertragen") : needs(many);

export const they = (many: boolean) => verb(many, "das Tier", "sie");

export const measures = (many: boolean) => verb(many, "misst", "messen");

const listed = /* @__PURE__ */ onceOfEach(
  (type: "conjunction" | "disjunction") => new Intl.ListFormat("de", { type }),
);

export const allOf = (items: readonly string[]) => listed("conjunction").format(items);

export const anyOf = (choices: readonly string[]) => listed("disjunction").format(choices);
