import { execFile } from "node:child_process";
import { promisify } from "node:util";

const run = promisify(execFile);

const script = 'import { answers } from "./smoke.mjs"; console.log(JSON.stringify(await answers()));';

/** What the smoke test answers in a Node: this one, or another whose program is named. */
export async function answersOfNode(folder: string, program: string = process.execPath): Promise<unknown> {
  const { stdout } = await run(program, ["--input-type=module", "--eval", script], {
    cwd: folder,
    maxBuffer: 2 ** 24,
  });
  return JSON.parse(stdout);
}
