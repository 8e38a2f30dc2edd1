// What the package ships, for what Node says of a plan.
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "../../data/reading/files";

const shipped = (name: string) => import(pathToFileURL(join(root, `dist/${name}.js`)).href);

export const { speciesById }: typeof import("vivary/catalog") = await shipped("catalog");
export const { assessPlan }: typeof import("vivary/compatibility") = await shipped("compatibility");
export const { parsePlan }: typeof import("vivary/plan") = await shipped("plan");
export const { english, reportParts }: typeof import("vivary/report") = await shipped("report");
export const { german }: typeof import("vivary/report/de") = await shipped("report/de");
