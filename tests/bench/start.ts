import { execFileSync } from "node:child_process";
import { type Figure, median, urlOf } from "./timing";

/** Milliseconds of processor time that a fresh Node takes to run a program. */
const runTime = (code: string) =>
  Number(
    execFileSync(process.execPath, [
      "--input-type=module",
      "--eval",
      `${code}; const { user, system } = process.cpuUsage(); console.log((user + system) / 1000);`,
    ]),
  );

const importing = (url: string) => `await import(${JSON.stringify(url)})`;

/** What is measured of the start of a program: what an import takes beyond what Node itself does. */
export function startFigures(): readonly Figure[] {
  const programs = {
    nothing: "",
    empty: importing("data:text/javascript,"),
    root: importing(urlOf("index")),
    zod: importing(import.meta.resolve("zod")),
    schema: importing(urlOf("schema")),
  };
  const names = Object.keys(programs) as (keyof typeof programs)[];
  const rounds = Array.from({ length: 15 }, () => names.map((name) => runTime(programs[name])));
  const time = (name: keyof typeof programs) =>
    median(rounds.map((round) => round[names.indexOf(name)] ?? Number.NaN));
  const beyond = (name: keyof typeof programs) => time(name) - time("nothing");
  console.log(names.map((name) => `${name} ${time(name).toFixed(1)} ms`).join(", "));
  return [
    {
      figure: "import of the root, as times all a Node needs to import nothing",
      found: time("root") / time("empty"),
      target: 3,
    },
    {
      figure: "import of the schema beyond Node, as times that of zod",
      found: beyond("schema") / beyond("zod"),
      target: 1.5,
    },
  ];
}
