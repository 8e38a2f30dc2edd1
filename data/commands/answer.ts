/** What a command answers. */
export interface Answer {
  /** What it prints, a line each. */
  readonly lines: readonly string[];
  /** Whether something is wrong. */
  readonly failed: boolean;
}

/** An answer that says why a command could not do what was asked. */
export const refused = (reason: string): Answer => ({ lines: [reason], failed: true });
