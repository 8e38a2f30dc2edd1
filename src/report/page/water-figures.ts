/** The name of a figure of water without its section. */
export const nameOf = <Name extends string>(path: `water.${Name}`) => path.slice("water.".length) as Name;

/** g/kg up to which water is fresh (Venice System 1958, as Por 1972 has it). */
export const fresh = 0.5;
