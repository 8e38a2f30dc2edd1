/** A number in a language: to two places, with what parts its thousands. */
export const figure = (value: number, language: string): string =>
  new Intl.NumberFormat(language, { maximumFractionDigits: 2 }).format(value);

/** A number in a language as a field shows it: what parts thousands is left out. */
export const plainFigure = (value: number, language: string): string =>
  new Intl.NumberFormat(language, { maximumFractionDigits: 2, useGrouping: false }).format(value);

/**
 * The number that somebody typed, undefined where it is none. Points and commas mean what they mean in the language: 1.000
 * is a thousand in German and one in English. The other sign of the two is taken for a decimal one as well where it
 * parts no thousands: 6.8 in German.
 */
export function numberIn(text: string, language: string): number | undefined {
  const isCommaDecimal = plainFigure(0.5, language).includes(",");
  const typed = (isCommaDecimal ? text.replace(/[.,]/g, swapped) : text).replace("−", "-");
  const parted = /^-?[1-9]\d{0,2}(,\d{3})+(\.\d*)?$/.test(typed);
  if (!parted && !/^-?(\d+[.,]?\d*|[.,]\d+)$/.test(typed)) return undefined;
  const number = Number(parted ? typed.replaceAll(",", "") : typed.replace(",", "."));
  return Number.isFinite(number) ? number : undefined;
}

const swapped = (sign: string) => (sign === "." ? "," : ".");
