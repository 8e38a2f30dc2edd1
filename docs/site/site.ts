import { fileURLToPath } from "node:url";

/** The folder that the site is written into. */
export const site: string = fileURLToPath(new URL("dist", import.meta.url));
