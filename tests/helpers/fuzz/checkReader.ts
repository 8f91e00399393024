import fc from "fast-check";
import { UserError } from "../../../src/messages/userError.ts";

/** A reader of strangers' files with the input it is to bear. */
export interface FuzzedReader<T = unknown> {
  readonly name: string;
  readonly input: fc.Arbitrary<T>;
  /** What the reader finds wrong, if it reports instead of throwing. Throws UserError for input that is refused. */
  readonly read: (input: T) => Promise<readonly NamedProblem[]> | readonly NamedProblem[];
}

export interface NamedProblem {
  readonly rule?: string;
  readonly message: string;
  readonly wayOut?: string;
}

/** Most processor time of one case, in ms. */
const mostMs = 1000;
const leastLetters = 10;

export interface FuzzResult {
  readonly cases: number;
  readonly refused: number;
  readonly problems: number;
  readonly slowestMs: number;
}

/** Runs a reader on so many spoilt inputs, and throws on a crash, a hang, or a problem that is not named. */
export async function checkReader<T>(
  { name, input, read }: FuzzedReader<T>,
  { seed, cases }: { readonly seed: number; readonly cases: number },
): Promise<FuzzResult> {
  const result = { cases: 0, refused: 0, problems: 0, slowestMs: 0 };
  const property = fc.asyncProperty(input, async (value) => {
    result.cases++;
    const before = process.cpuUsage();
    try {
      const problems = await read(value);
      result.problems += problems.length;
      for (const { message, rule = "rule", wayOut = message } of problems)
        for (const [what, text] of Object.entries({ rule, message, wayOut }))
          if (typeof text !== "string" || text.length < (what === "rule" ? 1 : leastLetters))
            throw new Error(`${name}: a problem whose ${what} is ${JSON.stringify(text)}`);
    } catch (error) {
      if (!(error instanceof UserError)) throw error;
      if (error.message.length < leastLetters) throw new Error(`${name}: refused with "${error.message}"`);
      result.refused++;
    }
    const { user, system } = process.cpuUsage(before);
    const ms = (user + system) / 1000;
    result.slowestMs = Math.max(result.slowestMs, ms);
    if (ms > mostMs) throw new Error(`${name}: one case took ${Math.round(ms)} ms`);
  });
  const { failed, counterexample, counterexamplePath, errorInstance } = await fc.check(property, {
    seed,
    numRuns: cases,
  });
  if (failed)
    throw new Error(
      `${name}, seed ${seed}, path ${counterexamplePath}: ${shown(errorInstance)}\nwith ${fc.stringify(counterexample?.[0]).slice(0, 2000)}`,
    );
  return result;
}

function shown(error: unknown): string {
  return error instanceof Error
    ? (error.stack ?? error.message).split("\n").slice(0, 6).join("\n")
    : String(error);
}
