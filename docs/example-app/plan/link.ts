import type { Draft } from "./draft";
import { type Opened, openedText } from "./opened";

/** What the part of an address behind the page begins with where it holds a plan. */
const mark = "#plan=";

/** The end of a link to a plan: the plan itself, packed, so that it is kept nowhere else. */
export async function hashOf(draft: Draft): Promise<string> {
  const packed = new Blob([JSON.stringify(draft)]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  const bytes = new Uint8Array(await new Response(packed).arrayBuffer());
  const letters = btoa(String.fromCharCode(...bytes));
  return mark + letters.replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** What a link leads to. */
export interface Linked {
  /** Absent where it cannot be read, such as when part of the link was lost. */
  readonly plan: Opened | undefined;
}

/** The plan at the end of a link; undefined where the link leads to none. */
export async function linkedPlan(hash: string): Promise<Linked | undefined> {
  if (!hash.startsWith(mark)) return undefined;
  return { plan: await openedText(await unpacked(hash.slice(mark.length))) };
}

async function unpacked(text: string): Promise<string> {
  try {
    const letters = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
    const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
    return await new Response(stream).text();
  } catch {
    return "";
  }
}
