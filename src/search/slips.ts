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
  const after = (typedFurther: number, nameFurther: number) =>
    slips(typed, name, most - 1, here + typedFurther, there + nameFurther);
  const swapped = typed[here] === name[there + 1] && typed[here + 1] === name[there];
  return (
    1 + Math.min(after(0, 1), after(1, 0), after(1, 1), swapped ? after(2, 2) : Number.POSITIVE_INFINITY)
  );
}
