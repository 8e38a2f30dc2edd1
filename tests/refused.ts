import { expect } from "vitest";
import { InvalidInputError, OutsideDomainError, pathText } from "../src/errors";

/** What a call throws; a test fails where it throws nothing. */
function thrownBy(run: () => unknown): unknown {
  try {
    run();
  } catch (error) {
    return error;
  }
  throw new Error("nothing was thrown");
}

/** That a call is refused with an error of the library that names what was wrong, what would do, and what came. */
export function expectRefused(run: () => unknown, subject: string | RegExp = "") {
  const error = thrownBy(run);
  if (error instanceof OutsideDomainError) {
    expect(error.subject).toMatch(subject);
    expect(error.domain.min).toBeLessThan(error.domain.max);
    return;
  }
  expect(error).toBeInstanceOf(InvalidInputError);
  if (!(error instanceof InvalidInputError)) return;
  expect(error.problems.length).toBeGreaterThan(0);
  const paths = error.problems.map(({ path }) => pathText(path));
  const named =
    typeof subject === "string" ? expect.stringContaining(subject) : expect.stringMatching(subject);
  expect(paths).toContainEqual(named);
  for (const problem of error.problems) {
    expect(problem.expected.length).toBeGreaterThan(0);
    expect(problem).toHaveProperty("found");
  }
}
