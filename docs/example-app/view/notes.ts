import type { Problem } from "vivary";
import type { Condition, FactName } from "vivary/plan";
import { fieldsOf, isMet } from "vivary/plan";
import { isBeyondWhole, type Judged } from "../plan/judged";
import type { Texts } from "../texts/texts";
import { fieldId } from "./field";

/** A note on a field, and what it is about. */
interface Note {
  readonly text: string;
  readonly kind: "wrong" | "amiss" | "asked";
}

/** Lights the fields: those that cannot be read, those that do not suit, and those that the verdict waits for. */
export function lightFields(root: ParentNode, judged: Judged, texts: Texts): void {
  const noted = notesOn(root, judged, texts);
  for (const line of root.querySelectorAll<HTMLElement>(".note")) {
    const note = noted.get(line);
    if (line.textContent !== (note?.text ?? "")) line.textContent = note?.text ?? "";
    const field = line.parentElement;
    field?.classList.remove("wrong", "amiss", "asked");
    if (note) field?.classList.add(note.kind);
    const control = field?.querySelector(":scope > input, :scope > select");
    control?.toggleAttribute("aria-invalid", false);
    if (note?.kind === "wrong") control?.setAttribute("aria-invalid", "true");
  }
}

/** The notes by the lines they stand in; what weighs most is told. */
function notesOn(root: ParentNode, judged: Judged, texts: Texts): ReadonlyMap<HTMLElement, Note> {
  const noted = new Map<HTMLElement, Note>();
  const put = (line: HTMLElement | null, note: Note) => {
    if (line && !noted.has(line)) noted.set(line, note);
  };
  const lineOf = (id: string) => root.querySelector<HTMLElement>(`[data-field="${id}"]`);
  const lineAnswering = (id: string) =>
    root.querySelector<HTMLElement>(`[data-answers~="${id}"]`) ?? lineOf(id);
  const answering = (on: FactName, of: number | undefined, note: Note) => {
    for (const path of fieldsOf(on, of)) put(lineAnswering(fieldId(path)), note);
  };
  if (judged.is === "unreadable") {
    for (const problem of judged.problems) {
      const line = lineOf(fieldId(problem.path));
      put(line, { text: toMend(problem, line?.dataset.limits, texts), kind: "wrong" });
    }
  }
  if (judged.is !== "judged") return noted;
  const { plan, verdict } = judged;
  const amiss = ({ on, of }: Condition) => answering(on, of, { text: texts.amiss, kind: "amiss" });
  for (const condition of verdict.conditions) if (isMet(condition, plan) === false) amiss(condition);
  for (const question of verdict.open) {
    if (question.reason === "not-given")
      answering(question.on, question.of, { text: texts.asked, kind: "asked" });
  }
  return noted;
}

/** What is to be mended at a field. */
function toMend(problem: Problem, limits: string | undefined, texts: Texts): string {
  const { path, code } = problem;
  if (path.length === 2 && path[0] === "groups") return texts.noAnimals;
  if (isBeyondWhole(problem)) return texts.beyondWhole;
  if (code === "conflict" && path[0] === "groups" && path[2] === "length") return texts.tooLong;
  return (code === "range" && limits) || texts.problems[code];
}
