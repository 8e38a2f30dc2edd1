/** The name of a figure of water without its section. */
export const nameOf = <Name extends string>(path: `water.${Name}`) => path.slice("water.".length) as Name;
