/**
 * How many slips of the finger lie between what was typed and the beginning of a name: a letter left out, put in or
 * taken for another, or two that changed places. Infinite where there are more than `most`.
 */
export function slips(typed: string, name: string, most: number, at = 0, from = 0): number {
  let alike = 0;
  while (at + alike < typed.length && typed[at + alike] === name[from + alike]) alike += 1;
  const [here, there] = [at + alike, from + alike];
  if (here === typed.length) return 0;
  if (most === 0) return Number.POSITIVE_INFINITY;
  const left = most - 1;
  const fewest = Math.min(
    slips(typed, name, left, here, there + 1),
    slips(typed, name, left, here + 1, there),
    slips(typed, name, left, here + 1, there + 1),
  );
  const swapped = typed[here] === name[there + 1] && typed[here + 1] === name[there];
  return 1 + (swapped ? Math.min(fewest, slips(typed, name, left, here + 2, there + 2)) : fewest);
}
