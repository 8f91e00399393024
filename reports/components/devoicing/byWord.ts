import { isEvidence } from "../../../src/basis.ts";
import type { RateOptions, Rates } from "../../../src/estimates/rates.ts";
import { tableOfVowelWords, type VowelWords } from "../../../src/estimates/samples/vowelWords.ts";
import type { TokenTable } from "../../../src/estimates/tokenTable.ts";
import { ratesWithWords } from "../../../src/estimates/words.ts";
import { percentRange } from "../../../src/findings/format.ts";
import type { NamedRate } from "../../../src/findings/sentences/rates.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";

/** Rows whose intervals are told one by one; more stand in the table. */
const toldSingly = 3;

/** Intervals that allow for words too, by the very function of the terminal, where the page carries the vowels. */
export class ByWord {
  readonly #kept: VowelWords["kept"] | null;
  readonly #table: TokenTable | null;

  constructor(words: VowelWords | null) {
    this.#kept = words?.kept ?? null;
    this.#table = words === null ? null : tableOfVowelWords(words);
  }

  /** The same rates, with words where they are known. */
  rates(rates: Rates, options: RateOptions): Rates {
    return this.#table === null ? rates : ratesWithWords(rates, this.#table, options);
  }

  /** What words do to the intervals of these rates, or why it is not known; nothing where there is no evidence. */
  remarks(rows: readonly NamedRate[]): string[] {
    const { byWord } = interfaceText().devoicing;
    const evidence = rows.filter(({ row }) => isEvidence(row.basis) && row.low !== null && row.high !== null);
    if (evidence.length === 0) return [];
    const told = evidence.filter(({ row }) => row.crossed !== null);
    if (told.length === 0) return [this.#reason()];
    if (told.length <= toldSingly)
      return [
        byWord.told(
          told.map(({ name, row: { crossed, words } }) =>
            byWord.part(name, percentRange(crossed!.low, crossed!.high), words ?? 0),
          ),
        ),
      ];
    const wider = ({ row: { crossed, low, high } }: NamedRate) =>
      crossed!.high - crossed!.low - (high! - low!);
    const points = 100 * Math.max(0, ...told.map(wider));
    const text = points.toFixed(points < 0.5 ? 1 : 0);
    return [Number(text) === 0 ? byWord.noWider : byWord.wider(text)];
  }

  #reason(): string {
    const { byWord } = interfaceText().devoicing;
    if (this.#kept === null) return byWord.noTokens;
    return this.#kept === "all" ? byWord.unknown : byWord.notCarried;
  }
}
