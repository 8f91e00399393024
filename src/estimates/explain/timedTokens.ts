import type { TimedToken } from "../timing/stretches.ts";
import { labelAt, type TokenTable } from "../tokenTable.ts";

/**
 * Rows of a table as the timing estimators read them, without copying: a token holds its place only, so that ten million
 * of them stay in memory. Rows without times are left out.
 */
export function timedTokens(table: TokenTable, rows: Uint32Array): TimedToken[] {
  const { startMs, endMs, durationMs, moraInPhrase, index } = table.numbers;
  const timed: TimedToken[] = [];
  for (const row of rows)
    if (startMs[row]! + endMs[row]! + durationMs[row]! + moraInPhrase[row]! + index[row]! >= 0)
      timed.push(new TableToken(table, row));
  return timed;
}

class TableToken implements TimedToken {
  readonly #table: TokenTable;
  readonly #row: number;

  constructor(table: TokenTable, row: number) {
    this.#table = table;
    this.#row = row;
  }

  #label(name: keyof TokenTable["labels"]): string | null {
    return labelAt(this.#table.labels[name], this.#row);
  }

  #number(name: keyof TokenTable["numbers"]): number {
    return this.#table.numbers[name][this.#row]!;
  }

  get dataset() {
    return this.#label("dataset") ?? "";
  }
  get labelSet() {
    return this.#label("labelSet") ?? "";
  }
  get speaker() {
    return this.#label("speaker") ?? "unknown";
  }
  get utterance() {
    return this.#label("utterance") ?? "";
  }
  get kind() {
    return this.#label("kind") ?? "";
  }
  get phone() {
    return this.#label("phone") ?? "";
  }
  get length() {
    return this.#label("length");
  }
  get before() {
    return this.#label("before") ?? "";
  }
  get word() {
    return this.#label("word");
  }
  get index() {
    return this.#number("index");
  }
  get startMs() {
    return this.#number("startMs");
  }
  get endMs() {
    return this.#number("endMs");
  }
  get durationMs() {
    return this.#number("durationMs");
  }
  get moraInPhrase() {
    return this.#number("moraInPhrase");
  }
  get devoiced() {
    const mark = this.#label("devoiced");
    return mark === null ? null : mark === "true";
  }
  get devoicedBasis() {
    return this.#label("devoicedBasis");
  }
}
