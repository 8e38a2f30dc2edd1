import { objectOf } from "../../checks";
import { refusal } from "../../errors";
import type { Messages } from "./messages";
import type { PageMessages } from "./page-messages";

/** The words themselves, or an InvalidInputError where they are not those of a language, but its name or its module. */
export function checkedMessages<Words extends Messages>(messages: Words, subject: string): Words {
  const { language, headline } = objectOf(messages, subject, messagesOfALanguage);
  if (typeof language === "string" && typeof headline === "function") return messages;
  throw refusal(subject, messagesOfALanguage, messages);
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
