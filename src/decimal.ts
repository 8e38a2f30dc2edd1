/** A number without the binary error of decimals: the distance from 5.8 to 6.8 is 1. */
export const decimal = (value: number): number => Number(value.toPrecision(12));
