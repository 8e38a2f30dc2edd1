// The workflows of the forge, as it reads them.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import { root } from "../../data/reading/files";

/** A step: an action that it uses, or a script that it runs. */
interface Step {
  readonly name?: string;
  readonly uses?: string;
  readonly run?: string;
  readonly with?: Readonly<Record<string, unknown>>;
}

/** What a job may do, by what it touches. */
type Permissions = Readonly<Record<string, string>>;

export interface Job {
  readonly "timeout-minutes"?: number;
  readonly permissions?: Permissions | undefined;
  readonly steps: readonly Step[];
}

export interface Workflow {
  readonly file: string;
  readonly text: string;
  readonly on: Readonly<Record<string, unknown>>;
  readonly permissions?: Permissions | undefined;
  readonly jobs: Readonly<Record<string, Job>>;
}

const folder = join(root, ".github/workflows");

export const workflows: readonly Workflow[] = readdirSync(folder).map((file) => {
  const text = readFileSync(join(folder, file), "utf8");
  return { ...parse(text), file, text };
});

/** Every job, with the name of its file and its own. */
export const jobs = workflows.flatMap(({ file, jobs: held }) =>
  Object.entries(held).map(([name, job]) => ({ ...job, name: `${file}: ${name}` })),
);

/** The script of a step. */
export function scriptOf(file: string, step: string): string {
  const run = workflows
    .filter((workflow) => workflow.file === file)
    .flatMap((workflow) => Object.values(workflow.jobs).flatMap(({ steps }) => steps))
    .find(({ name }) => name === step)?.run;
  if (run === undefined) throw new Error(`${file} has no script called ${step}.`);
  return run;
}
