import type { Cells } from "../../estimates/cells.ts";
import type { TokenTable } from "../../estimates/tokenTable.ts";

/** What rules are judged by. */
export interface RuleEvidence {
  readonly cells: Cells;
  /** Single vowels and consonants; null where they are not at hand, and rules that need them say so. */
  readonly tokens: TokenTable | null;
}
