import { execFile } from "node:child_process";
import { promisify } from "node:util";

const run = promisify(execFile);

/** What the smoke test answers in a Node, as JSON: in this one, or in another whose program is named. */
export const answersOfNode = (folder: string, program: string = process.execPath): Promise<string> =>
  printed(folder, program, "answer.mjs");

/** What a program prints in a folder, without the line's end. */
export async function printed(folder: string, program: string, ...args: readonly string[]): Promise<string> {
  const { stdout } = await run(program, args, { cwd: folder, maxBuffer: 2 ** 24 });
  return stdout.trimEnd();
}
