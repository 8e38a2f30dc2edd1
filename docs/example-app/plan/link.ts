import type { Draft } from "./draft";

/** What a link to a plan has behind its `#`: the plan itself, packed, so that it is kept nowhere else. */
export async function hashOf(draft: Draft): Promise<string> {
  const packed = new Blob([JSON.stringify(draft)]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  const bytes = new Uint8Array(await new Response(packed).arrayBuffer());
  return btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}

/** The text of the plan in such a link; empty where there is none. */
export async function textOfHash(hash: string): Promise<string> {
  try {
    const letters = atob(hash.replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
    const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
    return await new Response(unpacked).text();
  } catch {
    return "";
  }
}
