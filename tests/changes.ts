// Fails where the changesets that wait do not say what users will see.
import { root } from "../data/reading/files";
import { problemsOfChanges } from "./release/changes";

const problems = await problemsOfChanges(root);
for (const problem of problems) console.error(problem);
if (problems.length === 0) console.log("The changesets say what users will see.");
process.exitCode = problems.length > 0 ? 1 : 0;
