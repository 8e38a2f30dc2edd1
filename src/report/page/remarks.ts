import { type SpeciesRecord, type Statement, statementsOf, type TraitPath, traitPaths } from "../../species";
import { statementsFor } from "../../species/inner";
import type { PageMessages } from "../messages/page-messages";
import { stopped } from "../messages/sentences";
import { shortCitation } from "./citations";
import type { PageSource } from "./page-source";
import { list, type Part } from "./parts";

/** What notes of a record are told from. */
interface Noted {
  readonly record: SpeciesRecord | undefined;
  readonly form: string | undefined;
  readonly messages: PageMessages;
}

/** The statements of a species or form that notes may stand in; none where readers cannot read them. */
export function notedStatements<Path extends TraitPath>(
  { record, form, messages }: Noted,
  path: Path,
): readonly Statement[] {
  if (!record || !messages.page.readsNotes) return [];
  const all: readonly Statement[] = statementsFor(record, form, path);
  return all.filter(({ note, setAside }) => note !== undefined && !setAside);
}

/** Whether a statement is what keepers say, and no source's. */
export const isOfKeepers = ({ by }: Statement) => by === "common-practice" || by === "curator";

/** What keepers remark on a trait, as sentences that stand beside what is told of it. */
export const keepersRemarks = (noted: Noted, path: TraitPath): readonly string[] =>
  notesOf(notedStatements(noted, path).filter(isOfKeepers));

/** What keepers remark on a form, apart from its species. */
export function formRemarks({ record, form, messages }: Noted): readonly string[] {
  const bred = form === undefined ? undefined : record?.forms?.[form];
  if (!bred || !messages.page.readsNotes) return [];
  const stated = traitPaths.flatMap((path): readonly Statement[] => statementsOf(bred, path));
  return notesOf(stated.filter((statement) => isOfKeepers(statement) && !statement.setAside));
}

export const notesOf = (statements: readonly Statement[]): readonly string[] => [
  ...new Set(statements.flatMap(({ note }) => note ?? [])),
];

/** What sources remark on some traits, each with the source. A note that only qualifies a figure stands beside it elsewhere. */
export function sourcesRemarks(
  noted: Noted,
  paths: readonly TraitPath[],
  sources: readonly PageSource[],
): readonly Part[] {
  const { page } = noted.messages;
  const told = paths.flatMap((path) =>
    notedStatements(noted, path)
      .filter((statement) => !isOfKeepers(statement) && (statement.value === undefined || isDeed(path)))
      .map(({ note = "", by }) => {
        const isCited = sources.some((source) => source.by === by);
        return isCited ? stopped(note, ` (${shortCitation(by, sources, noted.messages)}).`) : note;
      }),
  );
  return list([...new Set(told)], page.notes);
}

/** Traits that tell what animals do: a note says how. */
const isDeed = (path: TraitPath) => /^(temperament|predation)\./.test(path);
