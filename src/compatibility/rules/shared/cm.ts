/** A length as a measure of a finding. */
export const cm = (value: number) => ({ value, unit: "cm" });
