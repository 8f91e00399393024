import type { CountedCorpus, TokenTable } from "./corpusTable.ts";
import { accentLevel, environmentOf, groupOf, otherPlaces } from "./environment.ts";

/** Vowels with a mark that is evidence, reduced to counts: one entry for each environment, speaker and word. */
export interface DevoicingCell {
  readonly environment: string;
  readonly vowel: string;
  readonly before: string;
  readonly after: string;
  readonly accent: "yes" | "no" | "unknown";
  readonly row: "alone" | "in-a-row";
  readonly speaker: string;
  readonly word: string;
  tokens: number;
  devoiced: number;
}

export interface DevoicingEvidence {
  readonly dataset: string;
  readonly labelSet: string;
  /** `measured` or `annotated`; null when there is none. */
  readonly basis: string | null;
  readonly cells: readonly DevoicingCell[];
  /** Marks that a text rule wrote: never counted. */
  readonly predicted: number;
}

/** Counts the evidence of a corpus about devoicing, whose table may come in pieces. */
export class DevoicingCounter {
  readonly #cells = new Map<string, DevoicingCell>();
  readonly #bases = new Map<string, number>();

  /** Takes rows of the corpus. Marks predicted from text are used for nothing. */
  add(table: TokenTable, rows: Uint32Array): void {
    for (const i of rows) {
      const mark = table.devoiced[i];
      const basis = String(table.devoicedBasis[i]);
      if (table.kind[i] !== "vowel" || typeof mark !== "boolean") continue;
      if (basis !== "measured" && basis !== "annotated") continue;
      this.#bases.set(basis, (this.#bases.get(basis) ?? 0) + 1);
      const cell = this.#cellOf(table, i);
      cell.tokens++;
      if (mark) cell.devoiced++;
    }
  }

  #cellOf(table: TokenTable, i: number): DevoicingCell {
    const surroundings = surroundingsOf(table, i);
    const environment = environmentOf(surroundings);
    const speaker = String(table.speaker[i]);
    // A vowel of no known word is taken as a word of its own within its utterance.
    const word = String(table.word[i] ?? `${table.utterance[i]} ${table.index[i]}`);
    const key = `${environment}\u0000${speaker}\u0000${word}`;
    const known = this.#cells.get(key);
    if (known !== undefined) return known;
    const cell: DevoicingCell = {
      environment,
      vowel: surroundings.vowel,
      before: groupOf(surroundings.before) ?? "voiced",
      after: groupOf(surroundings.after) ?? "voiced",
      accent: accentLevel(surroundings.accented),
      row: surroundings.neighbour ? "in-a-row" : "alone",
      ...{ speaker, word, tokens: 0, devoiced: 0 },
    };
    this.#cells.set(key, cell);
    return cell;
  }

  evidence({ dataset, labelSet, predicted }: CountedCorpus): DevoicingEvidence {
    const commonest = [...this.#bases].sort((a, b) => b[1] - a[1])[0];
    const basis = commonest?.[0] ?? null;
    return { dataset, labelSet, basis, cells: [...this.#cells.values()], predicted };
  }
}

function surroundingsOf(table: TokenTable, i: number) {
  const accented = table.accented[i];
  return {
    vowel: String(table.phone[i]),
    long: table.length[i] === "long",
    before: String(table.before[i]),
    after: String(table.after[i]),
    accented: typeof accented === "boolean" ? accented : null,
    neighbour: table.devoiceableNeighbour[i] === true,
  };
}

/** Whether an environment is one of devoiceable vowels. */
export function isDevoiceableEnvironment(environment: string): boolean {
  return !(otherPlaces as readonly string[]).includes(environment);
}
