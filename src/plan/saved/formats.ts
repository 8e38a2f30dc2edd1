/** The format in which plans are saved today. */
export const format = 1;

/**
 * What a plan saved in an older format needs to become one of the next, by the format it was saved in. Empty while
 * there is one format only.
 */
export const older: Readonly<Record<number, (saved: object) => object>> = {};
