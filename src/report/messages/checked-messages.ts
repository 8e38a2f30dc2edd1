import { objectOf } from "../../checks";
import { refusal } from "../../errors";
import type { AdviceMessages } from "./advice-messages";
import type { Messages } from "./messages";
import type { PageMessages } from "./page-messages";
import type { RequirementMessages } from "./requirement-messages";

/**
 * The words themselves, or an InvalidInputError where they are not those of a language, but its name or its module, or
 * where their language has a name by which no lists and numbers can be written.
 */
export function checkedMessages<Words extends Messages>(messages: Words, subject: string): Words {
  const { language, headline } = objectOf(messages, subject, messagesOfALanguage);
  if (typeof language !== "string" || typeof headline !== "function")
    throw refusal(subject, messagesOfALanguage, messages);
  if (isTag(language)) return messages;
  throw refusal(`${subject}.language`, "a BCP 47 tag, such as fr or pt-BR", language, "text");
}

function isTag(language: string): boolean {
  try {
    return Intl.getCanonicalLocales(language).length > 0;
  } catch {
    return false;
  }
}

const messagesOfALanguage = "the messages of a language, such as german of vivary/report/de";

/** The same of words that pages have too. */
export function checkedPages(messages: PageMessages, subject: string): PageMessages {
  objectOf(
    checkedMessages(messages, subject).page,
    `${subject}.page`,
    "what pages say, as germanPages has it",
  );
  return messages;
}

/** The same of words that advice has too. */
export function checkedAdvice(messages: AdviceMessages, subject: string): AdviceMessages {
  objectOf(
    checkedMessages(messages, subject).advice,
    `${subject}.advice`,
    "what advice says, as germanAdvice has it",
  );
  return messages;
}

/** The same of words of official requirements. */
export function checkedRequirementWords(messages: RequirementMessages, subject: string): RequirementMessages {
  objectOf(
    checkedMessages(messages, subject).requirements,
    `${subject}.requirements`,
    "what is said of official requirements, as germanRequirements has it",
  );
  return messages;
}
